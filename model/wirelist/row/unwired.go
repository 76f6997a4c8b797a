package row

import (
	"slices"
	"strings"

	"contralay/model/wirelist/column"
	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/report"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
	"contralay/model/wirelist/words"
)

// A cavity of a pin table can have no wire without a word that says so.

// saysNoWire reports whether a row of a pin table has a dash in every cell that would say what its wire is and where it goes, of two
// columns or more; or nothing but a note, where the table has a column for names and one for such values.
//
//	Pin | Net   | Goes to | Colour      Pin | Net  | Colour | Remark
//	3   | PROBE | Probe   | black       3   | Horn | red    |
//	4   | SERVO | -       | -           4   |      |        | key
func saysNoWire(im *draft.Importer, b *shape.Block, cells []string, it *draft.Item) bool {
	if !b.IsPinTable() || it.OwnID != "" || it.Amps.Set || it.Fuse.Set {
		return false
	}
	dashes, empty, values := 0, 0, false
	for i, c := range b.Cols {
		switch c.Field {
		case name.FieldTo, name.FieldToPin, name.FieldColour, name.FieldGauge, name.FieldSpec, name.FieldCable, name.FieldLength,
			name.FieldStripe:
		default:
			continue
		}
		values = values || c.Field == name.FieldColour || c.Field == name.FieldGauge
		switch {
		case i >= len(cells) || cells[i] == "":
			empty++
		case !value.IsNothing(cells[i]):
			return false
		default:
			dashes++
		}
	}
	note := b.Cell(cells, name.FieldNote)
	if note == "" && len(it.Notes) > b.SecondNames(cells) {
		note = strings.Join(it.Notes, "; ") // below a heading that nobody knows
	}
	switch {
	case it.Signal != "" && !value.IsNothing(it.Signal):
		if dashes < 2 || empty > 0 || !value.IsNothing(note) {
			return false
		}
		im.Say(report.Warn, "a name, and a dash for all else", it.Place, it.Signal, "the cavity is kept free")
	case !values || !b.Has(name.FieldSignal) || value.IsNothing(note) || len(it.With) > 0 || joins(note):
		return false
	default:
		im.Say(report.Warn, "a cavity with a note and nothing else", it.Place, note, "the cavity is kept free")
	}
	return true
}

// isNotNeeded reports whether the note of a named cavity without a wire says last that nothing is needed or fitted there, where nearly all
// other named cavities have a far end.
//
//	Pin | Name     | Connects to | Wire  | Comment
//	21  | CAN L    | dash 5      | green |
//	22  | CAN term |             |       | jumper 22-23 not needed
func isNotNeeded(b *shape.Block, cells []string, it *draft.Item) bool {
	if it.Signal == "" || it.OwnID != "" || !b.IsPinTable() || !b.Has(name.FieldTo) || len(it.With) > 0 ||
		!value.IsNothing(b.Cell(cells, name.FieldTo)) || !words.EndsUnneeded(b.Cell(cells, name.FieldNote)) {
		return false
	}
	named, far := 0, 0
	for _, r := range b.Rows {
		if shape.IsText(r) || value.IsNothing(b.Cell(r.Cells, name.FieldSignal)) {
			continue
		}
		if named++; !value.IsNothing(b.Cell(r.Cells, name.FieldTo)) {
			far++
		}
	}
	return far > 2 && 10*far >= 8*(named-1)
}

// joins reports whether a note could tell where a wire of its cavity goes after all: "to the frame", "jumper from 2".
func joins(note string) bool {
	return slices.ContainsFunc(name.Words(table.Fold(note)), func(w string) bool {
		switch w {
		case "to", "from", "with", "same", "jumper", "bridge", "bridged", "loop", "looped", "link", "linked", "splice", "spliced", "joined",
			"and", "shield", "screen", "drain", "nach", "zu", "von", "mit", "brucke", "vers", "avec", "pont", "con", "puente", "verso",
			"ponte", "naar", "met", "brug", "till", "fran", "til", "fra", "do", "od", "z":
			return true
		}
		return false
	})
}

// tellsNoEnd reports whether a row tells something else to do with its wire than to take it anywhere.
func tellsNoEnd(b *shape.Block, cells []string) bool { return column.TellsNoEnd(b, cells) }
