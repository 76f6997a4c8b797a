package section

import (
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"
)

func near(a, b float64) bool { return math.Abs(a-b) < 1e-6 }

// A disc in a picture of twice its size whose axis lies at (50, 50), and a label, by hand.
func disc(id string, x, y, r float64, change ...func(p *Piece)) Disc {
	d := Disc{Piece: Piece{ID: id, InHand: true, Position: 7}, CX: x, CY: y, R: r}
	for _, c := range change {
		c(&d.Piece)
	}
	return d
}

func label(l Label) string {
	return fmt.Sprintf("%d %s %q %.3f,%.3f size %.3f turn %.2f %v", l.What, l.Of, l.Text, l.X, l.Y, l.Size, l.Turn, l.Heavy)
}

func labels(p *Picture) (out []string) {
	for _, l := range p.Labels {
		out = append(out, label(l))
	}
	return out
}

func want(t *testing.T, what string, got []string, want ...string) {
	t.Helper()
	if !slices.Equal(got, want) {
		t.Errorf("%s:\n%s\nwant\n%s", what, strings.Join(got, "\n"), strings.Join(want, "\n"))
	}
}

// What a piece needs for its number, how it is lined, and whether it is numbered, by hand.
func TestPiecesByHand(t *testing.T) {
	for _, c := range []struct {
		p        Piece
		line     float64
		numbered bool
	}{
		{Piece{}, 0.18, false}, {Piece{InHand: true}, 0.35, true}, {Piece{InHand: true, Kind: Unit}, 0.9, true}, {Piece{Kind: Unit},
			0.18, false},
		{Piece{InHand: true, Kind: Filler}, 0.35, false}, {Piece{InHand: true, Kind: Spare}, 0.35, true},
	} {
		if c.p.line() != c.line || c.p.numbered() != c.numbered {
			t.Errorf("%+v: line %v, numbered %v", c.p, c.p.line(), c.p.numbered())
		}
	}
	w, h := wide("101", 4.62), 4.62*0.76
	if got, want := (Piece{ID: "101", InHand: true}).need(), math.Hypot(w, h)+2*(0.35+0.12); !near(got, want) {
		t.Errorf("it needs %v, by hand %v", got, want)
	}
	const ninth, eleventh = 9 * 25.4 / 72, 11 * 25.4 / 72
	p := Piece{Position: 12, Mark: "S3"}
	if got, want := p.positionSize(), math.Hypot(wide("12", eleventh), eleventh*0.76); !near(got, want) {
		t.Errorf("its position takes %v, by hand %v", got, want)
	}
	if got, want := p.markSize(), math.Hypot(wide("S3", ninth)+1.2, ninth*0.76+0.6); !near(got, want) {
		t.Errorf("its mark takes %v, by hand %v", got, want)
	}
	l := Label{Text: "12", Size: 5}
	if !near(l.Width(), wide("12", 5)) || !near(l.Height(), 3.8) {
		t.Errorf("%v x %v", l.Width(), l.Height())
	}
}

// The room round a bundle whose numbers are inside, by hand: a millimetre; a position as well; and a mark beside that or outside it.
func TestMarginByHand(t *testing.T) {
	in := Piece{ID: "1", InHand: true, Outside: true, Position: 12}
	marked := Piece{ID: "2", InHand: true, Outside: true, Position: 3, Mark: "S3"}
	p, m := in.positionSize(), marked.markSize()
	if p < marked.positionSize() || p >= m {
		t.Fatalf("position %v and %v, mark %v", p, marked.positionSize(), m)
	}
	inner := Piece{ID: "3", InHand: true, Position: 1234, Mark: "S99"} // stands inside: neither counts
	filler := Piece{ID: "4", InHand: true, Outside: true, Position: 1234, Kind: Filler}
	for _, c := range []struct {
		pieces []Piece
		beside bool
		want   float64
	}{
		{nil, true, 1}, {[]Piece{inner, filler}, false, 1}, {[]Piece{in, inner}, true, 1 + p}, {[]Piece{in}, false, 1 + p},
		{[]Piece{in, marked}, true, 1 + p/2 + m/2}, {[]Piece{in, marked}, false, 1 + p + 0.5 + m}, {[]Piece{marked, in, inner}, false,
			1 + p + 0.5 + m},
	} {
		if got := (Asked{Pieces: c.pieces}).margin(c.beside); !near(got, c.want) {
			t.Errorf("%+v: %v, by hand %v", c.pieces, got, c.want)
		}
	}
	wide := Piece{ID: "1", InHand: true, Outside: true, Position: 1234567890}
	if got, want := (Asked{Pieces: []Piece{wide, marked}}).margin(true), 1+wide.positionSize(); !near(got, want) {
		t.Errorf("beside a wide position: %v, by hand %v", got, want)
	}
}

