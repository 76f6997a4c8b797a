package drawing

import (
	"fmt"
	"math"
	"slices"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/formula/outline"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
)

// A station by hand: of 1,000 mm of which 400 to 700 are left out, 700 are drawn.
func TestStationsOfABreak(t *testing.T) {
	b := Branch{Measured: true, LengthMM: 1000, Line: outline.Line{{Length: 700}}, Break: model.Some(Break{400, 700})}
	for station, want := range map[unit.Millimetre]unit.Millimetre{-5: 0, 0: 0, 399: 399, 400: 400, 401: 400, 550: 400, 699: 400, 700: 400,
		701: 401, 1000: 700,
		1100: 700} {
		if got := b.Drawn(station); got != want {
			t.Errorf("%v is drawn at %v, want %v", station, got, want)
		}
		if at, _ := b.At(station); at.X != want {
			t.Errorf("%v is drawn at %v", station, at)
		}
	}
	if l := b.Part(300, 800); l.Length() != 200 || l[0].From.X != 300 {
		t.Errorf("300 to 800: %+v", l)
	}
	b.Break = model.Opt[Break]{}
	if got := b.Drawn(550); got != 550 {
		t.Errorf("unbroken, 550 is drawn at %v", got)
	}
	// A branch of no known length is drawn 100 long; nothing of it is left out.
	b = Branch{Line: outline.Line{{Length: 100}}, Break: model.Some(Break{10, 20})}
	if b.Drawn(60) != 60 || b.Drawn(160) != 100 {
		t.Errorf("unmeasured, 60 is drawn at %v", b.Drawn(60))
	}
	if (Break{3, 10}).Long() != 7 {
		t.Error("a break of 3 to 10")
	}
}

// The lay goes from the termination to a diameter before the sorted zone of the breakout.
func TestWhereTheLayIs(t *testing.T) {
	for _, c := range []struct {
		make       model.Make
		laid, over unit.Millimetre
		zones      [2]unit.Millimetre
		want       [2]unit.Millimetre
	}{
		{model.MakeLaid, 90, 5, [2]unit.Millimetre{0, 25}, [2]unit.Millimetre{0, 270}}, {model.MakeLaid, 90, 5, [2]unit.Millimetre{25, 0},
			[2]unit.Millimetre{30, 300}},
		{model.MakeTwisted, 90, 5, [2]unit.Millimetre{10, 0.5}, [2]unit.Millimetre{15, 294.5}}, {model.MakeLaid, 0, 5,
			[2]unit.Millimetre{0, 25}, [2]unit.Millimetre{}},
		{model.MakeLaid, 0.5, 5, [2]unit.Millimetre{0.5, 0}, [2]unit.Millimetre{5.5, 300}},
		{model.MakeStraight, 90, 5, [2]unit.Millimetre{0, 25}, [2]unit.Millimetre{}}, {model.MakeTwisted, 90, 5, [2]unit.Millimetre{},
			[2]unit.Millimetre{0, 300}},
	} {
		if got := laid(&sheet.Branch{Make: c.make, LaidMM: c.laid, OverMM: c.over}, &Branch{LengthMM: 300, Zones: c.zones}); got != c.want {
			t.Errorf("%+v: %v", c, got)
		}
	}
}

// Six branches on a board that is too small. From the datum 0: a 0–1 of 600 along x, b 1–2 of 900 on, c 1–3 of 500 to the left, d 3–4
// of 400 on;
// e 0–5 of 300 the other way; f 5–6 of 260.
func crossTree() (outline.Tree, outline.Plan, *Drawing) {
	var tr outline.Tree
	tr.Places, tr.Datum = 7, 0
	type end struct {
		from, to int
		long     unit.Millimetre
		turn     unit.Degree
	}
	d := &Drawing{}
	for k, e := range []end{{0, 1, 600, 0}, {2, 1, 900, 0}, {1, 3, 500, 90}, {3, 4, 400, 0}, {5, 0, 300, 180}, {5, 6, 260, 0}} {
		tr.Runs = append(tr.Runs, outline.Run{From: e.from, To: e.to, Length: e.long, Turn: e.turn, Told: true})
		d.Branches = append(d.Branches, Branch{ID: fmt.Sprint(k), LengthMM: e.long, Measured: true})
	}
	return tr, outline.Lay(tr), d
}

