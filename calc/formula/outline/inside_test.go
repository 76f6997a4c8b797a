package outline

import (
	"fmt"
	"math"
	"math/rand/v2"
	"slices"
	"testing"

	"contralay/model/unit"
)

// between is the distance of two segments by halving the longer way again and again: the distance of a point from a segment falls and
// rises but once along another, so that thirds find the least.
func between(a, b segment) float64 {
	onto := func(p Point) float64 {
		lo, hi := 0.0, 1.0
		at := func(f float64) float64 { return float64(b.a.Plus(b.b.Minus(b.a).Times(f)).To(p)) }
		for range 60 {
			x, y := lo+(hi-lo)/3, hi-(hi-lo)/3
			if at(x) < at(y) {
				hi = y
			} else {
				lo = x
			}
		}
		return at(lo)
	}
	lo, hi := 0.0, 1.0
	at := func(f float64) float64 { return onto(a.a.Plus(a.b.Minus(a.a).Times(f))) }
	for range 60 {
		x, y := lo+(hi-lo)/3, hi-(hi-lo)/3
		if at(x) < at(y) {
			hi = y
		} else {
			lo = x
		}
	}
	return at(lo)
}

func somePoint(r *rand.Rand, span int) Point {
	return Point{unit.Millimetre(r.IntN(2*span+1) - span), unit.Millimetre(r.IntN(2*span+1) - span)}
}

