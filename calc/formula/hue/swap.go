package hue

// swaps colours what is left in one go: each wire gets its first free colour, and where it has
// none, two colours are swapped along a chain of wires so that one becomes free (Kempe, 1879).
// Between connectors of two kinds, with as many colours as the fullest has wires, that always
// does (König, 1916), where going back and forth may take for ever. It leaves the search as it
// was where it fails; what was given before stays as it is.
func (s *search) swaps() bool {
	got := append([]int(nil), s.got...)
	own := s.ownBars()
	for {
		w := none
		for x := range s.got {
			if got[x] == none && (w == none || s.left[x] < s.left[w]) {
				w = x
			}
		}
		if w == none {
			copy(s.got, got)
			return true
		}
		if c := s.firstFree(got, own, w); c != none {
			got[w] = c
		} else if !s.swapFor(got, own, w) {
			return false
		}
	}
}

// ownBars is, by wire, the colours that it must not have whatever its neighbours get.
func (s *search) ownBars() [][]bool {
	out := make([][]bool, len(s.got))
	for w := range out {
		out[w] = make([]bool, len(s.kin))
		for c, n := range s.bar[w] {
			for _, x := range s.next[w] {
				if s.got[x] == c {
					n--
				}
			}
			out[w][c] = n > 0
		}
	}
	return out
}

// firstFree is the first colour that a wire may have as things are.
func (s *search) firstFree(got []int, own [][]bool, w int) int {
	for c := range own[w] {
		if !own[w][c] && !s.beside(got, w, c) {
			return c
		}
	}
	return none
}

func (s *search) beside(got []int, w, c int) bool {
	for _, x := range s.next[w] {
		if got[x] == c {
			return true
		}
	}
	return false
}

// swapFor makes a colour free for a wire and gives it.
func (s *search) swapFor(got []int, own [][]bool, w int) bool {
	for c := range own[w] {
		if own[w][c] {
			continue
		}
		for d := range own[w] {
			if d == c {
				continue
			}
			chain, may := s.chain(got, own, w, c, d)
			if !may {
				continue
			}
			for _, x := range chain {
				got[x] = c + d - got[x]
			}
			got[w] = c
			return true
		}
	}
	return false
}

// chain is every wire of two colours that hangs together with those next to w that have the first;
// may is whether swapping them is allowed and leaves none next to w with the first.
func (s *search) chain(got []int, own [][]bool, w, c, d int) (all []int, may bool) {
	in := map[int]bool{}
	put := func(x int) {
		if !in[x] {
			in[x], all = true, append(all, x)
		}
	}
	for _, x := range s.next[w] {
		if got[x] == c {
			put(x)
		}
	}
	for k := 0; k < len(all); k++ {
		x := all[k]
		if to := c + d - got[x]; own[x][to] || s.got[x] != none {
			return nil, false // given before, or not to be had
		}
		for _, y := range s.next[x] {
			if got[y] == c || got[y] == d {
				put(y)
			}
		}
	}
	for _, x := range s.next[w] {
		if in[x] && got[x] == d {
			return nil, false
		}
	}
	return all, true
}