// What lies between the two points furthest apart: along x from the end of f to the end of b, so f, e, a and b; along y from the
// datum's line
// to the end of d: c and d.
func TestBetweenTheFurthest(t *testing.T) {
	tr, p, _ := crossTree()
	low, high := within(p)
	if low.To(Point{X: -560}) > 1e-6 || high.To(Point{X: 1500, Y: 900}) > 1e-6 {
		t.Fatalf("it lies within %v and %v", low, high)
	}
	if got := between(tr, p, 0); !slices.Equal(got, []int{0, 1, 4, 5}) {
		t.Errorf("along x %v", got)
	}
	if got := between(tr, p, 90); !slices.Equal(got, []int{0, 2, 3}) {
		t.Errorf("along y %v", got)
	}
	if low, high := within(outline.Plan{}); low != high || low != (Point{}) {
		t.Errorf("nothing lies within %v", low)
	}
	off := outline.Plan{Lines: []outline.Line{{{From: Point{X: 5, Y: 7}, Length: 10}}}}
	if low, high := within(off); low != (Point{X: 5, Y: 7}) || high != (Point{X: 15, Y: 7}) {
		t.Errorf("it lies within %v and %v", low, high)
	}
}

// 700 mm are too many along x: b, the longest, gives what it has above 250: 650; a gives the rest, 50 and the millimetre for good measure.
// The middle of each is left out. 100 are given by b alone: 101. Along y c gives them, to 250, then d.
func TestWhatIsLeftOut(t *testing.T) {
	for _, c := range []struct {
		way  unit.Degree
		more unit.Millimetre
		want string
	}{
		{0, 100, "1: 399.5 to 500.5; "},                    // (900 − 101)/2
		{0, 700, "0: 275.0 to 325.0; 1: 125.0 to 775.0; "}, // see below: 51 of a
		{90, 300, "2: 125.0 to 375.0; 3: 174.5 to 225.5; "},
		{90, 249, "2: 125.0 to 375.0; "},
		{0, 5000, "0: 125.0 to 475.0; 1: 125.0 to 775.0; 4: 125.0 to 175.0; 5: 125.0 to 135.0; "},
	} {
		tr, p, d := crossTree()
		if !shorten(tr, p, d, c.way, c.more) {
			t.Fatalf("%v along %v: nothing can be left out", c.more, c.way)
		}
		got := ""
		for i, b := range d.Branches {
			if b.Break.Set {
				got += fmt.Sprintf("%d: %.1f to %.1f; ", i, b.Break.V.From, b.Break.V.To)
			}
			if r := tr.Runs[i]; r.Length+r.Out != b.LengthMM || r.Out != b.Break.V.Long() {
				t.Errorf("run %d is %v long, %v left out of %v", i, r.Length, r.Out, b.LengthMM)
			}
		}
		if c.more == 700 {
			c.want = "0: 274.5 to 325.5; 1: 125.0 to 775.0; "
		}
		if got != c.want {
			t.Errorf("%v along %v: %s, want %s", c.more, c.way, got, c.want)
		}
	}
	// What is broken already, of no known length, or short is not taken; nor what runs across.
	tr, p, d := crossTree()
	d.Branches[1].Break, d.Branches[0].Measured = model.Some(Break{1, 2}), false
	d.Branches[4].Break = model.Some(Break{1, 2})
	d.Branches[5].Measured = false
	if shorten(tr, p, d, 0, 100) {
		t.Error("something is left out")
	}
	// A bend behind what is left out comes nearer; one before it stays. The straight of 700 to the bend at 800 is longer than the one of
	// 150 behind: with a radius of 127.3 a quarter takes 100 before and behind.
	bent := outline.Tree{Places: 2, Datum: 0, Runs: []outline.Run{{To: 1, Length: 1050, Bends: []outline.Bend{{At: 800, Turn: 90,
		Radius: 200 / math.Pi * 2},
		{At: 0, Turn: 0}}}}}
	bd := &Drawing{Branches: []Branch{{LengthMM: 1050, Measured: true}}}
	before := bent.Runs[0].Bends
	if !shorten(bent, outline.Lay(bent), bd, 0, 99) {
		t.Fatal("nothing can be left out")
	}
	if b := bd.Branches[0].Break.V; b.Long() != 100 || math.Abs(float64(b.From-300)) > 1e-6 {
		t.Errorf("%+v is left out", b)
	}
	if r := bent.Runs[0]; r.Bends[0].At != 700 || r.Bends[1].At != 0 || before[0].At != 800 {
		t.Errorf("bends at %+v, before %+v", r.Bends, before)
	}
	// A straight at 60 degrees runs along by half: 100 too many take 201 of it. One at 75 degrees, by 0.26, gives nothing.
	for turn, want := range map[unit.Degree]unit.Millimetre{60: 201, 75: 0, -60: 201, 120: 201} {
		one := outline.Tree{Places: 2, Datum: 0, Runs: []outline.Run{{To: 1, Length: 900, Turn: turn, Told: true}}}
		od := &Drawing{Branches: []Branch{{LengthMM: 900, Measured: true}}}
		shorten(one, outline.Lay(one), od, 0, 100)
		if got := od.Branches[0].Break.V.Long(); math.Abs(float64(got-want)) > 1e-6 {
			t.Errorf("at %v degrees %v is left out, want %v", turn, got, want)
		}
	}
}

