package board

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"contralay/calc/calctest"
	"contralay/calc/formula/outline"
	"contralay/calc/query/drawing"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
	"contralay/ui/paper/font"
	"contralay/ui/paper/plot"
)

// What a flag takes, by hand: as wide as its widest line, the first of them heavy, and 1.25 sizes a line; a sixth of
// the size is left free all round at full size, a tenth to scale. An id alone is 1.02 sizes high.
func TestWhatAFlagTakes(t *testing.T) {
	const size = 6
	f := flag{of: plot.Point{X: 1, Y: 2}, or: []plot.Point{{X: 3}}, clear: 7, toward: 30, size: size, lines: []string{"loom", "loom", "i"}}
	heavy, plain := font.Of(true).Width("loom", size), font.Of(false).Width("loom", size)
	if heavy <= plain {
		t.Fatalf("heavy letters are %v wide, plain ones %v", heavy, plain)
	}
	for what, c := range map[string]struct {
		full       bool
		change     func(f *flag)
		wide, high unit.Millimetre
	}{
		"three lines":       {true, func(*flag) {}, heavy + 2, 3*7.5 + 2},
		"to scale":          {false, func(*flag) {}, heavy + 1.2, 3*7.5 + 1.2},
		"plain":             {true, func(f *flag) { f.plain = true }, plain + 2, 3*7.5 + 2},
		"the second widest": {true, func(f *flag) { f.lines = []string{"i", "loom"} }, plain + 2, 2*7.5 + 2},
		"an id":             {false, func(f *flag) { f.id, f.lines = true, f.lines[:1] }, heavy + 1.2, 6.12 + 1.2},
	} {
		g := f
		c.change(&g)
		got := blank(1, c.full).frameOf(g)
		want := outline.Frame{Of: f.of, Or: f.or, Wide: c.wide, High: c.high, Clear: 7, Toward: 30}
		if num(float64(got.Wide)) != num(float64(c.wide)) || num(float64(got.High)) != num(float64(c.high)) {
			t.Errorf("%s: %v x %v, by hand %v x %v", what, got.Wide, got.High, c.wide, c.high)
		}
		got.Wide, got.High = want.Wide, want.High
		if fmt.Sprint(got) != fmt.Sprint(want) {
			t.Errorf("%s: %v, want %v", what, got, want)
		}
	}
}

// Where words stand in their box from (10, 20) to (40, 50), by hand, in letters of 6 mm: the air in from the left, and
// below the top by the air, a capital and 0.15 sizes, an id by 0.08; lines are 1.25 sizes apart, the first heavy.
func TestWordsInTheirBox(t *testing.T) {
	box := plot.Box{Low: plot.Point{X: 10, Y: 20}, High: plot.Point{X: 40, Y: 50}}
	const capital = 6 * 1480.0 / 2048 // 4.336
	for _, c := range []struct {
		full bool
		f    flag
		want []string
	}{
		{true, flag{lines: []string{"A", "B", "C"}}, []string{`text bold 6 at 11,43.764 "A"`, `text 6 at 11,36.264 "B"`,
			`text 6 at 11,28.764 "C"`}},
		{true, flag{lines: []string{"A", "B"}, plain: true}, []string{`text 6 at 11,43.764 "A"`, `text 6 at 11,36.264 "B"`}},
		{false, flag{lines: []string{"A"}}, []string{`text bold 6 at 10.6,44.164 "A"`}},
		{false, flag{lines: []string{"A"}, id: true}, []string{`text bold 6 at 10.6,44.584 "A"`}},
	} {
		canvas := blank(1, c.full)
		c.f.size, c.f.layer = 6, plot.TextLayer
		canvas.writeIn(c.f, box)
		same(t, fmt.Sprintf("%+v", c.f), canvas.out.Shapes, c.want...)
	}
	if got := 50 - 1 - capital - 0.9; num(got) != "43.764" {
		t.Errorf("by hand %v", got)
	}
}