// Whether a mark has room behind its position before the next one, by hand: on a circle 1 mm and half a position round the bundle
// the chord to the next has to be half of both positions, the mark and a millimetre.
func TestRoomForMarks(t *testing.T) {
	at := func(id string, degrees float64, mark string) Piece {
		s, c := math.Sincos(degrees * math.Pi / 180)
		return Piece{ID: id, X: s, Y: c, InHand: true, Outside: true, Position: 5, Mark: mark}
	}
	first := at("1", 350, "S1")
	p, m := first.positionSize(), first.markSize()
	need := p + m + 1
	for _, over := range []float64{20, 40} {
		r := over/2 + 1 + p/2
		angle := 2 * math.Asin(need/2/r) * 180 / math.Pi
		for _, c := range []struct {
			next float64
			want bool
		}{{350 + angle + 0.01, true}, {350 + angle - 0.01, false}, {350 - 1, true}, {350 + 200, true}} {
			for _, pieces := range [][]Piece{{first, at("2", c.next, "")}, {at("2", c.next, ""), first}} {
				if got := (Asked{OverMM: 10, Pieces: pieces}).tangential(over / 10); got != c.want {
					t.Errorf("over %v mm the next at %v has room: %v", over, c.next, got)
				}
			}
		}
	}
	for what, pieces := range map[string][]Piece{
		"alone": {first}, "no mark": {at("1", 0, ""), at("2", 1, "")}, "the next has no position": {first,
			{ID: "2", X: 0, Y: 1, InHand: true}},
		"the next is below": {first, {ID: "2", X: 0, Y: 1, Outside: true}}, "a mark inside": {{ID: "1", X: 0, Y: 1, InHand: true,
			Mark: "S"}, at("2", 1, "")},
	} {
		if a := (Asked{OverMM: 10, Pieces: pieces}); !a.tangential(3) {
			t.Errorf("%s: it has no room", what)
		}
	}
	if a := (Asked{OverMM: 0.1, Pieces: []Piece{first}}); a.tangential(1) { // not even round a tiny bundle alone
		t.Error("it has room on a circle smaller than itself")
	}
}