// A board of 1,100 by 700 mm for 2,060 by 900: what is most too much is taken first, until it fits; no branch is broken that need not be.
// It is the same where all of it lies below the datum instead of above.
func TestFittedToABoard(t *testing.T) {
	t.Run("above", func(t *testing.T) { fittedToABoard(t, crossTree) })
	t.Run("below", func(t *testing.T) {
		fittedToABoard(t, func() (outline.Tree, outline.Plan, *Drawing) {
			tr, _, d := crossTree()
			for i := range tr.Runs {
				tr.Runs[i].Turn = -tr.Runs[i].Turn
			}
			return tr, outline.Lay(tr), d
		})
	})
}

func fittedToABoard(t *testing.T, tree func() (outline.Tree, outline.Plan, *Drawing)) {
	t.Helper()
	h := calctest.Parse(t, "format = 1\n")
	h.Board.WidthMM, h.Board.HeightMM = model.Some[unit.Millimetre](1100), model.Some[unit.Millimetre](700)
	s := calc.Complete(h, calctest.Catalogue(t), nil)
	tr, _, d := tree()
	p := fitted(s, tr, d)
	low, high := within(p)
	if high.X-low.X > 1100 || high.Y-low.Y > 700 || len(d.Notes) > 0 || d.Large {
		t.Errorf("it is %v by %v: %+v", high.X-low.X, high.Y-low.Y, d.Notes)
	}
	out := unit.Millimetre(0)
	for _, i := range []int{0, 1, 4, 5} {
		out += d.Branches[i].Break.V.Long()
	}
	if out < 960 || out > 962+4 {
		t.Errorf("%v are left out along x, 960 are too many", out)
	}
	if out := d.Branches[2].Break.V.Long() + d.Branches[3].Break.V.Long(); out < 200 || out > 202 {
		t.Errorf("%v are left out along y, 200 are too many", out)
	}
	// On a board of that very size nothing is.
	h.Board.WidthMM, h.Board.HeightMM = model.Some[unit.Millimetre](2060), model.Some[unit.Millimetre](900)
	s = calc.Complete(h, calctest.Catalogue(t), nil)
	tr, _, d = tree()
	if fitted(s, tr, d); slices.ContainsFunc(d.Branches, func(b Branch) bool { return b.Break.Set }) || len(d.Notes) > 0 {
		t.Errorf("%+v", d.Notes)
	}
	h.Board.HeightMM = model.Some[unit.Millimetre](100)
	s = calc.Complete(h, calctest.Catalogue(t), nil)
	tr, _, d = tree()
	fitted(s, tr, d)
	want := "The drawing is 2060 x 500 mm and does not fit on 2060 x 100 mm, however it is broken. " +
		"Bend it, or let branches leave at other angles"
	if len(d.Notes) != 1 || d.Notes[0] != (Note{"drawing", want}) || d.Large {
		t.Errorf("%+v", d.Notes)
	}
}

