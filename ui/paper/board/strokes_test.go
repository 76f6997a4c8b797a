package board

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"contralay/calc/calctest"
	"contralay/calc/formula/outline"
	"contralay/calc/query/drawing"
	"contralay/model"
	"contralay/model/unit"
	"contralay/ui/paper/plot"
)

// num is a number to a thousandth, without noughts at its end.
func num(v float64) string {
	return strings.TrimPrefix(strings.TrimSuffix(strings.TrimRight(fmt.Sprintf("%.3f", v+1e-9), "0"), "."), "\x00")
}

func pt(p plot.Point) string { return num(float64(p.X)) + "," + num(float64(p.Y)) }

// stroke is a shape in one line: its layer, how wide its line is and how it is dashed, how it is filled, where it runs.
func stroke(s plot.Shape) string {
	out := strings.ToLower(string(s.Layer))
	if s.Line.Wide != 0 {
		out += " " + num(float64(s.Line.Wide))
	}
	if s.Line.Dash != nil {
		out += fmt.Sprint(" dash", s.Line.Dash)
	}
	if s.Fill != plot.None {
		out += " " + []string{"", "white", "light", "middle", "black"}[s.Fill]
	}
	switch {
	case s.Text != "":
		if s.Bold {
			out += " bold"
		}
		if s.Turn != 0 {
			out += " turned " + num(float64(s.Turn))
		}
		return fmt.Sprintf("%s %s at %s %q", out, num(float64(s.Size)), pt(s.Middle), s.Text)
	case len(s.Way) == 0:
		return out + " disc " + pt(s.Middle) + " r " + num(float64(s.Radius))
	}
	if s.Closed {
		out += " closed"
	}
	out += ":"
	for _, p := range s.Way {
		out += " " + pt(p)
	}
	return out
}

// same compares what is drawn with lines that were worked out by hand.
func same(t *testing.T, what string, got []plot.Shape, want ...string) {
	t.Helper()
	var all []string
	for _, s := range got {
		all = append(all, stroke(s))
	}
	if !slices.Equal(all, want) {
		t.Errorf("%s:\n%s\nwant\n%s", what, strings.Join(all, "\n"), strings.Join(want, "\n"))
	}
}

// note is a flag that waits, in one line.
func note(f flag) string {
	out := fmt.Sprintf("rank %d of %s clear %s toward %s size %s %q", f.rank, pt(f.of), num(float64(f.clear)), num(float64(f.toward)),
		num(float64(f.size)), f.lines)
	for _, p := range f.or {
		out += " or " + pt(p)
	}
	if f.plain {
		out += " plain"
	}
	if f.id {
		out += " id"
	}
	if f.end != "" {
		out += " end " + f.end
	}
	return out + " " + strings.ToLower(string(f.layer))
}

// waits compares the flags that wait, by hand.
func waits(t *testing.T, what string, c *canvas, want ...string) {
	t.Helper()
	var all []string
	for _, f := range c.waiting {
		all = append(all, note(f))
	}
	if !slices.Equal(all, want) {
		t.Errorf("%s says\n%s\nwant\n%s", what, strings.Join(all, "\n"), strings.Join(want, "\n"))
	}
}

// blank is a canvas with nothing on it.
func blank(scale float64, full bool) *canvas {
	return &canvas{Options: Options{Scale: scale, Size: 4, Full: full}, d: &drawing.Drawing{}, out: &plot.Sheet{}}
}

// along is a branch of 200 mm that lies along x from the datum.
func eastward() drawing.Branch {
	return drawing.Branch{ID: "T1", Line: outline.Line{{Length: 200}}, LengthMM: 200, Measured: true, BundleMM: 16, WidthMM: 20}
}