// A flag is written in the nearest place that a field with the same on it gives, and takes that; a fine line leads to it where it is
// far off. Nothing is written of no words.
func TestAFlagIsWritten(t *testing.T) {
	for _, taken := range []bool{false, true} {
		c := blank(1, true)
		var field outline.Field
		if taken { // a square of 40 mm round its point: the flag moves away, and is led
			b := plot.Box{Low: plot.Point{X: -20, Y: -20}, High: plot.Point{X: 20, Y: 20}}
			c.field.Take(b)
			field.Take(b)
		}
		f := flag{clear: 2, toward: 90, size: 6, lines: []string{"LOOM"}, layer: plot.TextLayer}
		wide := font.Of(true).Width("LOOM", 6)
		box, of, led := field.Put(outline.Frame{Wide: wide + 2, High: 9.5, Clear: 2, Toward: 90})
		if led != taken {
			t.Fatalf("it is led: %v", led)
		}
		var want []string
		if led {
			want = append(want, "lead 0.13: "+pt(box.Near(of))+" 0,0")
		}
		want = append(want, fmt.Sprintf("text bold 6 at %s %q", pt(plot.Point{X: box.Low.X + 1,
			Y: box.High.Y - 1 - 6*(font.CapShare+0.15)}), "LOOM"))
		c.write(f)
		same(t, "flag", c.out.Shapes, want...)
		if c.field.Free(box) {
			t.Error("its place is not taken")
		}
		c.write(flag{size: 6, lines: []string{""}})
		c.write(flag{size: 6})
		if len(c.out.Shapes) != len(want) {
			t.Error("something is drawn of no words")
		}
	}
}

// Flags are written by rank, and those of one rank in the order in which they came: fixed ones, numbers, branches, things, stations.
func TestOrderOfFlags(t *testing.T) {
	c := blank(1, true)
	for k, r := range []rank{station, thing, number, branch, fixed, thing} {
		c.later(flag{rank: r, of: plot.Point{X: unit.Millimetre(100 * k)}, size: 3, lines: []string{fmt.Sprint(k)}})
	}
	c.flags()
	var got []string
	for _, s := range c.out.Shapes {
		got = append(got, s.Text)
	}
	if strings.Join(got, "") != "423150" {
		t.Errorf("written in the order %v", got)
	}
	c = blank(1, false) // to scale no letter is smaller than the others
	c.later(flag{size: 3})
	c.later(flag{size: 9})
	if c.waiting[0].size != 4 || c.waiting[1].size != 9 {
		t.Errorf("%v and %v", c.waiting[0].size, c.waiting[1].size)
	}
}

// forked is a loom of three branches: T1 of 400 mm from P1 to J, L1 of 200 from J to A, L2 of 100 with a tolerance from J to B.
func forked(t *testing.T) *sheet.Sheet {
	return calctest.Built(t, `format = 1
[[termination]]
id = "P1"
[[termination]]
id = "A"
[[termination]]
id = "B"
[[breakout]]
id = "J"
[[branch]]
id = "T1"
from = "P1"
to = "J"
length_mm = 400.0
[[branch]]
id = "L1"
from = "J"
to = "A"
length_mm = 200.0
[[branch]]
id = "L2"
from = "J"
to = "B"
length_mm = 100.0
tolerance_mm = [1.0, 5.0]
`)
}

