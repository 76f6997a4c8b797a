package face_test

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"contralay/calc/calctest"
	"contralay/model/catalogue"
	"contralay/model/unit"
	"contralay/ui/paper/face"
	"contralay/ui/paper/font"
	"contralay/ui/paper/plot"
)

// of is the rear of the pin insert of an arrangement, every cavity with a number of its own.
func of(t *testing.T, id string, number func(k int) string) face.Face {
	t.Helper()
	f, why := calctest.Catalogue(t).Face(id)
	if why != "" {
		t.Fatal(why)
	}
	f = f.Seen(catalogue.Side{})
	out := face.Face{Title: id, Places: f.Places, In: map[string]face.Cavity{}}
	for k, p := range f.Places {
		out.In[p.Cavity] = face.Cavity{Number: number(k)}
	}
	return out
}

func from101(k int) string { return fmt.Sprint(101 + k) }

// Every arrangement that has a face, in four widths: no letter is under 9 pt, no text leaves its disc,
// no disc lies on another or on the rim, each cavity has its letter once, and each number that is not there
// is told. That a text lies in its disc is measured from the text that is drawn, in its own face.
func TestEveryFaceDrawn(t *testing.T) {
	c := calctest.Catalogue(t)
	drawn := 0
	for _, id := range c.InsertIDs() {
		if _, why := c.Face(id); why != "" {
			continue
		}
		f := of(t, id, from101)
		for _, wide := range []unit.Millimetre{180, 120, face.Least(f, 3.175, 180), 60} {
			d, ok := face.Draw(f, wide)
			if !ok {
				if wide > 150 || wide == face.Least(f, 3.175, 180) {
					t.Errorf("%s is not drawn at %v mm", id, wide)
				}
				continue
			}
			drawn++
			checkDrawing(t, fmt.Sprint(id, " at ", wide), f, d, wide)
		}
		if least := face.Least(f, 3.175, 180); least < 180 {
			if d, ok := face.Draw(f, least); !ok || len(d.Listed) > 0 {
				t.Errorf("%s: at its least width of %v numbers are missing in %v", id, least, d.Listed)
			}
		}
	}
	if drawn < 3*52 {
		t.Errorf("only %d drawings", drawn)
	}
}

func checkDrawing(t *testing.T, what string, f face.Face, d face.Drawing, wide unit.Millimetre) {
	t.Helper()
	if b := d.Sheet.Box; math.Abs(float64(b.High.X-b.Low.X-wide)) > 1e-9 || math.Abs(float64(b.High.Y-b.Low.Y-wide-3)) > 1e-9 {
		t.Errorf("%s: its box is %v", what, d.Sheet.Box)
	}
	var discs, texts []plot.Shape
	rim := unit.Millimetre(0)
	for _, s := range d.Sheet.Shapes {
		switch {
		case s.Text != "":
			texts = append(texts, s)
			if s.Size < 3.175 {
				t.Errorf("%s: %q is %.1f pt", what, s.Text, float64(s.Size)*72/25.4)
			}
		case len(s.Way) == 0 && s.Fill == plot.None:
			rim = s.Radius
		case len(s.Way) == 0:
			discs = append(discs, s)
		}
	}
	if len(discs) != len(f.Places) || rim == 0 {
		t.Fatalf("%s: %d discs, a rim of %v", what, len(discs), rim)
	}
	for k, a := range discs {
		if math.Hypot(float64(a.Middle.X), float64(a.Middle.Y))+float64(a.Radius) > float64(rim) {
			t.Errorf("%s: %s lies on the rim", what, f.Places[k].Cavity)
		}
		for j, b := range discs[:k] {
			if a.Middle.To(b.Middle) < a.Radius+b.Radius {
				t.Errorf("%s: %s lies on %s", what, f.Places[k].Cavity, f.Places[j].Cavity)
			}
		}
	}
	letters, numbers := map[string]int{}, map[string]int{}
	for _, s := range texts {
		if s.Text == "key" || s.Text == "boot" {
			continue
		}
		wideOf := font.Of(s.Bold).Width(s.Text, s.Size)
		in := -1
		for k, c := range discs {
			if c.Middle.To(plot.Point{X: s.Middle.X + wideOf/2, Y: s.Middle.Y}) < c.Radius {
				in = k
			}
		}
		if in < 0 {
			t.Errorf("%s: %q is in no cavity", what, s.Text)
			continue
		}
		for _, corner := range []plot.Point{{X: 0, Y: 0}, {X: wideOf, Y: 0}, {X: 0, Y: 0.72 * s.Size}, {X: wideOf, Y: 0.72 * s.Size}} {
			if far := discs[in].Middle.To(s.Middle.Plus(corner)); far > discs[in].Radius {
				t.Errorf("%s: %q reaches %.2f mm over its cavity", what, s.Text, float64(far-discs[in].Radius))
			}
		}
		name := f.Places[in].Cavity
		switch {
		case s.Bold && s.Text == f.In[name].Number:
			numbers[name]++
		case !s.Bold && s.Text == name:
			letters[name]++
		default:
			t.Errorf("%s: %q stands in cavity %s", what, s.Text, name)
		}
	}
	for _, p := range f.Places {
		listed := strings.Contains(" "+strings.Join(d.Listed, " ")+" ", " "+p.Cavity+" ")
		if letters[p.Cavity] != 1 || numbers[p.Cavity] != calctest.Once(!listed) {
			t.Errorf("%s: %s has %d letters, %d numbers, told: %v", what, p.Cavity, letters[p.Cavity], numbers[p.Cavity], listed)
		}
	}
}

