package columned

import "strings"

// HasHeaded reports whether some paragraph of a text is a small table among others that are none: its first line is words alone, four or
// more with gaps between, and the cells of the lines below begin where those do.
//
//	No   Circuit       From       To          Size
//	W1   Charge feed   REG pin 1  BATT pin +  4 mm2
//	W2   Return        REG pin 2  BATT pin -  4 mm2
//
//	Refit and test     3 h
func HasHeaded(text string) bool {
	const looked = 200 // lines (no source)
	var heads []Field
	below, n := 0, 0
	for line := range strings.SplitSeq(text, "\n") {
		if n++; n > looked {
			break
		}
		cells := Gapped(line)
		switch {
		case len(cells) == 0:
			if heads != nil && below > 1 {
				return true
			}
			heads, below = nil, 0
		case heads == nil:
			if len(cells) > 3 && !strings.ContainsAny(line, "0123456789") {
				heads, below = cells, 0
			}
		case len(cells) > 2 && allUnder(heads, cells):
			below++
		default:
			heads = nil
		}
	}
	return heads != nil && below > 1
}

// AllUnder reports whether a line has two cells or more, each of which begins where a heading does.
func AllUnder(heads, cells []Field) bool { return len(cells) > 1 && allUnder(heads, cells) }

// allUnder reports whether each cell begins where a heading does.
func allUnder(heads, cells []Field) bool {
	for _, c := range cells {
		under := false
		for _, h := range heads {
			under = under || h.From == c.From
		}
		if !under {
			return false
		}
	}
	return true
}
