package wirelist

import (
	"maps"
	"slices"
	"strings"
)

// column is one column of a block.
type column struct {
	field   Field
	of      string     // the device that its heading names, "ECU" of "ECU pin"; "" where it names none
	head    string     // its heading as it stands in the list
	unit    LengthUnit // that its heading states
	milli   bool       // its heading states mA
	bare    Bare       // how a whole number in a gauge column is read
	said    bool       // its heading says so
	section bool       // its heading says that it is a cross section, in no unit
	whole   bool       // some size is a number alone
	sizes   bool       // it is headed as wires and holds sizes

	measured int // the column of its unit; 0 where there is none

	running bool // it is taken for the number of the row
	spared  bool // its heading is known, and nothing here takes what it says
	several bool // of a connector: it names the device, the next column which of its plugs
}

// at is how a finding names the column.
func at(cols []column, i int) string {
	if i < len(cols) && cols[i].head != "" {
		return cols[i].head
	}
	return columnLetter(i)
}

// reader knows the headings.
type headings struct {
	words  map[string]meaning
	recipe *Recipe
}

// header reads a row as headings. ok is false where it is none: fewer than two cells
// with a known meaning, fewer than half of those that are filled, or none that a wire
// could hang on. Words of one or two letters, which could be cavities, count only
// beside two others, or as a from and a to.
func (h headings) header(r Row) (cols []column, lang string, ok bool) {
	if h.recipe == nil && hasNumber(r) {
		return nil, "", false
	}
	filled, strong, keys := 0, 0, 0
	votes := map[string]int{}
	cols = make([]column, len(r.Cells))
	weak := map[Field]bool{}
	for i, cell := range r.Cells {
		c := column{field: FieldKeep, head: cell}
		if cell == "" {
			cols[i] = c
			continue
		}
		filled++
		m, known := h.mean(cell, &c)
		if known {
			c.field = m.field
			if m.weak {
				weak[m.field] = true
			} else {
				strong++
				keys += isKey(m.field)
			}
			if m.lang != "" {
				votes[m.lang]++
			}
		}
		cols[i] = c
	}
	if h.devicePins(cols) {
		strong, keys = strong+2, keys+1
	}
	if weak[FieldFrom] && weak[FieldTo] {
		strong, keys = strong+2, keys+1
	}
	if strong < 2 || keys == 0 && !weak[fieldNumber] || 2*(strong+len(weak)) < filled {
		return nil, "", false
	}
	for l, n := range votes {
		if lang == "" || n > votes[lang] || n == votes[lang] && l < lang {
			lang = l
		}
	}
	h.sides(cols)
	return cols, lang, true
}

// hasNumber: a cell is a number alone, which no heading is. It spares most rows the
// looking up.
func hasNumber(r Row) bool {
	return slices.ContainsFunc(r.Cells, func(c string) bool { return c != "" && strings.Trim(c, "0123456789.,") == "" })
}

// devicePins settles two headings "ECU pin" and "Sensor pin" of a row that names no
// other ends: the wires run from the one device to the other.
func (h headings) devicePins(cols []column) bool {
	var of []int
	for i, c := range cols {
		w := words(fold(c.head))
		switch {
		case c.field == FieldKeep && len(w) > 1 && h.words[w[len(w)-1]].field == FieldPin:
			of = append(of, i)
		case c.field == FieldFrom || c.field == FieldTo || c.field == FieldPin || c.field == FieldFromPin || c.field == FieldToPin || c.field == FieldConnector:
			return false
		}
	}
	if len(of) != 2 {
		return false
	}
	for k, i := range of {
		cols[i].field = []Field{FieldFromPin, FieldToPin}[k]
		cols[i].of = cols[i].head
		if cut := strings.LastIndexAny(cols[i].head, " -_/."); cut > 0 {
			cols[i].of = strings.TrimRight(cols[i].head[:cut], " -_/.")
		}
	}
	return true
}

// isKey: a column that a row can hang on.
func isKey(f Field) int {
	if slices.Contains([]Field{FieldWire, FieldFrom, FieldFromPin, FieldTo, FieldToPin, FieldRun, FieldPin}, f) {
		return 1
	}
	return 0
}

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