// 128 cavities at 180 mm have no room for nine signs: their numbers are told to stand in the list, and
// no disc has half a number.
func TestNumberWithoutRoom(t *testing.T) {
	f := of(t, "24-35", func(k int) string { return fmt.Sprint("LOOM-", 1000+k) })
	d, ok := face.Draw(f, 180)
	if !ok || len(d.Listed) != 128 {
		t.Errorf("drawn: %v, %d in the list", ok, len(d.Listed))
	}
	one := of(t, "14-18", func(k int) string { return map[bool]string{true: "ENGINE-LOOM-101", false: "7"}[k == 2] })
	if d, ok := face.Draw(one, 110); !ok || len(d.Listed) != 1 || d.Listed[0] != "C" {
		t.Errorf("drawn: %v, in the list %v, want C alone", ok, d.Listed)
	}
	if _, ok := face.Draw(f, 40); ok {
		t.Error("128 cavities are drawn 40 mm wide")
	}
	if _, ok := face.Draw(face.Face{}, 100); ok {
		t.Error("no cavity is drawn")
	}
}

// A small letter is underlined, a capital and a number are not: 20-41 has a to t beside A to Z.
func TestSmallLettersAreUnderlined(t *testing.T) {
	f := of(t, "20-41", from101)
	d, ok := face.Draw(f, 180)
	if !ok {
		t.Fatal("not drawn")
	}
	under := map[string]int{}
	for _, line := range d.Sheet.Shapes {
		if line.Layer != plot.TextLayer || len(line.Way) != 2 {
			continue
		}
		for _, s := range d.Sheet.Shapes {
			if s.Text != "" && math.Abs(float64(s.Middle.X-line.Way[0].X)) < 0.01 && s.Middle.Y > line.Way[0].Y &&
				s.Middle.Y-line.Way[0].Y < s.Size/4 {
				under[s.Text]++
			}
		}
	}
	small := 0
	for _, p := range f.Places {
		want := p.Cavity != strings.ToUpper(p.Cavity)
		if under[p.Cavity] != calctest.Once(want) {
			t.Errorf("%s is underlined %d times", p.Cavity, under[p.Cavity])
		}
		small += calctest.Once(want)
	}
	if small < 10 {
		t.Errorf("only %d small letters: the test looks at the wrong arrangement", small)
	}
}

