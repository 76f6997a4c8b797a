package calc

import (
	"cmp"
	"fmt"
	"math"
	"slices"

	"contralay/calc/lay"
	"contralay/model"
	"contralay/model/unit"
)

// ranks says where each component of a branch goes beyond its to end: way sorts
// those that part together side by side, depth is how many branches they still
// run through.
type ranks struct {
	way   map[string]string
	depth map[string]int
}

// ranks reads the tree beyond the to end of branch i: by the next branch, the
// one after, to the termination or splice; branches in file order, cavities in
// the order of their termination.
func (s *Sheet) ranks(i int) ranks {
	r := ranks{make(map[string]string, len(s.Branches[i].Components)), make(map[string]int, len(s.Branches[i].Components))}
	for _, id := range s.Branches[i].Components {
		c, _ := s.X.Component(id)
		var w *model.Wire
		var path []int
		if c.Unit {
			u := &s.H.Units[c.At]
			w, path = &s.H.Wires[s.X.Wire[u.Wires[0]]], s.Wires[s.X.Wire[u.Wires[0]]].Path
		} else {
			w, path = &s.H.Wires[c.At], s.Wires[c.At].Path
		}
		beyond, end := s.beyond(i, path, w)
		way := ""
		for _, b := range beyond {
			way += fmt.Sprintf("%05d.", b+1)
		}
		r.way[id] = way + s.endOrder(end)
		r.depth[id] = s.depth(i, len(beyond), len(path)-1-len(beyond))
	}
	return r
}

// depth is how many branches a component still runs through where branch i parts:
// beyond its to end, or where that is a termination and the other a breakout,
// beyond its from end; between two breakouts the larger.
func (s *Sheet) depth(i, beyondTo, beyondFrom int) int {
	_, to := s.X.Breakout[s.H.Branches[i].To]
	_, from := s.X.Breakout[s.H.Branches[i].From]
	switch {
	case from && to:
		return max(beyondTo, beyondFrom)
	case from:
		return beyondFrom
	}
	return beyondTo
}

// beyond is the part of a path past the to end of branch i, walking away from
// it, and the end the wire has there.
func (s *Sheet) beyond(i int, path []int, w *model.Wire) ([]int, string) {
	k := slices.Index(path, i)
	if k < 0 {
		return nil, ""
	}
	// Walk from the wire's From: which end of branch i is met first?
	a, _ := model.ParseEnd(w.From.V)
	at, _ := s.X.Place(a)
	for _, b := range path[:k] {
		at = s.X.Other(b, at)
	}
	if at == s.H.Branches[i].From {
		return path[k+1:], w.To.V
	}
	back := slices.Clone(path[:k])
	slices.Reverse(back)
	return back, w.From.V
}

// endOrder sorts ends: splices first, then terminations in file order, then their
// cavities in the order the termination has them.
func (s *Sheet) endOrder(text string) string {
	e, ok := model.ParseEnd(text)
	if !ok {
		return "~"
	}
	if e.Splice != "" {
		return fmt.Sprintf("%05d", s.X.Splice[e.Splice]) + "/"
	}
	t, known := s.X.Termination[e.Termination]
	if !known {
		return "~"
	}
	return fmt.Sprintf("%05d", 50000+t) + "/" + fmt.Sprintf("%05d", slices.Index(s.Terms[t].Cavities, e.Cavity)+1)
}

// group is a way without its cavity: those that come off as one tail.
func group(way string) string {
	for i := len(way) - 1; i >= 0; i-- {
		if way[i] == '/' {
			return way[:i]
		}
	}
	return way
}

