package row

import (
	"strings"

	"contralay/model/wirelist/column"
	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/freeword"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/pads"
	"contralay/model/wirelist/report"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/signs"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
	"contralay/model/wirelist/words"
)

// readState settles what the cavity of a row is for. Of several words the one that says
// more counts: "not used, reserved" is reserved. A row with a wire of its own is a
// wired spare, whatever it is called.
func readState(im *draft.Importer, b *shape.Block, cells []string, it *draft.Item) {
	s := name.Used
	for _, f := range []name.Field{name.FieldSignal, name.FieldWire, name.FieldNote, name.FieldColour, name.FieldGauge, name.FieldFrom,
		name.FieldTo, name.FieldCurrent} {
		cell := b.Cell(cells, f)
		if cell == "" || (f != name.FieldSignal || joinsTwo(b, cells)) && value.IsNothing(cell) ||
			(f == name.FieldColour || f == name.FieldGauge) &&
				(isNone(cell) || freeword.IsUnallocated(table.Fold(cell)) && joinsTwo(b, cells)) {
			continue
		}
		if (f == name.FieldWire || f == name.FieldFrom || f == name.FieldTo) && isPlainName(cell) {
			continue // most are
		}
		if f != name.FieldSignal && f != name.FieldFrom && f != name.FieldTo && value.IsNotApplicable(cell) {
			continue // of the note or the size, not of the wire
		}
		if f == name.FieldColour && (b.Lang == "de" && strings.EqualFold(cell, "blank") || im.Colours[table.Fold(cell)] != "") {
			continue // a bare wire, or a short form
		}
		if it.Drain && (f == name.FieldTo || f == name.FieldSignal && value.IsNothing(cell)) {
			continue // the far end of a shield is often open, and its cavity names it
		}
		var got name.State
		switch f {
		case name.FieldSignal:
			got = name.StateOfSignal(cell)
		case name.FieldNote:
			got = name.StateOfNote(cell)
			if got == name.Blank && isContact(cell) && it.Signal != "" && it.OwnID != "" && !value.IsNothing(b.Cell(cells, name.FieldTo)) {
				im.Say(report.Warn, "NC beside a wire that has its number, its name and both ends", it.Place, cell,
					"taken for a contact that is closed at rest, kept in the note; look whether the wire is connected")
				it.Notes = append(it.Notes, cell)
				got = name.Used
			}
		default:
			got = name.StateOf(cell)
		}
		if f == name.FieldGauge && got == name.Blank {
			continue
		}
		if f == name.FieldFrom || f == name.FieldTo {
			keepBehindState(im, cell, got, it)
		}
		s = max(s, got)
	}
	wired := it.Gauge.Size != "" || it.Gauge.Spec != "" || len(it.Colour) > 0 || it.Length.Set
	nothing := it.Signal == "" && !wired && it.OwnID == "" && len(it.Notes) <= b.SecondNames(cells) &&
		value.IsNothing(b.Cell(cells, name.FieldTo)) &&
		value.IsNothing(b.Cell(cells, name.FieldFrom)) && !pads.Lands(b, cells)
	if it.Signal == "" && !wired && name.IsKey(it.OwnID) {
		it.Signal, it.OwnID = it.OwnID, "" // no id is called so: it stands below the ids of circuits
	}
	if s == name.Used && !wired && name.IsKey(it.Signal) && b.Has(name.FieldColour, name.FieldGauge) &&
		(b.Has(name.FieldTo) || column.OnlyWithout(b, name.FieldColour, cells)) && value.IsNothing(b.Cell(cells, name.FieldTo)) {
		s = name.Blank // where the other rows have a colour and a far end, this one keys the plug
	}
	if s == name.Used && !wired && it.Signal == "" && it.OwnID == "" && !joinsTwo(b, cells) &&
		value.IsNothing(b.Cell(cells, name.FieldTo)) && words.BeginsBlank(b.Cell(cells, name.FieldNote)) {
		s = name.Blank // "not wired, the drive is always on"
	}
	if s == name.Used && !wired && words.EndsBlank(it.Signal) && !joinsTwo(b, cells) &&
		(b.Has(name.FieldFrom, name.FieldFromPin) || value.IsNothing(b.Cell(cells, name.FieldTo))) {
		s = name.Blank // "Feed - leave open"
	}
	if s == name.Used && !wired && (isNotNeeded(b, cells, it) || saysNoWire(im, b, cells, it)) {
		s = name.Blank
	}
	if s == name.Used && !wired && it.Signal == "" && name.IsKey(b.Cell(cells, name.FieldColour)) &&
		value.IsNothing(b.Cell(cells, name.FieldTo)) {
		s = name.Blank // "KEY" in place of a colour
	}
	kept := b.Has(name.FieldColour, name.FieldGauge) && it.OwnID == "" && !joinsTwo(b, cells) &&
		words.KeepsRoom(b.Cell(cells, name.FieldNote))
	if s == name.Used && !wired && (kept || words.IsForLater(it.Signal)) && value.IsNothing(b.Cell(cells, name.FieldTo)) &&
		!pads.Lands(b, cells) {
		s = name.Reserved
	}
	if s == name.Reserved && !wired && freeword.IsSpareFor(table.Fold(it.Signal)) && !value.IsNothing(b.Cell(cells, name.FieldTo)) {
		s = name.Used // a spare that is laid to its far end
	}
	if _, col := b.CellAt(cells, name.FieldSignal); s == name.Blank && (wired || joinsTwo(b, cells)) &&
		(name.IsWeakState(it.Signal) || it.Signal == "-" && b.IsPole(col)) {
		s = name.Used // "-" beside "+" is the minus pole
	}
	if _, col := b.CellAt(cells, name.FieldWire); s == name.Spare && it.OwnID != "" && (!b.InCavity(cells) ||
		column.HeadsCores(b.Cols[col].Head)) {
		wired = true // a core of its own number is laid in and free
	}
	switch {
	case s == name.Used && nothing && b.Has(name.FieldPin, name.FieldVia) && !it.Amps.Set:
		s = name.Blank // a cavity with nothing beside it
	case s == name.Used:
	case s == name.Blank && wired:
		im.Say(report.Warn, "no connection, and yet a wire", it.Place,
			value.JoinNonEmpty(" ", it.Signal, it.Gauge.String(), it.Colour.String()), "laid in as a spare")
		s = name.Spare
	case s == name.Reserved && wired:
		s = name.Spare // a wire for future use
	case s == name.Spare && !wired:
		im.Say(report.Note, "spare without a wire", it.Place, it.Signal, "taken as a blank cavity")
		s = name.Blank
	}
	it.State = s
	if it.Signal != "" && name.IsUnknown(it.Signal) {
		im.Say(report.Warn, "not decided in the list", it.Place, it.Signal,
			map[bool]string{true: "laid in as a spare", false: "the cavity is kept free"}[s == name.Spare])
	}
	if note := b.Cell(cells, name.FieldNote); !value.IsNotApplicable(note) && name.StateOf(note) != name.Used &&
		(s == name.Spare || !name.OnlyState(note)) {
		it.Notes = append(it.Notes, note)
	}
}

// isContact reports whether a remark may be of a contact that is closed at rest as well as of a place that is not connected.
func isContact(note string) bool {
	f := strings.Trim(table.Fold(note), " ()")
	return f == "nc" || f == "n.c." || f == "n/c" || f == "n.c"
}

// keepBehindState keeps what an end says behind the word for a free place: "spare, panel breaker 8".
func keepBehindState(im *draft.Importer, cell string, got name.State, it *draft.Item) {
	_, rest, more := strings.Cut(cell, ", ")
	if got == name.Used || !more || name.StateOf(rest) != name.Used {
		return
	}
	it.Notes = append(it.Notes, cell)
	im.Say(report.Warn, "text behind the word for a spare", it.Place, cell, "kept in the note, no end made")
}

// beginsSpare are the letters that the words of such states begin with.
var beginsSpare = signs.Of("sSrR")

// isPlainName reports whether a cell is one word with a number in it, as ends and wires are
// named, and as no state is but "spare2" and "reserve1".
func isPlainName(cell string) bool {
	return value.HasDigit(cell) && strings.IndexByte(cell, ' ') < 0 && !beginsSpare.In(cell[:1])
}
