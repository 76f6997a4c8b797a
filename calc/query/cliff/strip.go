package cliff

import (
	"contralay/calc/formula/plan"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// Reach is how many fewer and how many more are looked at.
const Reach = 8

// What is counted.
type What int

// What can be counted in a branch.
const (
	Wires  What = iota // single wires of the commonest size, its spares among them
	Spares             // spare wires
)

// Ask is a question of this package: what is counted, from how many to how many.
type Ask struct {
	What             What
	Size             string          // of the wire that is counted: "22", or "2.9 mm" where only its diameter is known
	D                unit.Millimetre // its diameter
	Least, Now, Most int
	Ends             string // why the count ends at Most, where it does so before Now + Reach; a sentence without full stop
	Key              string // everything the figures hang on: two questions of one key have the same answers
	Laid             Point  // as it is laid now; without a branch where it is only proposed

	at   func(n int) Point
	with func(p Point) *model.Harness
}

// At plans the branch with n of what is counted. It takes some milliseconds to some tenths of a
// second, and touches nothing of the sheet.
func (a *Ask) At(n int) Point { return a.at(n) }

// Harness is the harness with the branch as a point has it; nil where the question is not of a
// harness, or the point has no lay-up.
func (a *Ask) Harness(p Point) *model.Harness {
	if a.with == nil || p.Branch == nil {
		return nil
	}
	return a.with(p)
}

// Point is the branch with N of what is counted.
type Point struct {
	N       int
	Branch  *sheet.Branch  // nil where there is no such lay-up
	Tube    catalogue.Tube // its sheath; without an ID where none holds or none is wanted
	OverMM  unit.Millimetre
	Sheath  unit.Millimetre // over the sheath; 0 where that is not known
	Relaxed plan.Relaxed    // the limits that its lay-up leaves
	Rings   int             // of what is counted, how many lie round the centre where a filler could lie instead
}

// Round is how many layers lie round the centre.
func (p Point) Round() int {
	if p.Branch == nil {
		return 0
	}
	return max(0, len(p.Branch.Layers)-1)
}

// Centre is how many pieces the centre holds, a rod in its middle not counted.
func (p Point) Centre() int {
	if p.Branch == nil || len(p.Branch.Layers) == 0 {
		return 0
	}
	n := 0
	for _, m := range p.Branch.Layers[0].Members {
		if m.Kind != sheet.OfFiller {
			n++
		}
	}
	return n
}

// built is what the tape round a centre that is built up adds to it; else 0.
func (p Point) built() unit.Millimetre {
	if p.Branch == nil || len(p.Branch.Layers) == 0 {
		return 0
	}
	return p.Branch.Layers[0].BuiltMM
}

// Counts is how many each layer holds, the centre first: fillers counted, the rod in the middle of
// a centre of five not.
func (p Point) Counts() []int {
	if p.Branch == nil {
		return nil
	}
	var out []int
	for k := range p.Branch.Layers {
		n := len(p.Branch.Layers[k].Members)
		if k == 0 {
			n = p.Centre()
		}
		out = append(out, n)
	}
	return out
}

// shown is the OD as a screen shows it: to 0.1 mm.
func (p Point) shown() string { return unit.MM.Diameter(p.OverMM) }

// thinner reports whether p comes out thinner than o by as much as a screen shows.
func (p Point) thinner(o Point) bool { return p.OverMM < o.OverMM && p.shown() != o.shown() }

// pointOf reads a branch as it was laid; d is the diameter of what is counted.
func pointOf(n int, b sheet.Branch, relaxed plan.Relaxed, d unit.Millimetre) Point {
	p := Point{N: n, Relaxed: relaxed}
	if len(b.Layers) == 0 || b.OverMM <= 0 {
		return p
	}
	p.Branch, p.OverMM = &b, b.OverMM
	verdict := b.Sheath.Verdict
	p.Tube = b.Sheath.Tube.V
	if b.Sheath.Tube.Set && !b.Sheath.Proposed && verdict.Stops() {
		// The file names a tube that does not hold any more: the best of its kind is the next one.
		for _, c := range b.Sheath.Others {
			if !c.Verdict.Stops() {
				p.Tube, verdict = c.Tube, c.Verdict
				break
			}
		}
		if verdict.Stops() {
			p.Tube = catalogue.Tube{}
		}
	}
	if p.Tube.ID != "" && verdict.Wraps {
		p.Sheath = verdict.OverMM
	}
	for k := range b.Layers {
		l := &b.Layers[k]
		if k == 0 || l.Fillers > 0 && !sameD(l.FillerMM, d) { // a layer takes fillers of one size
			continue
		}
		for _, m := range l.Members {
			if m.Kind != sheet.OfFiller && m.Kind != sheet.OfUnit && sameD(m.D, d) {
				p.Rings++
			}
		}
	}
	return p
}

// sameD reports whether two diameters are one size.
func sameD(a, b unit.Millimetre) bool { return max(a-b, b-a) < sheet.SameSize }

// Strip is the points of a question that are worked out.
type Strip struct {
	Ask
	points []Point // from Least on
	known  []bool
}

// Begin is a strip of which nothing is worked out.
func Begin(a Ask) *Strip {
	n := max(0, a.Most-a.Least+1)
	return &Strip{Ask: a, points: make([]Point, n), known: make([]bool, n)}
}

// Put takes a point up.
func (s *Strip) Put(p Point) {
	if k := p.N - s.Least; k >= 0 && k < len(s.points) {
		s.points[k], s.known[k] = p, true
	}
}

// Point is the strip at a count; false where it is not worked out, or beyond the strip.
func (s *Strip) Point(n int) (Point, bool) {
	if k := n - s.Least; k >= 0 && k < len(s.points) && s.known[k] {
		return s.points[k], true
	}
	return Point{}, false
}

// Next is the count to be worked out next: the one in hand, then those nearest to it, more first.
func (s *Strip) Next() (n int, more bool) {
	for by := 0; by <= max(s.Most-s.Now, s.Now-s.Least); by++ {
		for _, n := range []int{s.Now + by, s.Now - by} {
			if k := n - s.Least; k >= 0 && k < len(s.known) && !s.known[k] {
				return n, true
			}
		}
	}
	return 0, false
}

// Near is as Next, for what Short says alone: the count in hand, one fewer, and more up to the first
// that changes something.
func (s *Strip) Near() (n int, more bool) {
	fit, changes := s.Fits()
	switch _, down := s.Point(s.Now - 1); {
	case !changes && !s.has(s.Now):
		return s.Now, true
	case !changes:
		return s.Now + fit + 1, true
	case !down && s.Now > s.Least:
		return s.Now - 1, true
	}
	return 0, false
}

// has reports whether a count is worked out.
func (s *Strip) has(n int) bool { _, ok := s.Point(n); return ok }

// Fill works out what is not known yet.
func (s *Strip) Fill() {
	for n, more := s.Next(); more; n, more = s.Next() {
		s.Put(s.At(n))
	}
}

// Begins says what begins with a count, against one fewer.
type Begins struct {
	Layer  bool // a layer more
	Centre bool // as many layers, round a centre of other pieces
	Built  bool // a centre that is built up with tape, or built up to more
	Tube   bool // another sheath, or none
	First  bool // a sheath where one fewer has none that holds
	Thick  bool // a larger OD, as a screen shows it
	Thin   bool // a smaller one
}

// Begins says what begins with n: nothing where n or one fewer is not known.
func (s *Strip) Begins(n int) Begins {
	p, ok := s.Point(n)
	was, is := s.Point(n - 1)
	if !ok || !is {
		return Begins{}
	}
	return between(was, p)
}

// between is what is otherwise from one point to another with more.
func between(was, p Point) Begins {
	if p.Branch == nil || was.Branch == nil {
		return Begins{}
	}
	return Begins{
		Layer:  p.Round() > was.Round(),
		Centre: p.Round() == was.Round() && p.Centre() != was.Centre() && p.Round() > 0,
		Built:  p.built() > was.built(),
		Tube:   p.Tube.ID != was.Tube.ID,
		First:  was.Tube.ID == "" && p.Tube.ID != "",
		Thick:  was.thinner(p),
		Thin:   p.thinner(was),
	}
}

// Fillable is the least count above n that comes out thinner than n, and whether n with fillers
// in place of the wires between is as thin: a filler of the wire's own size lies as the wire does,
// as long as what it stands for lies round the centre. 0 where none is thinner.
func (s *Strip) Fillable(n int) (as int, fillers bool) {
	p, ok := s.Point(n)
	if !ok || p.Branch == nil {
		return 0, false
	}
	var least unit.Millimetre // of those that are thinner
	for k := n + 1; k <= s.Most; k++ {
		if o, ok := s.Point(k); ok && o.Branch != nil && o.thinner(p) && (as == 0 || o.OverMM < least) {
			least, as, fillers = o.OverMM, k, o.Rings >= k-n
		}
	}
	return as, fillers
}