// A picture with its numbers inside, by hand: two pieces of 4 mm beside each other in a bundle of 8 mm. A number of one figure needs a
// disc of
// hypot(wide, 3.511) + 0.94; the bundle is scaled so that the worse of them has it.
func TestPictureInside(t *testing.T) {
	a := Asked{OverMM: 8, BuiltMM: 2, Least: 10, Most: 90, Pieces: []Piece{{ID: "1", X: -2, D: 4, InHand: true, Outside: true, Position: 1},
		{ID: "102", X: 2, Y: 1, D: 4, InHand: true, Outside: true, Position: 2}, {ID: "f", D: 1, InHand: true, Kind: Filler}, {ID: "0",
			D: 0, InHand: true}}}
	scale := a.Pieces[1].need() / 4
	margin := 1 + max(a.Pieces[0].positionSize(), a.Pieces[1].positionSize())
	w := 8*scale + 2*margin
	if got := Inside(a); !near(got, w) {
		t.Fatalf("%v wide, by hand %v", got, w)
	}
	p := Of(a)
	c := w / 2
	if !near(p.W, w) || !near(p.H, w) || !near(p.CX, c) || !near(p.CY, c) || !near(p.Over, 4*scale) || !near(p.Built, scale) ||
		len(p.Leaders) != 0 {
		t.Errorf("%+v", p)
	}
	for k, by := range [][3]float64{{c - 2*scale, c, 2 * scale}, {c + 2*scale, c - scale, 2 * scale}} {
		if d := p.Discs[k]; !near(d.CX, by[0]) || !near(d.CY, by[1]) || !near(d.R, by[2]) || !d.Numbered {
			t.Errorf("%+v, by hand %v", d, by)
		}
	}
	// Positions: along the way from the axis; the first to the left, the second at 2 to the right and 1 up, each 1 mm and half of itself
	// off the bundle.
	r1, r2 := 4*scale+1+a.Pieces[0].positionSize()/2, 4*scale+1+a.Pieces[1].positionSize()/2
	five := math.Sqrt(5)
	want(t, "labels", labels(&p), label(Label{Number, "1", "1", c - 2*scale, c, 4.62, 0, true}),
		label(Label{Number, "102", "102", c + 2*scale, c - scale, 4.62, 0, true}),
		label(Label{Position, "1", "1", c - r1, c, positionSize, 0, false}), label(Label{Position, "102", "2", c + r2*2/five,
			c - r2/five, positionSize, 0, false}))
	a.Least = 80
	if p := Of(a); p.W != 80 || !near(p.Over, (80-2*margin)/2) {
		t.Errorf("%v wide, %v over", p.W, p.Over)
	}
	a.Least, a.Most = 10, w-0.1
	if p := Of(a); p.W != a.Most || len(p.Leaders) == 0 {
		t.Errorf("%v wide, %d leaders", p.W, len(p.Leaders))
	}
	for k := range a.Pieces { // nothing in hand: it is as wide as it has to be, with a millimetre round it
		a.Pieces[k].InHand = false
	}
	if p := Of(a); Inside(a) != 0 || p.W != 10 || !near(p.Over, 4) || len(p.Labels) != 0 || len(p.Discs) != 4 {
		t.Errorf("%+v", p)
	}
	if p := Of(Asked{Pieces: a.Pieces}); p.W != 0 || Inside(Asked{Pieces: []Piece{{ID: "1", D: 1, InHand: true}}}) != 0 {
		t.Errorf("a bundle without a diameter: %+v", p)
	}
}

// The position of a disc and the mark of its splice, by hand. The disc lies at the right of the axis at (50, 50) of a bundle of 20 mm
// radius: its position at 21 mm and
// half of itself; the mark outside that by half a millimetre and both halves, or clockwise, which is downward, so that they touch.
func TestPositionAndMark(t *testing.T) {
	p := Picture{CX: 50, CY: 50, Over: 20}
	d := disc("1", 60, 50, 5, func(p *Piece) { p.Mark = "S1" })
	size, mark := d.positionSize(), d.markSize()
	r := 21 + size/2
	p.outside(d, false)
	want(t, "outside", labels(&p), label(Label{Position, "1", "7", 50 + r, 50, positionSize, 0, false}),
		label(Label{Mark, "1", "S1", 50 + r + size/2 + 0.5 + mark/2, 50, leastSize, 0, true}))
	p.Labels = nil
	p.outside(d, true)
	angle := 2 * math.Asin((size+mark)/2/(2*r))
	want(t, "beside", labels(&p), label(Label{Position, "1", "7", 50 + r, 50, positionSize, 0, false}),
		label(Label{Mark, "1", "S1", 50 + r*math.Cos(angle), 50 + r*math.Sin(angle), leastSize, 0, true}))
	p.Labels = nil
	p.outside(disc("2", 50, 50, 5), true) // on the axis: it is seen from the top
	if len(p.Labels) != 1 || !near(p.Labels[0].Y, 50-r) || !near(p.Labels[0].X, 50) {
		t.Errorf("%q", labels(&p))
	}
}

// Where discs lie, radians clockwise from the top.
func TestAngles(t *testing.T) {
	p := Picture{CX: 50, CY: 50}
	for _, c := range [][3]float64{{50, 40, 0}, {60, 50, math.Pi / 2}, {50, 60, math.Pi}, {40, 50, 3 * math.Pi / 2},
		{60, 40, math.Pi / 4}, {50, 50, 0}} {
		if got := p.angle(Disc{CX: c[0], CY: c[1]}); !near(got, c[2]) {
			t.Errorf("%v, %v: %v", c[0], c[1], got)
		}
	}
}

