package shape

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/signoff"
	"contralay/model/wirelist/value"
)

// runMarks part the two ends that stand in one cell, the surest first.
func runMarks() []string {
	return []string{"->", "→", "=>", "⇒", "↔", "<>", ">", " -- ", " --- ", " to ", " nach ", " vers ", " hasta ", " - ", " – ", " — "}
}

// SplitRun parts "P1-A -> J1-3" into its two ends. ok is false where no mark parts the cell
// in two.
func SplitRun(cell string) (from, to string, ok bool) {
	for _, mark := range runMarks() {
		if a, b, found := strings.Cut(cell, mark); found {
			a, b = nearEnd(a, mark), strings.TrimSpace(b)
			return a, b, a != "" && b != "" && !strings.Contains(b, mark)
		}
	}
	return "", "", false
}

// nearEnd is the text before a mark without what else of the arrow stands there; the pole of a device stays, "PSU V- to X1".
func nearEnd(text, mark string) string {
	bare := strings.TrimSpace(text)
	if !strings.Contains(mark, ">") {
		return bare
	}
	end := strings.TrimRight(bare, "<-")
	shaft := strings.HasSuffix(end, " ") && strings.HasSuffix(strings.TrimRight(end, " "), "-") // "A - - -> B"; "Battery - -> B" is a pole
	if end != text && (text == bare || len(bare)-len(end) > 1 || shaft || strings.HasSuffix(bare, "<")) {
		bare = strings.TrimRight(end, " -")
	}
	return strings.Trim(bare, " <")
}

// IsRun reports whether an arrow stands between two texts of a cell, or any sign or word between two ends.
func IsRun(cell string) bool {
	from, to, ok := SplitRun(cell)
	return ok && (hasArrow(cell) || isSureEnd(from) && isSureEnd(to))
}

// isSureEnd reports whether a text is the end of a wire and nothing else: a designator and its cavity, or a word for a cavity in it.
func isSureEnd(text string) bool {
	connector, pin, ok := name.SplitEnd(text)
	short := strings.Contains(text, ":") && len(strings.Fields(connector)) < 4 // "Oil sensor:2"
	return ok && name.IsCavity(pin) && (short || name.IsDesignator(connector) || name.SaysPin(text))
}

// hasArrow reports whether an arrow stands in the cell, which nobody writes into the name of
// one end.
func hasArrow(cell string) bool {
	return strings.Contains(cell, "->") || strings.ContainsAny(cell, "→⇒↔") || strings.Contains(cell, "=>")
}

// settleRuns gives a column of both ends in one cell the use that its cells show: where they
// hold one end each it is the far end of a pin table, or text. Where a list has its ends in
// columns of their own besides, it is text.
func (b *Block) settleRuns() {
	for i := range b.Cols {
		if b.Cols[i].Field == name.FieldRun {
			b.settleRun(i)
		}
	}
}

func (b *Block) settleRun(i int) {
	both, one := 0, 0
	for _, r := range b.Rows {
		if i >= len(r.Cells) || value.IsNothing(r.Cells[i]) || IsText(r) || signoff.Is(r) {
			continue
		}
		if _, _, ok := SplitRun(r.Cells[i]); ok {
			both++
		} else {
			one++
		}
	}
	another := slices.IndexFunc(b.Cols, func(c Column) bool { return c.Field == name.FieldRun }) != i
	switch c := &b.Cols[i]; {
	case another || b.Has(name.FieldFrom, name.FieldTo, name.FieldFromPin):
		c.Field, c.Spared = name.FieldKeep, true
	case both < one && b.Has(name.FieldPin):
		c.Field = name.FieldTo
	case both < one:
		c.Field, c.Spared = name.FieldKeep, true
	}
}

// PartRuns gives the rows with both ends in one cell a cell for each: the first stays in its
// column, the other comes behind the last. Where From holds both and To none, they part too.
func (b *Block) PartRuns() {
	from := slices.IndexFunc(b.Cols, func(c Column) bool { return c.Field == name.FieldRun || c.Field == name.FieldFrom })
	if from < 0 {
		return
	}
	run := b.Cols[from].Field == name.FieldRun
	if run {
		wide := len(b.Cols)
		for _, r := range b.Rows {
			wide = max(wide, len(r.Cells))
		}
		b.Cols = slices.Clone(b.Cols)
		for len(b.Cols) < wide {
			b.Cols = append(b.Cols, Column{Field: name.FieldKeep})
		}
		b.Cols[from].Field = name.FieldFrom
		b.Cols = append(b.Cols, Column{Field: name.FieldTo, Head: b.Cols[from].Head})
	}
	to := slices.IndexFunc(b.Cols, func(c Column) bool { return c.Field == name.FieldTo })
	if to < 0 {
		return
	}
	b.Rows = slices.Clone(b.Rows)
	for k, r := range b.Rows {
		if from >= len(r.Cells) || IsText(r) {
			continue
		}
		near, far, ok := SplitRun(r.Cells[from])
		if !ok || !run && (!hasArrow(r.Cells[from]) || to < len(r.Cells) && !value.IsNothing(r.Cells[to])) {
			continue
		}
		r.Cells = append(slices.Clone(r.Cells), make([]string, max(0, to+1-len(r.Cells)))...)
		r.Cells[from], r.Cells[to] = near, far
		b.Rows[k] = r
	}
}
