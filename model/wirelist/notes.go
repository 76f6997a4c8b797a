package wirelist

import (
	"strings"

	"contralay/model"
)

// noteOf reads the note: a fuse, a cable it is part of, the wires it pairs with. What
// is understood as a whole is not kept as text.
func (im *importer) noteOf(b *block, cells []string, it *item) {
	if it.gauge.Conductors > 1 || it.gauge.Shielded || it.gauge.Twisted {
		it.cue = it.gauge
	}
	note := b.cell(cells, FieldNote)
	if note == "" || stateOf(note) != used {
		return
	}
	if a, rest, ok := fuseIn(note, b.mark); ok && !it.fuse.Set {
		it.fuse = model.Some(a)
		if note = rest; note == "" {
			return
		}
	}
	if g, ok := ParseGauge(note, BareAWG, b.mark); ok && g.Spec == "" && (g.Conductors > 1 || g.Shielded || g.Twisted) {
		if g.Size == "" || g.Size == it.gauge.Size || it.gauge.Size == "" {
			if it.gauge.Size == "" {
				it.gauge.Size = g.Size
			}
			it.cue, it.cueText = g, note
			return // kept as text where no unit comes of it
		}
		im.say(Warn, "size against the cable in the note", it.place, it.gauge.Size+" and "+note, "the note is kept")
	}
	if ids := partners(note); len(ids) > 0 {
		it.with = ids
		it.cueText = note
		if g := loose(note); g.Shielded || g.Twisted {
			it.cue.Shielded, it.cue.Twisted = it.cue.Shielded || g.Shielded, it.cue.Twisted || g.Twisted
		}
		return
	}
	it.notes = append(it.notes, note)
}

// loose finds the words shielded and twisted in any note.
func loose(note string) (g Gauge) {
	for _, t := range scan(fold(note)) {
		if t.kind == 'a' {
			g.cable(t.text)
		}
	}
	return g
}

// partners reads "pair with 105", "twisted with 105 and 106", "paired 105", "verdrillt
// mit 12": the ids behind the word "with". Nothing else may stand there.
func partners(note string) []string {
	f := strings.Fields(fold(note))
	own := strings.Fields(note)
	for i, w := range f {
		if w != "with" && w != "w/" && w != "mit" && w != "avec" && w != "con" || i == 0 || i+1 == len(f) {
			continue
		}
		switch f[i-1] {
		case "pair", "paired", "twisted", "twist", "shielded", "triple", "paar", "gepaart", "verdrillt", "paire", "torsade", "par", "trenzado", "coppia", "intrecciato":
		default:
			return nil
		}
		var ids []string
		for k := i + 1; k < len(f) && k < len(own); k++ {
			switch strings.TrimRight(f[k], ".:") {
			case "pos", "position", "no", "nr", "row", "line", "zeile", "item", "and", "und", "et", "y", "e", "&", "+", "wire", "wires", "ader":
			default:
				for id := range strings.FieldsFuncSeq(own[k], func(r rune) bool { return r == ',' || r == '&' || r == '+' }) {
					ids = append(ids, id)
				}
			}
		}
		return ids
	}
	return nil
}

// fuseCell reads the cell of a fuse column: "7.5", "7.5 A", "F3", "F3 10A", "F3 (10 A)".
func (im *importer) fuseCell(b *block, cell string, it *item) {
	_, rest := cutFuseWord(cell)
	if a, ok := ParseCurrent(rest, false, b.mark); ok {
		it.fuse = model.Some(a)
		return
	}
	parts := strings.FieldsFunc(rest, func(r rune) bool { return r == ' ' || r == '(' || r == ')' || r == '/' || r == ':' })
	switch {
	case len(parts) == 0:
	case len(parts) == 1:
		it.fuseName = parts[0]
		return
	default:
		if a, ok := ParseCurrent(strings.Join(parts[1:], " "), false, b.mark); ok {
			it.fuse, it.fuseName = model.Some(a), parts[0]
			return
		}
	}
	it.notes = append(it.notes, "fuse: "+cell)
	im.say(Note, "no fuse", it.place, cell, "kept in the note")
}

// stateOf settles what the cavity of a row is for. Of several words the one that says
// more counts: "not used, reserved" is reserved. A row with a wire of its own is a
// wired spare, whatever it is called.
func (im *importer) stateOf(b *block, cells []string, it *item) {
	s := used
	for _, f := range []Field{FieldSignal, FieldWire, FieldNote, FieldColour, FieldGauge, FieldFrom, FieldTo} {
		cell := b.cell(cells, f)
		if cell == "" || f != FieldSignal && isNothing(cell) || (f == FieldColour || f == FieldGauge) && isNone(cell) || f == FieldGauge && stateOf(cell) == blank {
			continue
		}
		if (f == FieldWire || f == FieldFrom || f == FieldTo) && isPlainName(cell) {
			continue // most are
		}
		if it.drain && f == FieldTo {
			continue // the far end of a shield is often open
		}
		got := stateOf(cell)
		switch f {
		case FieldSignal:
			got = stateOfSignal(cell)
		case FieldNote:
			got = stateOfNote(cell)
		}
		s = max(s, got)
	}
	wired := it.gauge.Size != "" || it.gauge.Spec != "" || len(it.colour) > 0 || it.length.Set
	nothing := it.signal == "" && !wired && it.ownID == "" && len(it.notes) == 0 && isNothing(b.cell(cells, FieldTo)) && isNothing(b.cell(cells, FieldFrom))
	switch {
	case s == used && nothing && b.has(FieldPin) && !it.amps.Set:
		s = blank // a cavity with nothing beside it
	case s == used:
	case s == blank && wired:
		im.say(Warn, "no connection, and yet a wire", it.place, joinNonEmpty(" ", it.signal, it.gauge.String(), it.colour.String()), "laid in as a spare")
		s = spare
	case s == reserved && wired:
		s = spare // a wire for future use
	case s == spare && !wired:
		im.say(Note, "spare without a wire", it.place, it.signal, "taken as a blank cavity")
		s = blank
	}
	it.state = s
	if it.signal != "" && isUnknown(it.signal) {
		im.say(Warn, "not decided in the list", it.place, it.signal, map[bool]string{true: "laid in as a spare", false: "the cavity is kept free"}[s == spare])
	}
	if note := b.cell(cells, FieldNote); stateOf(note) != used && (s == spare || !onlyState(note)) {
		it.notes = append(it.notes, note)
	}
}

// isPlainName: one word with a number in it, as ends and wires are named, and as no state is
// but "spare2" and "reserve1".
func isPlainName(cell string) bool {
	return strings.ContainsAny(cell, "0123456789") && !strings.Contains(cell, " ") && !strings.ContainsAny(cell[:1], "sSrR")
}

// plusMinus keeps what tells the two sides of a pair apart, which words drop.
func plusMinus(signal string) []string {
	switch s := strings.TrimSpace(signal); {
	case strings.HasSuffix(s, "+"):
		return []string{"+"}
	case strings.HasSuffix(s, "-") || strings.HasSuffix(s, "−"):
		return []string{"-"}
	}
	return nil
}
