package outline_test

import (
	"math"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"contralay/calc/formula/outline"
	"contralay/model/unit"
)

// long is the length of a line as somebody with a pair of dividers would find it: chords alone,
// so short that what an arc is longer by is far below a thousandth of a millimetre.
func long(l outline.Line) (sum float64) {
	points := l.Points(0.0001)
	for k := 1; k < len(points); k++ {
		sum += math.Hypot(float64(points[k].X-points[k-1].X), float64(points[k].Y-points[k-1].Y))
	}
	return sum
}

// crossed is whether two straight runs meet, by the test of four turns, written without the
// code of the package.
func crossed(a, b [2]outline.Point) bool {
	turn := func(p, q, r outline.Point) float64 { // how far r lies to the left of a way, mm; 0 where it lies on it
		if d := float64((q.X-p.X)*(r.Y-p.Y)-(q.Y-p.Y)*(r.X-p.X)) / float64(p.To(q)); math.Abs(d) > 1e-9 {
			return d
		}
		return 0
	}
	return turn(a[0], a[1], b[0])*turn(a[0], a[1], b[1]) < 0 && turn(b[0], b[1], a[0])*turn(b[0], b[1], a[1]) < 0
}

// trees are random trees of straight runs, in any direction and order.
func trees(t *rapid.T, most int) outline.Tree {
	n := rapid.IntRange(2, most).Draw(t, "runs")
	bushy := rapid.IntRange(1, 8).Draw(t, "bushy")
	tree := outline.Tree{Places: n + 1, Datum: rapid.IntRange(-1, n).Draw(t, "datum"), Room: 30}
	for k := 1; k <= n; k++ {
		r := outline.Run{From: rapid.IntRange(max(0, k-bushy), k-1).Draw(t, "from"), To: k,
			Length: unit.Millimetre(rapid.Float64Range(1, 2000).Draw(t, "length")), Width: unit.Millimetre(rapid.IntRange(0,
				20).Draw(t, "width"))}
		if rapid.Bool().Draw(t, "backward") {
			r.From, r.To = r.To, r.From
		}
		tree.Runs = append(tree.Runs, r)
	}
	return tree
}

// Of 2 to 200 straight runs laid by rule each is as long as it is given, from one of its places to the
// other, and no two cross.
func TestNothingCrossesByRule(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		most := 40
		if rapid.IntRange(0, 9).Draw(t, "large") == 0 {
			most = 200
		}
		tree := trees(t, most)
		p := outline.Lay(tree)
		if len(p.Cross) > 0 || len(p.Trouble) > 0 {
			t.Fatalf("%v cross, troubles %v", p.Cross, p.Trouble)
		}
		ends := make([][2]outline.Point, len(tree.Runs))
		for i, r := range tree.Runs {
			l := p.Lines[i]
			if d := math.Abs(long(l) - float64(r.Length)); d > 0.1 {
				t.Fatalf("run %d is %v long, drawn %v", i, r.Length, long(l))
			}
			points := l.Points(1)
			ends[i] = [2]outline.Point{points[0], points[len(points)-1]}
			if ends[i][0].To(p.Places[r.From]) > 0.001 || ends[i][1].To(p.Places[r.To]) > 0.001 {
				t.Fatalf("run %d lies from %v to %v, its places are %v and %v", i, ends[i][0], ends[i][1], p.Places[r.From],
					p.Places[r.To])
			}
		}
		for i := range ends {
			for k := i + 1; k < len(ends); k++ {
				a, b := tree.Runs[i], tree.Runs[k]
				if a.From != b.From && a.From != b.To && a.To != b.From && a.To != b.To && crossed(ends[i], ends[k]) {
					t.Fatalf("runs %d and %d cross", i, k)
				}
			}
		}
	})
}

// However a run is told to bend it is as long as it is given: by dividers, to 0.1 mm.
func TestBendsKeepTheLength(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		tree := trees(t, 30)
		for i := range tree.Runs {
			r := &tree.Runs[i]
			if rapid.Bool().Draw(t, "told") {
				r.Told, r.Turn = true, unit.Degree(rapid.IntRange(-170, 170).Draw(t, "turn"))
			}
			for range rapid.IntRange(0, 4).Draw(t, "bends") {
				r.Bends = append(r.Bends, outline.Bend{At: unit.Millimetre(rapid.Float64Range(0, 2100).Draw(t, "at")),
					Turn: unit.Degree(rapid.IntRange(-180, 180).Draw(t, "by")), Radius: unit.Millimetre(rapid.IntRange(0,
						300).Draw(t, "radius"))})
			}
		}
		p := outline.Lay(tree)
		for i, r := range tree.Runs {
			if d := math.Abs(long(p.Lines[i]) - float64(r.Length)); d > 0.1 {
				t.Fatalf("run %d is %v long, drawn %v: %+v", i, r.Length, long(p.Lines[i]), r.Bends)
			}
			for _, at := range p.Lines[i].Points(1) {
				if !unit.Finite(float64(at.X)) || !unit.Finite(float64(at.Y)) {
					t.Fatalf("run %d goes to %v", i, at)
				}
			}
		}
		for _, r := range p.Trouble {
			if b := tree.Runs[r.Run].Bends[r.Bend]; r.Past != (b.At > tree.Runs[r.Run].Length) || !r.Past && r.Radius >= b.Radius {
				t.Fatalf("trouble %+v of %+v", r, b)
			}
		}
	})
}

