package audit

import (
	"slices"

	"contralay/model/wirelist/cable"
	"contralay/model/wirelist/column"
	"contralay/model/wirelist/endpins"
	"contralay/model/wirelist/endtext"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// cells names the rows that became wires and have a cell that stands in none of them.
func (a *auditor) cells(t *Table) {
	cols := map[int]bool{}
	var rows []table.Row
	for _, r := range t.Rows {
		made := a.row(t, r)
		wires := made.wires
		if wires == nil || made.conflict || t.Grid && !a.saysMore(r) || a.tellsNone(t, r) {
			continue
		}
		missing := false
		texts := a.textsOf(wires)
		for i, c := range r.Cells {
			c = endOf(t, i, c)
			if i < len(t.Cols) && c != "" && !a.isPlain(texts, c) && !a.isSame(texts, t, i, c) && !a.freePins[cell{a.place(t.of(r)), c}] &&
				!a.isSkipped(&t.Cols[i], c) &&
				!a.stands(texts, t, c) && !a.isValue(wires, &t.Cols[i], c) &&
				!a.saidOf(t, r, i) && !a.stands(texts, t, endpins.Unworded(c)) {
				cols[i], missing = true, true
			}
		}
		if missing {
			rows = append(rows, r)
		}
	}
	a.doubt("cells that stand in no wire", t.At, heads(t, cols), "left in the list", rows)
}

// saysMore reports whether a cell of a grid says more than its cavity.
func (a *auditor) saysMore(r table.Row) bool {
	return slices.ContainsFunc(r.Cells[min(1, len(r.Cells)):], func(c string) bool { return c != "" && !a.isNothing(c) })
}

// tellsNone reports whether a row is one of several that a line makes and tells no wire: a text behind a wire, or a free cavity beside it.
func (a *auditor) tellsNone(t *Table, r table.Row) bool {
	if t.Points {
		return false
	}
	return r.Prose || slices.ContainsFunc(r.Cells, func(c string) bool { return c != "" && a.freePins[cell{a.place(t.of(r)), c}] })
}

// isSkipped reports whether a cell says nothing of a wire: a number of its row, a dash, a mark, a word for yes, no or none.
func (a *auditor) isSkipped(c *shape.Column, cell string) bool {
	return c.Field == name.FieldIgnore || c.Running || a.isNothing(cell)
}

// isValue reports whether a cell holds a value of a wire that is not kept as it is written: a length, a current, a fuse, its cable.
func (a *auditor) isValue(wires []int, c *shape.Column, cell string) bool {
	for _, i := range wires {
		w := &a.im.H.Wires[i]
		_, fed := a.feeds[w.ID]
		_, made := a.units[w.ID]
		_, long := a.im.Rep.Lengths[w.ID]
		switch c.Field {
		case name.FieldLength, name.FieldUnit:
			return long || c.Field == name.FieldUnit
		case name.FieldCurrent:
			return w.Amps.Set
		case name.FieldFuse:
			return fed
		}
		if fed || made {
			f := table.Fold(cell)
			if _, _, ok := value.FuseIn(cell, value.MarkUnknown); ok && fed {
				return true
			}
			if made && (cable.Words(f).IsCable() || len(cable.Partners(cell)) > 0 || cable.IsMark(cell) || c.Field == name.FieldCable) {
				return true
			}
		}
	}
	return false
}

// isPlain reports whether a cell stands in one of some wires as it is written.
func (a *auditor) isPlain(texts []*text, cell string) bool {
	return slices.ContainsFunc(texts, func(x *text) bool { return stands(x.plain, cell) })
}

// pair is the text of a cell and the value that a wire has.
type pair struct{ cell, value string }

// isSame reports whether a cell of a column of colours is the colour of one of some wires.
func (a *auditor) isSame(texts []*text, t *Table, col int, cell string) bool {
	cell = t.Key.InEnglish(cell)
	if t.Cols[col].Field != name.FieldColour {
		return t.Cols[col].Field == name.FieldStripe && a.stands(texts, t, cell)
	}
	return slices.ContainsFunc(texts, func(x *text) bool {
		same, ok := a.same[pair{cell, x.code}]
		if !ok {
			x.colour, _ = value.ParseColour(x.code, "")
			same = x.isColour(cell, t.Lang)
			a.same[pair{cell, x.code}] = same
		}
		return same
	})
}

// stands reports whether a cell stands in one of some wires, or piece by piece in all of them together.
func (a *auditor) stands(texts []*text, t *Table, cell string) bool {
	l, size := a.look(cell), a.sizesOf(cell, t.Mark)
	for _, x := range texts {
		if x.holds(cell, l, size, t.Lang, a.words) {
			return true
		}
	}
	if len(texts) == 1 {
		return false
	}
	for _, p := range l.pieces {
		if !slices.ContainsFunc(texts, func(x *text) bool { return x.holdsPiece(p, t.Lang, a.words) }) {
			return false
		}
	}
	return true
}

// saidOf reports whether the report names a cell already.
func (a *auditor) saidOf(t *Table, r table.Row, col int) bool {
	return a.told[cell{a.place(t.of(r)), shape.At(t.Cols, col)}]
}

// endOf is a cell of a column of far ends without the words that lead to the end, one of both ends without what stands between them;
// any other cell as it is.
func endOf(t *Table, col int, cell string) string {
	if end := endtext.SeenEnd(cell) + endtext.SeenConnector(cell); end != "" {
		return end
	}
	if col < len(t.Cols) && t.Cols[col].Field == name.FieldFrom {
		from, to, ok := shape.SplitRun(cell)
		head := t.Cols[col].Head
		if both := slices.ContainsFunc(t.Cols, func(c shape.Column) bool { return c.Field == name.FieldTo && c.Head == head }); ok &&
			(head != "" && both || shape.IsRun(cell)) {
			return from + " " + to
		}
	}
	if col < len(t.Cols) && t.Cols[col].Field == name.FieldTo {
		if far, how, ok := column.CutTo(cell, t.Lang); ok {
			return value.JoinNonEmpty(" ", how, far)
		}
	}
	return cell
}
