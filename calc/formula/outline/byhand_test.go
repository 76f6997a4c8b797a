package outline

import (
	"math"
	"slices"
	"testing"

	"contralay/model/unit"
)

// The pieces of bent runs by hand. Half an arc of 90° and 20 mm is 20·π/4 = 15.708 long, of 40 mm twice that, of 5 mm 3.927.
func TestShapeByHand(t *testing.T) {
	const half = 5 * math.Pi // of 90° and 20 mm
	type piece struct {
		heading unit.Degree
		long    unit.Millimetre
		radius  unit.Millimetre
	}
	for _, c := range []struct {
		name    string
		long    unit.Millimetre
		bends   []Bend
		want    []piece
		trouble []Trouble
	}{
		{"the one that comes first is told last, one lies past the end", 200, []Bend{{150, -90, 20}, {250, 30, 5}, {50, 90, 20}},
			[]piece{{0, 50 - half, 0}, {0, 2 * half, 20}, {90, 100 - 2*half, 0}, {90, 2 * half, -20}, {0, 50 - half, 0}},
			[]Trouble{{Run: 7, Bend: 1, Past: true}}},
		{"a bend that does not turn is none", 80, []Bend{{40, 0, 10}}, []piece{{0, 80, 0}}, nil},
		{"one degree is a turn", 80, []Bend{{40, 1, 0}}, []piece{{0, 40, 0}, {1, 40, 0}}, nil},
		{"two that halve what lies between them", 200, []Bend{{50, 90, 40}, {70, 90, 40}},
			[]piece{{0, 40, 0}, {0, 20, 20 / half * 10}, {90, 20, 20 / half * 10}, {180, 120, 0}},
			[]Trouble{{Run: 7, Radius: 20 / half * 10}, {Run: 7, Bend: 1, Radius: 20 / half * 10}}},
		{"the other needs less than half of it", 200, []Bend{{50, 90, 20}, {70, 90, 5}},
			[]piece{{0, 50 - half, 0}, {0, 2 * half, 20}, {90, 20 - half - half/4, 0}, {90, half / 2, 5}, {180, 130 - half/4, 0}}, nil},
		{"what the other leaves is too little", 200, []Bend{{50, 90, 30}, {70, 90, 5}},
			[]piece{{0, 50 - (20 - half/4), 0}, {0, 2 * (20 - half/4), 20 / half * (20 - half/4)}, {90, half / 2, 5}, {180,
				130 - half/4, 0}},
			[]Trouble{{Run: 7, Radius: 20 / half * (20 - half/4)}}},
		{"a start without room", 100, []Bend{{0, 90, 20}}, []piece{{90, 100, 0}}, []Trouble{{Run: 7}}},
		{"little room at the start", 100, []Bend{{5, -90, 20}}, []piece{{0, 10, -20 / half * 5}, {-90, 90, 0}},
			[]Trouble{{Run: 7, Radius: 20 / half * 5}}},
		{"little room at the end", 100, []Bend{{95, 90, 20}}, []piece{{0, 90, 0}, {0, 10, 20 / half * 5}},
			[]Trouble{{Run: 7, Radius: 20 / half * 5}}},
		{"a corner at the end", 100, []Bend{{100, 90, 0}}, []piece{{0, 100, 0}, {90, 0, 0}}, nil},
		{"no length", 0, nil, []piece{{0, 0, 0}}, nil},
	} {
		line, trouble := Run{Length: c.long, Bends: c.bends}.shape(7)
		ok := len(line) == len(c.want) && len(trouble) == len(c.trouble)
		at, heading := Point{}, 0.0
		for k := 0; ok && k < len(line); k++ {
			w := c.want[k]
			ok = math.Abs(float64(line[k].Heading-w.heading)) < 1e-9 && math.Abs(float64(line[k].Length-w.long)) < 1e-9 &&
				math.Abs(float64(line[k].Radius-w.radius)) < 1e-9 && line[k].From.To(at) < 1e-9
			// Where the next one begins: along a straight, or by the centre of an arc and the end of its radius.
			heading = float64(w.heading) * math.Pi / 180
			sin, cos := math.Sincos(heading)
			if w.radius == 0 {
				at = Point{at.X + w.long*unit.Millimetre(cos), at.Y + w.long*unit.Millimetre(sin)}
				continue
			}
			centre := Point{at.X - w.radius*unit.Millimetre(sin), at.Y + w.radius*unit.Millimetre(cos)}
			sin, cos = math.Sincos(heading + float64(w.long/w.radius))
			at = Point{centre.X + w.radius*unit.Millimetre(sin), centre.Y - w.radius*unit.Millimetre(cos)}
		}
		for k := 0; ok && k < len(trouble); k++ {
			g, w := trouble[k], c.trouble[k]
			ok = math.Abs(float64(g.Radius-w.Radius)) < 1e-9 && g.Run == w.Run && g.Bend == w.Bend && g.Past == w.Past
		}
		if !ok {
			t.Errorf("%s: %+v, %+v", c.name, line, trouble)
		}
	}
}

