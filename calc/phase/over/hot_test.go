package over_test

import (
	"fmt"
	"slices"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/sheet"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// Four wires, of three specifications of our own rated 150, 120 and 105 °C, in air of some warmth: of each that the air is
// above one sentence,
// in the order of the wires, whatever comes between; at the rating itself none.
func TestEachSpecInHotAir(t *testing.T) {
	text := "format = 1\n[[termination]]\nid = \"A\"\n[[termination]]\nid = \"Z\"\n"
	for k, spec := range []string{"own105", "own150", "own120", "own105"} {
		text += fmt.Sprintf("[[wire]]\nid = \"%d\"\nfrom = \"A:%d\"\nto = \"Z:%d\"\nspec = %q\nsize = \"22\"\n", k, k, k, spec)
	}
	wires := map[catalogue.WireKey]catalogue.Wire{}
	for _, rated := range []unit.Celsius{150, 120, 105} {
		e, _ := calctest.Catalogue(t).Wire("AS22759/32", "22")
		e.Spec, e.RatedC, e.RatedStanding, e.Origin = fmt.Sprint("own", rated), rated, "", catalogue.Origin{Source: "measured",
			Standing: catalogue.House}
		wires[catalogue.WireKey{Spec: e.Spec, Size: "22"}] = e
	}
	cat := catalogue.Merge(calctest.Catalogue(t), &catalogue.Catalogue{Wires: wires})
	for air, want := range map[int][]string{100: nil, 105: nil, 106: {"own105 is rated 105 C"},
		120: {"own105 is rated 105 C"}, 130: {"own105 is rated 105 C", "own120 is rated 120 C"},
		151: {"own105 is rated 105 C", "own150 is rated 150 C", "own120 is rated 120 C"}} {
		h := calctest.Parse(t,
			text+fmt.Sprintf("[[branch]]\nid = \"T\"\nfrom = \"A\"\nto = \"Z\"\nlength_mm = 200.0\nambient_c = %d\n", air))
		s := calc.Build(h, cat, nil)
		var got []string
		for _, g := range s.Snags {
			if g.Rule == "hot.wire" {
				if g.Level != sheet.Stop || g.Where != "T" {
					t.Errorf("%d °C: %+v", air, g)
				}
				got = append(got, g.Says)
			}
		}
		var full []string
		for _, w := range want {
			full = append(full, fmt.Sprintf("The air around it is %d C, and %s", air, w))
		}
		if !slices.Equal(got, full) {
			t.Errorf("%d °C: %q, want %q", air, got, full)
		}
	}
}

// A tube in air above what it withstands is said once for its kind, with both figures; at that very warmth it is not. A thin
// wall on a run
// that vibrates stops unless the run is supported, and so on all of its tubes.
func TestSheathInHotAirAndVibration(t *testing.T) {
	own := func(kind string) catalogue.Tube {
		return catalogue.Tube{ID: kind, Kind: kind, SuppliedMM: 9.5, RecoveredMM: 1, WallMM: 0.5, Density: 1.3, Flexible: true,
			ServiceMaxC: 90,
			Origin:      catalogue.Origin{Source: "measured", Standing: catalogue.House}}
	}
	cat := catalogue.Merge(calctest.Catalogue(t), &catalogue.Catalogue{Tubes: []catalogue.Tube{own("ours"), own("ours thin")}})
	built := func(part string, air float64, more string) *sheet.Sheet {
		return calc.Build(calctest.Parse(t, calctest.OneSize(3, "22", fmt.Sprintf("length_mm = 300.0\nambient_c = %v\n%s", air, more)+
			calctest.CoverText("sheath", fmt.Sprintf("  part = %q\n", part)))), cat, nil)
	}
	for air, want := range map[float64]bool{89: false, 90: false, 91: true} {
		g, said := calctest.Snag(built("ours", air, ""), "hot.sheath", "T1")
		if said != want || said && (g.Says != "The air around it is 91 C, and ours is for 90 C at most" || g.Level != sheet.Stop) {
			t.Errorf("%v °C: %v %+v", air, said, g)
		}
	}
	for more, want := range map[string]bool{"": false, "environment = [\"vibration\"]\n": true, "environment = [\"oil\"]\n": false,
		"environment = [\"vibration\"]\nsupported = true\n": false} {
		g, said := calctest.Snag(built("ours thin", 40, more), "sheath.thin", "T1")
		if said != want || said && (g.Level != sheet.Stop ||
			g.Says != "ours thin has a thin wall, and the run vibrates without support: "+
				"it will chafe through. Take the standard wall, or support the run") {
			t.Errorf("%q: %v %+v", more, said, g)
		}
		if _, said := calctest.Snag(built("ours", 40, more), "sheath.thin", "T1"); said {
			t.Errorf("%q: the standard wall is called thin", more)
		}
	}
}