// Two segments of a small grid: how far apart, whether they meet, whether one comes into a box; and all of it moved and turned.
func TestSegmentsOfAGrid(t *testing.T) {
	r := rand.New(rand.NewPCG(3, 3))
	met, in := 0, 0
	for range 300 {
		a, b := segment{a: somePoint(r, 6), b: somePoint(r, 6), width: 2}, segment{a: somePoint(r, 6), b: somePoint(r, 6), width: 1}
		far := between(a, b)
		if got := float64(a.to(b)); math.Abs(got-far) > 1e-6 && far > 1e-6 || far <= 1e-6 && got > 1e-6 {
			t.Fatalf("%+v and %+v are %v apart, by halving %v", a, b, got, far)
		}
		if far < 1e-7 {
			met++
		}
		p := somePoint(r, 8)
		if got, want := float64(a.far(p)), between(segment{a: p, b: p}, a); math.Abs(got-want) > 1e-6 {
			t.Fatalf("%v is %v from %+v, by halving %v", p, got, a, want)
		}
		low, high := a.box(0.5)
		for _, q := range []Point{a.a, a.b} {
			if q.X-2.5 < low.X || q.X+2.5 > high.X || q.Y-2.5 < low.Y || q.Y+2.5 > high.Y {
				t.Fatalf("%+v lies within %v and %v", a, low, high)
			}
		}
		if high.X-low.X != unit.Millimetre(math.Abs(float64(a.a.X-a.b.X)))+5 ||
			high.Y-low.Y != unit.Millimetre(math.Abs(float64(a.a.Y-a.b.Y)))+5 {
			t.Fatalf("%+v lies within %v and %v", a, low, high)
		}
		box := Box{Point{-2, -1}, Point{3, 2}}
		near := math.Inf(1)
		for k := range 401 { // along the segment, how far from the box
			q := a.a.Plus(a.b.Minus(a.a).Times(float64(k) / 400))
			near = math.Min(near, math.Hypot(math.Max(0, math.Max(-2-float64(q.X), float64(q.X)-3)), math.Max(0, math.Max(-1-float64(q.Y),
				float64(q.Y)-2))))
		}
		if got := a.in(box); near < 0.999 && !got || near > 1.02 && got {
			t.Fatalf("%+v comes into the box: %v, it is %v from it", a, got, near)
		} else if got {
			in++
		}
		if !(segment{a: a.a, b: a.b}).touches(a.a) || !a.touches(a.b) || a.touches(Point{50, 50}) {
			t.Fatalf("%+v touches another point than its ends", a)
		}
	}
	if met < 20 || in < 20 {
		t.Errorf("%d meet, %d come into the box", met, in)
	}
	// 90 degrees to the left and 10 to the right: (3, 1) comes to (10 − 1, 3).
	s := stiff{}.with(stiff{segs: []segment{{a: Point{3, 1}, b: Point{5, 1}, run: 4, width: 2}}}, Point{10, 0}, 90)
	if g := s.segs[0]; g.a.To(Point{9, 3}) > 1e-9 || g.b.To(Point{9, 5}) > 1e-9 || g.run != 4 || g.width != 2 || len(s.segs) != 1 {
		t.Errorf("moved to %+v", g)
	}
	if s.low.To(Point{7, 1}) > 1e-9 || s.high.To(Point{11, 7}) > 1e-9 {
		t.Errorf("it lies within %v and %v", s.low, s.high)
	}
	s.add(segment{a: Point{0, 0}, b: Point{20, 20}})
	if s.low != (Point{0, 0}) || s.high != (Point{20, 20}) {
		t.Errorf("with another it lies within %v and %v", s.low, s.high)
	}
	// Boxes 10 apart in each direction.
	at := func(x, y unit.Millimetre) stiff {
		return stiff{segs: make([]segment, 1), low: Point{x, y}, high: Point{x + 10, y + 10}}
	}
	for _, c := range [][2]unit.Millimetre{{20, 0}, {-20, 0}, {0, 20}, {0, -20}} {
		if o := at(c[0], c[1]); !apart(at(0, 0), o, 9.9) || apart(at(0, 0), o, 10) {
			t.Errorf("%v is 10 from 0", c)
		}
	}
	if !apart(at(0, 0), stiff{}, 99) {
		t.Error("nothing is near")
	}
	for _, c := range []struct{ a, b, want int }{{12, 13, 1}, {21, 13, 1}, {12, 31, 1}, {21, 31, 1}, {12, 23, 2}, {12, 34, -1}} {
		if got := shared(Run{From: c.a / 10, To: c.a % 10}, Run{From: c.b / 10, To: c.b % 10}); got != c.want {
			t.Errorf("%d and %d share %d", c.a, c.b, got)
		}
	}
	// What leaves a place is not looked at for a hundredth of its length, at most 1 mm.
	for _, c := range []struct{ long, off unit.Millimetre }{{50, 0.5}, {400, 1}} {
		l := Line{{Length: c.long}}
		if from := leaving(l, Run{From: 7, To: 8}, 7); from[0].From.X != c.off || from.Length() != c.long-c.off {
			t.Errorf("of %v from its start: %+v", c.long, from)
		}
		if to := leaving(l, Run{From: 7, To: 8}, 8); to[0].From.X != 0 || to.Length() != c.long-c.off {
			t.Errorf("of %v to its end: %+v", c.long, to)
		}
	}
}

// An arc is as many segments as keep within half a millimetre of it. Of 50 mm, 50 degrees: three would lie 50·(1 − cos 8.33°) = 0.53
// inside it, four 0.30. A straight is one segment.
func TestSegmentsOfAnArc(t *testing.T) {
	l := Line{{Length: 30}, {From: Point{30, 0}, Length: 50 * 50 * math.Pi / 180, Radius: 50}}
	s := ofLine(l, 3, 7)
	if len(s.segs) != 5 {
		t.Fatalf("%d segments, want 5", len(s.segs))
	}
	for k, g := range s.segs {
		from, to := Point{}, Point{30, 0}
		if k > 0 { // round (30, 50)
			at := func(n int) Point {
				sin, cos := math.Sincos(float64(n) * 12.5 * math.Pi / 180)
				return Point{30 + unit.Millimetre(50*sin), 50 - unit.Millimetre(50*cos)}
			}
			from, to = at(k-1), at(k)
		}
		if g.a.To(from) > 1e-9 || g.b.To(to) > 1e-9 || g.run != 3 || g.width != 7 {
			t.Errorf("segment %d: %+v, want %v to %v", k, g, from, to)
		}
	}
}

