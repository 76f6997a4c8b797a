package plan

// The fast method lays each kind in one block: it is begun, and laid to its end
// before another begins, though a layer may hold the end of one and the start of
// the next. All orders of the kinds of a class are tried, those that meet in one
// node together. It keeps every rule and leaves out plans in which a size comes
// back further out.

// mostMixed is how many sizes the fast method lays in one layer where there are
// many: more would make it slow and the layer lumpy.
const mostMixed = 2

// rows calls try with every next layer that keeps the blocks.
func (s *stacking) rows() {
	class := -1
	for i, k := range s.kinds {
		n := s.now.n[i]
		if n < k.need && class < 0 {
			class = k.class
		}
		if n > 0 && n < k.need {
			s.block(i, 0, true)
			return
		}
	}
	s.begin(0)
}

// begin starts a block: one that ends within this layer, too, only from kind
// from on, so that the same layer is not tried in two orders.
func (s *stacking) begin(from int) {
	in := 0
	for _, c := range s.cnt {
		if c > 0 {
			in++
		}
	}
	if in >= mostMixed && len(s.kinds) > 4 {
		return
	}
	for i, k := range s.kinds {
		if s.effort < 0 {
			return
		}
		if s.now.n[i]+s.take[i] > 0 || !s.reached(k.class) {
			continue
		}
		s.block(i, max(from, i+1), i >= from)
	}
}

// loosest is the open share above which an inner layer is not worth filling.
func (s *stacking) loosest() float64 {
	if s.noFiller {
		return 1
	}
	_, hi, _ := s.span(s.cnt)
	return s.gapIn + float64(s.inner)*s.fit.theta(hi, hi, hi)/twoPi
}

// block lays more and more of one kind; whole says that the layer may go on with
// another once it is laid to its end. What is too few for an inner layer and not
// all of the kind is passed over.
func (s *stacking) block(i, from int, whole bool) {
	k := s.kinds[i]
	was, laid := s.take[i], s.now.n[i]+s.take[i]
	set := func(c int) {
		s.cnt[k.size] += was + c - s.take[i]
		s.take[i] = was + c
	}
	defer func() { set(0) }()
	most := k.most - laid
	c := min(s.enough(most, set), max(1, k.need-laid))
	for ; c <= most; c++ {
		ended := laid+c >= k.need
		if ended && !whole {
			return
		}
		set(c)
		if s.try() || s.effort < 0 {
			return
		}
		if ended {
			s.begin(from)
		}
	}
}

// enough is the fewest, up to most, that leave no more open than loosest; most
// where none do.
func (s *stacking) enough(most int, set func(int)) int {
	lo, hi := 1, most
	for lo < hi {
		c := (lo + hi) / 2
		set(c)
		a, b, n := s.span(s.cnt)
		if s.effort--; s.fits(s.cnt, a, b, n).open > s.loosest() {
			lo = c + 1
		} else {
			hi = c
		}
	}
	return lo
}
