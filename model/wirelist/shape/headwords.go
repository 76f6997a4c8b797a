package shape

import (
	"maps"
	"slices"
	"strings"

	wirelistname "contralay/model/wirelist/name"
	"contralay/model/wirelist/value"
)

// mean looks one heading up: as it stands in the recipe, then its words, units and
// brackets taken off.
func (h Headings) mean(cell string, c *column) (wirelistname.Meaning, bool) {
	const longest = 60 // no heading is longer
	if len(cell) > longest {
		return wirelistname.Meaning{}, false
	}
	f := value.Fold(cell)
	if h.Recipe != nil {
		for _, name := range slices.Sorted(maps.Keys(h.Recipe.Columns)) {
			if value.Fold(name) == f {
				unitOf(wirelistname.Words(f), c)
				return wirelistname.Meaning{Field: h.Recipe.Columns[name]}, true
			}
		}
	}
	all := wirelistname.Words(f)
	if m, ok := h.Words[strings.Join(all, " ")]; ok {
		unitOf(all, c)
		return m, true
	}
	bare := wirelistname.Words(withoutBrackets(f))
	unitOf(all, c)
	if isAmps(all) {
		return wirelistname.Meaning{Field: wirelistname.FieldCurrent}, true
	}
	if h.sizeAndColour(all) {
		return wirelistname.Meaning{Field: wirelistname.FieldGauge}, true
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
	if isCableHeading(bare) {
		return wirelistname.Meaning{Field: wirelistname.FieldCable}, true
	}
	return wirelistname.Meaning{}, false
}

// sizeAndColour: a heading that names both, "Colour/Size", "Wire gauge & color".
func (h Headings) sizeAndColour(all []string) bool {
	size, colour := false, false
	for _, w := range all {
		switch f := h.Words[w].Field; {
		case f == wirelistname.FieldGauge:
			size = true
		case f == wirelistname.FieldColour:
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
		case "i", "max", "min", "peak", "load", "rated", "rating", "nom", "nominal", "cont", "continuous", "inrush", "steady", "typ", "avg",
			"average", "full", "est", "strom":
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
		var g value.Gauge
		switch {
		case w == "cable" || w == "group" || w == "no" || w == "nr" || w == "id" || w == "ref" || w == "with" || w == "type" || w == "or" ||
			w == "and":
		case value.IsLetter(w[0]) && g.Cable(w):
			is = is || value.IsCable(g)
		default:
			return false
		}
	}
	return is
}

// twoSided reads a heading of a side and a thing: "von pin", "connector from", "to
// terminal", "pin 2", "broche depart".
func (h Headings) twoSided(try []string) (wirelistname.Meaning, bool) {
	if len(try) != 2 {
		return wirelistname.Meaning{}, false
	}
	for i, word := range try {
		other := h.Words[try[1-i]]
		side := h.Words[word].Field
		switch word {
		case "a", "1":
			side = wirelistname.FieldFrom
		case "b", "2":
			side = wirelistname.FieldTo
		}
		switch {
		case side == wirelistname.FieldFrom && other.Field == wirelistname.FieldPin:
			return wirelistname.Meaning{Field: wirelistname.FieldFromPin, Lang: other.Lang}, true
		case side == wirelistname.FieldTo && other.Field == wirelistname.FieldPin:
			return wirelistname.Meaning{Field: wirelistname.FieldToPin, Lang: other.Lang}, true
		case (side == wirelistname.FieldFrom || side == wirelistname.FieldTo) && other.Field == wirelistname.FieldConnector:
			return wirelistname.Meaning{Field: side, Lang: other.Lang}, true
		}
	}
	return wirelistname.Meaning{}, false
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
		case value.LengthWord(last) != "", last == "a", last == "ma", last == "mm2", last == "awg", last == "amps", last == "v":
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
			c.Bare, c.Said = value.BareMM2, true
		}
		if w == "csa" || w == "querschnitt" {
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