// What everything lies within: a line of 100 with a width of 10, an end 40 wide that reaches 30 on and 20 back, a peg of 6 below.
func TestBoundsByHand(t *testing.T) {
	d := Drawing{Branches: []Branch{{Line: outline.Line{{Length: 100}}, WidthMM: 10}}}
	d.bounds()
	if d.Low != (Point{X: -5, Y: -5}) || d.High != (Point{X: 105, Y: 5}) {
		t.Errorf("a line: %v %v", d.Low, d.High)
	}
	d.Ends = []End{{At: Point{X: 100}, WideMM: 40, FrontMM: 30, BackMM: 20}}
	d.bounds()
	if d.Low != (Point{X: -5, Y: -20}) || d.High != (Point{X: 130, Y: 20}) {
		t.Errorf("with an end: %v %v", d.Low, d.High)
	}
	d.Ends[0].At = Point{X: 0}
	d.Ends[0].Heading = 180
	d.Ends[0].BackMM = 120
	d.bounds()
	if d.Low != (Point{X: -30, Y: -20}) || d.High != (Point{X: 120, Y: 20}) {
		t.Errorf("with an end the other way: %v %v", d.Low, d.High)
	}
	d.Pegs, d.PegMM = []Peg{{At: Point{X: 200, Y: -50}}}, 6
	d.bounds()
	if d.Low != (Point{X: -30, Y: -53}) || d.High != (Point{X: 203, Y: 20}) {
		t.Errorf("with a peg: %v %v", d.Low, d.High)
	}
	away := Drawing{Branches: []Branch{{Line: outline.Line{{From: Point{X: 50, Y: 60}, Length: 10}}, WidthMM: 2}}}
	away.bounds()
	if away.Low != (Point{X: 49, Y: 59}) || away.High != (Point{X: 61, Y: 61}) {
		t.Errorf("away from the datum: %v %v", away.Low, away.High)
	}
	if e := (End{BackMM: 5, BootMM: 30}); e.tail() != 35 {
		t.Errorf("its boot reaches %v back", e.tail())
	}
	if e := (End{BackMM: -40, BootMM: 30}); e.tail() != 0 {
		t.Errorf("its boot lies beyond the datum: %v", e.tail())
	}
}

