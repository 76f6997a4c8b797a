package audit

import (
	"slices"
	"strings"
	"unicode"

	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/squareword"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// text is all that the harness says of a wire: its own words, those of its ends, its unit and its feed.
type text struct {
	plain  string
	folded string   // "" before it is asked for
	words  []string // its pieces; nil before they are asked for
	code   string   // of its colour
	colour value.Colour
	size   string
}

// textsOf gives the texts of some wires.
func (a *auditor) textsOf(wires []int) (all []*text) {
	for _, w := range wires {
		all = append(all, a.textOf(w))
	}
	return all
}

// textOf gives the text of a wire.
func (a *auditor) textOf(wire int) *text {
	h := &a.im.H
	w := &h.Wires[wire]
	b := a.text[:0]
	add := func(all ...string) {
		for _, s := range all {
			b = append(append(b, s...), '\n')
		}
	}
	add(w.ID, w.Signal.V, w.Note.V, w.Spec, w.Size, w.Colour.V, string(w.Shade.V))
	for _, end := range []string{w.From.V, w.To.V} {
		id, pin, _ := strings.Cut(end, ":")
		add(id+pin, pin, end)
		if t := a.term(id); t != nil {
			add(t.Name.V, t.ID, t.Insert.V, string(t.Gender.V), t.Device.V, t.Under)
			if t.Name.Set {
				add(t.Name.V + pin)
			}
		}
	}
	if i, ok := a.units[w.ID]; ok {
		u := &h.Units[i]
		add(u.ID, u.Name.V, u.DrainFrom.V, u.DrainTo.V, a.im.Rep.Cables[u.ID], a.im.Rep.Kinds[u.ID])
		add(u.Wires...)
	}
	if i, ok := a.feeds[w.ID]; ok {
		add(h.Feeds[i].ID, h.Feeds[i].Name.V, a.im.Rep.Fuses[w.ID])
		if h.Feeds[i].Amps.Set {
			add(value.FormatCurrent(h.Feeds[i].Amps.V))
		}
	}
	if w.Amps.Set {
		add(value.FormatCurrent(w.Amps.V))
	}
	if mm, ok := a.im.Rep.Lengths[w.ID]; ok {
		add(value.MmText(mm))
	}
	a.text = b
	return &text{plain: string(b), size: w.Size, code: w.Colour.V}
}

// term finds a termination by its id.
func (a *auditor) term(id string) *draft.Term {
	return a.im.ByKey["\x00"+id]
}

// pieces parts a folded text into runs of letters and runs of digits, the zeros before a number left out.
func pieces(folded string) (all []string) {
	kind := func(r rune) int {
		switch {
		case unicode.IsDigit(r):
			return 1
		case unicode.IsLetter(r):
			return 2
		}
		return 0
	}
	start, was := 0, 0
	cut := func(end int) {
		if was == 0 {
			return
		}
		p := folded[start:end]
		if was == 1 {
			if t := strings.TrimLeft(p, "0"); t != "" {
				p = t
			} else {
				p = "0"
			}
		}
		all = append(all, p)
	}
	for i, r := range folded {
		if k := kind(r); k != was {
			cut(i)
			start, was = i, k
		}
	}
	cut(len(folded))
	return all
}

// fold gives the text folded.
func (t *text) fold() string {
	if t.folded == "" {
		t.folded = table.Fold(t.plain)
		t.colour, _ = value.ParseColour(t.code, "")
	}
	return t.folded
}

// has reports whether a piece is one of the text.
func (t *text) has(piece string) bool {
	if t.words == nil {
		t.words = pieces(t.fold())
	}
	return slices.Contains(t.words, piece)
}

// sizes are the sizes of wire that a cell says: all of it, or within a longer text. "" is none.
type sizes struct{ whole, within string }

// sizesOf gives the sizes of a cell of the table in hand.
func (a *auditor) sizesOf(cell string, mark value.Mark) sizes {
	s, ok := a.sizes[cell]
	if !ok {
		if g, is := value.ParseGauge(squareword.Whole(cell), value.BareAWG, mark); is {
			s.whole = g.Size
		}
		s.within = value.SizeWithin(cell, mark)
		a.sizes[cell] = s
	}
	return s
}

// is reports whether a size of a wire is one of those.
func (s sizes) is(of string) bool {
	return s.whole != "" && (s.whole == of || s.whole+"mm2" == of) || s.within != "" && s.within == of
}

// holds reports whether a cell stands in the text of a wire: as it is, as the same value, or piece by piece.
func (t *text) holds(cell string, l *look, size sizes, lang string, known map[string]name.Meaning) bool {
	if size.is(t.size) || stands(t.fold(), l.folded) || t.isColour(cell, lang) {
		return true
	}
	for _, p := range l.pieces {
		if !t.holdsPiece(p, lang, known) {
			return false
		}
	}
	return true
}

// holdsPiece reports whether one piece of a cell stands in the text, or says nothing by itself.
func (t *text) holdsPiece(p, lang string, known map[string]name.Meaning) bool {
	switch f := known[p].Field; {
	case isUnit(p), f == name.FieldPin, f == name.FieldConnector, f == name.FieldWire, t.has(p):
		return true
	}
	return len(p) > 3 && strings.Contains(t.fold(), p) || t.isColour(p, lang)
}

// stands reports whether a folded text stands in another by itself, not as a part of a longer word or number.
func stands(in, text string) bool {
	for from := 0; ; {
		i := strings.Index(in[from:], text)
		if i < 0 {
			return false
		}
		i += from
		end := i + len(text)
		if (i == 0 || !isInWord(in[i-1])) && (end == len(in) || !isInWord(in[end])) {
			return true
		}
		from = i + 1
	}
}

// isInWord reports whether a byte is of a word or a number.
func isInWord(c byte) bool {
	return c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z' || c >= '0' && c <= '9' || c >= 0x80
}

// isColour reports whether a text is the colour of the wire, or one of its colours.
func (t *text) isColour(s, lang string) bool {
	c, ok := value.ParseColour(s, lang)
	if !ok || len(c) == 0 {
		return false
	}
	for _, hue := range c {
		found := false
		for _, have := range t.colour {
			found = found || have.Of == hue.Of
		}
		if !found {
			return false
		}
	}
	return true
}

// isUnit reports whether a word is a unit of sizes, lengths or currents.
func isUnit(w string) bool {
	switch w {
	case "mm", "mm2", "qmm", "awg", "ga", "g", "gauge", "a", "ma", "amp", "amps", "m", "cm", "in", "ft", "sq", "sqmm":
		return true
	}
	return false
}
