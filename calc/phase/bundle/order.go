package bundle

import (
	"cmp"
	"math"
	"slices"

	"contralay/calc/formula/lay"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
)

// Ranks says where each component of a branch goes beyond its to end: way sorts
// those that part together side by side, depth is how many branches they still
// run through; next is the branch they go on into at its far end, −1 where they end there.
type Ranks struct {
	Way   map[string]Way
	Depth map[string]int
	Next  map[string]int
	apart bool // trigger and data are kept from power round the layer
}

// Way is the place of a component among those of its branch in the order they part beyond it.
// It is a number and not the way itself, or a long chain of branches would hold its own length
// squared. The zero value, of what does not run there, comes before all.
type Way struct {
	Tail   int // those that come off as one tail have one
	Cavity int // by its cavity, too
}

// Compare orders ways by tail, then by cavity.
func (w Way) Compare(o Way) int {
	return cmp.Or(cmp.Compare(w.Tail, o.Tail), cmp.Compare(w.Cavity, o.Cavity))
}

// RanksOf reads the tree beyond the to end of branch i: by the next branch, the
// one after, to the termination or splice; branches in file order, cavities in
// the order of their termination.
func RanksOf(s *sheet.Sheet, i int) Ranks {
	ids := s.Branches[i].Components
	r := Ranks{make(map[string]Way, len(ids)), make(map[string]int, len(ids)), make(map[string]int, len(ids)), s.H.Branches[i].DataApart.V}
	far := farEnd(s, i)
	all := make([]leaver, 0, len(ids))
	for _, id := range ids {
		c, _ := s.Index.Component(id)
		k := c.At
		if c.Unit {
			k = s.Index.Wire[s.H.Units[c.At].Wires[0]]
		}
		t := beyond(s, i, s.Wires[k].Path, &s.H.Wires[k])
		r.Depth[id] = depth(s, i, t.long(), len(s.Wires[k].Path)-1-t.long())
		r.Next[id] = nextAt(s, i, s.Wires[k].Path, far)
		all = append(all, leaver{id, t, stopOf(s, t.end)})
	}
	slices.SortFunc(all, func(a, b leaver) int {
		return cmp.Or(partsFrom(a, b), cmp.Compare(a.cavity, b.cavity))
	})
	w := Way{}
	for k, l := range all {
		switch {
		case k == 0 || partsFrom(all[k-1], l) != 0:
			w = Way{w.Tail + 1, 0}
		case all[k-1].cavity != l.cavity:
			w.Cavity++
		}
		r.Way[l.id] = w
	}
	return r
}

// leaver is a component of a branch with the way it takes beyond it.
type leaver struct {
	id string
	tail
	stop
}

// step is what is compared at step k of its way: the number of the branch, from 1, or of the
// place where it ends; more is false there.
func (l leaver) step(k int) (number int, more bool) {
	if k >= l.long() {
		return l.stop.at, false
	}
	return l.branch(k) + 1, true
}

// partsFrom orders two components by where the one parts from the other; 0 where they come off
// as one tail. What ends at a breakout comes before what goes on there.
func partsFrom(a, b leaver) int {
	if a.place == b.place && a.long() == b.long() { // a tree has one way there
		return cmp.Compare(a.stop.at, b.stop.at)
	}
	for k := 0; ; k++ {
		x, moreA := a.step(k)
		y, moreB := b.step(k)
		if x != y {
			return cmp.Compare(x, y)
		}
		if !moreA || !moreB {
			return cmp.Compare(a.long(), b.long())
		}
	}
}

// depth is how many branches a component still runs through where branch i parts:
// beyond its to end, or where that is a termination and the other a breakout,
// beyond its from end; between two breakouts the larger.
func depth(s *sheet.Sheet, i, beyondTo, beyondFrom int) int {
	_, to := s.Index.Breakout[s.H.Branches[i].To]
	_, from := s.Index.Breakout[s.H.Branches[i].From]
	switch {
	case from && to:
		return max(beyondTo, beyondFrom)
	case from:
		return beyondFrom
	}
	return beyondTo
}

// farEnd is the end of branch i at which its components part, as depth counts them; "" where
// they part at neither.
func farEnd(s *sheet.Sheet, i int) string {
	b := &s.H.Branches[i]
	for _, end := range []string{b.To, b.From} {
		if _, ok := s.Index.Breakout[end]; ok {
			return end
		}
	}
	return ""
}

// NextAt is the branch that a component of branch i goes on into at one end of it; −1 where it
// ends there. False for what does not run through branch i.
func NextAt(s *sheet.Sheet, i int, end, id string) (int, bool) {
	c, ok := s.Index.Component(id)
	if !ok {
		return 0, false
	}
	path := []int(nil)
	if c.Unit {
		path = s.Units[c.At].Path
	} else {
		path = s.Wires[c.At].Path
	}
	if !slices.Contains(path, i) {
		return 0, false
	}
	return nextAt(s, i, path, end), true
}

// nextAt is the branch of a path after branch i at one end of it; −1 where there is none.
func nextAt(s *sheet.Sheet, i int, path []int, end string) int {
	k := slices.Index(path, i)
	if k < 0 || end == "" {
		return -1
	}
	for _, j := range []int{k - 1, k + 1} {
		if j >= 0 && j < len(path) {
			if b := &s.H.Branches[path[j]]; b.From == end || b.To == end {
				return path[j]
			}
		}
	}
	return -1
}

// tail is the part of a wire beyond the to end of a branch.
type tail struct {
	path  []int // of the wire's way
	back  bool  // it is walked from its last branch to its first
	end   string
	place string // of the end
}

