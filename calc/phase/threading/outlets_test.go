package threading_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// forked is a trunk that parts at J into legs of so many wires of 22 AWG each.
func forked(t *testing.T, legs ...int) *model.Harness {
	t.Helper()
	var b strings.Builder
	b.WriteString("format = 1\n[[breakout]]\nid = \"J\"\ntransition = \"own\"\n[[termination]]\nid = \"P\"\n")
	n := 0
	for k, wires := range legs {
		fmt.Fprintf(&b, "[[termination]]\nid = \"E%d\"\n", k)
		for w := range wires {
			n++
			fmt.Fprintf(&b, "[[wire]]\nid = \"%d.%d\"\nfrom = \"P:%d\"\nto = \"E%d:%d\"\nspec = \"AS22759/32\"\nsize = \"22\"\n", k, w, n,
				k, w+1)
		}
	}
	b.WriteString("[[branch]]\nid = \"T\"\nfrom = \"P\"\nto = \"J\"\nlength_mm = 500\n")
	for k := range legs {
		fmt.Fprintf(&b, "[[branch]]\nid = \"L%d\"\nfrom = \"J\"\nto = \"E%d\"\nlength_mm = 200\n", k, k)
	}
	return calctest.Parse(t, b.String())
}

// closedBy is a harness whose transition "own" has these outlets.
func closedBy(t *testing.T, h *model.Harness, prior *sheet.Sheet, outlets ...catalogue.Outlet) *sheet.Sheet {
	t.Helper()
	cat := catalogue.Merge(calctest.Catalogue(t), &catalogue.Catalogue{Transitions: map[string]catalogue.Transition{"own": {ID: "own",
		Outlets: outlets, Origin: catalogue.Origin{Source: "measured", Standing: catalogue.House}}}})
	return calc.Complete(h, cat, prior)
}

// saidOfOutlets is what is said of transitions, sorted.
func saidOfOutlets(s *sheet.Sheet) []string {
	var out []string
	for _, g := range s.Snags {
		if strings.HasPrefix(g.Rule, "transition.") {
			out = append(out, fmt.Sprint(g.Level, " ", g.Rule, " ", g.Says))
		}
	}
	slices.Sort(out)
	return out
}

// Five wires of 1.09 mm and nineteen: 3.0 and 5.5 mm bare, some 5 and 8 mm in their sheaths.
// A part with an outlet of 6.5 and one of 12 takes them whichever is written first in the
// catalogue and whichever branch is written first in the file; with the two the wrong way
// round the nineteen would not go through 6.5 mm.
func TestOutletsBySize(t *testing.T) {
	trunk := catalogue.Outlet{ExpandedMM: 26, RecoveredMM: 5, PortMM: 30}
	wide := catalogue.Outlet{ExpandedMM: 12, RecoveredMM: 4, PortMM: 25}
	narrow := catalogue.Outlet{ExpandedMM: 6.5, RecoveredMM: 2.5, PortMM: 40}
	for _, legs := range [][]int{{5, 19}, {19, 5}} {
		for _, outlets := range [][]catalogue.Outlet{{trunk, wide, narrow}, {trunk, narrow, wide}} {
			s := closedBy(t, forked(t, legs...), nil, outlets...)
			for _, says := range saidOfOutlets(s) {
				t.Errorf("%v %v: %s", legs, outlets, says)
			}
			for k, wires := range legs {
				b := s.Branches[s.Index.Branch[fmt.Sprint("L", k)]]
				want := wide
				if wires == 5 {
					want = narrow
				}
				if got := outlets[b.Outlets[0].V]; !b.Outlets[0].Set || got != want {
					t.Errorf("%d wires go into %v", wires, got)
				}
				// 0.9 of the port less 15 mm of overlap: 21 mm in that of 40, 7.5 in that of 25.
				calctest.Near(t, "its sheath starts", float64(b.Sheath.FromMM), 0.9*float64(want.PortMM)-15, 1e-9)
			}
			if b := s.Branches[0]; !b.Outlets[1].Set || b.Outlets[1].V != 0 {
				t.Errorf("the trunk goes into outlet %v", b.Outlets[1])
			}
		}
	}
}

// A trunk outlet that the trunk does not fill, or does not enter, is said like any other.
func TestTrunkOutlet(t *testing.T) {
	legs := []catalogue.Outlet{{ExpandedMM: 12, RecoveredMM: 3, PortMM: 25}, {ExpandedMM: 12, RecoveredMM: 3, PortMM: 25}}
	for _, c := range []struct {
		rule, says string
		trunk      catalogue.Outlet
	}{
		{"transition.grip", "Its outlet for T recovers to 20.00 mm", catalogue.Outlet{ExpandedMM: 40, RecoveredMM: 20, PortMM: 30}},
		{"transition.slide", "own does not pass T, ", catalogue.Outlet{ExpandedMM: 4, RecoveredMM: 3, PortMM: 30}},
	} {
		s := closedBy(t, forked(t, 7, 7), nil, append([]catalogue.Outlet{c.trunk}, legs...)...)
		if g, ok := calctest.Snag(s, c.rule, "J"); !ok || g.Level != sheet.Stop || !strings.Contains(g.Says, c.says) {
			t.Errorf("%s: %q", c.rule, saidOfOutlets(s))
		}
	}
}

// Whatever the order of the branches in the file and of the outlets in the catalogue, the
// same is said, and no other way to give the outlets out has fewer that stop. The tree, too,
// is walked from the same end where two have as many wires.
func TestOutletsWhateverTheOrder(t *testing.T) {
	rapid.Check(t, func(r *rapid.T) {
		legs := rapid.SliceOfN(rapid.SampledFrom([]int{1, 2, 3, 5, 7, 12, 19}), 1, 4).Draw(r, "legs")
		outlets := []catalogue.Outlet{{ExpandedMM: 40, RecoveredMM: 2, PortMM: 30}}
		for range legs {
			wide := rapid.SampledFrom([]unit.Millimetre{4, 5, 6.5, 8, 9.5, 12}).Draw(r, "expanded")
			outlets = append(outlets, catalogue.Outlet{ExpandedMM: wide,
				RecoveredMM: wide * rapid.SampledFrom([]unit.Millimetre{0.3, 0.5, 0.8}).Draw(r, "shrinks"),
				PortMM:      rapid.SampledFrom([]unit.Millimetre{20, 25, 45}).Draw(r, "port")})
		}
		h := forked(t, legs...)
		s := closedBy(t, h, nil, outlets...)
		want := saidOfOutlets(s)
		for range 3 {
			other := *h
			other.Branches = rapid.Permutation(h.Branches).Draw(r, "branches")
			turned := append([]catalogue.Outlet{outlets[0]}, rapid.Permutation(outlets[1:]).Draw(r, "outlets")...)
			if got := saidOfOutlets(closedBy(t, &other, s, turned...)); !slices.Equal(got, want) {
				r.Fatalf("%v\nin the file's order: %q\nin another: %q", legs, want, got)
			}
		}
	})
}
