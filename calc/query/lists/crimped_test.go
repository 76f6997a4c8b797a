package lists_test

import (
	"fmt"
	"math"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/query/lists"
	"contralay/model/catalogue"
)

// A crimp says what it is of: the sizes in a contact from thick to thin by their names, the size that they come to, whose pull
// it is. Circular
// mils of AC 43.13-1B table 11-9: three 22 AWG, 3 × 754 = 2,262, go by 16 AWG (2,426).
func TestCrimpsAreNamed(t *testing.T) {
	for _, c := range []struct {
		wires      []string
		size, come string
	}{{[]string{"22 1", "22 1", "22 1"}, "22 + 22 + 22", "16"}, {[]string{"22 1", "20 1"}, "20 + 22", "16"}, {[]string{"20 1"},
		"20", ""}} {
		s := calctest.InCavities(t, "cavities = [\"1\"]\ncontacts = { \"16\" = [\"1\"] }", c.wires...)
		r, ok := lists.CrimpOf(s, 0, "1")
		if !ok || r.Size != c.size || r.Together != c.come || r.Contact != "16" || r.Spec != "AS22759/32" || r.Circular {
			t.Errorf("%v: %+v", c.wires, r)
		}
		if r.PullBy.Source == "" || r.PullBy.Standing != catalogue.Published && r.PullBy.Standing != catalogue.Memory {
			t.Errorf("%v: pulled by %+v", c.wires, r.PullBy)
		}
		if rows := lists.CrimpList(s); len(rows) != 1 || rows[0].Size != c.size || rows[0].Count != 1 {
			t.Errorf("%v: %+v", c.wires, rows)
		}
		if _, ok := lists.CrimpOf(s, 0, "2"); ok {
			t.Error("a cavity of nothing is crimped")
		}
	}
	// Of a wire that no catalogue knows nothing more is said than its sizes.
	s := calctest.Built(t, fmt.Sprintf(`format = 1
[[termination]]
id = "A"
cavities = ["1"]
contacts = { "16" = ["1"] }
[[termination]]
id = "Z"
%s[[branch]]
id = "T"
from = "A"
to = "Z"
length_mm = 100.0
`, "[[wire]]\nid = \"1\"\nfrom = \"A:1\"\nto = \"Z:1\"\nspec = \"own\"\nsize = \"22\"\n"+
		"[[wire]]\nid = \"2\"\nfrom = \"A:1\"\nto = \"Z:2\"\nspec = \"own\"\nsize = \"20\"\n"))
	if r, ok := lists.CrimpOf(s, 0, "1"); !ok || r.Size != "20 + 22" || r.Together != "" || r.PullN != 0 {
		t.Errorf("%+v", r)
	}
}

// 20 AWG in a contact of the catalogue holds 20 lbf, 89 N, by the sheets of AS39029, as published; no crimp pulls by nobody's word.
func TestPullStands(t *testing.T) {
	s := calctest.InCavities(t, "insert = \"14-18\"\ngender = \"pin\"", "20 A")
	if r, ok := lists.CrimpOf(s, 0, "A"); !ok || !r.Circular || r.PullBy.Standing != catalogue.Published ||
		math.Abs(float64(r.PullN)-89) > 0.5 {
		t.Errorf("%+v", r)
	}
	for _, name := range calctest.Files("demo", "whole") {
		for _, r := range lists.CrimpList(calc.Build(calctest.Load(t, name+".toml"), calctest.Catalogue(t), nil)) {
			if r.PullN > 0 && (r.PullBy.Standing == "" || r.PullBy.Source == "") {
				t.Errorf("%s: %+v pulls by nobody's word", name, r)
			}
		}
	}
}

// Take-up by hand: six of 1.0 mm, one straight, five with room on a pitch circle of 2.0, over 1,000 mm without a breakout, lay 12 × 3.0:
// a wire of the ring is
// 1000·(√(1+(2π/36)²) − 1) = 15.1 longer than its way. The flat rule of the wire association's note adds 20 %, 200 mm.
func TestTakeUpByHand(t *testing.T) {
	s := calctest.Ringed(t, 1.0, 0, 1000, []int{1, 5}, "[rules]\nlay_ratio = 12.0\n", "")
	for k := range s.H.Wires {
		laid, flat, ok := lists.TakeUp(s, k)
		want := 1000 * (math.Sqrt(1+math.Pow(2*math.Pi/36, 2)) - 1)
		if k == 0 {
			want = 0
		}
		if !ok {
			t.Fatal("no take-up")
		}
		calctest.Near(t, "take-up", float64(laid), want, 1e-6)
		calctest.Near(t, "by the flat rule", float64(flat), 200, 1e-9)
	}
}