// layRings lays centre and layers from the inside out. Three bundles run side by
// side: nominal, all wires small, all large; they keep the nominal order.
func (s *Sheet) layRings(i int, layers []model.Layer, r ranks) {
	out := &s.Branches[i]
	out.Layers = make([]Layer, 0, len(layers))
	var bed, bedLo, bedHi lay.Bed
	for k, ml := range layers {
		hand := s.outer(i)
		if (len(layers)-1-k)%2 == 1 {
			hand = OtherHand(hand)
		}
		l := Layer{Hand: hand, BedMM: bed.Tape, Closes: true, Gap: 1, Loss: 1}
		if k == 0 {
			s.layCentre(&l, ml, &bed, &bedLo, &bedHi)
		} else {
			s.layRing(&l, ml, r, &bed, &bedLo, &bedHi)
		}
		for m := range l.Members {
			l.Members[m].Leaves = r.depth[l.Members[m].ID]
		}
		out.Layers = append(out.Layers, l)
	}
	out.OverMM, out.TapeMM = bed.Crown, bed.Tape
	out.OverMinMM, out.OverMaxMM, out.TapeMinMM = bedLo.Crown, bedHi.Crown, bedLo.Tape
}

func (s *Sheet) layCentre(l *Layer, ml model.Layer, bed, bedLo, bedHi *lay.Bed) {
	ids := slices.Clone(ml.Of)
	l.FillerMM = s.fillerMM(ml, ids)
	extra := ml.Fillers.V
	if extra == 1 && s.isRod(ml) {
		extra = 0 // the rod in the middle of five, not a sixth component
	}
	nom, lo, hi := s.diameters(ids, extra, l.FillerMM)
	g := lay.Centre(nom)
	l.OverMM, l.TapeMM = g.Over+ml.BindMM.V, g.Tape+ml.BindMM.V
	if len(nom) == 1 {
		l.Hand = "straight"
	} else if l.LayMM = ml.LayMM.V; l.LayMM <= 0 {
		l.LayMM = unit.Millimetre(s.Limits.LayRatio) * l.OverMM
	}
	s.members(l, ids, extra, nom, g.X, g.Y)
	if g.Rod > 0 {
		l.Fillers, l.FillerMM = l.Fillers+1, g.Rod
		l.Members = append(l.Members, Member{ID: "filler", Kind: OfFiller, D: g.Rod, Loss: 1})
	}
	small, large := lay.Centre(lo), lay.Centre(hi)
	b := ml.BindMM.V
	*bed = lay.Bed{Crown: l.OverMM, Tape: l.TapeMM}
	*bedLo, *bedHi = lay.Bed{Crown: small.Over + b, Tape: small.Tape + b}, lay.Bed{Crown: large.Over + b, Tape: large.Tape + b}
}

// isRod reports whether a centre's one filler is the rod in the middle of five
// equal ones, rather than a sixth component.
func (s *Sheet) isRod(ml model.Layer) bool {
	if len(ml.Of) != 5 {
		return false
	}
	d := s.dia(ml.Of[0]).Nominal
	for _, id := range ml.Of {
		if s.dia(id).Nominal != d {
			return false
		}
	}
	const off = 0.05 // mm: a rod is bought to a tenth
	return !ml.FillerMM.Set || abs(float64(ml.FillerMM.V-d*unit.Millimetre(lay.RodOfFive))) <= off
}

// fillerMM is the filler's diameter: as given, else the layer's smallest size.
func (s *Sheet) fillerMM(ml model.Layer, ids []string) unit.Millimetre {
	if ml.FillerMM.V > 0 {
		return ml.FillerMM.V
	}
	least := unit.Millimetre(0)
	for _, id := range ids {
		if d := s.dia(id).Nominal; least == 0 || d < least {
			least = d
		}
	}
	if ml.Fillers.V == 0 {
		return 0
	}
	return least
}

