package heat

import "slices"

// front is the order in which a symmetric matrix is factored, column by column. At each step only
// those rows are in work that a column already factored reaches; each of them has a slot, so the
// rows in work lie close together however far apart they are in the matrix.
// Source: the frontal method, any textbook of finite elements.
type front struct {
	start  []int32 // rows[start[j]:start[j+1]] are in work after column j
	rows   []int32 // in the order of their slots
	pivot  []int32 // the slot of row j until its column is factored; then the last in work moves into it
	enters []int32 // how many rows come into work for column j, behind the others
	most   int     // the most that are in work at once
}

// newFront is that of a matrix whose row i holds nothing to the left of column first[i].
func newFront(first []int) *front {
	n := len(first)
	f := &front{start: make([]int32, 1, n+1), pivot: make([]int32, n), enters: make([]int32, n)}
	for _, j := range first {
		f.enters[j]++
	}
	after := make([]int, n) // where those that enter for j end in byFirst
	for j, e := range f.enters {
		after[j] = int(e)
		if j > 0 {
			after[j] += after[j-1]
		}
	}
	byFirst, next := make([]int32, n), append([]int{0}, after...)
	for i, j := range first {
		byFirst[next[j]] = int32(i)
		next[j]++
	}
	var slots []int32
	for j := range first {
		slots = append(slots, byFirst[after[j]-int(f.enters[j]):after[j]]...)
		f.most = max(f.most, len(slots))
		last := len(slots) - 1
		for slot, i := range slots {
			if int(i) == j {
				f.pivot[j], slots[slot] = int32(slot), slots[last]
				break
			}
		}
		slots = slots[:last]
		f.rows = append(f.rows, slots...)
		f.start = append(f.start, int32(len(f.rows)))
	}
	return f
}

// entry is the place of row i, column j in matrix.all, i > j: of two nodes that a link
// joins, for others there is none.
func (f *front) entry(i, j int) int {
	from, to := f.start[j], f.start[j+1]
	return len(f.pivot) + int(from) + slices.Index(f.rows[from:to], int32(i))
}
