package block

import (
	"slices"
	"strings"

	"contralay/model/wirelist/goeson"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
	"contralay/model/wirelist/words"
)

// isHead reports whether a row is the headings of a table: where a person or a rule line of Markdown says so,
// where its words are known, and at the head of a sheet or behind a gap where its cells are words
// of headings, or the rows below it are of another kind.
func (f *finder) isHead(i int) bool {
	r := f.t.Rows[i]
	if line := f.h.HeadLine(); line > 0 {
		return r.Line == line
	}
	if f.t.Marked {
		return r.First && (r.Ruled || f.h.IsHead(r))
	}
	apart := f.current == nil || shape.IsText(f.t.Rows[i-1]) || r.Line > f.t.Rows[i-1].Line+1
	if f.h.IsHead(r) && (apart || !hasPole(r) && !goeson.Series(f.current.Rows, f.t.Rows[i+1:], r)) {
		return true
	}
	if c := f.current; c != nil && len(c.Head) == 1 && len(c.Rows) > 0 && slices.Equal(c.Head[0].Cells, r.Cells) {
		return true // once more
	}
	if c := f.current; c != nil && len(c.Rows) == 0 && len(c.Head) == 1 && f.isWords(r) && !f.h.IsHead(c.Head[0]) {
		n, _ := r.Filled()
		above, _ := c.Head[0].Filled()
		if f.differs(i) || n > above && f.h.KnowsOne(r) {
			return true // the row above is its caption
		}
	}
	if f.isStranger(i) {
		return true
	}
	return apart && f.isWords(r) && (f.h.HeadWords(r) || words.AreOfValues(r.Cells) || f.current == nil && f.differs(i))
}

// hasPole reports whether a cell of a row ends with the sign of a pole, "Horn pin +", as cells of wires do and headings hardly.
func hasPole(r table.Row) bool {
	return slices.ContainsFunc(r.Cells, func(c string) bool { return strings.HasSuffix(c, " +") || strings.HasSuffix(c, " -") })
}

// isWords reports whether a row could be headings at all: two cells or more, short, no two alike,
// none a value.
func (f *finder) isWords(r table.Row) bool {
	seen := map[string]bool{}
	for _, c := range r.Cells {
		if c == "" {
			continue
		}
		folded := table.Fold(c)
		if seen[folded] || len(c) > mostHead || strings.ContainsAny(c, ":;=?") || strings.Trim(c, "0123456789.,-/ ") == "" {
			return false
		}
		if g, ok := value.ParseGauge(c, value.BareAWG, value.MarkUnknown); ok && g.Size != "" {
			return false
		}
		seen[folded] = true
	}
	return len(seen) > 1
}

// mostHead is how long a heading may be, in bytes (no source).
const mostHead = 48

// differs reports whether the rows below are of another kind: they have digits in a column where this row has none, or numbers alone
// below the names of two connectors or more, beside a heading that is known.
func (f *finder) differs(i int) bool {
	const far = 8
	below := f.t.Rows[i+1 : min(len(f.t.Rows), i+1+far)]
	if f.h.KnowsOne(f.t.Rows[i]) && numbersBelow(f.t.Rows[i], below) > 1 {
		return true
	}
	for k, head := range f.t.Rows[i].Cells {
		if head == "" || strings.ContainsAny(head, "0123456789") {
			continue
		}
		n, digits := 0, 0
		for _, r := range below {
			if k < len(r.Cells) && r.Cells[k] != "" {
				n++
				if strings.ContainsAny(r.Cells[k], "0123456789") {
					digits++
				}
			}
		}
		if n > 0 && 3*digits >= 2*n {
			return true
		}
	}
	return false
}

// numbersBelow counts the designators of a row that have numbers alone below them.
func numbersBelow(head table.Row, below []table.Row) (columns int) {
	for k, c := range head.Cells {
		n := 0
		for _, r := range below {
			if k < len(r.Cells) && r.Cells[k] != "" && !value.IsNothing(r.Cells[k]) {
				if strings.Trim(r.Cells[k], "0123456789") != "" {
					n = -len(below)
				}
				n++
			}
		}
		if name.IsDesignator(c) && n > 0 {
			columns++
		}
	}
	return columns
}