// A field tells what is free as one would who looks at every line and box; the lines are long and go over many squares.
func TestFieldBySight(t *testing.T) {
	r := rand.New(rand.NewPCG(5, 5))
	free := [5]int{}
	for range 25 {
		var f Field
		var lines []segment
		var boxes []Box
		for range 4 {
			a, b := somePoint(r, 250), somePoint(r, 250)
			w := 0.3 + unit.Millimetre(r.IntN(8)) // no box of whole millimetres lies at its very edge
			f.Line(straightTo(a, b), w)
			lines = append(lines, segment{a: a, b: b, width: w})
			low := somePoint(r, 200)
			box := Box{low, low.Plus(Point{unit.Millimetre(5 + r.IntN(60)), unit.Millimetre(5 + r.IntN(60))})}
			f.Take(box)
			boxes = append(boxes, box)
		}
		// A text along the drawing, which no line to a text crosses.
		text := segment{a: somePoint(r, 100), b: somePoint(r, 100), width: 4}
		n := len(f.all)
		f.Line(straightTo(text.a, text.b), 4)
		for k := n; k < len(f.all); k++ {
			f.all[k].text = true
		}
		lines = append(lines, text)
		for range 40 {
			low := somePoint(r, 220)
			box := Box{low, low.Plus(Point{unit.Millimetre(1 + r.IntN(120)), unit.Millimetre(1 + r.IntN(60))})}
			want := !slices.ContainsFunc(boxes, func(o Box) bool {
				return math.Min(float64(o.High.X), float64(box.High.X)) > math.Max(float64(o.Low.X), float64(box.Low.X)) &&
					math.Min(float64(o.High.Y), float64(box.High.Y)) > math.Max(float64(o.Low.Y), float64(box.Low.Y))
			}) && !slices.ContainsFunc(lines, func(g segment) bool { return g.in(box) })
			if got := f.Free(box); got != want {
				t.Fatalf("%v is free: %v", box, got)
			}
			p, radius := box.Low, unit.Millimetre(1+r.IntN(12))
			want = !slices.ContainsFunc(boxes, func(o Box) bool {
				return math.Hypot(math.Max(0, math.Max(float64(o.Low.X-p.X), float64(p.X-o.High.X))),
					math.Max(0, math.Max(float64(o.Low.Y-p.Y), float64(p.Y-o.High.Y)))) < float64(radius)
			}) && !slices.ContainsFunc(lines, func(g segment) bool { return g.far(p) < radius+g.width/2 })
			if got := f.disc(p, radius); got != want {
				t.Fatalf("a disc of %v at %v is free: %v", radius, p, got)
			} else if got {
				free[0]++
			}
			g := segment{a: p, b: p.Plus(Point{20, 0}), width: 6}
			want = !slices.ContainsFunc(boxes, func(o Box) bool { return g.in(o) }) &&
				!slices.ContainsFunc(lines, func(o segment) bool { return g.to(o) < (g.width+o.width)/2-1e-9 })
			if got := f.clearOf(g); got != want {
				t.Fatalf("%+v is clear: %v", g, got)
			} else if got {
				free[1]++
			}
			// The line that leads from a box to a point 60 away or less.
			frame := Frame{Of: low.Minus(Point{unit.Millimetre(r.IntN(60)), unit.Millimetre(r.IntN(30))}),
				Clear: unit.Millimetre(r.IntN(30))}
			near := box.Near(frame.Of)
			far := near.To(frame.Of)
			lead := segment{a: near, b: frame.Of, width: 0.4}
			short := lead
			if far > 0 {
				short.b = near.Plus(frame.Of.Minus(near).Times(float64(1 - (frame.Clear+0.4)/far)))
			}
			for k := range 4 {
				closely, over := k%2 == 1, k > 1
				want := far <= frame.Clear || (closely || !slices.ContainsFunc(boxes, func(o Box) bool { return lead.in(o) })) &&
					(closely || lead.to(text) >= text.width/2) &&
					(over || !slices.ContainsFunc(lines, func(o segment) bool { return short.to(o) < o.width/2 }))
				if got := f.open(frame, box, closely, over); got != want {
					t.Fatalf("from %v to %v, close %v, over %v: open %v", box, frame.Of, closely, over, got)
				} else if got && far > frame.Clear {
					free[2]++
				} else if !got {
					free[3]++
				}
			}
		}
	}
	if slices.Min(free[:4]) < 60 {
		t.Errorf("%v were free", free)
	}
}