// pegsAt are the places of pegs of 6 mm, in their order.
func pegsAt(lines []Line, widths []unit.Millimetre, free func(int) (a, b unit.Millimetre)) (at []Point) {
	for _, p := range Pegs(lines, widths, 6, free) {
		at = append(at, p.At)
	}
	return at
}

func samePoints(a, b []Point) bool {
	return slices.EqualFunc(a, b, func(p, q Point) bool { return p.To(q) < 1e-6 })
}

// Pegs by hand along 100 mm to the right, a quarter turn of 20 mm to the left, a straight up, a quarter turn to the right and 100 mm
// to the right again. The run is 10 wide, so they stand 5 + 0.5 + 3 = 8.5 off: in the middle of each straight to the left and to the
// right in turn, and inside of each arc where it begins and ends. A straight of less than two pegs has none.
func TestPegsByHand(t *testing.T) {
	all := func(int) (a, b unit.Millimetre) { return 0, 0 }
	line := func(up unit.Millimetre) Line {
		q := unit.Millimetre(10 * math.Pi)
		return Line{{Length: 100}, {From: Point{100, 0}, Length: q, Radius: 20}, {From: Point{120, 20}, Heading: 90, Length: up},
			{From: Point{120, 20 + up}, Heading: 90, Length: q, Radius: -20}, {From: Point{140, 40 + up}, Length: 100}}
	}
	for _, c := range []struct {
		name string
		l    Line
		free func(int) (a, b unit.Millimetre)
		want []Point
	}{
		{"a short straight", line(11), all, []Point{{50, 8.5}, {100, 8.5}, {111.5, 20}, {128.5, 31}, {140, 42.5}, {190, 42.5}}},
		{"a longer one", line(13), all, []Point{{50, 8.5}, {100, 8.5}, {111.5, 20}, {128.5, 26.5}, {128.5, 33}, {140, 44.5}, {190,
			61.5}}},
		// 110 mm are not free at the start, 101 at the end: the ends of the last straight's 100 and the beginning of the first arc
		// are none.
		{"the ends are not free", line(11), func(int) (a, b unit.Millimetre) { return 110, 101 }, []Point{{111.5, 20}, {128.5, 31}}},
		{"150 mm have one", Line{{Length: 150}}, all, []Point{{75, 8.5}}},
		{"more have two", Line{{Length: 160}}, all, []Point{{40, 8.5}, {120, -8.5}}},
		{"301 have three", Line{{Length: 303}}, all, []Point{{50.5, 8.5}, {151.5, -8.5}, {252.5, 8.5}}},
	} {
		if got := pegsAt([]Line{c.l}, []unit.Millimetre{10}, c.free); !samePoints(got, c.want) {
			t.Errorf("%s: %v, by hand %v", c.name, got, c.want)
		}
	}
	// Two runs 4 wide towards each other: the peg of the first is at 5.5, and fills 2.5 to 8.5; that of the other would stand 5.5
	// under it.
	// 14.5 above the first it stands at 9, half a millimetre off the other peg, and so goes to its other side; 17.1 above it stays.
	for y, want := range map[unit.Millimetre]unit.Millimetre{14.5: 20, 16.9: 22.4, 17.1: 11.6} {
		lines := []Line{{{Length: 100}}, {{From: Point{100, y}, Heading: 180, Length: 100}}}
		if got := pegsAt(lines, []unit.Millimetre{4, 4}, all); !samePoints(got, []Point{{50, 5.5}, {50, want}}) {
			t.Errorf("%v apart: %v", y, got)
		}
	}
	// A run without pegs of its own beside the first keeps its peg off where it lies less than 3 + 2 + 0.475 from it: at 10.9, not at 11.
	for y, side := range map[unit.Millimetre]unit.Millimetre{10.9: -5.5, 11: 5.5} {
		lines := []Line{{{Length: 100}}, {{From: Point{0, y}, Length: 100}}}
		none := func(run int) (a, b unit.Millimetre) { return 100 * unit.Millimetre(run), 0 }
		if got := pegsAt(lines, []unit.Millimetre{4, 4}, none); !samePoints(got, []Point{{50, side}}) {
			t.Errorf("beside a run at %v: %v", y, got)
		}
	}
}