// What a branch says of itself at its middle, by hand, and where else it may: at 0.4, 0.6, 0.3 … of its length. It lies on
// the side that is up; its bends say their radius on their inside.
func TestABranchSaysWhatItIs(t *testing.T) {
	s := forked(t)
	full := drawing.Branch{ID: "L2", Line: outline.Line{{Heading: 180, Length: 100}}, LengthMM: 100, Measured: true, BundleMM: 16,
		WidthMM: 20,
		Covers:  []drawing.Cover{{What: "sheath", Part: "S-1", OverMM: 18}, {What: "tape"}},
		Bends: []drawing.Bend{{Station: 20, Turn: 30, Radius: 25}, {Station: 40, Radius: 26}, {Station: 100, Turn: -90, Radius: 27},
			{Station: 101, Turn: 5, Radius: 28}},
		Break: model.Some(drawing.Break{From: 30, To: 80})}
	mm := func(v unit.Millimetre) string { return unit.MM.Length(v) }
	const or = " or -20,0 or -30,0 or -15,0 or -35,0 or -10,0 or -40,0 text"
	for _, c := range []struct {
		what   string
		full   bool
		change func(b *drawing.Branch)
		want   []string
	}{
		{"full size", true, func(*drawing.Branch) {}, []string{
			`rank 2 of -25,0 clear 6 toward 90 size 4 ["L2  ` + mm(100) + ` mm -` + mm(1) + ` +` + mm(5) + `" "OD ` + unit.MM.Diameter(16) +
				`, over sheath ` + unit.MM.Diameter(18) + `" "sheath S-1" "tape" "shown broken: ` + mm(50) + ` mm left out"]` + or,
			// station 20 is drawn at 20, 40 in the break at 30 and does not turn, 100 at 50; the left of 180° is −90 or 270°
			`rank 3 of -10,0 clear 6 toward 270 size 3.2 ["R ` + mm(25) + `"] plain text`,
			`rank 3 of -25,0 clear 6 toward 90 size 3.2 ["R ` + mm(27) + `"] plain text`}},
		{"to scale", false, func(b *drawing.Branch) { b.Bends, b.Break = nil, model.Opt[drawing.Break]{} }, []string{
			`rank 2 of -25,0 clear 6 toward 90 size 4 ["L2  ` + mm(100) + ` -` + mm(1) + ` +` + mm(5) + `"]` + or}},
		{"unknown", true, func(b *drawing.Branch) {
			b.ID, b.Measured, b.BundleMM, b.Covers, b.Bends, b.Break = "L1", false, 0, nil, nil, model.Opt[drawing.Break]{}
		}, []string{`rank 2 of -25,0 clear 6 toward 90 size 4 ["L1  no length"]` + or}},
		{"without a tolerance", true, func(b *drawing.Branch) {
			b.ID, b.Covers, b.Bends, b.Break = "L1", nil, nil, model.Opt[drawing.Break]{}
		}, []string{`rank 2 of -25,0 clear 6 toward 90 size 4 ["L1  ` + mm(100) + ` mm" "OD ` + unit.MM.Diameter(16) + `"]` + or}},
	} {
		canvas, b := blank(0.5, c.full), full
		if c.what != "full size" {
			b.Line[0].Length = 100
		} else { // 50 mm are left out
			b.Line[0].Length = 50
			canvas.Scale, b.WidthMM = 1, 10
		}
		canvas.s = s
		c.change(&b)
		canvas.branchFlag(&b)
		want := slices.Clone(c.want)
		if c.what == "full size" {
			want[1] = strings.Replace(want[1], "of -10,0", "of -20,0", 1)
			want[2] = strings.Replace(want[2], "of -25,0", "of -50,0", 1)
		}
		waits(t, c.what, canvas, want...)
	}
	canvas := blank(1, true)
	canvas.s = s
	thin := drawing.Branch{ID: "L1", LengthMM: 200, Measured: true, BundleMM: 0.5, Covers: []drawing.Cover{{What: "tape", OverMM: 0.8}}}
	if canvas.branchFlag(&thin); canvas.waiting[0].lines[1] != "OD "+unit.MM.Diameter(0.5)+", over tape "+unit.MM.Diameter(0.8) {
		t.Errorf("%q", canvas.waiting[0].lines)
	}
	for heading, want := range map[unit.Degree]unit.Degree{0: 90, 80: 170, 100: 10, 180: 90, -80: 10, 260: 170} {
		if got := upright(heading); got != want {
			t.Errorf("the upper side of %v is %v, want %v", heading, got, want)
		}
	}
}

// A text along a branch of 200 mm, by hand: its box begins 0.6 mm off the bundle's edge at 5 mm, half a millimetre before
// the letters; their base is 0.24 sizes above its lower edge. Where the middle is taken the text stands at 0.4 of the branch.
func TestTextAlongABranch(t *testing.T) {
	text := "L1  " + unit.MM.Length(200)
	wide := font.Of(true).Width(text, 4)
	for _, c := range []struct {
		what  string
		taken []unit.Millimetre // middles of what lies on both sides of the branch
		at    float64           // of 100 mm of paper; 0: it has no room
	}{
		{"free", nil, 0.5}, {"the middle taken", []unit.Millimetre{56}, 0.4},
		{"the left taken", []unit.Millimetre{40, 45}, 0.6}, {"both", []unit.Millimetre{50, 60, 70}, 0.3},
		{"the left half", []unit.Millimetre{20, 30, 40, 50, 58}, 0.7}, {"all but the start", []unit.Millimetre{40, 50, 60, 70, 80, 90},
			0.2},
		{"all but the end", []unit.Millimetre{10, 20, 30, 40, 50, 60, 64}, 0.8}, {"all",
			[]unit.Millimetre{10, 20, 30, 40, 50, 60, 70, 80, 90}, 0},
	} {
		canvas, b := blank(0.5, false), eastward()
		canvas.s, b.ID = forked(t), "L1"
		for _, x := range c.taken {
			canvas.field.Take(plot.Box{Low: plot.Point{X: x - 4, Y: -15}, High: plot.Point{X: x + 4, Y: 15}})
		}
		ok := canvas.along(&b)
		if ok != (c.at > 0) {
			t.Errorf("%s: it has room: %v", c.what, ok)
			continue
		}
		var want []string
		if ok {
			want = []string{fmt.Sprintf("text bold 4 at %s %q", pt(plot.Point{X: unit.Millimetre(100*c.at) - (wide+1)/2 + 0.5,
				Y: 5.6 + 0.96}), text)}
		}
		same(t, c.what, canvas.out.Shapes, want...)
	}
	canvas, b := blank(0.5, false), eastward()
	canvas.s, b.ID, b.Break = forked(t), "L1", model.Some(drawing.Break{From: 50, To: 60})
	if canvas.along(&b) || len(canvas.out.Shapes) > 0 {
		t.Error("a text lies along what is broken")
	}
}

