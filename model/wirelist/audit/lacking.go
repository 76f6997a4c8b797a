package audit

import (
	"strings"

	"contralay/model/wirelist/cable"
	"contralay/model/wirelist/column"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/report"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
	"contralay/model/wirelist/words"
)

// lacking names the columns of a table of wires that are not understood, where the table has no column of what they could hold: a
// size, a colour, a name, the other end.
func (a *auditor) lacking(t *Table) {
	has := map[name.Field]bool{}
	for _, c := range t.Cols {
		has[c.Field] = true
	}
	from := has[name.FieldFrom] || has[name.FieldFromPin] || has[name.FieldRun] || has[name.FieldPin]
	to := has[name.FieldTo] || has[name.FieldToPin] || has[name.FieldRun] || has[name.FieldDevicePin]
	for i, c := range t.Cols {
		w := name.Words(table.Fold(c.Head))
		if c.Field != name.FieldKeep || c.Given || c.Alias || c.Head == "" || name.IsRemark(w) || name.IsSpent(c.Head) ||
			words.TellsNoWire(c.Head) || name.IsMeasure(w) || from && to && column.IsAtEnd(c.Head, w) ||
			c.Spared && column.HeadsCores(c.Head) ||
			len(w) == 1 && len(w[0]) < 3 && column.CountsUp(t.Rows, i) { // "Č.": it counts the rows
			continue
		}
		p := a.cellsOf(t, i) // of the few columns that nobody knows
		could := ""
		switch {
		case p.filled < 2 || p.currents == p.filled || a.saysUnread(t, i):
		case !has[name.FieldGauge] && 10*p.sizes >= 9*p.filled:
			could = "a size"
		case !has[name.FieldColour] && 2*p.colours >= p.filled:
			could = "a colour"
		case p.filled > leastRows && 10*p.ends >= 9*p.filled:
			could = "an end"
		case 3*p.cables >= p.filled && !has[name.FieldCable]:
			could = "a cable"
		case !from && 10*(p.numbers+p.words+p.codes) >= 9*p.filled && p.several:
			could = "an end"
		case p.filled > leastRows && p.unique && p.cavities == p.filled:
			could = "the cavities, or the ids of the wires"
		case p.prose > 0 || 2*p.filled < p.rows || p.numbers == p.filled && !p.unique:
		case !(from && to) && 10*(p.words+p.codes) >= 9*p.filled && p.several:
			could = "an end"
		case !has[name.FieldSignal] && 10*p.words >= 9*p.filled && p.several:
			could = "a name"
		}
		if could != "" {
			a.doubt("a column that is not understood", t.At, shape.At(t.Cols, i), "kept in the notes; it could be "+could, p.of)
		}
	}
}

// columnCells is what the cells of one column look like, in the rows that became wires.
type columnCells struct {
	rows, filled                                 int
	numbers, sizes, colours, codes, words, prose int
	ends, cavities, cables, currents             int  // these with their unit, "15 A"
	several, unique                              bool // two texts or more; none twice
	of                                           []table.Row
}

// cellsOf looks at the cells of one column.
func (a *auditor) cellsOf(t *Table, col int) (p columnCells) {
	seen := map[string]bool{}
	for _, r := range t.Rows {
		if a.row(t, r).wires == nil {
			continue
		}
		p.rows++
		if col >= len(r.Cells) || a.isNothing(r.Cells[col]) || name.IsThread(r.Cells[col]) {
			continue
		}
		cell := r.Cells[col]
		p.filled++
		p.of = append(p.of, r)
		seen[table.Fold(cell)] = true
		switch a.kindOf(cell, t) {
		case number:
			p.numbers++
		case colour:
			p.colours++
		case code:
			p.codes++
		case prose:
			p.prose++
		case word:
			if _, short := value.FirstLetters(cell, t.Lang); short {
				p.colours++
			}
			p.words++
		}
		if _, pin, ok := name.SplitEnd(cell); ok && name.IsCavity(pin) {
			p.ends++
		}
		if name.IsCavity(cell) && len(cell) < 5 {
			p.cavities++
		}
		if c := cell[len(cell)-1]; c == 'A' || c == 'a' {
			if _, ok := value.ParseCurrent(cell, false, t.Mark); ok {
				p.currents++
			}
		}
		if cable.Words(cell).IsCable() {
			p.cables++
		}
		if g, ok := value.ParseGauge(cell, value.BareAWG, t.Mark); ok && g.Size != "" && (strings.ContainsAny(cell, ".,") ||
			shape.IsMadeSize(cell) || strings.Trim(cell, "0123456789") != "") {
			p.sizes++
		} else if ok && g.Size != "" || strings.Trim(cell, "0123456789") == "" && len(cell) < 3 && cell != "0" {
			p.sizes++ // 1 beside 0.75
		}
	}
	p.several, p.unique = len(seen) > 1, len(seen) == p.filled
	return p
}

// saysUnread reports whether the report says of a column already that it could be something of a wire.
func (a *auditor) saysUnread(t *Table, col int) bool {
	head := shape.At(t.Cols, col)
	for _, f := range a.im.Rep.Findings {
		if f.Level == report.Warn && f.Sheet == t.At.Sheet && f.File == t.At.File && strings.Contains(f.What, head) && f.Rows != nil &&
			strings.Contains(f.Rule, "not read") {
			return true
		}
	}
	return false
}
