package row

import (
	"strings"

	"contralay/model"
	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/report"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/value"
)

// NoteOf reads the note: a fuse, a cable it is part of, the wires it pairs with. What
// is understood as a whole is not kept as text.
func NoteOf(im *draft.Importer, b *shape.Block, cells []string, it *draft.Item) {
	if it.Gauge.Conductors > 1 || it.Gauge.Shielded || it.Gauge.Twisted {
		it.Cue = it.Gauge
	}
	note := b.Cell(cells, name.FieldNote)
	if note == "" || name.StateOf(note) != name.Used {
		return
	}
	if a, rest, ok := value.FuseIn(note, b.Mark); ok && !it.Fuse.Set {
		it.Fuse = model.Some(a)
		if note = rest; note == "" {
			return
		}
	}
	if g, ok := value.ParseGauge(note, value.BareAWG, b.Mark); ok && g.Spec == "" && (g.Conductors > 1 || g.Shielded || g.Twisted) {
		if g.Size == "" || g.Size == it.Gauge.Size || it.Gauge.Size == "" {
			if it.Gauge.Size == "" {
				it.Gauge.Size = g.Size
			}
			it.Cue, it.CueText = g, note
			return // kept as text where no unit comes of it
		}
		im.Say(report.Warn, "size against the cable in the note", it.Place, it.Gauge.Size+" and "+note, "the note is kept")
	}
	if ids := name.Partners(note); len(ids) > 0 {
		it.With = ids
		it.CueText = note
		if g := name.Loose(note); g.Shielded || g.Twisted {
			it.Cue.Shielded, it.Cue.Twisted = it.Cue.Shielded || g.Shielded, it.Cue.Twisted || g.Twisted
		}
		return
	}
	it.Notes = append(it.Notes, note)
}

// FuseCell reads the cell of a fuse column: "7.5", "7.5 A", "F3", "F3 10A", "F3 (10 A)".
func FuseCell(im *draft.Importer, b *shape.Block, cell string, it *draft.Item) {
	_, rest := value.CutFuseWord(cell)
	if a, ok := value.ParseCurrent(rest, false, b.Mark); ok {
		it.Fuse = model.Some(a)
		return
	}
	parts := strings.FieldsFunc(rest, func(r rune) bool { return r == ' ' || r == '(' || r == ')' || r == '/' || r == ':' })
	switch {
	case len(parts) == 0:
	case len(parts) == 1:
		it.FuseName = parts[0]
		return
	default:
		if a, ok := value.ParseCurrent(strings.Join(parts[1:], " "), false, b.Mark); ok {
			it.Fuse, it.FuseName = model.Some(a), parts[0]
			return
		}
	}
	it.Notes = append(it.Notes, "fuse: "+cell)
	im.Say(report.Note, "no fuse", it.Place, cell, "kept in the note")
}

// StateOf settles what the cavity of a row is for. Of several words the one that says
// more counts: "not used, reserved" is reserved. A row with a wire of its own is a
// wired spare, whatever it is called.
func StateOf(im *draft.Importer, b *shape.Block, cells []string, it *draft.Item) {
	s := name.Used
	for _, f := range []name.Field{name.FieldSignal, name.FieldWire, name.FieldNote, name.FieldColour, name.FieldGauge, name.FieldFrom,
		name.FieldTo} {
		cell := b.Cell(cells, f)
		if cell == "" || f != name.FieldSignal && value.IsNothing(cell) || (f == name.FieldColour || f == name.FieldGauge) &&
			isNone(cell) || f == name.FieldGauge && name.StateOf(cell) == name.Blank {
			continue
		}
		if (f == name.FieldWire || f == name.FieldFrom || f == name.FieldTo) && isPlainName(cell) {
			continue // most are
		}
		if it.Drain && f == name.FieldTo {
			continue // the far end of a shield is often open
		}
		got := name.StateOf(cell)
		switch f {
		case name.FieldSignal:
			got = name.StateOfSignal(cell)
		case name.FieldNote:
			got = name.StateOfNote(cell)
		}
		s = max(s, got)
	}
	wired := it.Gauge.Size != "" || it.Gauge.Spec != "" || len(it.Colour) > 0 || it.Length.Set
	nothing := it.Signal == "" && !wired && it.OwnID == "" && len(it.Notes) == 0 && value.IsNothing(b.Cell(cells, name.FieldTo)) &&
		value.IsNothing(b.Cell(cells, name.FieldFrom))
	switch {
	case s == name.Used && nothing && b.Has(name.FieldPin) && !it.Amps.Set:
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
	if note := b.Cell(cells, name.FieldNote); name.StateOf(note) != name.Used && (s == name.Spare || !name.OnlyState(note)) {
		it.Notes = append(it.Notes, note)
	}
}

// isPlainName: one word with a number in it, as ends and wires are named, and as no state is
// but "spare2" and "reserve1".
func isPlainName(cell string) bool {
	return strings.ContainsAny(cell, "0123456789") && !strings.Contains(cell, " ") && !strings.ContainsAny(cell[:1], "sSrR")
}