// The box of a text lies as near as it may in its direction, with its edge so far off, to a thousandth of the way; by hand to the right
// and upward, and by the edge in all directions.
func TestBoxOfAText(t *testing.T) {
	f := Frame{Of: Point{10, 20}, Wide: 30, High: 8}
	for turn := 0; turn < 360; turn += 15 {
		for _, far := range []unit.Millimetre{2, 25} {
			b := f.box(unit.Degree(turn), far)
			if w, h := b.High.X-b.Low.X, b.High.Y-b.Low.Y; math.Abs(float64(w-30)) > 1e-9 || math.Abs(float64(h-8)) > 1e-9 {
				t.Fatalf("it is %v by %v", w, h)
			}
			if edge := float64(b.Near(f.Of).To(f.Of)); edge < float64(far)-1e-9 || edge > float64(far)+0.02*float64(far+38)/10 {
				t.Errorf("at %d degrees its edge is %v off, want %v", turn, edge, far)
			}
			if m := b.Middle().Minus(f.Of); math.Abs(math.Remainder(math.Atan2(float64(m.Y), float64(m.X))*180/math.Pi-float64(turn),
				360)) > 1e-6 {
				t.Errorf("at %d degrees its middle is at %v", turn, m)
			}
		}
	}
}

// Texts are put at the first place of the rule: as near as there is room, of the points that they may begin at the first, in the direction
// nearest to theirs; until the third step no line leads there, and until the seventh it goes over nothing that is drawn.
func TestPutByTheRule(t *testing.T) {
	r := rand.New(rand.NewPCG(8, 8))
	led, or := 0, 0
	turns := []unit.Degree{0}
	for _, a := range []unit.Degree{15, 30, 45, 60, 75, 180, 165, 150, 135, 120, 105, 90} {
		if turns = append(turns, a); a < 180 {
			turns = append(turns, -a)
		}
	}
	for range 12 {
		var f, g Field
		for range 5 {
			a, b := somePoint(r, 60), somePoint(r, 60)
			f.Line(straightTo(a, b), 3)
			g.Line(straightTo(a, b), 3)
		}
		for range 25 {
			frame := Frame{Of: somePoint(r, 60), Wide: 20, High: unit.Millimetre(1 + 5*r.IntN(2)), Clear: 2,
				Toward: unit.Degree(r.IntN(360))}
			if r.IntN(2) == 0 {
				frame.Or = []Point{frame.Of.Plus(Point{25, 0}), frame.Of.Plus(Point{0, 25})}
			}
			step := max(1, frame.High/2)
			var want Box
			var wantOf Point
			wantLed, found := false, false
			for n := 0; !found; n++ {
				for _, of := range append([]Point{frame.Of}, frame.Or...) {
					for _, turn := range turns {
						at := frame
						at.Of = of
						b := at.box(frame.Toward+turn, 2+step*unit.Millimetre(n))
						if !found && g.Free(b) && (n > 20 || g.open(at, b, n < 2, n > 6)) {
							want, wantOf, wantLed, found = b, of, n > 1, true
						}
					}
				}
			}
			g.Take(want)
			if wantLed {
				led++
				g.Line(straightTo(want.Near(wantOf), wantOf), 0.4)
			}
			if wantOf != frame.Of {
				or++
			}
			if box, of, is := f.Put(frame); box != want || of != wantOf || is != wantLed {
				t.Fatalf("%+v: put at %v for %v, led %v; want %v for %v, %v", frame, box, of, is, want, wantOf, wantLed)
			}
		}
	}
	if led < 10 || or < 10 {
		t.Errorf("a line leads to %d, %d begin elsewhere", led, or)
	}
}