// The edges of a bundle of 16 mm at half size lie 4 mm to both sides of its line, dashed where its width or its length is
// not known; words keep off what it is over its covers, 10 mm, and half a millimetre more at each side.
func TestEdgesOfABundle(t *testing.T) {
	for _, c := range []struct {
		what   string
		change func(b *drawing.Branch)
		dash   string
		side   string
	}{
		{"known", func(*drawing.Branch) {}, "", "4"},
		{"no OD of the bundle", func(b *drawing.Branch) { b.BundleMM = 0 }, "", "5"},
		{"a guess", func(b *drawing.Branch) { b.Guess = true }, " dash[2 1.2]", "4"},
		{"no length", func(b *drawing.Branch) { b.Measured = false }, " dash[2 1.2]", "4"},
		{"very thin", func(b *drawing.Branch) { b.BundleMM = 0.1 }, "", "0.4"}, // no thinner than 0.8 mm of paper
		{"a mm", func(b *drawing.Branch) { b.BundleMM = 1 }, "", "0.4"},
	} {
		canvas, b := blank(0.5, true), eastward()
		c.change(&b)
		canvas.bundle(&b)
		same(t, c.what, canvas.out.Shapes, "bundle 0.25"+c.dash+": 0,"+c.side+" 100,"+c.side,
			"bundle 0.25"+c.dash+": 0,-"+c.side+" 100,-"+c.side)
		for y, free := range map[unit.Millimetre]bool{5.45: false, 5.55: true} {
			for _, x := range []unit.Millimetre{20, 90} {
				if got := canvas.field.Free(plot.Box{Low: plot.Point{X: x, Y: y}, High: plot.Point{X: x + 5, Y: 9}}); got != free {
					t.Errorf("%s: from y = %v at x = %v there is room: %v", c.what, y, x, got)
				}
			}
		}
	}
	canvas := blank(1, true)
	canvas.bundle(&drawing.Branch{BundleMM: 5}) // no line, no edges
	same(t, "nothing", canvas.out.Shapes)
}

// What lies on a branch at half size, by hand. The white of its inside ends half a line of 0.25 mm within the edges, at
// 3.875 mm. A sheath from 20 to 150 mm that is 22 mm thick lies from 10 to 75 and 5.5 mm to both sides; a cover of no known
// thickness stands out 0.15 mm at each side. Hatches of sorted zones are 2.4 mm of paper apart, 60° steep: w/2/0.866 long, so
// 4 mm high and 2.309 wide to each side. Marks of the lay reach 2.5 mm over the branch of 10.
func TestWhatLiesOnABranch(t *testing.T) {
	const inside = "bundle white closed: 0,3.875 100,3.875 100,-3.875 0,-3.875"
	const centre = "centre 0.13 dash[6 1.5 0.8 1.5]: 0,0 100,0"
	for _, c := range []struct {
		what   string
		change func(b *drawing.Branch)
		want   []string
	}{
		{"nothing", func(*drawing.Branch) {}, []string{inside, centre}},
		{"no OD", func(b *drawing.Branch) { b.BundleMM = 0 }, []string{"bundle white closed: 0,4.875 100,4.875 100,-4.875 0,-4.875",
			centre}},
		{"a mm", func(b *drawing.Branch) { b.BundleMM = 1 }, []string{"bundle white closed: 0,0.275 100,0.275 100,-0.275 0,-0.275",
			centre}},
		{"covers", func(b *drawing.Branch) {
			b.Covers = []drawing.Cover{{What: "sheath", From: 20, To: 150, OverMM: 22}, {What: "braid", From: 60, To: 200},
				{What: "tape", From: 30, To: 40, OverMM: 18}, {What: "sheath", From: 50, To: 50, OverMM: 30}}
		}, []string{inside, "cover 0.25 light closed: 10,5.5 75,5.5 75,-5.5 10,-5.5", "cover 0.5: 10,5.5 10,-5.5", "cover 0.5: " +
			"75,5.5 75,-5.5",
			"cover 0.25 closed: 30,4.15 100,4.15 100,-4.15 30,-4.15", "cover 0.5: 30,4.15 30,-4.15", "cover 0.5: 100,4.15 100,-4.15",
			"cover 0.25 closed: 15,4.5 20,4.5 20,-4.5 15,-4.5", "cover 0.5: 15,4.5 15,-4.5", "cover 0.5: 20,4.5 20,-4.5", centre}},
		{"zones", func(b *drawing.Branch) { b.Zones = [2]unit.Millimetre{9.7, 4.8} }, []string{inside, "zone 0.13: 4.709,4 0.091,-4",
			"zone 0.13: 7.109,4 2.491,-4", "zone 0.13: 99.909,4 95.291,-4", centre}},
		{"a lay", func(b *drawing.Branch) { b.Lay = [2]unit.Millimetre{40, 160} }, []string{inside, centre, "lay 0.25: 20,7.5 20,-7.5",
			"lay 0.25: 80,7.5 80,-7.5"}},
		{"a lay all along", func(b *drawing.Branch) { b.Lay = [2]unit.Millimetre{0, 200} }, []string{inside, centre}},
		{"no lay", func(b *drawing.Branch) { b.Lay = [2]unit.Millimetre{30, 30} }, []string{inside, centre}},
		{"a break", func(b *drawing.Branch) { b.Break = model.Some(drawing.Break{From: 100, To: 400}); b.LengthMM = 500 },
			[]string{inside, centre, "bundle 0.5: 48,9 50.5,2.25 45.5,-2.25 48,-9", "bundle 0.5: 52,9 54.5,2.25 49.5,-2.25 52,-9"}},
	} {
		canvas, b := blank(0.5, true), eastward()
		c.change(&b)
		canvas.over(&b)
		same(t, c.what, canvas.out.Shapes, c.want...)
		if (len(canvas.waiting) > 0) != (c.what == "covers" || c.what == "a lay") {
			t.Errorf("%s: %d flags", c.what, len(canvas.waiting))
		}
	}
	canvas, b := blank(0.5, false), eastward() // to scale it has neither marks of the lay nor stations
	b.Lay = [2]unit.Millimetre{40, 160}
	canvas.over(&b)
	same(t, "to scale", canvas.out.Shapes, inside, centre)
	if len(canvas.waiting) > 0 {
		t.Errorf("%d flags", len(canvas.waiting))
	}
}