// Numbers outside are a pitch apart, in the order of their discs, by hand: those that have room stand at their discs; two that have not
// stand half a pitch
// to both sides of their middle; a crowd round the cut stands evenly.
func TestApartByHand(t *testing.T) {
	for _, c := range []struct {
		what     string
		from, at []float64 // of each, radians
		pitch    float64
	}{
		{"one", []float64{2}, []float64{2}, 0.3}, {"free", []float64{1, 2, 4}, []float64{1, 2, 4}, 0.5}, {"two near", []float64{1, 1.1},
			[]float64{0.8, 1.3}, 0.5},
		{"a third is pushed", []float64{1, 1.1, 1.5}, []float64{0.7, 1.2, 1.7}, 0.5}, // (1 + 1.1 + 1.5)/3 = 1.2
		{"just a pitch", []float64{1, 1.5, 2}, []float64{1, 1.5, 2}, 0.5},
		{"over the top", []float64{0.1, 6.2}, []float64{2*math.Pi + 0.1 + (0.5-0.183185307)/2, 6.2 - (0.5-0.183185307)/2}, 0.5},
		{"the second apart", []float64{1, 3, 3.1}, []float64{1, 2.8, 3.3}, 0.5},
	} {
		var all []spoke
		for k, f := range c.from {
			all = append(all, spoke{disc: Disc{Piece: Piece{ID: fmt.Sprint(k)}}, from: f})
		}
		apart(all, c.pitch)
		for _, s := range all {
			k := int(s.disc.ID[0] - '0')
			if turn := math.Remainder(s.at-c.at[k], 2*math.Pi); math.Abs(turn) > 1e-6 ||
				math.Abs(math.Remainder(s.from-c.from[k], 2*math.Pi)) > 1e-9 ||
				math.Abs(s.at-s.from) > math.Pi {
				t.Errorf("%s: number %d stands at %v from %v, by hand %v", c.what, k, s.at, s.from, c.at[k])
			}
		}
	}
	var all []spoke // five of a pitch that takes nearly the whole circle, in a crowd: evenly round it, their mean offset nought
	for k := range 5 {
		all = append(all, spoke{from: 1 + 0.1*float64(k)})
	}
	apart(all, 2*math.Pi/5-0.001)
	sum := 0.0
	for k := range all {
		sum += all[k].at - all[k].from
		if k > 0 && !near(all[k].at-all[k-1].at, 2*math.Pi/5) && !near(all[k].at-all[k-1].at, 2*math.Pi/5-0.001) {
			t.Errorf("%d stands %v behind the one before", k, all[k].at-all[k-1].at)
		}
	}
	if math.Abs(sum) > 1e-6 {
		t.Errorf("together they are moved by %v", sum)
	}
}

// One number outside, by hand: the bundle has 20 mm radius round (50, 50), and numbers begin 3 mm and half a millimetre off it. A disc
// at the right, whose edge
// is at 65; the leader runs from there to 21 mm, and on to 23 in steps of 0.05 radians at most.
func TestSpokeByHand(t *testing.T) {
	p := Picture{CX: 50, CY: 50, Over: 20}
	s := spoke{disc: disc("1", 60, 50, 5), from: math.Pi / 2, at: math.Pi / 2, text: "loom", position: "7"}
	p.spoke(s, 23)
	w, q := wide("loom", 4.62), wide("7", leastSize)
	want(t, "at the right", labels(&p), label(Label{Number, "1", "loom", 73.5 + w/2, 50, 4.62, 0, true}),
		label(Label{Position, "1", "7", 73.5 + w + 1 + q/2, 50, leastSize, 0, false}))
	if l := p.Leaders[0]; l.Of != "1" || len(l.Points) != 3 || fmt.Sprintf("%.3f",
		l.Points) != "[[65.000 50.000] [71.000 50.000] [73.000 50.000]]" {
		t.Errorf("%+v", l)
	}
	// Moved by 0.1 radians: |0.1| / 0.05 = 2 steps and one more.
	for _, moved := range []float64{0.1, -0.1} {
		p = Picture{CX: 50, CY: 50, Over: 20}
		s.from, s.at, s.position = 0, moved, ""
		s.disc = disc("1", 50, 40, 5)
		p.spoke(s, 23)
		if len(p.Labels) != 1 || len(p.Leaders[0].Points) != 5 {
			t.Fatalf("%+v", p)
		}
		at := func(part, r float64) string {
			return fmt.Sprintf("%.3f %.3f", 50+r*math.Sin(moved*part), 50-r*math.Cos(moved*part))
		}
		for k, want := range []string{"50.000 35.000", at(0, 21), at(1./3, 21+2./3), at(2./3, 21+4./3), at(1, 23)} {
			if got := fmt.Sprintf("%.3f %.3f", p.Leaders[0].Points[k][0], p.Leaders[0].Points[k][1]); got != want {
				t.Errorf("point %d at %s, by hand %s", k, got, want)
			}
		}
	}
	// How it is turned: along the radius, so that it is never on its head.
	for degrees, turn := range map[float64]float64{0: -90, 45: -45, 90: 0, 180: 90, 181: -89, 270: 0, 315: 45, 359: 89} {
		p = Picture{CX: 50, CY: 50, Over: 20}
		s.at = degrees * math.Pi / 180
		p.spoke(s, 23)
		if math.Abs(p.Labels[0].Turn-turn) > 1e-6 && math.Abs(p.Labels[0].Turn-turn) < 179.9 {
			t.Errorf("at %v degrees it is turned by %v, by hand %v", degrees, p.Labels[0].Turn, turn)
		}
	}
	// A disc that holds its number has its position and mark outside, without a leader.
	p = Picture{CX: 50, CY: 50, Over: 20}
	d := disc("1", 60, 50, 5)
	d.Numbered = true
	p.spoke(spoke{disc: d, from: math.Pi / 2, at: math.Pi / 2, text: "S1", position: "7"}, 23)
	m := wide("S1", leastSize)
	want(t, "numbered", labels(&p), label(Label{Position, "1", "7", 73.5 + q/2, 50, leastSize, 0, false}),
		label(Label{Mark, "1", "S1", 73.5 + q + 1 + m/2, 50, leastSize, 0, true}))
	if len(p.Leaders) != 0 {
		t.Error("it has a leader")
	}
}

