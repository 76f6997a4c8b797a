package lay

import (
	"sort"

	"contralay/model/unit"
)

// ZigZag returns the order round a layer that takes the least angle: the largest
// between the two smallest, those between the two next largest, and so on. The
// result holds indices into d, the largest first; equal sizes keep their order.
//
// The angle of neighbours grows with the product of their sizes and is
// super-modular in them, so the best cyclic order is one fixed permutation
// (Supnick 1957, from memory); it is checked against all orders by brute force.
func ZigZag(d []unit.Millimetre) []int {
	up := make([]int, len(d))
	for i := range up {
		up[i] = i
	}
	sort.SliceStable(up, func(i, j int) bool { return d[up[i]] < d[up[j]] })
	return zigzag(up)
}

// zigzag takes indices in rising order of size.
func zigzag(up []int) []int {
	n := len(up)
	if n < 3 {
		out := make([]int, n)
		for i := range up {
			out[i] = up[n-1-i]
		}
		return out
	}
	left, right := make([]int, 0, n), make([]int, 0, n/2)
	left = append(left, up[n-1])
	lo, hi := 0, n-2
	for small := true; lo <= hi; small = !small {
		for side := 0; side < 2 && lo <= hi; side++ {
			i := hi
			if small {
				i = lo
				lo++
			} else {
				hi--
			}
			if side == 0 {
				left = append(left, up[i])
			} else {
				right = append(right, up[i])
			}
		}
	}
	for i := len(right) - 1; i >= 0; i-- {
		left = append(left, right[i])
	}
	return left
}
