package cover

import "slices"

// Cost is what it costs to put one thing in one place, the weightiest first: a lower first
// number is better whatever the others are.
type Cost [3]float64

func (c Cost) plus(d Cost) Cost  { return Cost{c[0] + d[0], c[1] + d[1], c[2] + d[2]} }
func (c Cost) minus(d Cost) Cost { return Cost{c[0] - d[0], c[1] - d[1], c[2] - d[2]} }
func (c Cost) less(d Cost) bool  { return slices.Compare(c[:], d[:]) < 0 }

// Assign is the cheapest way to give every row a column of its own: which column each row
// takes, −1 where there are more rows than columns and none is left. cost[row][column] is
// what a pair costs; all rows are as long as the first.
//
// It is the Hungarian method with row and column prices (Kuhn 1955, Munkres 1957), which is
// exact. Costs are compared number by number: such triples add and compare like numbers, and
// that is all the method asks of them.
func Assign(cost [][]Cost) []int {
	rows := len(cost)
	out := make([]int, rows)
	for r := range out {
		out[r] = -1
	}
	if rows == 0 || len(cost[0]) == 0 {
		return out
	}
	columns := len(cost[0])
	if rows > columns { // the other way round: every column takes a row
		turned := make([][]Cost, columns)
		for c := range turned {
			turned[c] = make([]Cost, rows)
			for r := range cost {
				turned[c][r] = cost[r][c]
			}
		}
		for c, r := range Assign(turned) {
			out[r] = c
		}
		return out
	}
	// Row 0 and column 0 stand for none; taken[c] is the row that column c is given to.
	rowPrice, columnPrice := make([]Cost, rows+1), make([]Cost, columns+1)
	taken, via := make([]int, columns+1), make([]int, columns+1)
	for row := 1; row <= rows; row++ {
		taken[0] = row
		slack, met, seen := make([]Cost, columns+1), make([]bool, columns+1), make([]bool, columns+1)
		at := 0
		for taken[at] != 0 {
			seen[at] = true
			r, next := taken[at], 0
			for c := 1; c <= columns; c++ {
				if seen[c] {
					continue
				}
				over := cost[r-1][c-1].minus(rowPrice[r]).minus(columnPrice[c])
				if !met[c] || over.less(slack[c]) {
					slack[c], met[c], via[c] = over, true, at
				}
				if next == 0 || slack[c].less(slack[next]) {
					next = c
				}
			}
			step := slack[next]
			for c := range seen {
				if seen[c] {
					rowPrice[taken[c]] = rowPrice[taken[c]].plus(step)
					columnPrice[c] = columnPrice[c].minus(step)
				} else if met[c] {
					slack[c] = slack[c].minus(step)
				}
			}
			at = next
		}
		for at != 0 {
			taken[at] = taken[via[at]]
			at = via[at]
		}
	}
	for c := 1; c <= columns; c++ {
		if taken[c] != 0 {
			out[taken[c]-1] = c - 1
		}
	}
	return out
}
