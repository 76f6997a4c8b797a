package drawing_test

import (
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/query/drawing"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
)

// small is a loom of which everything can be worked out by hand: a trunk of 450 mm, two legs, a
// splice 55 mm along one of them.
const small = `format = 1
[[termination]]
id = "P1"
insert = "18-32"
datum = "boot lip"
clock = 3
boot = "boot-straight-18"
[[termination]]
id = "A"
cavities = ["1", "2"]
[[termination]]
id = "B"
cavities = ["1", "2"]
[[breakout]]
id = "J1"
zone_mm = 25.0
[[splice]]
id = "S1"
at = "J1"
toward = "L1"
offset_mm = 55.0
part = "stub-3"
[[wire]]
id = "1"
from = "P1:A"
to = "A:1"
spec = "AS22759/32"
size = "22"
[[wire]]
id = "2"
from = "P1:B"
to = "S1"
spec = "AS22759/32"
size = "22"
[[wire]]
id = "3"
from = "S1"
to = "A:2"
spec = "AS22759/32"
size = "22"
[[wire]]
id = "4"
from = "S1"
to = "B:2"
spec = "AS22759/32"
size = "22"
[[branch]]
id = "T1"
from = "P1"
to = "J1"
length_mm = 450.0
[[branch]]
id = "L1"
from = "J1"
to = "A"
length_mm = 300.0
[[branch]]
id = "L2"
from = "J1"
to = "B"
length_mm = 200.0
`

func built(t *testing.T, change func(*model.Harness)) *sheet.Sheet {
	t.Helper()
	h := calctest.Parse(t, small)
	if change != nil {
		change(h)
	}
	return calc.Complete(h, calctest.Catalogue(t), nil)
}

func near(a, b drawing.Point) bool { return a.To(b) < 1e-6 }

// The small loom by hand: P1 at (0, 0), J1 at 450, A straight on at 750, B 200 mm off at 45 degrees.
// The splice's middle is 55 mm from J1 along L1; P1 lies on the side away from its branch.
func TestSmallLoomByHand(t *testing.T) {
	d := drawing.Of(built(t, nil))
	off := unit.Millimetre(200 / math.Sqrt2)
	for _, e := range d.Ends {
		want := map[string]drawing.Point{"P1": {}, "A": {X: 750}, "B": {X: 450 + off, Y: off}}[e.ID]
		heading := map[string]unit.Degree{"P1": 180, "A": 0, "B": 45}[e.ID]
		if !near(e.At, want) || math.Abs(math.Remainder(float64(e.Heading-heading), 360)) > 1e-9 {
			t.Errorf("%s is at %v heading %v, by hand %v heading %v", e.ID, e.At, e.Heading, want, heading)
		}
	}
	if len(d.Ends) != 3 || len(d.Joints) != 1 || !near(d.Joints[0].At, drawing.Point{X: 450}) || d.Datum != "P1" || d.Keyed {
		t.Errorf("%d ends, %+v, datum %s", len(d.Ends), d.Joints, d.Datum)
	}
	// a stub-3 is 33 mm long and 7.11 over; a splice without a part is drawn 20 by 5
	if s := d.Sleeves[0]; !near(s.At, drawing.Point{X: 505}) || s.Branch != "L1" || s.Station != 55 || s.LongMM != 33 || s.WideMM != 7.11 {
		t.Errorf("splice %+v", s)
	}
	none := built(t, func(h *model.Harness) { h.Splices[0].Part = model.Some("of no catalogue") })
	if s := drawing.Of(none).Sleeves[0]; s.LongMM != 20 || s.WideMM != 5 {
		t.Errorf("splice without a part %+v", s)
	}
	// the shell of an 18-32 is 38.5 wide as a plug (series III shell 19); its datum is the lip of the boot
	e := d.Ends[slices.IndexFunc(d.Ends, func(e drawing.End) bool { return e.ID == "P1" })]
	if e.WideMM != 38.5 || e.Guess || e.Clock != model.Some(3) || e.FrontMM != e.BootMM-e.BackMM-e.BootMM+31.34 || e.BootMM <= 0 ||
		e.BackMM+e.BootMM > 1e-9 {
		t.Errorf("%+v", e)
	}
	if b := d.Branches[2]; b.Near != "J1" || b.Turn != 45 || b.Told {
		t.Errorf("L2 leaves %s at %v", b.Near, b.Turn)
	}
	t1 := d.Branches[0]
	if t1.Zones != [2]unit.Millimetre{0, 25} || t1.Lay[0] != 0 || t1.Lay[1] > 425 || t1.LengthMM != 450 {
		t.Errorf("%+v", t1)
	}
	// the label of A lies 25 to 50 mm off its end, and A has no boot
	if k := slices.IndexFunc(d.Labels, func(l drawing.Label) bool { return l.Of == "A" }); k < 0 || d.Labels[k].From != 250 ||
		d.Labels[k].To != 275 || d.Labels[k].Branch != 1 {
		t.Errorf("labels %+v", d.Labels)
	}
	for n, p := range d.Pegs {
		if p.No != n+1 {
			t.Errorf("peg %d is called %d", n+1, p.No)
		}
	}
	if d.PegMM != 6 || len(d.Pegs) < 6 { // 450, 300 and 200 mm: 3, 2 and 1 or more
		t.Errorf("%d pegs of %v", len(d.Pegs), d.PegMM)
	}
}