// A square corner drawn by hand: 100 along x, a quarter turn to the left of radius 20 whose
// middle is at 100, then up. Its arc is 20·π/2 = 31.416 long, so the straights end 15.708 before
// and begin as much behind; what is drawn ends at x = 84.292 + 20, y = 20 + 84.292.
func TestQuarterTurn(t *testing.T) {
	p := outline.Lay(outline.Tree{Places: 2, Datum: 0, Runs: []outline.Run{{From: 0, To: 1, Length: 200,
		Bends: []outline.Bend{{At: 100, Turn: 90, Radius: 20}}}}})
	want := 100 - 10*math.Pi/2 + 20
	if at := p.Places[1]; math.Abs(float64(at.X)-want) > 1e-9 || math.Abs(float64(at.Y)-want) > 1e-9 {
		t.Errorf("it ends at %v, by hand (%v, %v)", at, want, want)
	}
	l := p.Lines[0]
	if at, heading := l.At(100); math.Abs(float64(heading)-45) > 1e-9 ||
		at.To(outline.Point{X: unit.Millimetre(want - 20*(1-math.Sqrt2/2)),
			Y: unit.Millimetre(20 * (1 - math.Sqrt2/2))}) > 20 {
		t.Errorf("halfway it is at %v, heading %v", at, heading)
	}
}

// By hand: a trunk of two runs and four legs. The longest way is straight, along x from the
// datum; legs leave to the left and the right in turn at 45 degrees.
func TestTrunkStraightLegsInTurn(t *testing.T) {
	tree := outline.Tree{Places: 7, Datum: 0, Room: 30, Runs: []outline.Run{
		{From: 0, To: 1, Length: 500}, {From: 1, To: 2, Length: 200}, {From: 2, To: 3, Length: 400},
		{From: 1, To: 4, Length: 100}, {From: 2, To: 5, Length: 150}, {From: 2, To: 6, Length: 120}}}
	p := outline.Lay(tree)
	diagonal := func(from outline.Point, far unit.Millimetre, up float64) outline.Point {
		d := far * unit.Millimetre(math.Sqrt2/2)
		return outline.Point{X: from.X + d, Y: d * unit.Millimetre(up)}
	}
	want := []outline.Point{{}, {X: 500}, {X: 700}, {X: 1100}, diagonal(outline.Point{X: 500}, 100, 1),
		diagonal(outline.Point{X: 700}, 150, -1),
		diagonal(outline.Point{X: 700}, 120, 1)}
	for k, at := range p.Places {
		if at.To(want[k]) > 1e-6 {
			t.Errorf("place %d is at %v, by hand %v", k, at, want[k])
		}
	}
	if p.Datum != 0 || p.Fanned {
		t.Errorf("datum %d, fanned %v", p.Datum, p.Fanned)
	}
	for i := range tree.Runs { // from the middle of the way both halves of it are one straight
		tree.Runs[i].From, tree.Runs[i].To = tree.Runs[i].To, tree.Runs[i].From
	}
	tree.Datum = 1
	p = outline.Lay(tree)
	if at := p.Places[3]; at.To(outline.Point{X: 600}) > 1e-6 {
		t.Errorf("from the middle the one end is at %v", at)
	}
	if at := p.Places[0]; at.To(outline.Point{X: -500}) > 1e-6 {
		t.Errorf("from the middle the other end is at %v", at)
	}
}

// What is told crosses where it must, and is named; two that run back over each other too.
func TestWhatIsToldIsNamedWhereItCrosses(t *testing.T) {
	for _, c := range []struct {
		name string
		b    outline.Run
		want [][2]int
	}{
		{"clear", outline.Run{From: 1, To: 3, Length: 200, Told: true, Turn: -90}, nil},
		{"across a leg", outline.Run{From: 2, To: 3, Length: 400, Told: true, Turn: 135}, [][2]int{{2, 3}}},
		{"back over the trunk", outline.Run{From: 2, To: 3, Length: 50, Told: true, Turn: 180}, [][2]int{{1, 3}}},
	} {
		t.Run(c.name, func(t *testing.T) {
			p := outline.Lay(outline.Tree{Places: 5, Datum: 0, Room: 30, Runs: []outline.Run{{From: 0, To: 1, Length: 100},
				{From: 1, To: 2, Length: 100, Told: true}, {From: 1, To: 4, Length: 300, Told: true, Turn: 90}, c.b}})
			if !slices.Equal(p.Cross, c.want) {
				t.Errorf("%v cross, by hand %v", p.Cross, c.want)
			}
		})
	}
}

// Trees that hang on nothing lie under each other, and a tree without runs has no datum.
func TestSeveralTrees(t *testing.T) {
	p := outline.Lay(outline.Tree{Places: 6, Datum: -1, Room: 30, Runs: []outline.Run{{From: 0, To: 1, Length: 300}, {From: 2,
		To: 3, Length: 200},
		{From: 4, To: 5, Length: 100}}})
	if p.Places[0].Y <= p.Places[2].Y+99 || p.Places[2].Y <= p.Places[4].Y+99 || len(p.Cross) > 0 {
		t.Errorf("%v", p.Places)
	}
	if p := outline.Lay(outline.Tree{Places: 2, Datum: -1}); p.Datum != -1 {
		t.Errorf("datum %d of nothing", p.Datum)
	}
}

func BenchmarkLay(b *testing.B) {
	for b.Loop() {
		tree := outline.Tree{Places: 401, Datum: 0, Room: 30}
		for k := 1; k <= 400; k++ {
			tree.Runs = append(tree.Runs, outline.Run{From: (k - 1) * 7 / 8, To: k, Length: unit.Millimetre(50 + k*37%500), Width: 8})
		}
		outline.Lay(tree)
	}
}