// A breakout, by hand: a dot of a quarter of its thickest branch, from 0.7 to 1.2 mm, with its words below it, clear of half
// of that branch.
func TestBreakoutByHand(t *testing.T) {
	j := drawing.Joint{ID: "B1", Name: "fork", Transition: "boot T", At: plot.Point{X: 30, Y: -20}, WideMM: 8}
	for _, c := range []struct {
		full bool
		wide unit.Millimetre
		r    string
		note string
	}{
		{true, 8, "1", `clear 3.5 toward -90 size 4 ["B1  fork" "boot T"] text`},
		{true, 2, "0.7", `clear 2 toward -90 size 4 ["B1  fork" "boot T"] text`},
		{false, 20, "1.2", `clear 5.8 toward -90 size 4 ["B1"] id text`},
	} {
		canvas := blank(0.5, c.full)
		j.WideMM = c.wide
		canvas.joint(&j)
		same(t, "breakout", canvas.out.Shapes, "bundle black disc 15,-10 r "+c.r)
		waits(t, "breakout", canvas, "rank 0 of 15,-10 "+c.note)
	}
}

// A splice, by hand: a box along its branch, of its sleeve but at least 3 mm by 1.2 of paper. Heading 90 it lies upright:
// its length along y, its words to the right.
func TestSpliceByHand(t *testing.T) {
	v := drawing.Sleeve{ID: "S1", Part: "P-9", At: plot.Point{X: 30, Y: -20}, Heading: 90, LongMM: 20, WideMM: 8, Branch: "T1", Station: 55}
	canvas := blank(0.5, true)
	canvas.sleeve(&v)
	same(t, "splice", canvas.out.Shapes, "splice 0.25 middle closed: 13,-15 13,-5 17,-5 17,-15")
	waits(t, "splice", canvas, `rank 3 of 15,-10 clear 4 toward 0 size 3.6 ["S1  P-9" "middle at `+unit.MM.Length(55)+` of T1"] text`)
	v.Branch, v.Part, v.LongMM, v.WideMM = "", "", 2, 1
	canvas = blank(0.5, true)
	canvas.sleeve(&v)
	same(t, "least splice", canvas.out.Shapes, "splice 0.25 middle closed: 14.4,-11.5 14.4,-8.5 15.6,-8.5 15.6,-11.5")
	waits(t, "least splice", canvas, `rank 3 of 15,-10 clear 2.6 toward 0 size 3.6 ["S1"] text`)
	canvas = blank(0.5, false)
	canvas.sleeve(&v)
	waits(t, "splice to scale", canvas, `rank 3 of 15,-10 clear 1.6 toward 0 size 4 ["S1"] id text`) // no letter below its size
}

// A label from 40 to 60 mm of a branch, 0.4 mm over what lies under it at each side; its words below it, the first with what
// it is.
func TestLabelByHand(t *testing.T) {
	l := drawing.Label{Of: "P1", Text: []string{"P1", "LOOM"}, From: 40, To: 60, WideMM: 12}
	for _, full := range []bool{true, false} {
		canvas := blank(0.5, full)
		canvas.d.Branches = []drawing.Branch{eastward()}
		canvas.label(&l)
		same(t, "label", canvas.out.Shapes, "label 0.25 white closed: 20,3.4 30,3.4 30,-3.4 20,-3.4")
		if full {
			waits(t, "label", canvas, `rank 3 of 25,0 clear 4.5 toward -90 size 2.8 ["label P1" "LOOM"] text`)
		} else if len(canvas.waiting) > 0 {
			t.Error("a label has words to scale")
		}
	}
	if l.Text[0] != "P1" {
		t.Errorf("the label itself was changed: %q", l.Text)
	}
	canvas := blank(0.5, true)
	canvas.d.Branches = []drawing.Branch{eastward()}
	l.To = 40
	canvas.label(&l)
	same(t, "a label of no length", canvas.out.Shapes)
}

