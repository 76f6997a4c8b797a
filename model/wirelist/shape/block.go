package shape

import (
	"slices"
	"strings"
	"unicode"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// Block is a header row and what belongs to it.
type Block struct {
	Table  *table.Table
	Titles []table.Row // above the header
	Head   int         // its line; 0 where the columns have numbers only
	Cols   []Column
	Lang   string
	Mark   value.Mark
	Rows   []table.Row

	Ranges bool            // "10-12" is three cavities, not the name of one
	Named  map[string]bool // cavities that stand alone in a cell
}

// Blocks parts a table at its headers. Rows that belong to none are left over.
func (h Headings) Blocks(t *table.Table) (all []*Block, over []table.Row) {
	mark := value.MarksOf(t)
	if h.Recipe != nil {
		if h.Recipe.Mark != value.MarkUnknown {
			mark = h.Recipe.Mark
		}
		if b := h.numbered(t); b != nil {
			b.Mark = mark
			h.settle(b)
			return []*Block{b}, nil
		}
	}
	var current *Block
	var pending []table.Row
	for _, r := range t.Rows {
		cols, lang, ok := h.headerAt(r)
		switch {
		case ok && current != nil && len(current.Rows) == 0 && len(pending) == 0 && isGroup(current.Cols) && sideless(cols):
			// From and To on one row, connector and pin below each.
			current.Cols, current.Head = h.under(current.Cols, r), r.Line
			if lang != "" {
				current.Lang = lang
			}
		case ok:
			titles := pending
			if current != nil {
				titles = current.giveTitles()
			}
			if current != nil && sameColumns(current.Cols, cols) &&
				(!current.IsPinTable() || !slices.ContainsFunc(titles, func(r table.Row) bool { return !IsSignOff(r) })) {
				current.Rows = append(current.Rows, titles...)
				continue // the header once more, at the head of a page
			}
			current = &Block{Table: t, Titles: titles, Head: r.Line, Cols: cols, Lang: lang, Mark: mark}
			all = append(all, current)
			pending = nil
		case current == nil:
			pending = append(pending, r)
		default:
			current.Rows = append(current.Rows, r)
		}
	}
	for _, b := range all {
		h.settle(b)
	}
	return all, pending
}

func (h Headings) headerAt(r table.Row) ([]Column, string, bool) {
	if h.Recipe != nil && h.Recipe.HeaderRow > 0 {
		if r.Line != h.Recipe.HeaderRow {
			return nil, "", false
		}
		cols, lang, ok := h.header(r)
		if !ok { // a person said so: what is not known is kept
			cols = make([]Column, len(r.Cells))
			for i, cell := range r.Cells {
				cols[i] = Column{Field: name.FieldKeep, Head: cell}
				if m, known := h.mean(cell, &cols[i]); known {
					cols[i].Field = m.Field
				}
			}
			h.sides(cols)
		}
		return cols, lang, true
	}
	return h.header(r)
}

// numbered is the one block of a table whose columns the recipe names by number.
func (h Headings) numbered(t *table.Table) *Block {
	n := 0
	for head := range h.Recipe.Columns {
		n = max(n, columnNumber(head))
	}
	if n == 0 {
		return nil
	}
	b := &Block{Table: t, Head: h.Recipe.HeaderRow, Cols: make([]Column, n)}
	for i := range b.Cols {
		b.Cols[i].Field = name.FieldKeep
	}
	for _, r := range t.Rows {
		switch {
		case r.Line < b.Head:
			b.Titles = append(b.Titles, r)
		case r.Line == b.Head:
			for i, cell := range r.Cells {
				for len(b.Cols) <= i {
					b.Cols = append(b.Cols, Column{Field: name.FieldKeep})
				}
				b.Cols[i].Head = cell
				if m, ok := h.mean(cell, &b.Cols[i]); ok {
					b.Cols[i].Field = m.Field
				}
			}
		default:
			b.Rows = append(b.Rows, r)
		}
	}
	for head, f := range h.Recipe.Columns {
		if k := columnNumber(head); k > 0 {
			b.Cols[k-1].Field = f
		}
	}
	h.sides(b.Cols)
	return b
}

// columnNumber reads "#3" as 3; 0 for a heading.
func columnNumber(head string) int {
	digits, ok := strings.CutPrefix(head, "#")
	if !ok || digits == "" || len(digits) > 3 || strings.Trim(digits, "0123456789") != "" {
		return 0
	}
	n := 0
	for _, d := range []byte(digits) {
		n = 10*n + int(d-'0')
	}
	return n
}

// giveTitles takes the rows of one text off the end of a block: they are the title of
// the next one. A lone short text in a row of cells is a cavity and stays.
func (b *Block) giveTitles() []table.Row {
	alone := func(i int) bool { n, _ := b.Rows[i].Filled(); return n == 1 }
	i := len(b.Rows)
	for i > 0 && IsText(b.Rows[i-1]) {
		i--
	}
	// Behind an empty row even a short text is a title; what stands before the empty
	// row belongs to the table above.
	for k := len(b.Rows) - 1; k > 0 && alone(k); k-- {
		if b.Rows[k].Line > b.Rows[k-1].Line+1 {
			i = k
			break
		}
	}
	titles := slices.Clone(b.Rows[i:])
	b.Rows = b.Rows[:i]
	return titles
}

// IsText is a row that holds one text and no data.
func IsText(r table.Row) bool {
	n, first := r.Filled()
	switch {
	case n != 1:
		return false
	case r.Prose:
		return true
	case len(r.Cells) == 1:
		return len(first) > 3 || strings.Contains(first, " ")
	case len(first) > 3: // a cavity alone is short: "GND", "30", "A 12"
		letters := strings.Count(strings.Map(func(r rune) rune {
			if unicode.IsLetter(r) {
				return 'a'
			}
			return r
		}, first), "a")
		return len(first) > 5 || letters > 3 || letters > 2 && strings.Contains(first, " ")
	}
	return false
}

// isGroup reports whether the columns are a from and a to, and cells between them that nothing names.
func isGroup(cols []Column) bool {
	from := slices.IndexFunc(cols, func(c Column) bool { return c.Field == name.FieldFrom })
	to := slices.IndexFunc(cols, func(c Column) bool { return c.Field == name.FieldTo })
	return from >= 0 && to > from+1 && cols[from+1].Head == ""
}

// sideless reports whether the row itself gives its connectors or pins no side; what sides gave
// them is no heading of the list.
func sideless(cols []Column) bool {
	return !slices.ContainsFunc(cols, func(c Column) bool {
		return (c.Field == name.FieldFrom || c.Field == name.FieldTo) &&
			slices.Contains([]string{"from", "to", "von", "nach", "da", "a", "de", "vers", "desde", "hasta"}, table.Fold(c.Head))
	})
}

// under gives the columns of a second header row the side that the first row says.
func (h Headings) under(groups []Column, r table.Row) []Column {
	second, _, _ := h.header(r)
	raw := make([]Column, len(r.Cells))
	side := name.Field("")
	for i, cell := range r.Cells {
		raw[i] = Column{Field: name.FieldKeep, Head: cell}
		if m, ok := h.mean(cell, &raw[i]); ok {
			raw[i].Field = m.Field
		}
		if i < len(groups) && groups[i].Head != "" {
			side = groups[i].Field
		}
		switch {
		case raw[i].Field == name.FieldConnector && side != "":
			raw[i].Field = side
		case raw[i].Field == name.FieldPin && side == name.FieldFrom:
			raw[i].Field = name.FieldFromPin
		case raw[i].Field == name.FieldPin && side == name.FieldTo:
			raw[i].Field = name.FieldToPin
		case i < len(second) && raw[i].Field == name.FieldNumber:
			raw[i].Field = name.FieldWire
		}
	}
	return raw
}

func sameColumns(a, b []Column) bool {
	return slices.EqualFunc(a, b, func(x, y Column) bool { return x.Head == y.Head && x.Field == y.Field })
}