// What stands outside, by hand: of a disc that holds its number the position and mark where nothing lies outside it; of others the
// number with its mark, and the position
// where that is asked for, or inside.
func TestSpokesByHand(t *testing.T) {
	mark := func(p *Piece) { p.Mark = "S1" }
	out := func(p *Piece) { p.Outside = true }
	held := func(d Disc) Disc { d.Numbered = true; return d }
	p := Picture{CX: 50, CY: 50, Over: 20, Discs: []Disc{disc("a", 60, 50, 5), disc("b", 50, 60, 5, mark), held(disc("c", 40, 50, 5)),
		held(disc("d", 50, 40, 5, out)),
		held(disc("e", 55, 55, 5, out, mark)), disc("f", 45, 45, 5, func(p *Piece) { p.Kind = Filler }), disc("g", 45, 45, 5,
			func(p *Piece) { p.InHand = false })}}
	for at, says := range map[where]string{
		inDiscs: "a 1.57 a|; b 3.14 b S1|; d 0.00 |7; e 2.36 S1|7", beyond: "a 1.57 a|7; b 3.14 b S1|7; d 0.00 |7; e 2.36 " +
			"S1|7", nowhere: "a 1.57 a|; b 3.14 b S1|; e 2.36 S1|",
	} {
		p.Labels = nil
		var got []string
		for _, s := range p.spokes(at) {
			got = append(got, fmt.Sprintf("%s %.2f %s|%s", s.disc.ID, s.from, s.text, s.position))
		}
		if strings.Join(got, "; ") != says {
			t.Errorf("%d: %s, want %s", at, strings.Join(got, "; "), says)
		}
		if at == inDiscs {
			want(t, "in discs", labels(&p), label(Label{Position, "a", "7", 60, 50, leastSize, 0, false}),
				label(Label{Position, "b", "7", 50, 60, leastSize, 0, false}))
		} else if len(p.Labels) != 0 {
			t.Errorf("%d: %q", at, labels(&p))
		}
	}
	if got, want := p.pitch(), 1.05*4.62*0.76/23; !near(got, want) {
		t.Errorf("the pitch is %v, by hand %v", got, want)
	}
	// A position has room in a disc whose inside is as wide as its diagonal.
	room := math.Hypot(wide("7", leastSize), leastSize*0.76)/2 + 0.35
	for r, fits := range map[float64]bool{room + 0.001: true, room - 0.001: false} {
		if got := (&Picture{Discs: []Disc{disc("a", 0, 0, r), held(disc("b", 0, 0, 0.1)),
			disc("f", 0, 0, 0.1, func(p *Piece) { p.InHand = false })}}).positionsFit(); got != fits {
			t.Errorf("in %v mm it has room: %v", r, got)
		}
	}
	a := Asked{Pieces: []Piece{{ID: "a long id"}, {ID: "1", InHand: true, Mark: "S1", Position: 12}, {ID: "a long id", Position: 1}}}
	for at, more := range map[where]float64{inDiscs: 0, nowhere: 0, beyond: 1 + wide("12", leastSize)} {
		if got, want := a.spokeMargin(at), 3+2+wide("1", 4.62)+wide(" S1", 4.62)+more; !near(got, want) {
			t.Errorf("%d: %v, by hand %v", at, got, want)
		}
	}
}

