package lists_test

import (
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/phase/threading"
	"contralay/calc/query/lists"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// fed is a feed of one leg from BOX over splice S1 to a near and a far lamp, each with a return of its own, one of which both wires
// on its way name; and a feed whose leg ends in a splice at both ends, of which no way is known.
const fed = `format = 1
[harness]
supply_v = 13.8
[[termination]]
id = "BOX"
cavities = ["1", "2", "3", "4"]
[[termination]]
id = "NEAR"
cavities = ["1", "2"]
[[termination]]
id = "FAR"
cavities = ["1", "2"]
[[breakout]]
id = "J"
[[splice]]
id = "S1"
at = "J"
[[splice]]
id = "S2"
at = "J"
[[wire]]
id = "leg"
from = "BOX:1"
to = "S1"
spec = "AS22759/32"
size = "18"
amps = 6.0
return = "gf"
[[wire]]
id = "n"
from = "S1"
to = "NEAR:1"
spec = "AS22759/32"
size = "20"
amps = 3.0
return = "gn"
[[wire]]
id = "f"
from = "FAR:1"
to = "S1"
spec = "AS22759/32"
size = "20"
amps = 3.0
return = "gf"
[[wire]]
id = "gn"
from = "NEAR:2"
to = "BOX:2"
spec = "AS22759/32"
size = "20"
amps = 3.0
[[wire]]
id = "gf"
from = "FAR:2"
to = "BOX:3"
spec = "AS22759/32"
size = "20"
amps = 3.0
[[wire]]
id = "stub"
from = "S1"
to = "S2"
spec = "AS22759/32"
size = "20"
amps = 1.0
[[feed]]
id = "F1"
device = "electronic"
amps = 10.0
wires = ["leg"]
[[feed]]
id = "F2"
device = "electronic"
amps = 10.0
wires = ["stub"]
[[branch]]
id = "T"
from = "BOX"
to = "J"
length_mm = 1000.0
[[branch]]
id = "N"
from = "J"
to = "NEAR"
length_mm = 300.0
[[branch]]
id = "L"
from = "J"
to = "FAR"
length_mm = 2500.0
`

// The test of a feed under load is over the far lamp: what the leg, its wire and the one return drop, that return once; between the
// cavities a meter reaches, in the direction of the feed, at the current of the leg. The feed without a cavity is named as not known.
func TestDropsOfAFeed(t *testing.T) {
	s := calctest.Built(t, fed)
	s = calc.Complete(s.H, s.Cat, s)
	at := func(id string) int { return s.Index.Wire[id] }
	known, unknown := lists.Drops(s)
	if len(known) != 1 || !slices.Equal(unknown, []string{"F2"}) {
		t.Fatalf("%+v, not known %v", known, unknown)
	}
	d := known[0]
	sum := s.Wires[at("leg")].Drop.V + s.Wires[at("f")].Drop.V + s.Wires[at("gf")].Drop.V
	calctest.Near(t, "expected", float64(d.Expect), float64(sum), 1e-12)
	if !slices.Equal(d.Wires, []int{at("leg"), at("f")}) || !slices.Equal(d.Back, []int{at("gf")}) || d.Feed != 0 || d.Partly {
		t.Errorf("the way is %v and back %v", d.Wires, d.Back)
	}
	if d.From != "BOX:1" || d.To != "FAR:1" || d.Amps != 6 || d.Limit != 0.5 { // drop_max_v of the design, section 6.0
		t.Errorf("%+v", d)
	}
	near := s.Wires[at("leg")].Drop.V + s.Wires[at("n")].Drop.V
	if !(near > 0 && near < sum) {
		t.Errorf("over the near lamp %v", near)
	}
	// Without the far wire's current its way is not known, and the test is over the near lamp: leg, wire, and both returns that
	// they name.
	h := s.H.EditWire(at("f"), func(w *model.Wire) { w.Amps = model.Opt[unit.Ampere]{} })
	s = calc.Complete(h, s.Cat, nil)
	known, _ = lists.Drops(s)
	if s.Wires[at("f")].Drop.Set || len(known) != 1 || known[0].To != "NEAR:1" || !known[0].Partly ||
		!slices.Equal(known[0].Back, []int{at("gf"), at("gn")}) {
		t.Fatalf("%+v", known)
	}
	calctest.Near(t, "over the near lamp", float64(known[0].Expect), float64(s.Wires[at("leg")].Drop.V+s.Wires[at("n")].Drop.V+
		s.Wires[at("gf")].Drop.V+s.Wires[at("gn")].Drop.V), 1e-12)
}

// Nine wires beside one another between two splices: a way goes over each splice once, however many ways there are to and fro.
func TestDropsOverParallelWires(t *testing.T) {
	text := strings.Replace(fed, "id = \"S2\"\nat = \"J\"", "id = \"S2\"\nat = \"J\"\ntoward = \"L\"\noffset_mm = 500.0", 1)
	wire := func(id, from, to string) {
		text += fmt.Sprintf("[[wire]]\nid = %q\nfrom = %q\nto = %q\nspec = \"AS22759/32\"\nsize = \"20\"\namps = 0.2\n", id, from, to)
	}
	for n := range 9 {
		wire(fmt.Sprint("beside", n), "S1", "S2")
	}
	wire("last", "S2", "FAR:2")
	s := calctest.Built(t, text)
	s = calc.Complete(s.H, s.Cat, s)
	if !s.Wires[s.Index.Wire["beside3"]].Drop.Set {
		t.Fatal("a wire between the splices drops nothing that is known")
	}
	known, _ := lists.Drops(s)
	if len(known) == 0 || known[0].Feed != 0 || len(known[0].Wires) > 3 {
		t.Errorf("%+v", known)
	}
}

// Tape by geometry: what fills the ring between two circles over a length is as much as the tape is thick, wide and long.
// 5 to 7 mm over 1 m: π/4·(49−25)·1000 = 18,850 mm³; of tape 0.1 by 19 mm: 9,921 mm.
func TestTapeByVolume(t *testing.T) {
	calctest.Near(t, "5 to 7 over 1 m", float64(lists.TapeMM(7, 5, 1000, 0.1, 19)), 9921, 0.5)
	calctest.Near(t, "from nothing", float64(lists.TapeMM(2, 0, 100, 0.5, 10)), math.Pi*100/5, 1e-9)
	for _, bad := range [][5]unit.Millimetre{{5, 5, 1, 1, 1}, {4, 5, 1, 1, 1}, {5, -1, 1, 1, 1}, {5, 4, 0, 1, 1}, {5, 4, 1, 0,
		1}, {5, 4, 1, 1, 0},
		{unit.Millimetre(math.NaN()), 4, 1, 1, 1}} {
		if got := lists.TapeMM(bad[0], bad[1], bad[2], bad[3], bad[4]); got != 0 {
			t.Errorf("%v takes %v", bad, got)
		}
	}
}

// A bill with tape by hand: seven of 1.0 round one, 5.0 OD by geometry of equal circles 3.0, with 0.4 of tape named over layer
// 1; 2 m long.
// π/4·(3.4² − 3.0²)·2000 = 4,021 mm³; 0.08 by 12.7 mm: 3,958 mm: 4.0 m; with 10 % 4.4 m. The same on two branches stands in one row.
func TestBillOfTape(t *testing.T) {
	rules := "[rules]\ntape_mm = 0.08\ntape_width_mm = 12.7\n"
	for _, own := range []bool{true, false} {
		if !own {
			rules = ""
		}
		s := calctest.Ringed(t, 1.0, 0, 2000, []int{1, 6}, rules, "")
		h := s.H.EditBranch(0, func(b *model.Branch) {
			b.Layers = slices.Clone(b.Layers)
			b.Layers[1].BindMM, b.Layers[1].BindPart = model.Some[unit.Millimetre](0.4), model.Some("lace")
		})
		s = calc.Build(h, s.Cat, nil)
		k := slices.IndexFunc(lists.Bill(s), func(r lists.BillRow) bool { return r.Group == "tape" })
		if k < 0 {
			t.Fatal("no tape in the bill")
		}
		r := lists.Bill(s)[k]
		if (r.Standing == catalogue.Memory) == own || r.Part != "lace" || !r.Metres {
			t.Errorf("own %v: %+v", own, r)
		}
		if own && (r.Need != 4.0 || r.Order != 4.4 || r.Says != "0.08 mm thick, 12.7 mm wide, edge to edge: binder of T layer 1") {
			t.Errorf("%+v", r)
		}
	}
}

// Tape wound over a branch is bought by the metre of tape, not of branch; a tenth is rounded up. Seven of 1.0 are 3.0 OD; 2 m
// long; tape 0.08 by 12.7 mm. Wound 0.16 thick: π/4·(3.32² − 3.0²)·2000 = 3,177 mm³ ÷ 1.016 = 3,127 mm. Named 0.05 thick, which
// is less than one pass of it: one pass, 2000 ÷ 12.7 turns of π·3.05 = 1,509 mm; named 0, of π·3.0 = 1,484 mm. A braid is bought as
// long as it lies.
func TestBillOfWoundTape(t *testing.T) {
	for _, c := range []struct {
		what  model.CoverKind
		thick unit.Millimetre
		need  float64
		says  string
	}{
		{model.CoverTape, 0.16, 3.2, "0.08 mm thick, 12.7 mm wide, edge to edge: over T"},
		{model.CoverTape, 0.05, 1.6, "0.08 mm thick, 12.7 mm wide, edge to edge: over T"},
		{model.CoverTape, 0, 1.5, "0.08 mm thick, 12.7 mm wide, edge to edge: over T"},
		{model.CoverBraid, 0.3, 2.0, ""},
	} {
		s := calctest.Ringed(t, 1.0, 0, 2000, []int{1, 6}, "[rules]\ntape_mm = 0.08\ntape_width_mm = 12.7\n", "")
		h := s.H.EditBranch(0, func(b *model.Branch) {
			b.Covers = []model.Cover{{What: c.what, ThickMM: model.Some(c.thick)}}
		})
		var rows []lists.BillRow
		for _, r := range lists.Bill(calc.Build(h, s.Cat, nil)) {
			if r.Group == string(c.what) {
				rows = append(rows, r)
			}
		}
		if len(rows) != 1 || rows[0].Need != c.need || rows[0].Says != c.says || rows[0].Part != "as stocked" {
			t.Errorf("%s %v: %+v", c.what, c.thick, rows)
		}
	}
}

// Tubes are those of the threading that are not wound; every branch weighs its bundle and its covers, and says how many it cannot weigh.
func TestTubesAndMasses(t *testing.T) {
	for _, name := range calctest.Files("demo", "whole", "example", "feeds") {
		s := calc.Build(calctest.Load(t, name+".toml"), calctest.Catalogue(t), nil)
		var want []lists.TubeRow
		for _, p := range threading.Threading(s) {
			switch p.What {
			case sheet.PartTransition, sheet.PartBoot, sheet.PartLabel, sheet.PartContacts:
				continue
			}
			if p.GoesOn == model.WoundOn {
				continue
			}
			want = append(want, lists.TubeRow{Branch: p.Of, What: p.What, Part: p.Part, FromMM: p.FromMM, ToMM: p.ToMM, CutMM: p.CutMM})
		}
		if got := lists.Tubes(s); !slices.Equal(got, want) {
			t.Errorf("%s: %v, want %v", name, got, want)
		}
		rows := lists.Masses(s)
		for i, r := range rows {
			b := &s.Branches[i]
			sum, without := unit.Gram(0), 0
			all := []unit.Gram{}
			if b.Sheath.Part != "" {
				all = append(all, b.Sheath.Gram)
			}
			for _, c := range b.Covers {
				all = append(all, c.Gram)
			}
			for _, g := range all {
				if g > 0 {
					sum += g
				} else {
					without++
				}
			}
			if r.Branch != i || r.Covers.V != sum || r.Without != without || r.Covers.Set != (without == 0) || r.Bundle != b.Gram {
				t.Errorf("%s: %s weighs %+v", name, s.H.Branches[i].ID, r)
			}
			if w := r.Whole(); w.Set != (b.Gram.Set && without == 0) || w.V != b.Gram.V+sum {
				t.Errorf("%s: %s weighs %+v in all", name, s.H.Branches[i].ID, w)
			}
		}
		if len(rows) != len(s.H.Branches) {
			t.Errorf("%s: %d rows", name, len(rows))
		}
	}
}

// shieldedPair is two pairs like each other over 1 m and one of thicker wire; strip is what is cut back at both ends.
func shieldedPair(strip float64) string {
	var b strings.Builder
	b.WriteString("format = 1\n[[termination]]\nid = \"P\"\nloop_mm = 20.0\n[[termination]]\nid = \"Q\"\nloop_mm = 10.0\n")
	for k, size := range []string{"24", "24", "24", "24", "20", "20", "24", "24"} {
		fmt.Fprintf(&b, "[[wire]]\nid = \"w%d\"\nfrom = \"P:%d\"\nto = \"Q:%d\"\nspec = \"AS22759/32\"\nsize = %q\n", k, k, k, size)
	}
	b.WriteString("[[unit]]\nid = \"BARE\"\nwires = [\"w6\", \"w7\"]\nbuild = \"pair\"\n") // without a shield, before those with one
	for k := range 3 {
		fmt.Fprintf(&b, "[[unit]]\nid = \"U%d\"\nwires = [\"w%d\", \"w%d\"]\nbuild = \"pair\"\nshield = true\nstrip_mm = %v\n",
			k, 2*k, 2*k+1, strip)
	}
	b.WriteString("[[branch]]\nid = \"T\"\nfrom = \"P\"\nto = \"Q\"\nlength_mm = 1000.0\nmake = \"twisted\"\n" +
		"  [[branch.layer]]\n  of = [\"U0\", \"U1\", \"U2\", \"BARE\"]\n")
	return b.String()
}

// Braid and jacket by hand: as long as the unit lies in the branch, with both loops, less both strips. Of like units there is one row.
func TestBillOfShields(t *testing.T) {
	s := calctest.Built(t, shieldedPair(25))
	var braid, jacket []lists.BillRow
	for _, r := range lists.Bill(s) {
		switch r.Group {
		case "shield braid":
			braid = append(braid, r)
		case "shield jacket":
			jacket = append(jacket, r)
		}
	}
	if len(braid) != 2 || len(jacket) != 2 {
		t.Fatalf("%v, %v", braid, jacket)
	}
	// A unit's way in the branch is the take-up of its place in the twist: three like wires, each on a circle, over the length
	// that is laid.
	long := func(u int) float64 {
		m := s.Branches[0].Layers[0].Members[slices.IndexFunc(s.Branches[0].Layers[0].Members, func(m sheet.Member) bool {
			return m.ID == fmt.Sprint("U", u)
		})]
		r := math.Hypot(float64(m.X), float64(m.Y))
		lay := float64(s.Branches[0].Layers[0].LayMM)
		loss := math.Sqrt(1 + math.Pow(2*math.Pi*r/lay, 2))
		laid := 1000.0 // no breakout at either end: it is laid from end to end
		return laid*loss + 30 - 50
	}
	tenths := func(mm float64) float64 { return math.Ceil(mm/100-1e-9) / 10 }
	for _, all := range [][]lists.BillRow{braid, jacket} {
		pair := all[0]
		if !strings.HasSuffix(pair.Says, ": U0, U1") || !strings.HasSuffix(all[1].Says, ": U2") {
			t.Errorf("%q, %q", all[0].Says, all[1].Says)
		}
		calctest.Near(t, "two like units", pair.Need, tenths(long(0))+tenths(long(1)), 1e-9)
		calctest.Near(t, "two like units, to order", pair.Order, tenths(1.1*long(0))+tenths(1.1*long(1)), 1e-9)
		calctest.Near(t, "the other", all[1].Need, tenths(long(2)), 1e-9)
	}
	if d := s.Units[1].BareMM; !strings.HasPrefix(braid[0].Says, "over "+unit.Fixed(d, 1)+" mm") || d <= 0 {
		t.Errorf("%q over %v", braid[0].Says, d)
	}
	if d := s.Units[1].Dia.Nominal; !strings.HasPrefix(jacket[0].Says, "to "+unit.Fixed(d, 1)+" mm OD") {
		t.Errorf("%q to %v", jacket[0].Says, d)
	}
	// What is stripped all away leaves nothing, and never less.
	for _, r := range lists.Bill(calctest.Built(t, shieldedPair(900))) {
		if strings.HasPrefix(r.Group, "shield ") && (r.Need != 0 || r.Order != 0) {
			t.Errorf("%+v", r)
		}
	}
}

// Stock by hand: a pack of 100 for what is ordered; wire on the shelf is taken off where the size has one colour, and only said
// where it has two.
func TestBillAgainstStock(t *testing.T) {
	text := func(second string) string {
		return "format = 1\n[[termination]]\nid = \"P\"\nloop_mm = 0.0\n[[termination]]\nid = \"Q\"\nloop_mm = 0.0\n" +
			"[rules]\ntail_first_mm = 0.0\ntail_second_mm = 0.0\ncut_step_mm = 1.0\n" +
			"[[wire]]\nid = \"1\"\nfrom = \"P:1\"\nto = \"Q:1\"\nspec = \"AS22759/32\"\nsize = \"22\"\ncolour = \"2\"\n" +
			"[[wire]]\nid = \"2\"\nfrom = \"P:2\"\nto = \"Q:2\"\nspec = \"AS22759/32\"\nsize = \"22\"\ncolour = \"" + second + "\"\n" +
			"[[reel]]\nspec = \"AS22759/32\"\nsize = \"22\"\nover_mm = 1.09\nshelf_m = 1.5\n" +
			"[[branch]]\nid = \"T\"\nfrom = \"P\"\nto = \"Q\"\nlength_mm = 2000.0\nmake = \"straight\"\n"
	}
	wire := func(second string) (out []lists.BillRow) {
		for _, r := range lists.Bill(calctest.Built(t, text(second))) {
			if r.Group == "wire" {
				out = append(out, r)
			}
		}
		return out
	}
	// 2 wires of 2,000 mm, 10 % more, less 1.5 m: 2.9 m.
	if r := wire("2"); len(r) != 1 || r[0].Need != 4 || r[0].Order != 2.9 || !strings.Contains(r[0].Says, "1.5 m on the shelf") {
		t.Errorf("%+v", r)
	}
	r := wire("5")
	if len(r) != 2 || r[0].Order != 2.2 || r[1].Order != 2.2 || !strings.Contains(r[0].Says,
		"1.5 m of this size on the shelf") || r[0].Colour != "2" ||
		r[1].Colour != "5" {
		t.Errorf("%+v", r)
	}
}