// A stiff piece takes the first angle at which it keeps clear: of the best, then of those tried on its side and on the other, then every
// eight degrees from twenty; with all the room, with a third, with a millimetre. All told by going through them.
func TestFirstAngleThatIsClear(t *testing.T) {
	r := rand.New(rand.NewPCG(6, 6))
	used := map[unit.Degree]int{}
	crowded := 0
	for range 150 {
		l := &layout{Tree: Tree{Room: 30}, told: r.IntN(2) == 0}
		there, whole := stiff{}, stiff{}
		end := Point{unit.Millimetre(50 + r.IntN(100)), 0}
		there.add(segment{b: end, width: 10})
		for range r.IntN(14) {
			a := end.Away(unit.Degree(r.IntN(360)), unit.Millimetre(20+r.IntN(60)))
			there.add(segment{a: a, b: a.Away(unit.Degree(r.IntN(360)), unit.Millimetre(20+r.IntN(120))), width: 4})
		}
		whole.add(segment{b: Point{unit.Millimetre(10 + r.IntN(90)), 0}, width: 6})
		if r.IntN(2) == 0 {
			whole.add(segment{a: whole.segs[0].b, b: whole.segs[0].b.Plus(somePoint(r, 40)), width: 2})
		}
		hung := []unit.Degree{180}
		for range r.IntN(3) {
			hung = append(hung, unit.Degree(r.IntN(360)-180))
		}
		side := unit.Degree(1 - 2*r.IntN(2))
		heading := unit.Degree(r.IntN(4) * 30)
		var best []unit.Degree
		if r.IntN(3) == 0 {
			best = []unit.Degree{0}
		}
		clear := func(turn unit.Degree, room unit.Millimetre) bool {
			for _, h := range hung {
				if d := math.Abs(math.Mod(math.Mod(float64(turn-h), 360)+540, 360) - 180); d < 20 {
					return false
				}
			}
			for _, g := range (stiff{}).with(whole, end, heading+turn).segs {
				for _, o := range there.segs {
					if (g.a.To(end) < 1e-6 || g.b.To(end) < 1e-6) && (o.a.To(end) < 1e-6 || o.b.To(end) < 1e-6) {
						continue
					}
					if g.to(o) < room+(g.width+o.width)/2 {
						return false
					}
				}
			}
			return true
		}
		all := slices.Clone(best)
		for _, s := range []unit.Degree{side, -side} {
			for _, a := range []unit.Degree{45, 60, 30, 75, 90, 105, 120, 135} {
				all = append(all, s*a)
			}
		}
		for a := unit.Degree(20); a <= 160; a += 8 {
			all = append(all, side*a, -side*a)
		}
		want, found := unit.Degree(0), false
		for _, room := range []unit.Millimetre{30, 10, 1} {
			for _, turn := range all {
				if !found && clear(turn, room) {
					want, found = turn, true
				}
			}
		}
		if !found && l.told {
			want = all[0]
		}
		got := l.choose(there, whole, hung, end, heading, best, side)
		if got != want || l.crowded != (!found && !l.told) {
			t.Fatalf("turned %v, crowded %v; want %v, %v", got, l.crowded, want, !found)
		}
		used[got]++
		if !found {
			crowded++
		}
	}
	if len(used) < 10 || crowded < 3 {
		t.Errorf("angles %v, %d crowded", used, crowded)
	}
	// Past so many tests it is crowded, and what was found before stays.
	l := &layout{Tree: Tree{Room: 30}, tests: mostTests + 1}
	there, whole := stiff{}, stiff{}
	there.add(segment{a: Point{-90, 20}, b: Point{90, 20}, width: 90})
	whole.add(segment{b: Point{50, 0}})
	if got := l.choose(there, whole, nil, Point{}, 0, nil, 1); got != 0 || !l.crowded {
		t.Errorf("turned %v, crowded %v", got, l.crowded)
	}
}

