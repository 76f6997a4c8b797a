package reading

import (
	"cmp"
	"slices"

	"contralay/model/wirelist/block"
	"contralay/model/wirelist/column"
	"contralay/model/wirelist/doubt"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/prose"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// Reading is one way to read a block.
type Reading struct {
	Kind    string // what the block is taken for: "cavities of one connector", "a list of parts"
	Wires   bool   // its rows are wires
	Score   float64
	Because []string      // the evidence, a few words each
	Doubts  []doubt.Doubt // what speaks against it
	Block   *shape.Block  // with its columns; of a reading without wires those of its headings alone
}

// Same reports whether two readings of a block take every column for the same.
func (r Reading) Same(o Reading) bool {
	return slices.EqualFunc(r.Block.Cols, o.Block.Cols, func(a, b shape.Column) bool {
		return a.Field == b.Field && a.Of == b.Of && a.Group == b.Group
	})
}

// look is a block as it is looked at.
type look struct {
	h     shape.Headings
	src   *block.Block
	cols  []shape.Column // by headings and cells, none of them given a side
	lang  string
	mark  value.Mark
	prof  []column.Profile
	known int // columns whose heading is known
	units int // the row below the headings that gives their units; 0 where there is none
}

// Of tries every reading of a block and gives those that hold, the best first. There is always one: of a
// block that holds nothing of a wire, that it is a text.
func Of(h shape.Headings, b block.Block) []Reading {
	l := lookAt(h, b)
	var all []Reading
	for _, kind := range kinds() {
		if cols := kind.columns(l); cols != nil {
			if r, ok := l.finish(kind.name, cols); ok {
				if kind.sure {
					r.Score += nearest
				}
				all = append(all, r)
			}
		}
	}
	all = append(all, l.others()...)
	slices.SortStableFunc(all, func(a, b Reading) int { return cmp.Compare(b.Score, a.Score) })
	return all
}

// kind is one way to give the columns of a block their meanings; columns gives nil where the block is
// plainly nothing of it.
type kind struct {
	sure    bool   // what it looks for is so particular that it is taken before a reading of the headings alone
	name    string // "" for the name that the columns ask for
	columns func(l *look) []shape.Column
}

// nearest is how much more such a reading counts (no source).
const nearest = 0.05

// kinds are the ways to read wires. Of two with one score the first is taken.
func kinds() []kind {
	return []kind{
		{true, "cavities of a bulkhead between two ends", chain},
		{true, "both ends in a row", grouped},
		{false, "", asHeaded},
		{false, "cavities of a bulkhead between two ends", through},
		{false, "cavities of one device", deviceColumn},
		{false, "both ends in a row", endsByCells},
		{true, "both ends in a row", endTexts},
		{false, "cavities of several devices in a row", wide},
		{false, "cavities and names without headings", bare},
		{false, "points of a list", points},
		{false, "both ends in the points of a list", leads},
		{false, "cavities of one device and where they go", places},
		{false, "cavities in the first column", firstPins},
		{true, "pads of two devices", twoDevices},
		{true, "cavities of a bulkhead between two ends", between},
		{true, "cavities of a bulkhead between two ends", passed},
		{true, "wires of one connector, by their colours", byColours},
	}
}

// lookAt takes a block in.
func lookAt(h shape.Headings, b block.Block) *look {
	l := &look{h: h, src: &b}
	l.mark = b.Mark
	wide := 0
	for _, r := range b.Rows {
		wide = max(wide, len(r.Cells))
	}
	l.cols, l.lang = h.Columns(b.Head, wide)
	if len(b.Rows) > 1 && len(b.Head) > 0 && h.TakeUnits(l.cols, b.Rows[0]) {
		l.units, b.Rows = b.Rows[0].Line, b.Rows[1:]
	}
	if len(b.Rows) > 1 && len(b.Head) > 0 && column.IsAside(b.Rows[0]) {
		b.Rows = b.Rows[1:]
	}
	for i := range l.cols {
		l.prof = append(l.prof, column.Of(b.Rows, i, l.lang, l.mark, h.Colours))
		if l.cols[i].Known() {
			l.known++
		}
	}
	l.withoutWeak()
	l.settle()
	return l
}

// withoutWeak takes the meaning off a from or a to of one or two letters that has no other side: "OD" is Polish for from,
// and the outer diameter of a bundle.
func (l *look) withoutWeak() {
	from := l.has(l.cols, name.FieldFrom, name.FieldFromPin)
	to := l.has(l.cols, name.FieldTo, name.FieldToPin)
	for i := range l.cols {
		c := &l.cols[i]
		if c.Weak() && !c.Given && (c.Field == name.FieldFrom && !to || c.Field == name.FieldTo && !from) {
			c.Field = name.FieldKeep
		}
	}
}

// asHeaded reads the columns as their headings and cells say.
//
//	Wire | From | To    | AWG
//	101  | P1:A | INJ:1 | 22
func asHeaded(l *look) []shape.Column {
	if len(l.src.Head) == 0 && !l.h.Numbered() {
		return nil
	}
	return slices.Clone(l.cols)
}

// block is the block with some columns.
func (l *look) block(cols []shape.Column) *shape.Block {
	b := &shape.Block{Table: l.src.Table, Titles: l.src.Titles, Cols: cols, Lang: l.lang, Mark: l.mark, Rows: l.src.Rows,
		Listed: l.src.Listed, Nodes: l.src.Nodes, Path: l.src.Path,
		Called: l.called(), Units: l.units}
	if slices.ContainsFunc(cols, func(c shape.Column) bool { return c.Alone }) {
		b.Plug = l.plug()
	}
	if n := len(l.src.Head); n > 0 {
		b.Head = l.src.Head[n-1].Line
	}
	return b
}

// called is the nearest heading above the block that names something; its own titles are not asked.
func (l *look) called() string {
	for _, r := range slices.Backward(l.src.Path) {
		_, text := r.Filled()
		if !name.IsGeneric(text) && !slices.ContainsFunc(l.src.Titles, func(t table.Row) bool { return t.Line == r.Line }) {
			text, _ = prose.WithoutSection(r, text)
			return text
		}
	}
	return ""
}

// has reports whether some column that holds something is of one of some fields.
func (l *look) has(cols []shape.Column, fields ...name.Field) bool {
	return l.find(cols, fields...) >= 0
}

// find is the first such column, −1 where there is none.
func (l *look) find(cols []shape.Column, fields ...name.Field) int {
	return slices.IndexFunc(cols, func(c shape.Column) bool { return slices.Contains(fields, c.Field) })
}

// holds is the first column of one of some fields with something in its cells; −1 where there is none.
func (l *look) holds(cols []shape.Column, fields ...name.Field) int {
	for i, c := range cols {
		if i < len(l.prof) && l.prof[i].Filled > 0 && slices.Contains(fields, c.Field) {
			return i
		}
	}
	return -1
}
