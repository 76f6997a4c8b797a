package wirelist

import (
	"slices"
	"strings"
	"unicode"
)

// block is a header row and what belongs to it.
type block struct {
	table  *Table
	titles []Row // above the header
	head   int   // its line; 0 where the columns have numbers only
	cols   []column
	lang   string
	mark   Mark
	rows   []Row

	ranges bool            // "10-12" is three cavities, not the name of one
	named  map[string]bool // cavities that stand alone in a cell
}

// blocks parts a table at its headers. Rows that belong to none are left over.
func (h headings) blocks(t *Table) (all []*block, over []Row) {
	mark := marksOf(t)
	if h.recipe != nil {
		if h.recipe.Mark != MarkUnknown {
			mark = h.recipe.Mark
		}
		if b := h.numbered(t); b != nil {
			b.mark = mark
			h.settle(b)
			return []*block{b}, nil
		}
	}
	var current *block
	var pending []Row
	for _, r := range t.Rows {
		cols, lang, ok := h.headerAt(r)
		switch {
		case ok && current != nil && len(current.rows) == 0 && len(pending) == 0 && isGroup(current.cols) && sideless(cols):
			// From and To on one row, connector and pin below each.
			current.cols, current.head = h.under(current.cols, r), r.Line
			if lang != "" {
				current.lang = lang
			}
		case ok:
			titles := pending
			if current != nil {
				titles = current.giveTitles()
			}
			if current != nil && sameColumns(current.cols, cols) && (!current.isPinTable() || !slices.ContainsFunc(titles, func(r Row) bool { return !isSignOff(r) })) {
				current.rows = append(current.rows, titles...)
				continue // the header once more, at the head of a page
			}
			current = &block{table: t, titles: titles, head: r.Line, cols: cols, lang: lang, mark: mark}
			all = append(all, current)
			pending = nil
		case current == nil:
			pending = append(pending, r)
		default:
			current.rows = append(current.rows, r)
		}
	}
	for _, b := range all {
		h.settle(b)
	}
	return all, pending
}

func (h headings) headerAt(r Row) ([]column, string, bool) {
	if h.recipe != nil && h.recipe.HeaderRow > 0 {
		if r.Line != h.recipe.HeaderRow {
			return nil, "", false
		}
		cols, lang, ok := h.header(r)
		if !ok { // a person said so: what is not known is kept
			cols = make([]column, len(r.Cells))
			for i, cell := range r.Cells {
				cols[i] = column{field: FieldKeep, head: cell}
				if m, known := h.mean(cell, &cols[i]); known {
					cols[i].field = m.field
				}
			}
			h.sides(cols)
		}
		return cols, lang, true
	}
	return h.header(r)
}

// numbered is the one block of a table whose columns the recipe names by number.
func (h headings) numbered(t *Table) *block {
	n := 0
	for head := range h.recipe.Columns {
		n = max(n, columnNumber(head))
	}
	if n == 0 {
		return nil
	}
	b := &block{table: t, head: h.recipe.HeaderRow, cols: make([]column, n)}
	for i := range b.cols {
		b.cols[i].field = FieldKeep
	}
	for _, r := range t.Rows {
		switch {
		case r.Line < b.head:
			b.titles = append(b.titles, r)
		case r.Line == b.head:
			for i, cell := range r.Cells {
				for len(b.cols) <= i {
					b.cols = append(b.cols, column{field: FieldKeep})
				}
				b.cols[i].head = cell
				if m, ok := h.mean(cell, &b.cols[i]); ok {
					b.cols[i].field = m.field
				}
			}
		default:
			b.rows = append(b.rows, r)
		}
	}
	for head, f := range h.recipe.Columns {
		if k := columnNumber(head); k > 0 {
			b.cols[k-1].field = f
		}
	}
	h.sides(b.cols)
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
func (b *block) giveTitles() []Row {
	alone := func(i int) bool { n, _ := b.rows[i].Filled(); return n == 1 }
	i := len(b.rows)
	for i > 0 && isText(b.rows[i-1]) {
		i--
	}
	// Behind an empty row even a short text is a title; what stands before the empty
	// row belongs to the table above.
	for k := len(b.rows) - 1; k > 0 && alone(k); k-- {
		if b.rows[k].Line > b.rows[k-1].Line+1 {
			i = k
			break
		}
	}
	titles := slices.Clone(b.rows[i:])
	b.rows = b.rows[:i]
	return titles
}

// isText is a row that holds one text and no data.
func isText(r Row) bool {
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

// isGroup: a from and a to, and cells between them that nothing names.
func isGroup(cols []column) bool {
	from := slices.IndexFunc(cols, func(c column) bool { return c.field == FieldFrom })
	to := slices.IndexFunc(cols, func(c column) bool { return c.field == FieldTo })
	return from >= 0 && to > from+1 && cols[from+1].head == ""
}

// sideless: connectors or pins that the row itself gives no side; what sides gave
// them is no heading of the list.
func sideless(cols []column) bool {
	return !slices.ContainsFunc(cols, func(c column) bool {
		return (c.field == FieldFrom || c.field == FieldTo) && slices.Contains([]string{"from", "to", "von", "nach", "da", "a", "de", "vers", "desde", "hasta"}, fold(c.head))
	})
}

// under gives the columns of a second header row the side that the first row says.
func (h headings) under(groups []column, r Row) []column {
	second, _, _ := h.header(r)
	raw := make([]column, len(r.Cells))
	side := Field("")
	for i, cell := range r.Cells {
		raw[i] = column{field: FieldKeep, head: cell}
		if m, ok := h.mean(cell, &raw[i]); ok {
			raw[i].field = m.field
		}
		if i < len(groups) && groups[i].head != "" {
			side = groups[i].field
		}
		switch {
		case raw[i].field == FieldConnector && side != "":
			raw[i].field = side
		case raw[i].field == FieldPin && side == FieldFrom:
			raw[i].field = FieldFromPin
		case raw[i].field == FieldPin && side == FieldTo:
			raw[i].field = FieldToPin
		case i < len(second) && raw[i].field == fieldNumber:
			raw[i].field = FieldWire
		}
	}
	return raw
}

func sameColumns(a, b []column) bool {
	return slices.EqualFunc(a, b, func(x, y column) bool { return x.head == y.head && x.field == y.field })
}
