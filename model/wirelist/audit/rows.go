package audit

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/report"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// rows names every row that bears cells, became no wire, and is named by no line of the report.
// What stands above the headings of a table and the headings are of no wire.
func (a *auditor) rows(lists []table.Table, tables []Table) {
	above := map[place]bool{}
	read := map[place]bool{}
	turned := map[place]bool{} // the lines below the first of a table on its side
	for i := range tables {
		t := &tables[i]
		for _, r := range t.Above {
			above[a.place(t.of(r))] = true
		}
		for _, r := range t.Rows {
			p := a.place(t.of(r))
			if a.rowsOf[p] == nil {
				read[p] = true
			}
			for n := 1; n < int(r.Spans); n++ {
				turned[place{p.sheet, p.row + n}] = true
			}
		}
	}
	free := map[place]bool{} // of cavities without a wire: the facts name the cavity
	for _, t := range a.im.Terms {
		for _, at := range t.Free {
			free[a.place(at)] = true
		}
		for pin, at := range t.At {
			if t.State[pin] != name.Used {
				p := a.place(at)
				free[p] = true
				a.freePins[cell{p, pin}] = true
			}
		}
	}
	for i := range lists {
		l := &lists[i]
		if l.Hidden || a.im.Opt.Recipe.LeavesOut(l.Sheet) {
			continue
		}
		var none, lost, over []table.Row
		for _, r := range l.Rows {
			p := a.place(table.Place{File: l.File, Sheet: l.Sheet, Row: r.Line})
			made := a.rowsOf[p]
			n, _ := r.Filled()
			switch {
			case n > 2 && above[p] && (made == nil || made.wires == nil) && a.hasValue(r):
				over = append(over, r)
			case n == 0 || made != nil && (made.wires != nil || made.said) || free[p] || above[p] || turned[p] ||
				shape.IsText(r):
			case read[p]:
				lost = append(lost, r)
			default:
				none = append(none, r)
			}
		}
		at := table.Place{File: l.File, Sheet: l.Sheet}
		a.doubt("rows that became no wire", at, "", "left in the list", lost)
		a.doubt("rows above a table that could be wires", at, "", "left in the list", over)
		a.left("rows of no table", at, none)
	}
}

// hasValue reports whether a cell of a row is a colour or a size with its unit.
func (a *auditor) hasValue(r table.Row) bool {
	return slices.ContainsFunc(r.Cells, func(c string) bool {
		return a.kindOf(c, &Table{}) == colour && len(c) > 2 && strings.Trim(c, "0123456789/-.,") != "" ||
			value.SizeWithin(c, value.MarkUnknown) != ""
	})
}

// left enters a note about rows that were left out.
func (a *auditor) left(rule string, at table.Place, rows []table.Row) {
	if len(rows) == 0 {
		return
	}
	a.doubt(rule, at, "", "left out", rows)
	a.im.Rep.Findings[len(a.im.Rep.Findings)-1].Level = report.Note
}