// A leg is named with the termination at its end, which is not its near end, where both have room close to that: the flag of A
// gets a second line, is written and waits no more.
func TestALegIsNamedWithItsEnd(t *testing.T) {
	leg := func() (*canvas, drawing.Branch) {
		c := blank(1, false)
		c.s = forked(t)
		for k, end := range []string{"", "P1", "J", "A"} {
			c.later(flag{of: plot.Point{X: unit.Millimetre(100 * k)}, clear: 2, size: 4, lines: []string{"end " + end}, end: end,
				layer: plot.TextLayer})
		}
		return c, drawing.Branch{ID: "L1", Near: "J", Measured: true, LengthMM: 200}
	}
	c, b := leg()
	if !c.withEnd(&b) || len(c.waiting) != 3 || c.waiting[2].end != "J" {
		t.Fatalf("%+v", c.waiting)
	}
	// Its box begins 2 mm to the right of (300, 0) and is 2 · 5 + 0.8 mm high: its top at 5.4, the air 0.4, a capital 2.891 and 0.6.
	same(t, "the leg", c.out.Shapes, `text bold 4 at 302.4,1.509 "end A"`, fmt.Sprintf("text 4 at 302.4,-3.491 %q",
		"L1  "+unit.MM.Length(200)))
	if c.field.Free(plot.Box{Low: plot.Point{X: 303, Y: -1}, High: plot.Point{X: 304, Y: 1}}) {
		t.Error("its place is not taken")
	}
	c, b = leg()
	c.field.Take(plot.Box{Low: plot.Point{X: 260, Y: -60}, High: plot.Point{X: 400, Y: 60}})
	if c.withEnd(&b) || len(c.waiting) != 4 || len(c.waiting[3].lines) != 1 || len(c.out.Shapes) != 0 {
		t.Errorf("without room: %+v", c.waiting)
	}
	c, b = leg()
	b.Break = model.Some(drawing.Break{From: 50, To: 60})
	if c.withEnd(&b) || len(c.out.Shapes) != 0 {
		t.Error("what is broken is named at its end")
	}
	c, b = leg()
	b.ID, b.Near = "T1", "J" // the other way round: from is its far end
	if !c.withEnd(&b) || c.out.Shapes[0].Text != "end P1" {
		t.Error("T1 is not named at P1")
	}
}

// Where a text is tried, by hand: toward its way first and then 20° to both sides, 40° …, and then 1 mm farther off; all of it
// lies beyond its point by the clear way.
func TestNearestRoom(t *testing.T) {
	f := outline.Frame{Of: plot.Point{X: 10, Y: 20}, Wide: 6, High: 2, Clear: 3}
	take := func(c *canvas, x, y unit.Millimetre) {
		c.field.Take(plot.Box{Low: plot.Point{X: x - 0.1, Y: y - 0.1}, High: plot.Point{X: x + 0.1, Y: y + 0.1}})
	}
	at := func(turn unit.Degree, far unit.Millimetre) plot.Point {
		u := plot.Point{}.Away(turn, 1)
		return plot.Point{X: 10 + u.X*(far+3), Y: 20 + u.Y*(far+1)}
	}
	c := blank(1, false)
	n := 0
	for far := unit.Millimetre(3); far <= 5; far++ {
		for _, turn := range []unit.Degree{0, 20, -20, 40, -40, 60, -60, 80, -80} {
			box, ok := c.near(f, 2)
			want := at(turn, far)
			if !ok || box.Middle().To(want) > 1e-9 || num(float64(box.High.X-box.Low.X)) != "6" ||
				num(float64(box.High.Y-box.Low.Y)) != "2" {
				// what took the places before may cover this one as well; then it is not free
				if c.field.Free(plot.Box{Low: want.Minus(plot.Point{X: 3, Y: 1}), High: want.Plus(plot.Point{X: 3, Y: 1})}) {
					t.Fatalf("%v° and %v mm off: %v, %v, want round %v", turn, far, box, ok, want)
				}
				continue
			}
			n++
			// The corner of the box that no later one of this distance reaches would be much to find: its middle is taken.
			take(c, want.X, want.Y)
		}
	}
	if n < 8 {
		t.Errorf("only %d places were tried", n)
	}
	full := blank(1, false)
	full.field.Take(plot.Box{Low: plot.Point{X: -10}, High: plot.Point{X: 30, Y: 40}})
	if box, ok := full.near(f, 2); ok || box != (plot.Box{}) {
		t.Errorf("%v, %v", box, ok)
	}
}

