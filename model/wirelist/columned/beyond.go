package columned

import "strings"

// Beyond gives the headings, and behind them an empty one where two lines or more have a cell right of the last column, all of them
// beginning at one place with a gap before it: what stands there belongs to none of the columns.
//
//	Pin  Signal  To
//	3    CAN H   DASH 5    TP1
//	4    CAN L   DASH 6    TP1
func Beyond(heads []Field, at int, text string) []Field {
	last := heads[len(heads)-1]
	from, to, n, line := 0, 0, 0, 0
	for l := range strings.SplitSeq(text, "\n") {
		line++
		cells := WithoutArrows(Gapped(l))
		if line <= at || len(cells) < 3 {
			continue
		}
		c, before := cells[len(cells)-1], cells[len(cells)-2]
		if c.From < last.To || before.From < last.From || before.From >= last.To {
			continue // it stands in the last column, or nothing does
		}
		if n > 0 && c.From != from {
			return heads
		}
		from, to = c.From, max(to, c.To)
		n++
	}
	if n < 2 {
		return heads
	}
	return append(heads[:len(heads):len(heads)], Field{From: from, To: to})
}
