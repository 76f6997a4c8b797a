package shape

import (
	"maps"
	"slices"
	"strings"

	"contralay/model/wirelist/cable"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/sidehead"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/twoscripts"
	"contralay/model/wirelist/value"
	"contralay/model/wirelist/words"
)

// mean looks one heading up: as it stands in the recipe, then its words, units and
// brackets taken off.
func (h Headings) mean(cell string, c *Column) (name.Meaning, bool) {
	const longest = 60 // no heading is longer
	if colon := strings.IndexByte(cell, ':'); len(cell) > longest || colon > 0 && colon < len(cell)-1 && cell[colon+1] != ' ' {
		return name.Meaning{}, false
	}
	f := table.Fold(cell)
	if h.Recipe != nil {
		for _, key := range slices.Sorted(maps.Keys(h.Recipe.Columns)) {
			if table.Fold(key) == f {
				unitOf(name.Words(f), c)
				c.Given = true
				return name.Meaning{Field: h.Recipe.Columns[key]}, true
			}
		}
	}
	all := name.Words(f)
	if m, ok := h.Words[strings.Join(all, " ")]; ok {
		unitOf(all, c)
		return m, true
	}
	if short := words.ShortHead(f); short != "" {
		return name.Meaning{Field: short}, true
	}
	bare := all
	if without := name.WithoutBrackets(f); without != f {
		bare = name.Words(without)
	}
	unitOf(all, c)
	if isAmps(all) {
		return name.Meaning{Field: name.FieldCurrent}, true
	}
	if h.sizeAndColour(all) {
		return name.Meaning{Field: name.FieldGauge}, true
	}
	if f, ok := h.unitSays(all); ok {
		return name.Meaning{Field: f}, true
	}
	if m, ok := h.inBrackets(f); ok {
		return m, true
	}
	for _, try := range [][]string{bare, withoutUnit(bare)} {
		if m, ok := h.Words[strings.Join(try, " ")]; ok {
			return m, true
		}
		if len(try) > 1 {
			switch try[0] {
			case "wire", "cut", "max", "nominal", "nom", "total", "est", "conductor", "cond", "core", "insulation":
				if m, ok := h.Words[strings.Join(try[1:], " ")]; ok && !m.Weak {
					return m, true
				}
			}
			if m, ok := h.twoSided(try); ok {
				return m, true
			}
		}
	}
	for _, asked := range words.NumberOf(bare) {
		if m, ok := h.Words[asked]; ok && !m.Weak {
			return m, true
		}
	}
	if f, ok := words.SaysInWords(bare); ok {
		return name.Meaning{Field: f}, true
	}
	if cable.Heads(bare) {
		return name.Meaning{Field: name.FieldCable}, true
	}
	if m, ok := h.eitherWord(cell, c); ok {
		return m, true
	}
	if m, ok := words.Short(f); ok {
		unitOf([]string{map[name.Field]string{name.FieldGauge: "querschnitt"}[m.Field]}, c)
		return m, true
	}
	if parted := words.Parted(cell); parted != cell {
		return h.mean(parted, c)
	}
	return h.lastWords(bare)
}

// eitherWord reads a heading in two languages, "Ader/Wire", where both say the same, and one in two scripts, "線色 Color".
func (h Headings) eitherWord(cell string, c *Column) (name.Meaning, bool) {
	if front, back, ok := twoscripts.Part(cell); ok {
		a, known := h.mean(front, c)
		b, also := h.mean(back, c)
		if !also {
			b = a
		}
		return b, (known || also) && (!known || !also || a.Field == b.Field)
	}
	first, second, ok := strings.Cut(cell, "/")
	if !ok {
		return name.Meaning{}, false
	}
	a, known := h.mean(strings.TrimSpace(first), c)
	b, also := h.mean(strings.TrimSpace(second), c)
	if a.Field == name.FieldNumber && b.Field == name.FieldWire { // "Ref / Wire no."
		a = b
	}
	same := a.Field == b.Field || a.Field == name.FieldWire && b.Field == name.FieldNumber
	return a, known && also && same && !strings.Contains(second, "/")
}

// inBrackets reads what stands in the brackets of a heading as its meaning, where that is a value of a
// wire, "To (Color)", or the cavity of a side, "Start (pin)".
func (h Headings) inBrackets(folded string) (name.Meaning, bool) {
	front, in, opened := strings.Cut(folded, "(")
	in, _, closed := strings.Cut(in, ")")
	if !opened || !closed {
		return name.Meaning{}, false
	}
	side := h.Words[strings.Join(name.Words(front), " ")].Field
	if m, ok := h.Words[strings.Join(name.Words(in), " ")]; ok {
		switch {
		case side == name.FieldFrom && m.Field == name.FieldPin:
			return name.Meaning{Field: name.FieldFromPin}, true
		case side == name.FieldTo && m.Field == name.FieldPin:
			return name.Meaning{Field: name.FieldToPin}, true
		}
		switch m.Field {
		case name.FieldColour, name.FieldGauge, name.FieldLength, name.FieldSpec:
			return m, true
		}
	}
	return name.Meaning{}, false
}

