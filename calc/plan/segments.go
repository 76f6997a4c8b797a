package plan

import "slices"

// segments is the fast method: for each order of the sizes from the inside out,
// the row of all components is cut into consecutive layers. It keeps every rule
// and leaves out plans in which a size comes back further out.
func (s *search) segments() {
	order := upTo(len(s.d))
	var each func(k int)
	each = func(k int) {
		if s.effort < 0 {
			return
		}
		if k == len(order) {
			s.segment(order)
			return
		}
		for i := k; i < len(order) && i < k+4; i++ {
			order[k], order[i] = order[i], order[k]
			each(k + 1)
			order[k], order[i] = order[i], order[k]
		}
	}
	each(0)
}

// segment cuts one row; spares lie at the end of their size.
func (s *search) segment(order []int) {
	spares := []int{0}
	if s.spare >= 0 {
		for k := range s.most[s.spare] - s.need[s.spare] {
			spares = append(spares, k+1)
		}
	}
	for _, extra := range spares {
		n := make([]int, len(s.d))
		row := []int{0}
		for _, i := range order {
			k := s.need[i]
			if i == s.spare {
				k += extra
			}
			for range k {
				n[i]++
				row = append(row, s.index(n))
			}
		}
		s.cut(row)
	}
}

func (s *search) cut(row []int) {
	place := make(map[int]int, len(row))
	for k, v := range row {
		place[v] = k
	}
	at := make([][]*label, len(row))
	put := func(l *label) {
		if k, ok := place[l.used]; ok {
			at[k] = append(at[k], l)
		}
	}
	s.seedFrom(s.parts(row[1:min(len(row), 6)]), put)
	for k := range row {
		if len(at[k]) == 0 {
			continue
		}
		have := s.counts(row[k])
		parts := make([]part, 0, len(row)-k)
		for m := k + 1; m < len(row) && m <= k+longestLayer; m++ {
			parts = append(parts, s.parts([]int{row[m] - row[k]})...)
		}
		for _, l := range s.keep(at[k]) {
			if s.effort < 0 {
				s.truncated = true
				return
			}
			s.grow(l, have, parts, put)
		}
	}
}

// longestLayer bounds a layer in the fast method: over a core of ten diameters a
// layer takes some 35.
const longestLayer = 60

func upTo(n int) []int {
	out := make([]int, n)
	for i := range out {
		out[i] = i
	}
	return slices.Clip(out)
}