// An end at half size, by hand: its datum at (50, 20), its shell 20 mm wide on paper from 4 mm behind it to 10 mm before it, a
// boot of 8 mm behind that, as wide as the branch of 10 mm and 1.5 more where it begins: at (38, 20), and as the shell where it ends. The
// cross has arms of 3 mm along the diagonals: 2.121 each way.
func TestEndByHand(t *testing.T) {
	const one = `format = 1
[[termination]]
id = "P1"
[[termination]]
id = "P2"
[[branch]]
id = "T1"
from = "P1"
to = "P2"
length_mm = 200.0
`
	s := calctest.Built(t, one)
	const cross1, cross2 = "frame 0.25: 52.121,22.121 47.879,17.879", "frame 0.25: 52.121,17.879 47.879,22.121"
	const shell = "connector 0.25 white closed: 46,30 60,30 60,10 46,10"
	full := drawing.End{ID: "P1", Name: "front", At: plot.Point{X: 100, Y: 40}, WideMM: 40, FrontMM: 20, BackMM: 8, Datum: "boot lip"}
	draw := func(full bool, e drawing.End) *canvas {
		canvas := blank(0.5, full)
		canvas.s = s
		canvas.d.Branches = []drawing.Branch{eastward()}
		canvas.end(&e)
		return canvas
	}
	c := draw(true, full)
	same(t, "end", c.out.Shapes, shell, cross1, cross2)
	waits(t, "end", c, `rank 0 of 60,20 clear 1.5 toward 0 size 4 ["P1  front" "length from boot lip"] end P1 text`)
	if len(c.dials) != 0 {
		t.Error("an end without a clock has a dial")
	}
	// Words keep off the shell and 0.5 mm more at each side: as it is wider than long, off 10.5 mm round its middle, from (53, 20) to
	// (53.1, 20).
	for _, b := range []struct {
		low, high plot.Point
		free      bool
	}{
		{plot.Point{X: 52, Y: 30.4}, plot.Point{X: 54, Y: 33}, false}, {plot.Point{X: 52, Y: 30.6}, plot.Point{X: 54, Y: 33}, true},
		{plot.Point{X: 63.55, Y: 19}, plot.Point{X: 66, Y: 21}, false}, {plot.Point{X: 63.65, Y: 19}, plot.Point{X: 66, Y: 21}, true},
		{plot.Point{X: 40, Y: 19}, plot.Point{X: 42.45, Y: 21}, true}, {plot.Point{X: 40, Y: 19}, plot.Point{X: 42.55, Y: 21}, false},
	} {
		if got := c.field.Free(plot.Box{Low: b.low, High: b.high}); got != b.free {
			t.Errorf("%v to %v is free: %v", b.low, b.high, got)
		}
	}

	e := full
	e.BootMM, e.Guess, e.Datum = 16, true, ""
	c = draw(true, e)
	same(t, "boot", c.out.Shapes, "connector 0.25 light closed: 38,25.75 46,30 46,10 38,14.25",
		strings.Replace(shell, "0.25", "0.25 dash[2 1.2]", 1), cross1, cross2)
	waits(t, "boot", c, `rank 0 of 60,20 clear 1.5 toward 0 size 4 ["P1  front" "size not known"] end P1 text`)
	// The neck is 11.5 mm wide, and words keep 0.5 mm off it; at its end it is round.
	for y, free := range map[unit.Millimetre]bool{26.2: false, 26.3: true} {
		if c.field.Free(plot.Box{Low: plot.Point{X: 39, Y: y}, High: plot.Point{X: 39.5, Y: 29}}) != free {
			t.Errorf("beside the boot from %v on there is room: %v", y, !free)
		}
	}
	e.BootMM, e.WideMM = 2, 120 // a boot of at least 1.5 mm; half as wide as a wide shell
	same(t, "short boot", draw(true, e).out.Shapes[:1], "connector 0.25 light closed: 44.5,35 46,50 46,-10 44.5,5")

	// A shell whose rear lies before its datum: from 8 mm on, and at least 2.5 mm long.
	e = full
	e.BackMM, e.BootMM = -16, 0.5
	e.Datum = ""
	c = draw(true, e)
	same(t, "before its datum", c.out.Shapes[:2], "connector 0.25 light closed: 56.5,25.75 58,30 58,10 56.5,14.25",
		"connector 0.25 white closed: 58,30 60.5,30 60.5,10 58,10")

	// The least shell is 2.5 mm wide and long, from its rear on; its cross has arms of half of that, 1.25 mm: 0.884 each way.
	c = draw(false, drawing.End{ID: "P1", Name: "front", At: plot.Point{X: 100, Y: 40}, Heading: 90, WideMM: 1, FrontMM: 1, BackMM: 1,
		Guess: true,
		Clock: model.Some(12), BootAt: model.Some(6)})
	same(t, "least shell", c.out.Shapes[:3], "connector 0.25 dash[2 1.2] white closed: 48.75,19.5 48.75,22 51.25,22 51.25,19.5",
		"frame 0.25: 49.116,20.884 50.884,19.116", "frame 0.25: 50.884,20.884 49.116,19.116")
	waits(t, "least shell", c, `rank 0 of 50,22 clear 1.5 toward 90 size 4 ["P1" "key 12, boot 6"] end P1 text`)
	if len(c.dials) != 0 {
		t.Error("a dial to scale")
	}
	e = full
	e.BootAt = model.Some(6)
	c = draw(true, e)
	waits(t, "a boot alone", c, `rank 0 of 60,20 clear 1.5 toward 0 size 4 ["P1  front" "boot 6" "length from boot lip"] end P1 text`)
	if len(c.dials) != 1 {
		t.Errorf("%d dials", len(c.dials))
	}
	e.BootAt, e.Clock = model.Opt[int]{}, model.Some(2)
	if c = draw(true, e); len(c.dials) != 1 || len(c.out.Shapes) != 4 {
		t.Errorf("%d dials, %d shapes", len(c.dials), len(c.out.Shapes))
	}
}