// A tree by hand. The datum 0; from it runs a to 1 (100), b to 2 (300), c to 3 (100). At 2 leave d to 4 (50, drawn 400 shorter), e to 5
// (200)
// and f to 6 (20). Far from all of it g from 8 to 7.
func TestOrderByHand(t *testing.T) {
	run := func(from, to int, long, out unit.Millimetre) Run {
		return Run{From: from, To: to, Length: long, Out: out}
	}
	tree := Tree{Places: 10, Datum: 0, Room: 20, Runs: []Run{run(0, 1, 100, 0), run(2, 0, 300, 0), run(0, 3, 100, 0), run(2, 4, 50, 400),
		run(5, 2, 200, 0),
		run(2, 6, 20, 0), run(8, 7, 60, 0)}}
	l := &layout{Tree: tree, meet: make([][]int, 10), near: make([]int, 7), deep: make([]unit.Millimetre, 7), shapes: make([]Line, 7),
		turns: make([]unit.Degree, 7), side: make([]unit.Degree, 7), leaves: make([]int, 7), order: make([][]int, 10)}
	forward := make([]Line, 7)
	for i, r := range tree.Runs {
		l.meet[r.From], l.meet[r.To] = append(l.meet[r.From], i), append(l.meet[r.To], i)
		forward[i], _ = r.shape(i)
	}
	if roots := l.roots(); !slices.Equal(roots, []int{0, 7}) {
		t.Errorf("it starts from %v", roots)
	}
	l.outward(0, forward)
	l.outward(7, forward)
	// The longest ways: b with d behind it 300 + 450; e 200, f 20. a and c are as long: the first comes first.
	if got, want := fmt.Sprint(l.order), "[[1 0 2] [] [3 4 5] [] [] [] [] [6] [] []]"; got != want {
		t.Errorf("runs outward %v, want %v", got, want)
	}
	if got, want := fmt.Sprint(l.near), "[0 0 0 2 2 2 7]"; got != want {
		t.Errorf("near ends %v, want %v", got, want)
	}
	if got, want := fmt.Sprint(l.deep), fmt.Sprint([]unit.Millimetre{100, 750, 100, 450, 200, 20, 60}); got != want {
		t.Errorf("ways %v, want %v", got, want)
	}
	if got, want := fmt.Sprint(l.leaves), "[1 3 1 1 1 1 1]"; got != want {
		t.Errorf("ends beyond %v, want %v", got, want)
	}
	// Sides: at the datum a to the left, c to the right; so at the end of b it goes on to the left: e, and f to the right.
	if got, want := fmt.Sprint(l.side), fmt.Sprint([]unit.Degree{1, 0, -1, 0, 1, -1, 0}); got != want {
		t.Errorf("sides %v, want %v", got, want)
	}
	// With one side way at the datum only, the next along the way leaves to the other side.
	for _, c := range []struct {
		from, place int
		far         unit.Millimetre
	}{{1, 4, 850}, {4, 1, 850}, {0, 4, 750}, {7, 8, 60}, {9, 9, 0}, {6, 4, 470}} {
		if p, far := l.farthest(c.from); p != c.place || far != c.far {
			t.Errorf("farthest from %d is %d at %v, want %d at %v", c.from, p, far, c.place, c.far)
		}
	}
	two := Tree{Places: 5, Datum: 0, Room: 20, Runs: []Run{run(0, 1, 300, 0), run(0, 2, 50, 0), run(1, 3, 200, 0), run(1, 4, 50, 0)}}
	plan := Lay(two)
	for k, want := range []unit.Degree{0, 180, 0, -45} { // the other half is the first side way: the next leaves to the right
		if plan.Turns[k] != want {
			t.Errorf("run %d turns %v, want %v", k, plan.Turns[k], want)
		}
	}
	// Side ways along a trunk leave in turn: to the left, to the right, to the left.
	var trunk Tree
	trunk.Places, trunk.Room = 8, 20
	trunk.Runs = []Run{run(0, 1, 400, 0), run(1, 2, 400, 0), run(2, 3, 400, 0), run(3, 4, 400, 0), run(1, 5, 50, 0), run(2, 6, 50, 0),
		run(3, 7, 50, 0)}
	plan = Lay(trunk)
	for k, want := range []unit.Degree{0, 0, 0, 0, 45, -45, 45} {
		if plan.Turns[k] != want {
			t.Errorf("run %d of the trunk turns %v, want %v", k, plan.Turns[k], want)
		}
	}
	// Places by hand: 400, 800, 1200 along x; side ways 50·√½ to the side. Then a tree of its own, 100 below the lowest.
	half := unit.Millimetre(50 * math.Sqrt(0.5))
	for place, want := range map[int]Point{1: {400, 0}, 2: {800, 0}, 4: {1600, 0}, 5: {400 + half, half}, 6: {800 + half, -half}} {
		if plan.Places[place].To(want) > 1e-9 {
			t.Errorf("place %d at %v, want %v", place, plan.Places[place], want)
		}
	}
	trunk.Places = 12
	trunk.Runs = append(trunk.Runs, run(9, 8, 100, 0), run(10, 11, 40, 0))
	plan = Lay(trunk)
	for place, want := range map[int]Point{8: {0, -half - 100}, 9: {100, -half - 100}, 10: {0, -half - 200}, 11: {40, -half - 200}} {
		if plan.Places[place].To(want) > 1e-9 {
			t.Errorf("place %d at %v, want %v", place, plan.Places[place], want)
		}
	}
	if plan.Datum != 0 || plan.Fanned || len(plan.Cross) > 0 || len(plan.Trouble) > 0 || plan.Lines[7][0].From.To(Point{100,
		-half - 100}) > 1e-9 {
		t.Errorf("datum %d, fanned %v, %v, line from %v", plan.Datum, plan.Fanned, plan.Cross, plan.Lines[7][0].From)
	}
}

