package settle

import (
	"slices"

	"contralay/model/wirelist/block"
	"contralay/model/wirelist/bothends"
	"contralay/model/wirelist/column"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/prose"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/signoff"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// Look is a block as it is looked at.
type Look struct {
	Heads shape.Headings
	Src   *block.Block
	Cols  []shape.Column // by headings and cells, none of them given a side
	Lang  string
	Mark  value.Mark
	Prof  []column.Profile
	Known int         // columns whose heading is known
	Units int         // the row below the headings that gives their units; 0 where there is none
	paper []table.Row // what stands about the paper below the last of the rows; Src does not hold it
}

// At takes a block in.
func At(h shape.Headings, b block.Block) *Look {
	l := &Look{Heads: h, Src: &b}
	l.Mark = b.Mark
	b.Rows, l.paper = signoff.PartPaper(b.Rows)
	wide := 0
	for _, r := range b.Rows {
		wide = max(wide, len(r.Cells))
	}
	l.Cols, l.Lang = h.Columns(b.Head, wide)
	if len(b.Rows) > 1 && len(b.Head) > 0 && h.TakeUnits(l.Cols, b.Rows[0]) {
		l.Units, b.Rows = b.Rows[0].Line, b.Rows[1:]
	}
	if len(b.Rows) > 1 && len(b.Head) > 0 && column.IsAside(b.Rows[0]) {
		b.Rows = b.Rows[1:]
	}
	for i := range l.Cols {
		l.Prof = append(l.Prof, column.Of(b.Rows, i, l.Lang, l.Mark, h.Colours))
		if l.Cols[i].Known() {
			l.Known++
		}
	}
	l.withoutWeak()
	l.settle()
	return l
}

// withoutWeak takes the meaning off a from or a to of one or two letters that has no other side: "OD" is Polish for from,
// and the outer diameter of a bundle.
func (l *Look) withoutWeak() {
	from := l.Has(l.Cols, name.FieldFrom, name.FieldFromPin)
	to := l.Has(l.Cols, name.FieldTo, name.FieldToPin)
	for i := range l.Cols {
		c := &l.Cols[i]
		if c.Weak() && !c.Given && (c.Field == name.FieldFrom && !to || c.Field == name.FieldTo && !from) {
			c.Field = name.FieldKeep
		}
	}
}

// Block is the block with some columns.
func (l *Look) Block(cols []shape.Column) *shape.Block {
	b := &shape.Block{Table: l.Src.Table, Titles: l.Src.Titles, Cols: cols, Lang: l.Lang, Mark: l.Mark, Rows: l.rows(),
		Listed: l.Src.Listed, Nodes: l.Src.Nodes, Path: l.Src.Path,
		Called: l.called(), Units: l.Units}
	if slices.ContainsFunc(cols, func(c shape.Column) bool { return c.Alone }) {
		b.Plug = bothends.NearOfColours(cols, l.Src.Path, l.Src.Titles, l.Plug())
	}
	if n := len(l.Src.Head); n > 0 {
		b.Head = l.Src.Head[n-1].Line
	}
	return b
}

// rows are those of the block, what stands about the paper among them.
func (l *Look) rows() []table.Row {
	return append(l.Src.Rows[:len(l.Src.Rows):len(l.Src.Rows)], l.paper...)
}

// called is the nearest heading above the block that names something; its own titles are not asked.
func (l *Look) called() string {
	for _, r := range slices.Backward(l.Src.Path) {
		_, text := r.Filled()
		if !name.IsGeneric(text) && !slices.ContainsFunc(l.Src.Titles, func(t table.Row) bool { return t.Line == r.Line }) {
			text, _ = prose.WithoutSection(r, text)
			return text
		}
	}
	return ""
}

// rightAbove is the text right above the block.
func (l *Look) rightAbove() string {
	all := append(slices.Clone(l.Src.Path), l.Src.Titles...)
	if len(all) == 0 {
		return ""
	}
	_, text := all[len(all)-1].Filled()
	return text
}

// Has reports whether some column that holds something is of one of some fields.
func (l *Look) Has(cols []shape.Column, fields ...name.Field) bool {
	return l.Find(cols, fields...) >= 0
}

// Find is the first such column, −1 where there is none.
func (l *Look) Find(cols []shape.Column, fields ...name.Field) int {
	return slices.IndexFunc(cols, func(c shape.Column) bool { return slices.Contains(fields, c.Field) })
}

// Holds is the first column of one of some fields with something in its cells; −1 where there is none.
func (l *Look) Holds(cols []shape.Column, fields ...name.Field) int {
	for i, c := range cols {
		if i < len(l.Prof) && l.Prof[i].Filled > 0 && slices.Contains(fields, c.Field) {
			return i
		}
	}
	return -1
}