// A picture as SVG, by hand: the tape round the centre, discs, leaders, and labels over them.
func TestSVGByHand(t *testing.T) {
	p := Picture{W: 60, H: 60, CX: 30, CY: 30, Over: 20, Built: 5, Leaders: []Leader{{"a<", [][2]float64{{1, 2}, {3.5, 4}}}},
		Labels: []Label{{Number, "a", "101", 10, 20, 4.62, 0, true}, {Position, "a", "7", 12, 22, 3, -45, false},
			{Mark, "a", "S1", 30, 40, 3, 90, true}}}
	text := func(class, x, y, size, heavy, ink, turn, says string, w float64) string {
		return `<text class="` + class + `" data-of="a" x="` + x + `" y="` + y + `" font-size="` + size + `"` + heavy + ink +
			` text-anchor="middle" textLength="` + num(w) +
			`" lengthAdjust="spacingAndGlyphs"` + turn + `>` + says + "</text>"
	}
	// 4.62 · 1466 / 2048 / 2 = 1.654 below its middle, 3 · … = 1.074; the black of a mark is 0.6 mm wider at each side, and 0.76 · 3 +
	// 0.6 = 2.88 high
	mark := wide("S1", 3) + 1.2
	by := `<svg xmlns="http://www.w3.org/2000/svg" class="lay" width="60mm" height="60mm" viewBox="0 0 60 60" ` +
		`role="img" aria-label="a &amp; b" font-family="Go, Arial, sans-serif" fill="#000" stroke="none"><circle class="tape" cx="30" ` +
		`cy="30" r="4.91" fill="#ccc" stroke="#000" stroke-width="0.18"/>` +
		`<polyline class="leader" data-of="a&lt;" points="1,2 3.5,4" fill="none" stroke="#000" stroke-width="0.18"/>` +
		text("number", "10", "21.654", "4.62", ` font-weight="bold"`, "", "", "101", wide("101", 4.62)) + text("position", "12",
		"23.074", "3", "", "",
		` transform="rotate(-45 12 22)"`, "7", wide("7", 3)) +
		`<rect class="mark" data-of="a" x="` + num(30-mark/2) + `" y="38.56" width="` + num(mark) +
		`" height="2.88" transform="rotate(90 30 40)"/>` +
		text("mark", "30", "41.074", "3", ` font-weight="bold"`, ` fill="#fff"`, ` transform="rotate(90 30 40)"`, "S1",
			wide("S1", 3)) + "</svg>"
	if got := p.SVG("a & b"); got != by {
		t.Errorf("%s\nwant\n%s", strings.ReplaceAll(got, "<", "\n<"), strings.ReplaceAll(by, "<", "\n<"))
	}
	p.Built = 0
	if strings.Contains(p.SVG(""), "tape") || (Picture{}).SVG("") != "" {
		t.Error("tape where there is none")
	}
	// The halves of a tracer's second ring that holds its number end where that begins: half of it and 0.36 mm above and below the middle.
	d := disc("t", 10, 20, 6, func(p *Piece) { p.Tracer = true })
	d.Numbered = true
	var b strings.Builder
	d.svg(&b)
	r := 6 - 0.35 - 0.45
	y := 4.62*0.76/2 + 0.36
	x := math.Sqrt(r*r - y*y)
	for _, side := range []struct {
		y     float64
		sweep string
	}{{20 - y, "1"}, {20 + y, "0"}} {
		if want := fmt.Sprintf(`d="M%s %sA%s %s 0 0 %s %s %s"`, num(10-x), num(side.y), num(r), num(r), side.sweep, num(10+x),
			num(side.y)); !strings.Contains(b.String(), want) {
			t.Errorf("it lacks %s: %s", want, b.String())
		}
	}
}