func (s *Sheet) layRing(l *Layer, ml model.Layer, r ranks, bed, bedLo, bedHi *lay.Bed) {
	how := lay.Laying{Ratio: s.Limits.LayRatio, Lay: ml.LayMM.V, Bind: ml.BindMM.V}
	l.FillerMM = s.fillerMM(ml, ml.Of)
	ids, fillerAt := s.order(ml, r, l.FillerMM)
	nom, lo, hi := s.laidDiameters(ids, fillerAt, l.FillerMM)
	ring := lay.Lay(nom, *bed, how)
	if ring.Lift > s.Limits.LiftMax {
		if zz := lay.ZigZag(nom); lay.Closes(nom, *bed, how, s.Limits.LiftMax) {
			l.ZigZag = true
			ids, nom, lo, hi = permute(ids, zz), permute(nom, zz), permute(lo, zz), permute(hi, zz)
			ring = lay.Lay(nom, *bed, how)
		}
	}
	if t := s.tracer(ids); t > 0 {
		ids, nom, lo, hi = rotate(ids, t), rotate(nom, t), rotate(lo, t), rotate(hi, t)
		ring = lay.Lay(nom, *bed, how)
		l.Tracer = ids[0]
	} else if t == 0 {
		l.Tracer = ids[0]
	}
	s.place(l, ids, nom, ring)
	l.OverMM, l.TapeMM, l.LayMM, l.Lift, l.ProudMM, l.Gap, l.Closes = ring.Over, ring.Tape, ring.Lay, ring.Lift, ring.Proud, ring.Gap, ring.Closes
	s.room(l, nom, *bed, how)
	small, large := lay.Lay(lo, *bedLo, how), lay.Lay(hi, *bedHi, how)
	*bed = lay.Bed{Crown: ring.Over, Tape: ring.Tape}
	*bedLo, *bedHi = lay.Bed{Crown: small.Over, Tape: small.Tape}, lay.Bed{Crown: large.Over, Tape: large.Tape}
}

// place writes members where they lie: the first at the top, then clockwise as
// seen from the from end.
func (s *Sheet) place(l *Layer, ids []string, d []unit.Millimetre, ring lay.Ring) {
	l.Members = make([]Member, len(ids))
	for k, id := range ids {
		sin, cos := math.Sincos(float64(ring.Angles[k]))
		stand := ring.Radii[k]
		m := Member{ID: id, Kind: OfFiller, D: d[k], X: stand * unit.Millimetre(sin), Y: stand * unit.Millimetre(cos), Loss: lay.TakeUp(stand, ring.Lay)}
		if id == "filler" {
			l.Fillers++
		} else if m.Kind = s.kindOf(id); m.Kind == OfSpare {
			l.Spares++
		}
		l.Members[k] = m
	}
	l.Loss, l.LayDeg = ring.Loss, ring.Angle
}

// room counts places of the layer's smallest size, fillers not counted as a size.
func (s *Sheet) room(l *Layer, d []unit.Millimetre, bed lay.Bed, how lay.Laying) {
	size := unit.Millimetre(0)
	for k, m := range l.Members {
		if m.Kind != OfFiller && (size == 0 || d[k] < size) {
			size = d[k]
		}
	}
	if size == 0 {
		size = l.FillerMM
	}
	l.Room = lay.Room(d, size, bed, how, s.Limits.LiftMax)
	l.Takes = len(d) + l.Room
	if l.Room <= 0 {
		l.Room = 0
		l.Takes = lay.Takes(d, bed, how, s.Limits.LiftMax)
	}
}

// order is the order of leaving: groups that come off as one tail side by side;
// inside a group zig-zag where sizes differ, else by cavity. Fillers are spread
// evenly between. The result holds "filler" where one lies.
func (s *Sheet) order(ml model.Layer, r ranks, fillerMM unit.Millimetre) ([]string, []bool) {
	ids := slices.Clone(ml.Of)
	at := make(map[string]int, len(ids))
	for k, id := range ids {
		at[id] = k
	}
	slices.SortStableFunc(ids, func(a, b string) int {
		return cmp.Or(cmp.Compare(group(r.way[a]), group(r.way[b])), cmp.Compare(r.way[a], r.way[b]), cmp.Compare(at[a], at[b]))
	})
	for lo := 0; lo < len(ids); {
		hi := lo + 1
		for hi < len(ids) && group(r.way[ids[hi]]) == group(r.way[ids[lo]]) {
			hi++
		}
		s.zigzagGroup(ids[lo:hi])
		lo = hi
	}
	n, f := len(ids), ml.Fillers.V
	out, filler := make([]string, 0, n+f), make([]bool, 0, n+f)
	for k := 0; k < n+f; k++ {
		// Bresenham's even spread of f among n+f places.
		if f > 0 && (k+1)*f/(n+f) > k*f/(n+f) {
			out, filler = append(out, "filler"), append(filler, true)
			continue
		}
		out, filler = append(out, ids[0]), append(filler, false)
		ids = ids[1:]
	}
	return out, filler
}