// Sectors by hand: at the root five runs, the main one with two ends beyond it, two single ones to the left, one to the right with two
// ends.
// The main takes of the left 85 · 1/(1 + 2) = 28.33 and of the right 85 · 1/(1 + 2): sectors of 28.33 each to the left, headings 42.5 and
// 70.83; to the right 56.67 for one, heading −56.67. What is told is as it is told.
func TestSectorsByHand(t *testing.T) {
	l := &layout{Tree: Tree{Runs: []Run{{To: 1}, {To: 2}, {To: 3}, {To: 4}, {From: 1, To: 5}, {From: 1, To: 6}, {From: 4, To: 7}, {From: 4,
		To: 8, Told: true, Turn: 33}}},
		near: []int{0, 0, 0, 0, 1, 1, 4, 4}, order: [][]int{{0, 1, 2, 3}, {4, 5}, nil, nil, {6, 7}, nil, nil, nil, nil},
		leaves: []int{2, 1, 1, 2, 1, 1, 1, 1}, side: []unit.Degree{0, 1, 1, -1, 0, -1, 0, 1}, turns: make([]unit.Degree, 8)}
	at := map[int]unit.Degree{}
	l.fan(0, at)
	near := func(what string, got unit.Degree, want float64) {
		t.Helper()
		if math.Abs(float64(got)-want) > 1e-9 {
			t.Errorf("%s: %v, want %v", what, got, want)
		}
	}
	near("main", at[0], 0)
	near("first to the left", at[1], 85./3+85./6)
	near("second to the left", at[2], 85.*2/3+85./6)
	near("to the right", at[3], -85./3-85./3)
	// Beyond the main: from −28.33 to 28.33; one goes on, of the right half it keeps a third: the other lies in the middle of the rest.
	near("on", l.turns[4], 0)
	near("beyond the main", l.turns[5], -85./3*2/3)
	// Beyond the right one, −85 to −28.33 about −56.67: of the left half a third again.
	near("on to the right", l.turns[6], 0)
	near("told", l.turns[7], 33)
	l.Runs[7].Told = false
	l.fan(0, at)
	near("not told", l.turns[7], 85./3*2/3)
	if share(0, 0) != 1 || share(1, 3) != 0.25 {
		t.Error("shares")
	}
	l.Runs[1] = Run{To: 2, Told: true, Turn: -20}
	l.fan(0, at)
	near("told at the root", at[1], -20)
}
