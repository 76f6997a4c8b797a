package shape

import (
	"slices"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// What package block asks of a row that may be headings.

// Numbered reports whether the recipe names columns by number: then the sheet is one table.
func (h Headings) Numbered() bool {
	if h.Recipe == nil {
		return false
	}
	for head := range h.Recipe.Columns {
		if columnNumber(head) > 0 {
			return true
		}
	}
	return false
}

// HeadLine is the row that a person said is the headings; 0 where nobody did.
func (h Headings) HeadLine() int {
	if h.Recipe == nil {
		return 0
	}
	return h.Recipe.HeaderRow
}

// MarkOf is how a table writes its decimals: as the recipe says, else as its numbers show.
func (h Headings) MarkOf(t *table.Table) value.Mark {
	if h.Recipe != nil && h.Recipe.Mark != value.MarkUnknown {
		return h.Recipe.Mark
	}
	return value.MarksOf(t)
}

// HeadWords reports whether half of the cells of a row, and one or more, are words of headings: of a list of
// wires, or of another table that stands beside one.
func (h Headings) HeadWords(r table.Row) bool {
	n, known := 0, 0
	for _, c := range r.Cells {
		if c == "" {
			continue
		}
		n++
		var col Column
		if m, ok := h.mean(c, &col); ok && !m.Weak || name.IsOtherHead(c) {
			known++
		}
	}
	return known > 0 && 2*known >= n
}

// KnowsOne reports whether one cell of a row is a heading that is known.
func (h Headings) KnowsOne(r table.Row) bool {
	cols, _, _ := h.meanings(r)
	return slices.ContainsFunc(cols, func(c Column) bool { return c.known && !c.weak })
}

// IsPinGroup reports whether some headings are those of a pin table: a cavity and something about it.
func (h Headings) IsPinGroup(r table.Row) bool {
	cols, _, ok := h.header(r)
	b := Block{Cols: cols}
	return ok && b.Has(name.FieldPin) && b.Has(name.FieldSignal, name.FieldWire, name.FieldTo, name.FieldGauge)
}

// SaysNets reports whether some headings are of cavities or ends, and of a name, a colour or a size besides.
func (h Headings) SaysNets(r table.Row) bool {
	return h.says(r, name.FieldPin, name.FieldFrom, name.FieldTo) && h.says(r, name.FieldSignal, name.FieldColour, name.FieldGauge)
}

// IsPinHead reports whether headings are those of the cavities of a connector.
func (h Headings) IsPinHead(r table.Row) bool {
	cols, _, _ := h.header(r)
	return (&Block{Cols: cols}).IsPinTable()
}

// PinColumn is the column of the cavities of some headings; −1 where none is.
func (h Headings) PinColumn(r table.Row) int {
	cols, _, _ := h.header(r)
	return slices.IndexFunc(cols, func(c Column) bool { return c.Field == name.FieldPin })
}

// HasSides reports whether some heading says from, to, or both.
func (h Headings) HasSides(r table.Row) bool {
	return h.SaysNear(r) || h.says(r, name.FieldTo, name.FieldToPin)
}

// SaysNear reports whether some heading says from, or both.
func (h Headings) SaysNear(r table.Row) bool {
	return h.says(r, name.FieldFrom, name.FieldFromPin, name.FieldRun)
}

func (h Headings) says(r table.Row, fields ...name.Field) bool {
	cols, _, _ := h.meanings(r)
	return (&Block{Cols: cols}).Has(fields...)
}

// IsGroup reports whether a row is a from and a to, and cells between them that nothing names.
func (h Headings) IsGroup(r table.Row) bool {
	cols, _, ok := h.header(r)
	from := slices.IndexFunc(cols, func(c Column) bool { return c.Field == name.FieldFrom })
	to := slices.IndexFunc(cols, func(c Column) bool { return c.Field == name.FieldTo })
	return ok && from >= 0 && to > from+1 && cols[from+1].Head == ""
}

// Sideless reports whether a row itself gives its connectors or pins no side; what sides gives
// them is no heading of the list.
func (h Headings) Sideless(r table.Row) bool {
	cols, _, ok := h.header(r)
	return ok && !slices.ContainsFunc(cols, func(c Column) bool {
		return (c.Field == name.FieldFrom || c.Field == name.FieldTo) &&
			slices.Contains([]string{"from", "to", "von", "nach", "da", "a", "de", "vers", "desde", "hasta"}, table.Fold(c.Head))
	})
}

// IsPinHeading reports whether a heading is a word for the cavities of a connector.
func (h Headings) IsPinHeading(cell string) bool {
	var c Column
	m, ok := h.mean(cell, &c)
	return ok && (m.Field == name.FieldPin || m.Field == name.FieldNumber)
}

// IsPinMirror reports whether the only headings that say an end could be of both sides of one header: what a cavity is connected to.
func (h Headings) IsPinMirror(r table.Row) bool {
	return !h.says(r, name.FieldFrom, name.FieldFromPin, name.FieldToPin)
}