// Trees that hang on nothing lie under each other, by hand 100 mm apart or by the room where that is more: measured from what comes
// lowest to what comes highest. The second tree here has a leg of 100 mm to the left, told, and the third one to the right.
func TestTreesUnderEachOther(t *testing.T) {
	for _, room := range []unit.Millimetre{30, 100, 140} {
		p := Lay(Tree{Places: 9, Datum: 1, Room: room, Runs: []Run{{From: 0, To: 1, Length: 300}, {From: 2, To: 3, Length: 200},
			{From: 3, To: 4, Length: 100, Told: true, Turn: 90}, {From: 5, To: 6, Length: 200}, {From: 6, To: 7, Length: 70,
				Told: true, Turn: -90}}})
		gap := max(room, 100)
		want := []Point{{300, 0}, {}, {0, -gap - 100}, {200, -gap - 100}, {200, -gap}, {0, -2*gap - 100}, {200, -2*gap - 100},
			{200, -2*gap - 170}, {}}
		if !samePoints(p.Places, want) {
			t.Errorf("room %v: %v, by hand %v", room, p.Places, want)
		}
		for i, ends := range [][2]int{{0, 1}, {2, 3}, {3, 4}, {5, 6}, {6, 7}} { // the lines go along with their places
			l := p.Lines[i]
			end, _ := l.At(l.Length())
			if l[0].From.To(want[ends[0]]) > 1e-6 || end.To(want[ends[1]]) > 1e-6 {
				t.Errorf("room %v: run %d lies from %v to %v", room, i, l[0].From, end)
			}
		}
	}
}

// What leaves the datum keeps clear of what hangs on the other runs there. By hand: a goes 50 mm along x and on; at its first end a leg
// of 200 mm is told to leave at 135°, back over the datum, along x + y = 50. Of the other ways of the datum the longest goes to the
// left, at 180°, the next to the right, at −45°, and the last one, of 100 mm, would go to the left at 45°: there, and at each angle
// up to 105°, it crosses the leg, and at 120° it comes within 9.5 mm of it. At 135° it lies 50/√2 = 35.4 mm beside it.
func TestWaysOfTheDatumKeepClear(t *testing.T) {
	run := func(from, to int, long unit.Millimetre) Run { return Run{From: from, To: to, Length: long} }
	leg := run(1, 3, 200)
	leg.Told, leg.Turn = true, 135
	p := Lay(Tree{Places: 7, Room: 30, Runs: []Run{run(0, 1, 50), run(1, 2, 300), leg, run(0, 4, 320), run(0, 5, 110), run(0, 6, 100)}})
	d := unit.Millimetre(math.Sqrt2 / 2)
	want := []Point{{}, {50, 0}, {350, 0}, {50 - 200*d, 200 * d}, {-320, 0}, {110 * d, -110 * d}, {-100 * d, 100 * d}}
	if !samePoints(p.Places, want) || len(p.Cross) > 0 {
		t.Errorf("%v, by hand %v; %v cross", p.Places, want, p.Cross)
	}
}