// sides settles what one heading alone does not say: of two headings "pin" the one
// behind "from" is its, a "No." is the wire's id in a from-to list and the pin in a
// table that has no other.
func (h headings) sides(cols []column) {
	has := func(f Field) bool { return slices.ContainsFunc(cols, func(c column) bool { return c.field == f }) }
	ends := has(FieldFrom) || has(FieldTo) || has(FieldFromPin) || has(FieldRun)
	h.italian(cols)
	side, seen := Field(""), map[Field]int{}
	for i := range cols {
		f := cols[i].field
		switch {
		case f == FieldFrom || f == FieldTo:
			side = f
		case f == FieldPin && ends && side == FieldFrom && !has(FieldFromPin):
			cols[i].field = FieldFromPin
		case f == FieldPin && ends && side == FieldTo && !has(FieldToPin):
			cols[i].field = FieldToPin
		case f == fieldNumber && (ends || has(FieldPin)):
			another := has(FieldWire)
			cols[i].field = FieldWire
			if another || !ends {
				cols[i].field, cols[i].running = FieldIgnore, true // a running number beside ids or pins
			}
		case f == fieldNumber:
			cols[i].field = FieldPin
		}
		seen[cols[i].field]++
	}
	for i := 1; i < len(cols); i++ {
		switch before := cols[i-1].field; before {
		case FieldLength, FieldGauge, FieldCurrent:
			if cols[i].field == FieldUnit || isUnitHeading(cols[i].head) && !h.given(cols[i].head, i) {
				cols[i].field, cols[i-1].measured = FieldUnit, i
			}
		}
	}
	if has(FieldPin) && has(FieldFrom) && !has(FieldTo) && !has(FieldToPin) {
		// A pin table that says where its wires come from.
		for i := range cols {
			switch cols[i].field {
			case FieldFrom:
				cols[i].field = FieldTo
			case FieldFromPin:
				cols[i].field = FieldToPin
			}
		}
	}
	if ends || seen[FieldConnector] < 2 && seen[FieldPin] < 2 {
		return
	}
	if seen[FieldConnector] > 2 && seen[FieldPin] == 2 {
		// Device, plug, pin, and the same of the other end.
		behind := false
		for i := range cols {
			switch f := cols[i].field; {
			case f == FieldConnector && !behind:
				cols[i].field = FieldFrom
			case f == FieldConnector:
				cols[i].field = FieldTo
			case f == FieldPin && !behind:
				cols[i].field, behind = FieldFromPin, true
			case f == FieldPin:
				cols[i].field = FieldToPin
			}
		}
		return
	}
	// Connector, pin, connector, pin: the first of each is the from side.
	nth := map[Field]int{}
	for i := range cols {
		f := cols[i].field
		nth[f]++
		switch {
		case f == FieldConnector && nth[f] == 1 && seen[f] == 2:
			cols[i].field = FieldFrom
		case f == FieldConnector && nth[f] == 2:
			cols[i].field = FieldTo
		case f == FieldPin && nth[f] == 1 && seen[FieldConnector] == 2:
			cols[i].field = FieldFromPin
		case f == FieldPin && nth[f] == 2 && seen[FieldConnector] == 2:
			cols[i].field = FieldToPin
		}
	}
}

// italian settles the one word "a": it is "to" where another heading says "from" and none
// "to", ampere where there is one, and in "A connettore" beside "Da connettore" no side A.
func (h headings) italian(cols []column) {
	from, to := false, false
	for _, c := range cols {
		switch f := fold(c.head); {
		case f == "a" || strings.HasPrefix(f, "a "):
		case c.field == FieldFrom || c.field == FieldFromPin:
			from = true
		case c.field == FieldTo || c.field == FieldToPin:
			to = true
		}
	}
	for i, c := range cols {
		f := fold(c.head)
		switch {
		case h.given(c.head, i):
		case f == "a" && c.field == FieldTo && to:
			cols[i].field = FieldCurrent
		case strings.HasPrefix(f, "a ") && from && !to && c.field == FieldFrom:
			cols[i].field = FieldTo
		case strings.HasPrefix(f, "a ") && from && !to && c.field == FieldFromPin:
			cols[i].field = FieldToPin
		}
	}
}

// isUnitHeading: a column of units, behind one of values.
func isUnitHeading(head string) bool {
	switch strings.Join(words(fold(head)), " ") {
	case "unit", "units", "uom", "unit of measure", "einheit", "unite", "unidad", "unita", "u m", "um":
		return true
	}
	return false
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