// long is how many branches it runs through.
func (t tail) long() int { return len(t.path) }

// branch is branch k of it.
func (t tail) branch(k int) int {
	if t.back {
		return t.path[len(t.path)-1-k]
	}
	return t.path[k]
}

// beyond is the part of a path past the to end of branch i, walking away from
// it, and the end the wire has there.
func beyond(s *sheet.Sheet, i int, path []int, w *model.Wire) tail {
	k := slices.Index(path, i)
	if k < 0 {
		return tail{}
	}
	from, to, _ := s.Index.Places(w)
	// Walk from the wire's From: which end of branch i is met first?
	met := from
	if k > 0 {
		met = s.Index.Shared(path[k-1], i)
	}
	if met == s.H.Branches[i].From {
		return tail{path[k+1:], false, w.To.V, to}
	}
	return tail{path[:k], true, w.From.V, from}
}

// stop sorts ends: splices first, then terminations in file order, then their
// cavities in the order the termination has them; what has no end comes last.
type stop struct{ at, cavity int }

func stopOf(s *sheet.Sheet, text string) stop {
	nowhere := stop{at: math.MaxInt}
	e, ok := s.Index.End(text)
	if !ok {
		return nowhere
	}
	if e.Splice != "" {
		return stop{at: s.Index.Splice[e.Splice]}
	}
	t, known := s.Index.Termination[e.Termination]
	if !known {
		return nowhere
	}
	return stop{pastSplices + t, slices.Index(s.Terms[t].Cavities, e.Cavity) + 1}
}

// pastSplices is more than any number of a splice or a branch.
const pastSplices = 1 << 30

// order is the order of leaving: groups that come off as one tail side by side;
// inside a group zig-zag where sizes differ, else by cavity. Fillers are spread
// evenly between. The result holds "filler" where one lies.
func order(s *sheet.Sheet, ml model.Layer, r Ranks, apart bool) ([]string, []bool) {
	ids := slices.Clone(ml.Of)
	placeOf := make(map[string]int, len(ids))
	for k, id := range ids {
		placeOf[id] = k
	}
	slices.SortStableFunc(ids, func(a, b string) int {
		return cmp.Or(r.Way[a].Compare(r.Way[b]), cmp.Compare(placeOf[a], placeOf[b]))
	})
	var tails [][]string
	for lo := 0; lo < len(ids); {
		hi := lo + 1
		for hi < len(ids) && r.Way[ids[hi]].Tail == r.Way[ids[lo]].Tail {
			hi++
		}
		zigzagGroup(s, ids[lo:hi])
		tails = append(tails, ids[lo:hi])
		lo = hi
	}
	if apart {
		setApart(s, tails)
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

func zigzagGroup(s *sheet.Sheet, ids []string) {
	d := make([]unit.Millimetre, len(ids))
	differ := false
	for k, id := range ids {
		d[k] = s.Dia(id).Nominal
		differ = differ || d[k] != d[0]
	}
	if !differ {
		return
	}
	copy(ids, permute(slices.Clone(ids), lay.ZigZag(d)))
}

// tracer is the place of the first component whose colour no other of the layer
// has; −1 where there is none. A unit is told by its make.
func tracer(s *sheet.Sheet, ids []string) int {
	seen := map[string]int{}
	for _, id := range ids {
		seen[Looks(s, id)]++
	}
	for k, id := range ids {
		if c := Looks(s, id); id != "filler" && c != "" && seen[c] == 1 {
			return k
		}
	}
	return -1
}

// Looks is what tells a component by eye: the colour of a wire, the make of a unit.
func Looks(s *sheet.Sheet, id string) string {
	if id == "filler" {
		return "9" // white wire off the reel, or a white rod
	}
	c, ok := s.Index.Component(id)
	switch {
	case !ok:
		return ""
	case !c.Unit:
		return s.H.Wires[c.At].Colour.V
	case s.H.Units[c.At].Shield.V:
		return "shielded " + string(s.H.Units[c.At].Build.V)
	}
	return string(s.H.Units[c.At].Build.V)
}

func permute[T any](in []T, places []int) []T {
	out := make([]T, len(in))
	for k, j := range places {
		out[k] = in[j]
	}
	return out
}

func rotate[T any](in []T, steps int) []T { return append(slices.Clone(in[steps:]), in[:steps]...) }

// FarEnd is the end a wire has beyond the to end of branch i, as the file writes
// it; "" where it does not run there.
func FarEnd(s *sheet.Sheet, i int, id string) string {
	k, ok := s.Index.Wire[id]
	if !ok {
		return ""
	}
	return beyond(s, i, s.Wires[k].Path, &s.H.Wires[k]).end
}

// NextAfter is the branch a component goes on into beyond the to end of branch i,
// or the termination or splice where it ends there.
func NextAfter(s *sheet.Sheet, i int, id string) string {
	c, ok := s.Index.Component(id)
	if !ok {
		return ""
	}
	k := c.At
	if c.Unit {
		if len(s.H.Units[c.At].Wires) == 0 {
			return ""
		}
		k = s.Index.Wire[s.H.Units[c.At].Wires[0]]
	}
	t := beyond(s, i, s.Wires[k].Path, &s.H.Wires[k])
	if t.long() > 0 {
		return s.H.Branches[t.branch(0)].ID
	}
	e, ok := s.Index.End(t.end)
	switch {
	case !ok && s.H.Wires[k].CappedAt.V != "":
		return "cap"
	case e.Splice != "":
		return e.Splice
	}
	return e.Termination
}
