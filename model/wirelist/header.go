package wirelist

import (
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

// isKey: a column that a row can hang on.
func isKey(f Field) int {
	if slices.Contains([]Field{FieldWire, FieldFrom, FieldFromPin, FieldTo, FieldToPin, FieldRun, FieldPin}, f) {
		return 1
	}
	return 0
}
