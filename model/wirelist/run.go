package wirelist

import (
	"slices"
	"strings"
)

// runMarks part the two ends that stand in one cell, the surest first.
func runMarks() []string {
	return []string{"->", "→", "=>", "⇒", "↔", "<>", ">", " to ", " nach ", " vers ", " hasta ", " - ", " – ", " — "}
}

// splitRun parts "P1-A -> J1-3" into its two ends. ok is false where no mark parts the cell
// in two.
func splitRun(cell string) (from, to string, ok bool) {
	for _, mark := range runMarks() {
		if a, b, found := strings.Cut(cell, mark); found {
			a, b = strings.Trim(a, " <-"), strings.TrimSpace(b)
			return a, b, a != "" && b != "" && !strings.Contains(b, mark)
		}
	}
	return "", "", false
}

// hasArrow: an arrow stands in the cell, which nobody writes into the name of one end.
func hasArrow(cell string) bool {
	return strings.Contains(cell, "->") || strings.ContainsAny(cell, "→⇒↔") || strings.Contains(cell, "=>")
}

// settleRuns gives a column of both ends in one cell the use that its cells show: where they
// hold one end each it is the far end of a pin table, or text. Where a list has its ends in
// columns of their own besides, it is text.
func (b *block) settleRuns() {
	for i := range b.cols {
		if b.cols[i].field == FieldRun {
			b.settleRun(i)
		}
	}
}

func (b *block) settleRun(i int) {
	both, one := 0, 0
	for _, r := range b.rows {
		if i >= len(r.Cells) || isNothing(r.Cells[i]) || isText(r) {
			continue
		}
		if _, _, ok := splitRun(r.Cells[i]); ok {
			both++
		} else {
			one++
		}
	}
	another := slices.IndexFunc(b.cols, func(c column) bool { return c.field == FieldRun }) != i
	switch c := &b.cols[i]; {
	case another || b.has(FieldFrom, FieldTo, FieldFromPin):
		c.field, c.spared = FieldKeep, true
	case both < one && b.has(FieldPin):
		c.field = FieldTo
	case both < one:
		c.field, c.spared = FieldKeep, true
	}
}

// partRuns gives the rows with both ends in one cell a cell for each: the first stays in its
// column, the other comes behind the last. Where From holds both and To none, they part too.
func (b *block) partRuns() {
	from := slices.IndexFunc(b.cols, func(c column) bool { return c.field == FieldRun || c.field == FieldFrom })
	if from < 0 {
		return
	}
	run := b.cols[from].field == FieldRun
	if run {
		wide := len(b.cols)
		for _, r := range b.rows {
			wide = max(wide, len(r.Cells))
		}
		b.cols = slices.Clone(b.cols)
		for len(b.cols) < wide {
			b.cols = append(b.cols, column{field: FieldKeep})
		}
		b.cols[from].field = FieldFrom
		b.cols = append(b.cols, column{field: FieldTo, head: b.cols[from].head})
	}
	to := slices.IndexFunc(b.cols, func(c column) bool { return c.field == FieldTo })
	if to < 0 {
		return
	}
	b.rows = slices.Clone(b.rows)
	for k, r := range b.rows {
		if from >= len(r.Cells) || isText(r) {
			continue
		}
		near, far, ok := splitRun(r.Cells[from])
		if !ok || !run && (!hasArrow(r.Cells[from]) || to < len(r.Cells) && !isNothing(r.Cells[to])) {
			continue
		}
		r.Cells = slices.Clone(r.Cells)
		for len(r.Cells) <= to {
			r.Cells = append(r.Cells, "")
		}
		r.Cells[from], r.Cells[to] = near, far
		b.rows[k] = r
	}
}