// The drawn line of every branch of the demonstration and of the whole vehicle is as long as the file
// says, by chords of which none is a ten thousandth of a millimetre off; none crosses another.
func TestDrawnLengthsAreThoseOfTheFile(t *testing.T) {
	for _, name := range calctest.Files("demo", "whole", "example", "feeds") {
		s := calctest.Laid(t, name)
		d := drawing.Of(s)
		for i, b := range d.Branches {
			long, points := unit.Millimetre(0), b.Line.Points(0.0001)
			for k := 1; k < len(points); k++ {
				long += points[k-1].To(points[k])
			}
			if math.Abs(float64(long-s.H.Branches[i].LengthMM)) > 0.1 {
				t.Errorf("%s: %s is %v long, drawn %v", name, b.ID, s.H.Branches[i].LengthMM, long)
			}
		}
		for _, n := range d.Notes {
			t.Errorf("%s: %s", name, n.Says)
		}
		if len(d.Ends) != len(s.H.Terminations) || len(d.Joints) != len(s.H.Breakouts) || len(d.Sleeves) != len(s.H.Splices) {
			t.Errorf("%s: %d ends, %d breakouts, %d splices", name, len(d.Ends), len(d.Joints), len(d.Sleeves))
		}
	}
}

// A board of 500 mm breaks the longest straight, and says by how much: the drawing fits, the stations of the branch stay,
// and what is left out is the difference. By hand, the longest way is 750 mm.
func TestTooLongIsBroken(t *testing.T) {
	d := drawing.Of(built(t, func(h *model.Harness) { h.Board.WidthMM = model.Some[unit.Millimetre](520) }))
	left := unit.Millimetre(0)
	for _, b := range d.Branches {
		if b.Break.Set {
			left += b.Break.V.Long()
			if math.Abs(float64(b.Line.Length()+b.Break.V.Long()-b.LengthMM)) > 1e-6 {
				t.Errorf("%s: %v drawn, %v left out of %v", b.ID, b.Line.Length(), b.Break.V.Long(), b.LengthMM)
			}
			if got := b.Drawn(b.LengthMM); math.Abs(float64(got-b.Line.Length())) > 1e-6 {
				t.Errorf("its end is drawn at %v", got)
			}
		}
	}
	a := d.Ends[slices.IndexFunc(d.Ends, func(e drawing.End) bool { return e.ID == "A" })]
	if d.Datum != "P1" { // the longest way is still that of the file
		t.Errorf("drawn from %s", d.Datum)
	}
	if left < 230 || a.At.X > 520 || math.Abs(float64(a.At.X-(750-left))) > 1e-6 {
		t.Errorf("%v left out, A at %v", left, a.At)
	}
	if !slices.ContainsFunc(d.Notes, func(n drawing.Note) bool {
		return strings.Contains(n.Says,
			"T1 is shown broken: it is 450 mm long")
	}) {
		t.Errorf("%v", d.Notes)
	}
	d = drawing.Of(built(t, func(h *model.Harness) { h.Board.WidthMM = model.Some[unit.Millimetre](60) }))
	if !slices.ContainsFunc(d.Notes, func(n drawing.Note) bool { return strings.Contains(n.Says, "does not fit on 60 x") }) {
		t.Errorf("%v", d.Notes)
	}
}