// Ends, breakouts, splices and labels of a loom, by hand. T1 of 450 from P1 to J1, L1 of 300 from A to J1, L2 of 40 from J1 to B; the
// datum is P1.
// A stands at 450 + 300 and looks the other way than its branch runs. The splice toward L1 lies 55 from J1, which is 245 from A; the other
// one lies at the centre of its breakout. L2 is too short for a label 25 to 50 from the end: it lies 12.5 to both sides of its middle.
func TestThingsByHand(t *testing.T) {
	text := `format = 1
[board]
datum = "P1"
peg_mm = 5.0
[[termination]]
id = "P1"
name = "sensor"
part_mm = 25.0
[[termination]]
id = "A"
[[termination]]
id = "B"
[[termination]]
id = "X"
[[breakout]]
id = "J1"
name = "fork"
zone_mm = 150.0
transition = "tee"
[[breakout]]
id = "J2"
[[splice]]
id = "S1"
at = "J1"
toward = "L1"
offset_mm = 55.0
[[splice]]
id = "S2"
at = "J1"
[[splice]]
id = "S3"
at = "J2"
[[branch]]
id = "T1"
from = "P1"
to = "J1"
length_mm = 450.0
[[branch]]
id = "L1"
from = "A"
to = "J1"
length_mm = 300.0
[[branch]]
id = "L2"
from = "J1"
to = "B"
length_mm = 40.0
`
	h := calctest.Parse(t, text)
	s := calc.Complete(h, calctest.Catalogue(t), nil)
	s.Branches[1].OverMM = 7 // so much is laid in it
	s.Branches[0].OverMM = 6
	d := Of(s)
	ends := ""
	for _, e := range d.Ends {
		ends += fmt.Sprintf("%d %s %q at %.0f %.0f wide %.0f front %.0f back %.0f boot %.0f guess %v branches %d; ", e.Term, e.ID, e.Name,
			e.At.X, math.Round(float64(e.At.Y)),
			e.WideMM, e.FrontMM, e.BackMM, e.BootMM, e.Guess, e.Branches)
	}
	// B is 40·√½ = 28 off to both.
	want := `0 P1 "sensor" at 0 0 wide 20 front 25 back 0 boot 0 guess true branches 1; ` +
		`1 A "" at 750 0 wide 20 front 30 back 0 boot 0 guess true branches 1; ` +
		`2 B "" at 478 28 wide 20 front 30 back 0 boot 0 guess true branches 1; `
	if ends != want {
		t.Errorf("%s\nwant\n%s", ends, want)
	}
	for k, heading := range []float64{180, 0, 45} {
		if math.Abs(math.Remainder(float64(d.Ends[k].Heading)-heading, 360)) > 1e-9 {
			t.Errorf("%s looks %v, want %v", d.Ends[k].ID, d.Ends[k].Heading, heading)
		}
	}
	if len(d.Joints) != 1 || d.Joints[0] != (Joint{ID: "J1", Name: "fork", At: d.Joints[0].At, Transition: "tee", WideMM: 7}) ||
		d.Joints[0].At.To(Point{X: 450}) > 1e-6 {
		t.Errorf("%+v", d.Joints)
	}
	if len(d.Sleeves) != 2 {
		t.Fatalf("%+v", d.Sleeves)
	}
	if v := d.Sleeves[0]; v.ID != "S1" || v.Branch != "L1" || v.Station != 245 || v.At.To(Point{X: 505}) > 1e-6 || v.LongMM != 20 ||
		v.WideMM != 5 {
		t.Errorf("%+v", v)
	}
	if v := d.Sleeves[1]; v.ID != "S2" || v.Branch != "" || v.Station != 450 || v.At.To(Point{X: 450}) > 1e-6 {
		t.Errorf("%+v", v)
	}
	for i, w := range []struct {
		zones [2]unit.Millimetre
		wide  unit.Millimetre
		guess bool
		near  string
		turn  unit.Degree
	}{{[2]unit.Millimetre{0, 150}, 6, false, "P1", 0}, {[2]unit.Millimetre{0, 150}, 7, false, "J1", 0}, {[2]unit.Millimetre{20, 0}, 4,
		true, "J1", 45}} {
		if b := d.Branches[i]; b.Zones != w.zones || b.WidthMM != w.wide || b.Guess != w.guess || b.Near != w.near || b.Turn != w.turn ||
			b.Told ||
			b.BundleMM != s.Branches[i].OverMM || !b.Measured {
			t.Errorf("%+v", b)
		}
	}
	var says []string
	for _, n := range d.Notes {
		says = append(says, n.Where+": "+n.Says)
	}
	if want := []string{"X: X has no branch, so it is not on the drawing", "J2: J2 has no branch, so it is not on the drawing",
		"L2: The OD of L2 is not known: it is drawn 4 mm wide"}; !slices.Equal(says, want) {
		t.Errorf("%q", says)
	}
	for n, p := range d.Pegs {
		if p.No != n+1 || p.Branch == 0 && (p.At.X < 10 || p.At.X > 300) { // clear of P1 by 10, of the zone by 150
			t.Errorf("%+v", p)
		}
	}
	if d.PegMM != 5 || len(d.Pegs) == 0 || d.Keyed || d.Datum != "P1" {
		t.Errorf("%d pegs of %v", len(d.Pegs), d.PegMM)
	}
	var l Drawing
	l.Branches, l.Ends = d.Branches, d.Ends
	l.labels(s)
	for _, w := range []struct {
		of       string
		from, to unit.Millimetre
		branch   int
	}{{"P1", 25, 50, 0}, {"A", 25, 50, 1}, {"B", 7.5, 32.5, 2}} {
		if k := slices.IndexFunc(l.Labels, func(x Label) bool { return x.Of == w.of }); k >= 0 {
			if got := l.Labels[k]; got.From != w.from || got.To != w.to || got.Branch != w.branch ||
				got.WideMM < d.Branches[w.branch].WidthMM {
				t.Errorf("%+v, want %+v", got, w)
			}
		}
	}
}