// The ids of ends in small: beyond their end by 1 mm, in a box 0.9 sizes high, the base 0.12 sizes up; one without room within 3 mm is
// left out.
func TestIdsInSmall(t *testing.T) {
	c := blank(0.5, false)
	c.Small = true
	c.d.Ends = []drawing.End{{ID: "AB", At: plot.Point{X: 100, Y: 10}, FrontMM: 8}, {ID: "AB", At: plot.Point{X: 100, Y: 10}, FrontMM: 8},
		{ID: "X", At: plot.Point{X: -200}}, {ID: "Y", At: plot.Point{X: 300}, Heading: 90}}
	c.field.Take(plot.Box{Low: plot.Point{X: -120, Y: -20}, High: plot.Point{X: -80, Y: 20}})
	c.field.Take(plot.Box{Low: plot.Point{X: 54, Y: -20}, High: plot.Point{X: 80, Y: 3}}) // below the first
	c.flags()
	// The first begins at (54 + 1, 5), 3.6 mm high: from 3.2; its base is 0.48 higher. The second has no room there.
	if got := stroke(c.out.Shapes[0]); got != `text 4 at 55,3.68 "AB"` {
		t.Error(got)
	}
	last := c.out.Shapes[len(c.out.Shapes)-1]
	wide := textWide("Y", 4)
	if got := stroke(last); got != fmt.Sprintf("text 4 at %s %q", pt(plot.Point{X: 150 - wide/2, Y: 1 + 0.48}), "Y") {
		t.Error(got)
	}
	for _, s := range c.out.Shapes {
		if s.Text == "X" {
			t.Error("X has no room")
		}
	}
	if c.field.Free(plot.Box{Low: plot.Point{X: 150, Y: 2}, High: plot.Point{X: 151, Y: 3}}) {
		t.Error("the place of Y is not taken")
	}
}

// Which flags come first to scale: of breakouts and splices, after what has room along its branch; a leg is named along itself or at its
// end, and
// has a flag of its own where neither has room.
func TestFlagsToScale(t *testing.T) {
	c := blank(1, false)
	c.s = forked(t)
	c.d.Branches = []drawing.Branch{
		{ID: "T1", Line: outline.Line{{Length: 400}}, LengthMM: 400, Measured: true, WidthMM: 8, Near: "P1"},
		{ID: "L1", Line: outline.Line{{From: plot.Point{X: 400}, Length: 200}}, LengthMM: 200, Measured: true, WidthMM: 4, Near: "J"},
		{ID: "L2", Line: outline.Line{{From: plot.Point{X: 400}, Heading: 90, Length: 20}}, LengthMM: 100, Measured: true, WidthMM: 4,
			Near: "J"}}
	c.later(flag{of: plot.Point{X: 420, Y: 21}, clear: 1, toward: 90, size: 4, lines: []string{"B"}, end: "B"})
	c.later(flag{rank: station, of: plot.Point{X: 900}, size: 4, lines: []string{"last"}})
	c.later(flag{of: plot.Point{X: 400}, clear: 3, toward: -90, size: 4, lines: []string{"J"}, id: true})
	c.later(flag{rank: thing, of: plot.Point{X: 100}, clear: 3, toward: -90, size: 4, lines: []string{"S"}, id: true})
	c.flags()
	var got []string
	for _, s := range c.out.Shapes {
		if s.Text != "" {
			got = append(got, strings.Fields(s.Text)[0])
		}
	}
	// All three are legs: each has an end of its own.
	if strings.Join(got, " ") != "S J T1 L1 B L2 last" {
		t.Errorf("in the order %v", got)
	}
	c = blank(1, true)
	c.s = forked(t)
	c.d.Branches = []drawing.Branch{{ID: "T1", Line: outline.Line{{Length: 400}}, LengthMM: 400, Measured: true, WidthMM: 8, Near: "P1"}}
	c.flags()
	if s := c.out.Shapes[0]; !strings.HasPrefix(s.Text, "T1") || s.Middle.Y < 5 || !s.Bold {
		t.Errorf("at full size %s", stroke(s))
	}
}