// Where a boot points is drawn as hours of a clock with the key at 12: the tip of the arrow lies there.
func TestBootArrow(t *testing.T) {
	for hours, toward := range map[int]plot.Point{12: {X: 0, Y: 1}, 3: {X: 1, Y: 0}, 6: {X: 0, Y: -1}, 9: {X: -1, Y: 0},
		1: {X: 0.5, Y: 0.866025}, 8: {X: -0.866025, Y: -0.5}} {
		f := of(t, "14-18", from101)
		f.BootHours = hours
		d, _ := face.Draw(f, 120)
		tip := plot.Point{}
		for _, s := range d.Sheet.Shapes {
			if s.Closed && len(s.Way) == 3 {
				tip = s.Way[0]
			}
			if b, all := s.Bounds(), d.Sheet.Box; b.Low.X < all.Low.X || b.High.X > all.High.X || b.Low.Y < all.Low.Y ||
				b.High.Y > all.High.Y {
				t.Errorf("boot to %d: %q leaves the drawing: %v of %v", hours, s.Text, b, all)
			}
		}
		far := math.Hypot(float64(tip.X), float64(tip.Y))
		if math.Abs(float64(tip.X)/far-float64(toward.X)) > 1e-4 || math.Abs(float64(tip.Y)/far-float64(toward.Y)) > 1e-4 || far < 50 {
			t.Errorf("boot to %d: its arrow ends at %v", hours, tip)
		}
	}
	d, _ := face.Draw(of(t, "14-18", from101), 120)
	for _, s := range d.Sheet.Shapes {
		if s.Closed && len(s.Way) == 3 || s.Text == "boot" {
			t.Error("an arrow where no boot is said to point")
		}
	}
}

// How a cavity is used is seen without colour.
func TestUses(t *testing.T) {
	f := of(t, "10-5", from101)
	f.In = map[string]face.Cavity{"A": {Number: "1"}, "B": {Number: "2", Use: face.Spare}, "C": {Use: face.Reserved},
		"D": {Use: face.Blank}, "E": {Number: "3", Large: true}}
	d, _ := face.Draw(f, 100)
	got := map[string]string{}
	for k, s := range discsOf(d) {
		got[f.Places[k].Cavity] = fmt.Sprint(s.Fill, " ", len(s.Line.Dash), " ", float64(s.Line.Wide))
	}
	want := map[string]string{"A": fmt.Sprint(plot.White, " 0 0.3"), "B": fmt.Sprint(plot.White, " 2 0.3"),
		"C": fmt.Sprint(plot.Light, " 2 0.3"), "D": fmt.Sprint(plot.Light, " 0 0.3"), "E": fmt.Sprint(plot.White, " 0 0.9")}
	for name, w := range want {
		if got[name] != w {
			t.Errorf("%s is drawn as %s, want %s", name, got[name], w)
		}
	}
}

func discsOf(d face.Drawing) (out []plot.Shape) {
	for _, s := range d.Sheet.Shapes {
		if s.Text == "" && len(s.Way) == 0 && s.Fill != plot.None {
			out = append(out, s)
		}
	}
	return out
}

// Three cavities of 10-5 (11-5 of the table of faces) where they lie on paper, worked out by hand from the
// table: at 94 mm the rim is 46 mm. The outermost cavity, at 1.0, has a disc of 9 mm, the largest, and a line of
// 0.3 mm within the rim, so a unit is 36.7 mm. The table shows the
// front of the pin insert, as the rear of a socket insert looks; the rear of a pin insert is its mirror image.
func TestPlacesByHand(t *testing.T) {
	f, why := calctest.Catalogue(t).Face("10-5")
	if why != "" {
		t.Fatal(why)
	}
	for gender, want := range map[string][3]plot.Point{
		"socket": {{X: 19.15, Y: 25.64}, {X: 1.68, Y: -31.04}, {X: -17.55, Y: 25.64}}, // A, C, E
		"pin":    {{X: -19.15, Y: 25.64}, {X: -1.68, Y: -31.04}, {X: 17.55, Y: 25.64}},
	} {
		seen := f.Seen(catalogue.Side{Socket: gender == "socket"})
		d, ok := face.Draw(face.Face{Places: seen.Places}, 94)
		if !ok {
			t.Fatal("not drawn")
		}
		discs := discsOf(d)
		for k, of := range []int{0, 2, 4} {
			if far := discs[of].Middle.To(want[k]); far > 0.01 {
				t.Errorf("%s: cavity %s lies at %v, want %v", gender, seen.Places[of].Cavity, discs[of].Middle, want[k])
			}
		}
	}
}