func (s *Sheet) zigzagGroup(ids []string) {
	d := make([]unit.Millimetre, len(ids))
	differ := false
	for k, id := range ids {
		d[k] = s.dia(id).Nominal
		differ = differ || d[k] != d[0]
	}
	if !differ {
		return
	}
	copy(ids, permute(slices.Clone(ids), lay.ZigZag(d)))
}

func (s *Sheet) laidDiameters(ids []string, filler []bool, fillerMM unit.Millimetre) (nom, lo, hi []unit.Millimetre) {
	var real []string
	n := 0
	for k, id := range ids {
		if filler[k] {
			n++
		} else {
			real = append(real, id)
		}
	}
	a, b, c := s.diameters(real, n, fillerMM)
	r, f := 0, len(real)
	for k := range ids {
		j := r
		if filler[k] {
			j = f
			f++
		} else {
			r++
		}
		nom, lo, hi = append(nom, a[j]), append(lo, b[j]), append(hi, c[j])
	}
	return nom, lo, hi
}

// tracer is the place of the first component whose colour no other of the layer
// has; −1 where there is none. A unit is told by its make.
func (s *Sheet) tracer(ids []string) int {
	seen := map[string]int{}
	for _, id := range ids {
		seen[s.colour(id)]++
	}
	for k, id := range ids {
		if c := s.colour(id); id != "filler" && c != "" && seen[c] == 1 {
			return k
		}
	}
	return -1
}

// colour is what tells a component by eye.
func (s *Sheet) colour(id string) string {
	if id == "filler" {
		return "9" // white wire off the reel, or a white rod
	}
	c, ok := s.X.Component(id)
	switch {
	case !ok:
		return ""
	case !c.Unit:
		return s.H.Wires[c.At].Colour.V
	case s.H.Units[c.At].Shield.V:
		return "shielded " + s.H.Units[c.At].Build.V
	}
	return s.H.Units[c.At].Build.V
}

func permute[T any](in []T, by []int) []T {
	out := make([]T, len(in))
	for k, j := range by {
		out[k] = in[j]
	}
	return out
}

func rotate[T any](in []T, by int) []T { return append(slices.Clone(in[by:]), in[:by]...) }

// buried counts components with one further out that leaves later.
func buried(layers []Layer) int {
	n, deepest := 0, -1
	for k := len(layers) - 1; k >= 0; k-- {
		for _, m := range layers[k].Members {
			if m.Kind != OfFiller && m.Leaves < deepest {
				n++
			}
		}
		for _, m := range layers[k].Members {
			if m.Kind != OfFiller {
				deepest = max(deepest, m.Leaves)
			}
		}
	}
	return n
}

// FarEnd is the end a wire has beyond the to end of branch i, as the file writes
// it; "" where it does not run there.
func (s *Sheet) FarEnd(i int, id string) string {
	k, ok := s.X.Wire[id]
	if !ok {
		return ""
	}
	_, end := s.beyond(i, s.Wires[k].Path, &s.H.Wires[k])
	return end
}

// NextAfter is the branch a component goes on into beyond the to end of branch i,
// or the termination or splice where it ends there.
func (s *Sheet) NextAfter(i int, id string) string {
	c, ok := s.X.Component(id)
	if !ok {
		return ""
	}
	k := c.At
	if c.Unit {
		if len(s.H.Units[c.At].Wires) == 0 {
			return ""
		}
		k = s.X.Wire[s.H.Units[c.At].Wires[0]]
	}
	beyond, end := s.beyond(i, s.Wires[k].Path, &s.H.Wires[k])
	if len(beyond) > 0 {
		return s.H.Branches[beyond[0]].ID
	}
	e, _ := model.ParseEnd(end)
	if e.Splice != "" {
		return e.Splice
	}
	return e.Termination
}