// The key on a shell 40 mm wide whose front is at (60, 20), heading 0, by hand: 12 in the middle, 3 at the right of the way in,
// so 0.4 of 40 below; 1 half as far. It is a triangle of a tenth of the shell, h = 4: 2h wide, and 1.7h = 6.8 deep. White from 4 to 8.
func TestKeyByHand(t *testing.T) {
	for hours, want := range map[int]string{
		12: "connector 0.25 black closed: 60,24 60,16 53.2,20", 3: "connector 0.25 black closed: 60,8 60,0 53.2,4",
		1: "connector 0.25 black closed: 60,16 60,8 53.2,12", 6: "connector 0.25 white closed: 60,24 60,16 53.2,20",
		9: "connector 0.25 black closed: 60,40 60,32 53.2,36", 7: "connector 0.25 white closed: 60,32 60,24 53.2,28",
	} {
		c := blank(0.5, true)
		c.key(&drawing.End{Clock: model.Some(hours)}, plot.Point{X: 60, Y: 20}, 40)
		same(t, fmt.Sprint("key ", hours), c.out.Shapes, want)
	}
	c := blank(0.5, true)
	c.key(&drawing.End{}, plot.Point{X: 60, Y: 20}, 40)
	same(t, "no key", c.out.Shapes)
	c.key(&drawing.End{Clock: model.Some(12)}, plot.Point{}, 5) // at least 0.8 mm
	same(t, "the least key", c.out.Shapes, "connector 0.25 black closed: 0,0.8 0,-0.8 -1.36,0")
}

// A peg of 6 mm at half size: a ring of 1.5 mm, a cross 1 mm longer on each side; words keep off that square.
func TestPegByHand(t *testing.T) {
	c := blank(0.5, true)
	c.d.PegMM = 6
	c.peg(drawing.Peg{No: 7, At: plot.Point{X: 20, Y: 10}})
	same(t, "peg", c.out.Shapes, "peg 0.25 disc 10,5 r 1.5", "peg 0.13: 7.5,5 12.5,5", "peg 0.13: 10,2.5 10,7.5")
	waits(t, "peg", c, `rank 1 of 10,5 clear 2 toward 45 size 2.8 ["7"] plain peg`)
	for _, b := range []struct {
		x, y unit.Millimetre
		free bool
	}{{12.4, 7.4, false}, {12.6, 7.4, true}, {12.4, 7.6, true}, {6.6, 1.6, false}, {6.4, 1.6, true}, {6.6, 1.4, true}} {
		if got := c.field.Free(plot.Box{Low: plot.Point{X: b.x, Y: b.y}, High: plot.Point{X: b.x + 1, Y: b.y + 1}}); got != b.free {
			t.Errorf("a millimetre from %v, %v is free: %v", b.x, b.y, got)
		}
	}
}

