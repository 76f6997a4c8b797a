package wirelist

import (
	"maps"
	"slices"
	"strings"
)

// mean looks one heading up: as it stands in the recipe, then its words, units and
// brackets taken off.
func (h headings) mean(cell string, c *column) (meaning, bool) {
	const longest = 60 // no heading is longer
	if len(cell) > longest {
		return meaning{}, false
	}
	f := fold(cell)
	if h.recipe != nil {
		for _, name := range slices.Sorted(maps.Keys(h.recipe.Columns)) {
			if fold(name) == f {
				unitOf(words(f), c)
				return meaning{field: h.recipe.Columns[name]}, true
			}
		}
	}
	all := words(f)
	if m, ok := h.words[strings.Join(all, " ")]; ok {
		unitOf(all, c)
		return m, true
	}
	bare := words(withoutBrackets(f))
	unitOf(all, c)
	if isAmps(all) {
		return meaning{field: FieldCurrent}, true
	}
	if h.sizeAndColour(all) {
		return meaning{field: FieldGauge}, true
	}
	for _, try := range [][]string{bare, withoutUnit(bare)} {
		if m, ok := h.words[strings.Join(try, " ")]; ok {
			return m, true
		}
		if len(try) > 1 {
			switch try[0] {
			case "wire", "cut", "max", "nominal", "nom", "total", "est", "conductor", "cond", "core", "insulation":
				if m, ok := h.words[strings.Join(try[1:], " ")]; ok && !m.weak {
					return m, true
				}
			}
			if m, ok := h.twoSided(try); ok {
				return m, true
			}
		}
	}
	if isCableHeading(bare) {
		return meaning{field: FieldCable}, true
	}
	return meaning{}, false
}

// sizeAndColour: a heading that names both, "Colour/Size", "Wire gauge & color".
func (h headings) sizeAndColour(all []string) bool {
	size, colour := false, false
	for _, w := range all {
		switch f := h.words[w].field; {
		case f == FieldGauge:
			size = true
		case f == FieldColour:
			colour = true
		case w != "wire" && w != "and" && w != "und" && w != "et" && w != "y" && w != "e":
			return false
		}
	}
	return size && colour
}

// isAmps: a heading of two words or more that is nothing but a current: "Max A", "I max [A]".
func isAmps(all []string) bool {
	amps := false
	for _, w := range all {
		switch w {
		case "a", "ma", "amp", "amps", "imax", "current":
			amps = true
		case "i", "max", "min", "peak", "load", "rated", "rating", "nom", "nominal", "cont", "continuous", "inrush", "steady", "typ", "avg", "average", "full", "est", "strom":
		default:
			return false
		}
	}
	return amps && len(all) > 1
}

// isCableHeading: nothing but words about cables: "Twist/Shield", "Twisted pair", "Shield ID".
func isCableHeading(all []string) bool {
	is := false
	for _, w := range all {
		var g Gauge
		switch {
		case w == "cable" || w == "group" || w == "no" || w == "nr" || w == "id" || w == "ref" || w == "with" || w == "type" || w == "or" || w == "and":
		case isLetter(w[0]) && g.cable(w):
			is = is || isCable(g)
		default:
			return false
		}
	}
	return is
}

// twoSided reads a heading of a side and a thing: "von pin", "connector from", "to
// terminal", "pin 2", "broche depart".
func (h headings) twoSided(try []string) (meaning, bool) {
	if len(try) != 2 {
		return meaning{}, false
	}
	for i, word := range try {
		other := h.words[try[1-i]]
		side := h.words[word].field
		switch word {
		case "a", "1":
			side = FieldFrom
		case "b", "2":
			side = FieldTo
		}
		switch {
		case side == FieldFrom && other.field == FieldPin:
			return meaning{field: FieldFromPin, lang: other.lang}, true
		case side == FieldTo && other.field == FieldPin:
			return meaning{field: FieldToPin, lang: other.lang}, true
		case (side == FieldFrom || side == FieldTo) && other.field == FieldConnector:
			return meaning{field: side, lang: other.lang}, true
		}
	}
	return meaning{}, false
}

// words parts a heading into words of letters and digits, "#" and marks left out.
func words(s string) []string {
	s = strings.ReplaceAll(strings.ReplaceAll(s, "²", "2"), "mm^2", "mm2")
	if strings.Trim(s, " .:") == "#" {
		return []string{"#"}
	}
	if s == "p/n" {
		return []string{"p/n"}
	}
	return strings.FieldsFunc(s, func(r rune) bool { return !(r < 0x80 && (isLetter(byte(r)) || isDigit(byte(r)))) })
}

func withoutBrackets(s string) string {
	for _, pair := range []string{"()", "[]"} {
		if i := strings.IndexByte(s, pair[0]); i > 0 {
			if j := strings.IndexByte(s[i:], pair[1]); j > 0 {
				s = s[:i] + s[i+j+1:]
			}
		}
	}
	return s
}

// withoutUnit takes the unit off the end of a heading.
func withoutUnit(all []string) []string {
	if n := len(all); n > 1 {
		switch last := all[n-1]; {
		case lengthWord(last) != "", last == "a", last == "ma", last == "mm2", last == "awg", last == "amps", last == "v":
			return all[:n-1]
		case last == "no" || last == "nr" || last == "number" || last == "id":
			return all[:n-1]
		}
	}
	return all
}

// unitOf takes in what a heading says about its numbers.
func unitOf(all []string, c *column) {
	for i, w := range all {
		if w == "mm2" || w == "qmm" {
			c.bare, c.said = BareMM2, true
		}
		if w == "csa" || w == "querschnitt" {
			c.bare, c.section = BareMM2, true
		}
		if w == "awg" || w == "gauge" || w == "jauge" {
			c.bare, c.said = BareAWG, true
		}
		if i > 0 || len(all) == 1 {
			c.milli = c.milli || w == "ma"
			if u := lengthWord(w); u != "" && i > 0 {
				c.unit = u
			}
		}
	}
}
