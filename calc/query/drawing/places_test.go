package drawing_test

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"contralay/calc/calctest"
	"contralay/calc/query/drawing"
	"contralay/model/unit"
)

// chain is A, J and B in a row, 400 and 200 mm, a leg of no length from J to C, and a splice at J and one along each of both branches.
func chain(a, splices string) string {
	text := "format = 1\n[[termination]]\nid = \"A\"\n" + a +
		"[[termination]]\nid = \"B\"\n[[termination]]\nid = \"C\"\n[[termination]]\nid = \"D\"\n" +
		"[[breakout]]\nid = \"J\"\n[[breakout]]\nid = \"K\"\n" + splices
	for k := range 3 {
		text += fmt.Sprintf("[[wire]]\nid = \"%d\"\nfrom = \"A:%d\"\nto = \"B:%d\"\nspec = \"AS22759/32\"\nsize = \"20\"\n", k, k, k)
	}
	return text +
		"[[branch]]\nid = \"T\"\nfrom = \"A\"\nto = \"J\"\nlength_mm = 400.0\n[[branch]]\nid = \"U\"\nfrom = \"J\"\nto = \"B\"\n" +
		"length_mm = 200.0\n[[branch]]\nid = \"V\"\nfrom = \"J\"\nto = \"C\"\nlength_mm = 0.0\n"
}

func far(a, b drawing.Point) float64 { return math.Hypot(float64(a.X-b.X), float64(a.Y-b.Y)) }

// Where ends, joints and sleeves lie, by hand: an end at the end of its branch, a joint where its branches meet, a splice so far from its
// breakout along the branch it was moved into, and at the breakout where it was not moved. A branch of no known length is drawn 100 mm
// long.
func TestWhereEverythingLies(t *testing.T) {
	splice := func(id, more string) string { return "[[splice]]\nid = \"" + id + "\"\nat = \"J\"\n" + more }
	s := calctest.Built(t, chain("", splice("S", "")+splice("R", "toward = \"T\"\noffset_mm = 30.0\n")+splice("Q",
		"toward = \"U\"\noffset_mm = 50.0\n")+splice("P", "offset_mm = 40.0\n")+
		"[[splice]]\nid = \"N\"\nat = \"K\"\n"))
	d := drawing.Of(s)
	ends := map[string]drawing.End{}
	for _, e := range d.Ends {
		ends[e.ID] = e
	}
	j := d.Joints[0]
	if len(d.Ends) != 3 || len(d.Joints) != 1 || j.ID != "J" || math.Abs(far(ends["A"].At, j.At)-400) > 1e-6 || math.Abs(far(ends["B"].At,
		j.At)-200) > 1e-6 ||
		math.Abs(far(ends["C"].At, j.At)-100) > 1e-6 || d.Branches[2].LengthMM != 100 || d.Branches[2].Measured || !d.Branches[0].Measured {
		t.Errorf("%+v\n%+v", d.Ends, d.Joints)
	}
	// Each looks away from its branch.
	for _, id := range []string{"A", "B", "C"} {
		e := ends[id]
		step := drawing.Point{X: e.At.X + 10*unit.Millimetre(math.Cos(float64(e.Heading)*math.Pi/180)), Y: e.At.Y +
			10*unit.Millimetre(math.Sin(float64(e.Heading)*math.Pi/180))}
		if math.Abs(far(step, j.At)-far(e.At, j.At)-10) > 1e-6 || e.Branches != 1 || !e.Guess {
			t.Errorf("%+v", e)
		}
	}
	if wide := max(d.Branches[0].WidthMM, d.Branches[1].WidthMM, d.Branches[2].WidthMM); j.WideMM != wide || wide <= 4 {
		t.Errorf("%v of %+v", j.WideMM, d.Branches)
	}
	var got []string
	for _, x := range d.Sleeves {
		got = append(got, fmt.Sprintf("%s %q %v %.0f", x.ID, x.Branch, x.Station, far(x.At, j.At)))
	}
	if want := `S "" 400 0; R "T" 370 30; Q "U" 50 50; P "" 400 0`; strings.Join(got, "; ") != want {
		t.Errorf("%q, want %s", got, want)
	}
	notes := fmt.Sprint(d.Notes)
	for _, want := range []string{"D has no branch, so it is not on the drawing", "K has no branch, so it is not on the drawing"} {
		if !strings.Contains(notes, want) {
			t.Errorf("%q is not among %s", want, notes)
		}
	}
}