// Each thing that a person has to know is said, with its branch.
func TestNotes(t *testing.T) {
	for _, c := range []struct {
		name, want string
		change     func(*model.Harness)
	}{
		{"crossing", "T1 and L2 cross on the drawing. Let one of them leave at another angle, or bend it", func(h *model.Harness) {
			h.Branches[2].LeavesDeg = model.Some[unit.Degree](170)
			h.Branches[2].Vias = []model.Via{{AtMM: 100, TurnDeg: 90}}
		}},
		{"past the end", "Bend 1 of L2 lies 250 mm from J1, and the branch is 200 mm long: it is left out. Give it a place on the branch",
			func(h *model.Harness) { h.Branches[2].Vias = []model.Via{{AtMM: 250, TurnDeg: 90}} }},
		{"no room", "Bend 1 of L2 is drawn with a radius of 127 mm, because there is no room for 300 mm", func(h *model.Harness) {
			h.Branches[2].Vias = []model.Via{{AtMM: 100, TurnDeg: 90, RadiusMM: model.Some[unit.Millimetre](300)}} // 100 ÷ (π/4)
		}},
		{"too tight", "Bend 1 of T1 has a radius of 0 mm inside. The bundle takes", func(h *model.Harness) {
			h.Branches[0].Vias = []model.Via{{AtMM: 100, TurnDeg: 90, RadiusMM: model.Some[unit.Millimetre](1)}}
		}},
		{"no length", "L2 has no length yet: it is drawn 100 mm long, dashed. Measure it",
			func(h *model.Harness) { h.Branches[2].LengthMM = 0 }},
		{"no branch", "X9 has no branch, so it is not on the drawing", func(h *model.Harness) {
			h.Terminations = append(h.Terminations, model.Termination{ID: "X9"})
		}},
	} {
		t.Run(c.name, func(t *testing.T) {
			d := drawing.Of(built(t, c.change))
			if !slices.ContainsFunc(d.Notes, func(n drawing.Note) bool { return strings.Contains(n.Says, c.want) && n.Where != "" }) {
				t.Errorf("%v", d.Notes)
			}
		})
	}
	if d := drawing.Of(built(t, nil)); len(d.Notes) > 0 {
		t.Errorf("a sound loom: %v", d.Notes)
	}
}

// Keys turn what they name: L2 leaves at 90 degrees to the right of the trunk, bends a quarter to the left halfway,
// and ends where a hand draws it: 100 down less the arc, 100 along. Bend radius 20: it ends at
// 450 + 20 + 84.292, −(84.292 + 20).
func TestKeysByHand(t *testing.T) {
	d := drawing.Of(built(t, func(h *model.Harness) {
		h.Branches[2].LeavesDeg = model.Some[unit.Degree](-90)
		h.Branches[2].Vias = []model.Via{{AtMM: 100, TurnDeg: 90, RadiusMM: model.Some[unit.Millimetre](20)}}
		h.Board.Datum = model.Some("P1")
	}))
	b := d.Ends[slices.IndexFunc(d.Ends, func(e drawing.End) bool { return e.ID == "B" })]
	far := unit.Millimetre(100 - 10*math.Pi/2 + 20)
	if want := (drawing.Point{X: 450 + far, Y: -far}); !near(b.At, want) || !d.Keyed {
		t.Errorf("B is at %v, by hand %v", b.At, want)
	}
	// the other way round, from B: T1 is reached over J1 and goes on as the file turns L2 at its near end
	d = drawing.Of(built(t, func(h *model.Harness) {
		h.Board.Datum = model.Some("A")
		h.Branches[0].LeavesDeg = model.Some[unit.Degree](90)
	}))
	p := d.Ends[slices.IndexFunc(d.Ends, func(e drawing.End) bool { return e.ID == "P1" })]
	if want := (drawing.Point{X: 300, Y: 450}); !near(p.At, want) || d.Datum != "A" {
		t.Errorf("from A, P1 is at %v, by hand %v", p.At, want)
	}
}