// lastWords reads a heading that ends with a value of a wire by its end: "Kestrel wire colour". What is
// the colour or the size of something else than a wire is none.
func (h Headings) lastWords(all []string) (name.Meaning, bool) {
	for from := 1; from < len(all); from++ {
		m, ok := h.Words[strings.Join(all[from:], " ")]
		if !ok {
			continue
		}
		switch m.Field {
		case name.FieldColour, name.FieldGauge, name.FieldLength, name.FieldCurrent, name.FieldNote, name.FieldStripe:
		case name.FieldSignal:
			if all[from-1] != "side" {
				continue
			}
		case name.FieldFrom, name.FieldTo:
			if len(all) == 2 && !m.Weak && !sidehead.IsFitting(all[0]) { // "Positive from", and not "Cosse depart"
				return m, true
			}
			continue
		default:
			continue
		}
		for i, w := range all[:from] {
			if i+1 < from && all[i+1] == "side" {
				continue // "loom side colour"
			}
			if _, colour := value.ParseColour(w, ""); strings.ContainsAny(w, "0123456789") || colour && len(w) > 2 {
				return name.Meaning{}, false // "14 AWG" and "blue w/ red stripe" are values
			}
			switch w {
			case "contact", "pin", "terminal", "socket":
				if m.Field == name.FieldGauge {
					return name.Meaning{Field: name.FieldContact}, true
				}
				return name.Meaning{}, false
			case "fuse", "relay", "cap", "breaker", "seal", "housing", "connector", "plug", "boot", "heat", "shrink",
				"sleeve", "label", "led", "lamp", "button", "part",
				"hole",
				"bolt", "screw", "stud", "lug", "loom", "conduit", "tape", "drill", "sheath", "jacket", "file", "paper", "bundle":
				return name.Meaning{}, false
			}
		}
		return m, true
	}
	return name.Meaning{}, false
}

// sizeAndColour reports whether a heading names both, "Colour/Size", "Wire gauge & color".
func (h Headings) sizeAndColour(all []string) bool {
	size, colour := false, false
	for _, w := range all {
		switch f := h.Words[w].Field; {
		case f == name.FieldGauge:
			size = true
		case f == name.FieldColour:
			colour = true
		case w != "wire" && w != "and" && w != "und" && w != "et" && w != "y" && w != "e":
			return false
		}
	}
	return size && colour
}

// isAmps reports whether a heading of two words or more is nothing but a current: "Max A", "I
// max [A]".
func isAmps(all []string) bool {
	amps := false
	for _, w := range all {
		switch w {
		case "a", "ma", "amp", "amps", "imax", "current":
			amps = true
		case "i", "max", "min", "peak", "load", "rated", "rating", "nom", "nominal", "cont", "continuous", "inrush", "steady", "typ", "avg",
			"average", "full", "est", "strom":
		default:
			return false
		}
	}
	return amps && len(all) > 1
}

// twoSided reads a heading of a side and a thing: "von pin", "connector from", "to
// terminal", "pin 2", "broche depart".
func (h Headings) twoSided(try []string) (name.Meaning, bool) {
	if len(try) != 2 {
		return name.Meaning{}, false
	}
	for i, word := range try {
		other := h.Words[try[1-i]]
		side := h.Words[word].Field
		switch word {
		case "a", "1":
			side = name.FieldFrom
		case "b", "2":
			side = name.FieldTo
		}
		switch {
		case side == name.FieldFrom && other.Field == name.FieldPin:
			return name.Meaning{Field: name.FieldFromPin, Lang: other.Lang}, true
		case side == name.FieldTo && other.Field == name.FieldPin:
			return name.Meaning{Field: name.FieldToPin, Lang: other.Lang}, true
		case (side == name.FieldFrom || side == name.FieldTo) && other.Field == name.FieldConnector:
			return name.Meaning{Field: side, Lang: other.Lang}, true
		}
	}
	return name.Meaning{}, false
}

// withoutUnit takes the unit off the end of a heading.
func withoutUnit(all []string) []string {
	if n := len(all); n > 1 {
		switch last := all[n-1]; {
		case value.LengthWord(last) != "", last == "a", last == "ma", last == "mm2", last == "mmq", last == "qmm", last == "sqmm",
			last == "awg", last == "amps", last == "v":
			return all[:n-1]
		case last == "no" || last == "nr" || last == "number" || last == "id":
			return all[:n-1]
		}
	}
	return all
}

// isSection reports whether a word of a heading is a cross section in a language whose lists give mm².
func isSection(w string) bool {
	switch w {
	case "csa", "querschnitt", "leiterquerschnitt", "aderquerschnitt", "area", "ledararea", "przekroj", "prurez", "doorsnede",
		"draaddoorsnede",
		"keresztmetszet", "poikkipinta", "tverrsnitt", "tvaersnit", "kesit", "sectiune", "seccao", "secao", "sezione", "seccion", "сечение":
		return true
	}
	return false
}

// isSquare reports whether a word makes millimetres a cross section, "Sq mm".
func isSquare(w string) bool { return w == "sq" || w == "square" }

// unitOf takes in what a heading says about its numbers.
func unitOf(all []string, c *Column) {
	for i, w := range all {
		if i > 0 && (w == "mm" && isSquare(all[i-1]) || isSquare(w) && all[i-1] == "mm") {
			c.Bare, c.Said = value.BareMM2, true
			continue
		}
		if w == "mm2" || w == "qmm" || w == "mmq" || w == "sqmm" {
			c.Bare, c.Said = value.BareMM2, true
		}
		if isSection(w) {
			c.Bare, c.Section = value.BareMM2, true
		}
		if w == "awg" || w == "gauge" || w == "jauge" {
			c.Bare, c.Said = value.BareAWG, true
		}
		if i > 0 || len(all) == 1 {
			c.Milli = c.Milli || w == "ma"
			if u := value.LengthWord(w); u != "" && i > 0 {
				c.Unit = u
			}
		}
	}
}