// What an end looks like by hand: the datum at the mating face, at the rear of the shell of 31 mm, at the lip of a boot of 66 mm; only
// a boot with an angle points somewhere.
func TestEndByItsDatum(t *testing.T) {
	for _, c := range []struct {
		keys              string
		front, back, boot float64
		points            bool
	}{
		{"insert = \"14-35\"\npart_mm = 31.0\ndatum = \"mating face\"\n", 0, 31, 0, false},
		{"insert = \"14-35\"\npart_mm = 31.0\ndatum = \"shell rear\"\nboot = \"boot-straight-14\"\nboot_clock = 4\n", 31, 0, 66, false},
		{"insert = \"14-35\"\npart_mm = 31.0\ndatum = \"boot lip\"\nboot = \"boot-straight-14\"\n", 97, -66, 66, false},
		{"insert = \"14-35\"\npart_mm = 31.0\ndatum = \"shell rear\"\nboot = \"%s\"\nboot_clock = 4\n", 31, 0, -1, true},
		{"insert = \"14-35\"\npart_mm = 31.0\n", 31, 0, 0, false},
	} {
		keys := c.keys
		if strings.Contains(keys, "%s") {
			for id, b := range calctest.Catalogue(t).Boots {
				if b.Shape != "straight" && b.Shell == 14 {
					keys, c.boot = fmt.Sprintf(c.keys, id), float64(b.LengthMM)
				}
			}
		}
		e := drawing.Of(calctest.Built(t, chain(keys, ""))).Ends[0]
		if e.ID != "A" || float64(e.FrontMM) != c.front || float64(e.BackMM) != c.back || float64(e.BootMM) != c.boot ||
			e.BootAt.Set != c.points || e.Guess {
			t.Errorf("%s: %+v", keys, e)
		}
	}
}

// What does not fit its board is broken in the longest straight first, a millimetre more than lacks, in its middle, and 250 mm of it stay:
// of 1,000 and 3,000 mm in a row on 3,700 mm 301 of the longer; on 1,100 mm all but 250 of it, and 151 of the other.
func TestWhereItIsBroken(t *testing.T) {
	for _, c := range []struct {
		wide       float64
		first, all [2]float64 // where T and U are broken; 0, 0 where they are not
	}{{5000, [2]float64{}, [2]float64{}}, {3700, [2]float64{}, [2]float64{1349.5, 1650.5}}, {1100, [2]float64{424.5, 575.5},
		[2]float64{125, 2875}}} {
		text := "format = 1\n[board]\nwidth_mm = " + fmt.Sprint(c.wide) +
			".0\ndatum = \"A\"\n[[termination]]\nid = \"A\"\n[[termination]]\nid = \"B\"\n" +
			"[[breakout]]\nid = \"J\"\n[[branch]]\nid = \"T\"\nfrom = \"A\"\nto = \"J\"\nlength_mm = 1000.0\n" +
			"[[branch]]\nid = \"U\"\nfrom = \"J\"\nto = \"B\"\nlength_mm = 3000.0\n"
		d := drawing.Of(calctest.Built(t, text))
		for k, want := range [][2]float64{c.first, c.all} {
			b := d.Branches[k].Break
			if got := [2]float64{float64(b.V.From), float64(b.V.To)}; math.Abs(got[0]-want[0]) > 1e-6 ||
				math.Abs(got[1]-want[1]) > 1e-6 || b.Set != (want[1] > 0) {
				t.Errorf("on %v mm %s is broken %v, want %v", c.wide, d.Branches[k].ID, got, want)
			}
		}
	}
}