func TestNothingToDraw(t *testing.T) {
	d := drawing.Of(calctest.Built(t, "format = 1\n"))
	if len(d.Branches)+len(d.Ends)+len(d.Pegs) > 0 || d.Datum != "" || d.PegMM != 6 {
		t.Errorf("%+v", d)
	}
	if d := drawing.Of(calctest.Built(t, "format = 1\n[board]\npeg_mm = 8.0\n")); d.PegMM != 8 {
		t.Errorf("the board has pegs of 8 mm, it says %v", d.PegMM)
	}
}

// A thousand branches in a row are five metres of board and more: as many are broken as it takes, the rest is as long
// as the file says. Lengths that no board has, straight or bent, end in a note and not in a long wait.
func TestManyAndHuge(t *testing.T) {
	h := calctest.Parse(t, small)
	h.Branches, h.Wires, h.Splices = nil, nil, nil
	at := "P1"
	for k := range 1000 {
		j := fmt.Sprintf("K%d", k)
		h.Breakouts = append(h.Breakouts, model.Breakout{ID: j})
		h.Branches = append(h.Branches, model.Branch{ID: fmt.Sprintf("C%d", k), From: at, To: j, LengthMM: 300})
		at = j
	}
	d := drawing.Of(calc.Complete(h, calctest.Catalogue(t), nil))
	if d.Datum != "P1" || len(d.Branches) != 1000 || !d.Large || !slices.ContainsFunc(d.Notes, func(n drawing.Note) bool {
		return strings.Contains(n.Says, "does not fit on 4800 x 4800 mm, however it is broken")
	}) {
		t.Errorf("datum %s, large %v, notes %d", d.Datum, d.Large, len(d.Notes))
	}
	for _, bend := range []unit.Degree{0, 180} {
		d = drawing.Of(built(t, func(h *model.Harness) {
			h.Branches[2].LengthMM = 1e9
			h.Branches[2].Vias = []model.Via{{AtMM: 5e8, TurnDeg: bend, RadiusMM: model.Some[unit.Millimetre](1e9)}}
		}))
		if d.Large != (bend != 0) {
			t.Errorf("bend %v: large %v, %v", bend, d.Large, d.Notes)
		}
	}
}

// Covers lie inside out: what lies under the sheath first, the sheath once, what lies over it last.
func TestCoversInsideOut(t *testing.T) {
	d := drawing.Of(built(t, func(h *model.Harness) {
		h.Branches[0].Covers = []model.Cover{{What: model.CoverTape, ThickMM: model.Some[unit.Millimetre](0.1)},
			{What: model.CoverSheath, Part: model.Some("AS23053/16 6.4")}, {What: model.CoverSleeve, Part: model.Some("AS23053/16 9.5"),
				FromMM: model.Some[unit.Millimetre](100), ToMM: model.Some[unit.Millimetre](200)}}
	}))
	var got []string
	for _, c := range d.Branches[0].Covers {
		got = append(got, c.What)
	}
	if strings.Join(got, " ") != "tape sheath sleeve" || d.Branches[0].Covers[2].From != 100 || d.Branches[0].Covers[2].To != 200 {
		t.Errorf("%+v", d.Branches[0].Covers)
	}
}
