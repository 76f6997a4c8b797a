package strokes

import "strconv"

// A text may tell of two cables, and name the plugs of neither: the pins of the second come again.
//
//	Mode 0               Mode 1
//	D0->ERROR  2 - 15    D0->D0  2 - 2
//	D1->SLCT   3 - 13    D1->D1  3 - 3

// parted gives the ends of such a cable names of their own where two pins of it or more are those of one above.
func parted(all []Run) []Run {
	met := map[string]bool{} // the pins of the left ends
	n := 1
	for _, run := range all {
		again, own := 0, map[string]bool{}
		for _, r := range run.Rows {
			if len(r.Cells) > 3 && r.Cells[0] == LeftEnd && r.Cells[2] == RightEnd {
				if met[r.Cells[1]] && !own[r.Cells[1]] {
					again++
				}
				own[r.Cells[1]] = true
			}
		}
		if again > 1 {
			n++
			for _, r := range run.Rows {
				if len(r.Cells) > 3 && r.Cells[0] == LeftEnd && r.Cells[2] == RightEnd {
					r.Cells[0], r.Cells[2] = LeftEnd+" "+strconv.Itoa(n), RightEnd+" "+strconv.Itoa(n)
				}
			}
		}
		for pin := range own {
			met[pin] = true
		}
	}
	return all
}