// Runs that cross are named wherever they stand in the list: a run far off from the first comes between it and what crosses it; and
// of a bent run the last piece crosses. Runs that share a place do not cross there.
func TestCrossingsByHand(t *testing.T) {
	straight := func(x, y unit.Millimetre, heading unit.Degree) Line {
		return Line{{From: Point{x, y}, Heading: heading, Length: 100}}
	}
	bent := Line{{From: Point{-300, 300}, Length: 320}, {From: Point{20, 300}, Heading: -90, Length: 320}}
	tree := Tree{Places: 8, Runs: []Run{{From: 0, To: 1}, {From: 2, To: 3}, {From: 4, To: 5}, {From: 6, To: 7}, {From: 1, To: 2}}}
	got := crossings(tree, []Line{straight(0, 0, 0), straight(0, 900, 0), straight(50, -50, 90), bent, straight(100, 0, 0)})
	if want := [][2]int{{0, 2}, {0, 3}}; !slices.Equal(got, want) {
		t.Errorf("%v cross, by hand %v", got, want)
	}
}

// A stiff piece has all runs beyond it, the last one that is reached too: of a trunk of 100 mm and two legs all three, as long as
// they are.
func TestStiffHasAll(t *testing.T) {
	tree := Tree{Places: 4, Room: 20, Runs: []Run{{From: 0, To: 1, Length: 100}, {From: 1, To: 2, Length: 60}, {From: 1, To: 3,
		Length: 30}}}
	l := &layout{Tree: tree, meet: [][]int{{0}, {0, 1, 2}, {1}, {2}}, near: []int{-1, -1, -1}, deep: make([]unit.Millimetre, 3),
		shapes: make([]Line, 3), turns: make([]unit.Degree, 3), side: make([]unit.Degree, 3), leaves: make([]int, 3),
		order: make([][]int, 4)}
	var forward []Line
	for i, r := range tree.Runs {
		line, _ := r.shape(i)
		forward = append(forward, line)
	}
	l.outward(0, forward)
	long := map[int]unit.Millimetre{}
	for _, g := range l.stiff(0).segs {
		long[g.run] += g.a.To(g.b)
	}
	for i, r := range tree.Runs {
		if math.Abs(float64(long[i]-r.Length)) > 1e-9 {
			t.Errorf("run %d is %v long in it, want %v", i, long[i], r.Length)
		}
	}
}

// Of more than 800 runs sectors are taken at once, and what is told holds in them too: a chain along x, whose first run is told to
// leave at 30° and whose last at 40° more.
func TestManyRunsAreFanned(t *testing.T) {
	for n, fanned := range map[int]bool{801: true} {
		tree := Tree{Places: n + 1, Room: 5}
		for k := range n {
			tree.Runs = append(tree.Runs, Run{From: k, To: k + 1, Length: 10})
		}
		tree.Runs[0].Told, tree.Runs[0].Turn = true, 30
		tree.Runs[n-1].Told, tree.Runs[n-1].Turn = true, 40
		p := Lay(tree)
		want := Point{}.Away(30, 10*unit.Millimetre(n-1)).Away(70, 10)
		if p.Fanned != fanned || p.Places[n].To(want) > 1e-6 || p.Turns[0] != 30 || p.Turns[n-1] != 40 || p.Turns[1] != 0 {
			t.Errorf("%d runs: fanned %v, its end at %v, by hand %v", n, p.Fanned, p.Places[n], want)
		}
	}
}

// What a text along a run takes is known for a text, all of it and nothing that lay there before; and a run that leads steeply down,
// told by a heading above 270°, is read from where it begins.
func TestTextAlongIsKnown(t *testing.T) {
	for heading, reads := range map[unit.Degree]unit.Degree{0: 0, 280: 280, 260: 440} {
		var f Field
		line := Line{{Heading: heading, Length: 400}}
		f.Line(line, 2)
		n := len(f.all)
		_, got, ok := f.PutAlong(line, Along{Wide: 200, High: 6, Clear: 5, Stations: []unit.Millimetre{200}})
		if !ok || got != reads || len(f.all) < n+3 { // 194 mm in squares of 80
			t.Errorf("%v: read at %v, %v, %d pieces", heading, got, ok, len(f.all)-n)
		}
		for k, g := range f.all {
			if g.text != (k >= n) {
				t.Errorf("%v: piece %d of %d is a text: %v", heading, k, n, g.text)
			}
		}
	}
	// A half circle of 1 mm has corners too: to 0.02 mm, of 2·acos(0.98) = 22.96° each, eight.
	if points := (Line{{Length: math.Pi, Radius: 1}}).Points(0.02); len(points) != 9 {
		t.Errorf("%d points of a half circle of 1 mm", len(points))
	}
}