// The datum: four arms of two sizes of the letters, a quarter turn apart, which words keep off; its name below to the left at full size.
func TestDatumByHand(t *testing.T) {
	for _, full := range []bool{true, false} {
		c := blank(0.5, full)
		c.datum()
		same(t, "datum", c.out.Shapes, "frame 0.25: 0,0 8,0", "frame 0.25: 0,0 0,8", "frame 0.25: 0,0 -8,0", "frame 0.25: 0,0 0,-8")
		if full {
			waits(t, "datum", c, `rank 3 of 0,0 clear 4 toward -135 size 3.2 ["datum: x 0, y 0"] plain text`)
		} else if len(c.waiting) != 0 {
			t.Error("the datum is named to scale")
		}
		for _, p := range []plot.Point{{X: 7}, {Y: 7}, {X: -7}, {Y: -7}, {X: 7, Y: 0.7}, {X: 8.7}} {
			half := plot.Point{X: 0.5, Y: 0.5}
			if got := c.field.Free(plot.Box{Low: p.Minus(half), High: p.Plus(half)}); got != (p.X > 8 || p.Y == 0.7) {
				t.Errorf("a millimetre round %v is free: %v", p, got)
			}
		}
	}
}

// A dial on an empty board, by hand: its box is 21 mm wide and 21 + 0.8 · 4 = 24.2 mm high, and its ring of 7 mm lies 3.5 mm within the
// box.
// A key at 3 is a triangle on the ring, 12° to both sides and 3 mm deep; a boot at 6 is an arrow from the ring to the edge.
func TestDialByHand(t *testing.T) {
	e := drawing.End{ID: "P1", At: plot.Point{X: 100}, FrontMM: 20, Heading: -30, Clock: model.Some(3), BootAt: model.Some(6)}
	c := blank(0.5, true)
	c.dial(&e)
	// Where it lies: 2 mm clear of the front, toward 0°. The front lies 10 mm from (50, 0) along −30°: at (58.660, −5), so the box
	// begins at 60.66
	// and its middle is at (71.16, −5), to the thousandth of its search; the ring's middle is 3.5 + 7 below its top.
	m := c.out.Shapes[0].Middle
	if want := (plot.Point{X: 71.16, Y: -5 + 12.1 - 10.5}); m.To(want) > 0.05 {
		t.Fatalf("its middle is at %v, by hand %v", m, want)
	}
	for k := range c.out.Shapes { // seen from the middle of its ring
		s := &c.out.Shapes[k]
		s.Middle = s.Middle.Minus(m)
		for n := range s.Way {
			s.Way[n] = s.Way[n].Minus(m)
		}
	}
	wide := textWide("P1, wire side", 2.2)
	// 7 · cos 12° = 6.847, 7 · sin 12° = 1.455. The head of the arrow: 2 mm at 155° to its way, so 2 · cos 25° = 1.813 back and 2 · sin
	// 25° = 0.845 aside.
	// The words stand 0.6 mm over the lower edge: 24.2 − 10.5 − 0.6 = 13.1 below the middle.
	same(t, "dial", c.out.Shapes, "connector 0.25 white disc 0,0 r 7", "connector black closed: 6.847,1.455 6.847,-1.455 4,0",
		"connector 0.5: 0,-7 0,-10.5", "connector 0.5: 0.845,-8.687 0,-10.5 -0.845,-8.687",
		fmt.Sprintf("text 2.2 at %s,-13.1 %q", num(-float64(wide)/2), "P1, wire side"))
	if c.field.Free(plot.Box{Low: m, High: m.Plus(plot.Point{X: 1, Y: 1})}) {
		t.Error("words may lie on it")
	}
	c = blank(0.5, true)
	e.Clock, e.BootAt = model.Opt[int]{}, model.Opt[int]{}
	c.dial(&e)
	if len(c.out.Shapes) != 2 {
		t.Errorf("a dial without marks has %d shapes", len(c.out.Shapes))
	}
}
