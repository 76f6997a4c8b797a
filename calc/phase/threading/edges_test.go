package threading_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/sheet"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// TestEdgesOfTolerance holds each part that is slid on and shrunk to its rule, through the whole sheet: a
// hundredth to the bad side it stops, a hundredth to the good side it does not. Two wires of 2.00 ± 0.05 mm,
// twisted: 4.10 mm over at their largest, 3.90 at their smallest; tape lies round them on two halves and two
// straights, (2 + π)/π = 1.6366 wires, 3.1914 mm at their smallest. A sheath and a sleeve stop by section 6.5 of the
// design: bore as supplied against the largest, bore recovered against the smallest under tape. The outlet
// of a leg passes the largest and is held by what is over it at its smallest, and so is a boot; what it is advised, from
// 80 % of its bore and below 1.10 of grip, is judged at nominal.
func TestEdgesOfTolerance(t *testing.T) {
	tube := func(supplied, recovered unit.Millimetre) *catalogue.Catalogue {
		return &catalogue.Catalogue{Tubes: []catalogue.Tube{{ID: "own", Kind: "AS23053/16", SuppliedMM: supplied, RecoveredMM: recovered,
			WallMM: 0.8, Density: 1.3, Flexible: true, ServiceMaxC: 150, Origin: house}}}
	}
	boot := func(supplied, recovered unit.Millimetre) *catalogue.Catalogue {
		return &catalogue.Catalogue{Boots: map[string]catalogue.Boot{"own": {ID: "own", Shape: "straight", Shell: 10, LipSuppliedMM: 24,
			LipRecoveredMM: 13, CableSuppliedMM: supplied, CableRecoveredMM: recovered, LengthMM: 55, Origin: house}}}
	}
	transition := func(supplied, recovered unit.Millimetre) *catalogue.Catalogue {
		o := catalogue.Outlet{ExpandedMM: supplied, RecoveredMM: recovered, PortMM: 30}
		return &catalogue.Catalogue{Transitions: map[string]catalogue.Transition{"own": {ID: "own",
			Outlets: []catalogue.Outlet{o, o}, Origin: house}}}
	}
	for _, c := range []struct {
		name, slide, loose string
		most, least        unit.Millimetre
		term, cover        string
		part               func(supplied, recovered unit.Millimetre) *catalogue.Catalogue
	}{
		{"sheath", "sheath.slide", "sheath.loose", 4.10, 3.1914, "", calctest.CoverText("sheath", "part = \"own\"\n"), tube},
		{"sleeve", "cover.slide", "cover.loose", 4.10, 3.1914, "",
			calctest.CoverText("sleeve", "part = \"own\"\nfrom_mm = 100.0\nto_mm = 200.0\n"), tube},
		{"boot", "boot.slide", "boot.grip", 4.10, 3.90, "boot = \"own\"\n", "", boot},
		{"transition", "transition.slide", "transition.grip", 4.10, 3.90, "", "", transition},
	} {
		for _, e := range []struct {
			supplied, recovered unit.Millimetre
			rule                string
		}{
			{c.most + 0.01, c.least - 0.01, ""},
			{c.most - 0.01, c.least - 0.01, c.slide},
			{c.most + 0.01, c.least + 0.01, c.loose},
		} {
			s := pairIn(t, c.term, c.cover, c.name == "transition", c.part(e.supplied, e.recovered))
			var stops []string
			for _, g := range s.Snags {
				if g.Level == sheet.Stop {
					stops = append(stops, g.Rule)
				}
			}
			stops = slices.Compact(stops)
			if got := strings.Join(stops, " "); got != e.rule {
				t.Errorf("%s of %.2f to %.2f mm: stops %q, want %q", c.name, e.supplied, e.recovered, got, e.rule)
			}
		}
	}
}

var house = catalogue.Origin{Source: "measured", Standing: catalogue.House}

// pairIn is two wires of 2.00 ± 0.05 mm, twisted, from P to Q, with the parts of a catalogue and no tube beside them;
// over a breakout J with a part of that catalogue where one is wanted.
func pairIn(t *testing.T, term, cover string, overJ bool, parts *catalogue.Catalogue) *sheet.Sheet {
	t.Helper()
	text := "format = 1\n[[termination]]\nid = \"P\"\n" + term + "[[termination]]\nid = \"Q\"\n"
	for k := range 2 {
		text += fmt.Sprintf("[[wire]]\nid = \"w%d\"\nfrom = \"P:%d\"\nto = \"Q:%d\"\nspec = \"own\"\nsize = \"16\"\n", k, k, k)
	}
	layers := "  [[branch.layer]]\n  of = [\"w0\", \"w1\"]\n"
	if overJ {
		text += "[[breakout]]\nid = \"J\"\ntransition = \"own\"\n" +
			"[[branch]]\nid = \"T\"\nfrom = \"P\"\nto = \"J\"\nlength_mm = 300.0\n" + layers +
			"[[branch]]\nid = \"L\"\nfrom = \"J\"\nto = \"Q\"\nlength_mm = 300.0\n" + layers
	} else {
		text += "[[branch]]\nid = \"T\"\nfrom = \"P\"\nto = \"Q\"\nlength_mm = 300.0\n" + layers + cover
	}
	cat := *calctest.Catalogue(t)
	cat.Tubes = nil
	wire := catalogue.Wire{Spec: "own", Size: "16", OverMM: 2, TolMM: 0.05, RatedC: 150, Origin: house}
	parts.Wires = map[catalogue.WireKey]catalogue.Wire{{Spec: "own", Size: "16"}: wire}
	return calc.Complete(calctest.Parse(t, text), catalogue.Merge(&cat, parts), nil)
}

// TestCappedOverTwo: a spare that is capped at the second breakout on its way runs in both branches, takes a cavity
// of its connector and none beyond, and is as long as both with its loop and its fold.
func TestCappedOverTwo(t *testing.T) {
	s := calctest.Built(t, strings.Replace(fmt.Sprintf(calctest.CappedSpare, "from = \"P:2\"\ncapped_at = \"K\"\nfold_mm = 60.0"),
		"from = \"J\"\nto = \"D\"\n", "from = \"J\"\nto = \"K\"\n", 1)+
		"[[breakout]]\nid = \"K\"\n[[branch]]\nid = \"M\"\nfrom = \"K\"\nto = \"D\"\nlength_mm = 150.0\n")
	h := s.H
	path := ""
	for _, b := range s.Wires[1].Path {
		path += h.Branches[b].ID
	}
	if path != "TL" || s.Terms[0].Spare != 1 || s.Terms[1].Spare != 0 {
		t.Errorf("way %q, %d and %d spare cavities", path, s.Terms[0].Spare, s.Terms[1].Spare)
	}
	var in []string
	for k, b := range s.Branches {
		for _, c := range b.Components {
			if c == "s1" {
				in = append(in, h.Branches[k].ID)
			}
		}
	}
	if fmt.Sprint(in) != "[T L]" {
		t.Errorf("it lies in %v", in)
	}
}
