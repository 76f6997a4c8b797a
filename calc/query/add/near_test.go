package add

import (
	"strings"
	"testing"

	"contralay/calc/calctest"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// A gauge and a metric size that meet within five per cent stand for one another: 14 AWG is 2.08 mm² of solid copper
// (ASTM B258), and 2 mm² is 4 % less. 18 AWG, 0.823, is 9 % more than 0.75, so 1 mm² is taken.
func TestNearlyTheSameSize(t *testing.T) {
	m := newMaker(calctest.Built(t, trunk))
	for gauge, want := range map[string]string{"14": "2mm2", "18": "1mm2"} {
		if got := m.made("ISO 6722 thin", gauge); got.size != want {
			t.Errorf("%s AWG: %+v, want %s", gauge, got, want)
		}
	}
}

// Where a specification has not the size the best of all others is taken, wherever it stands in the order of their names: three are
// the same but for what is said, and each of them is best once.
func TestBestOfOtherSpecifications(t *testing.T) {
	const size = "7" // AWG: no specification of the catalogue has it
	wire := func(spec, size string, rated unit.Celsius, plating string, over unit.Millimetre) catalogue.Wire {
		return catalogue.Wire{Spec: spec, Size: size, RatedC: rated, Plating: plating, OverMM: over, AreaMM2: 1}
	}
	names := []string{"own a", "own b", "own c"}
	for what, best := range map[string]catalogue.Wire{
		"thinner":                wire("", size, 150, "tin", 5.9),
		"hot enough, if thicker": wire("", size, 150, "tin", 7),
		"of the plating":         wire("", size, 150, "tin", 7),
	} {
		other := wire("", size, 150, "tin", 6)
		switch what {
		case "hot enough, if thicker":
			other.RatedC = 149
		case "of the plating":
			other.Plating = "silver"
		}
		for k := range names {
			mine := wire("own", "22", 150, "tin", 1)
			own := map[catalogue.WireKey]catalogue.Wire{mine.Key(): mine}
			for n, name := range names {
				w := other
				if n == k {
					w = best
				}
				w.Spec = name
				own[w.Key()] = w
			}
			s := calctest.Built(t, trunk)
			s.Cat = catalogue.Merge(s.Cat, &catalogue.Catalogue{Wires: own})
			if got := newMaker(s).made("own", size); got.spec != names[k] || got.size != size ||
				got.says != "own has no 7 AWG: "+names[k]+" is taken" {
				t.Errorf("%s is %s: %+v", names[k], what, got)
			}
		}
	}
}

// Of a device of which neither a current nor a limit is known that is told, with what is known of it; and no colour is said to
// be lacking where each wire has one.
func TestNoCurrentIsTold(t *testing.T) {
	kind := catalogue.Device{ID: "winch", Names: []string{"winch"}, Prefix: []string{"WINCH"}, Group: "own",
		Cavities: 2, Carries: []catalogue.DeviceCavity{
			{Cavity: "1", What: "feed", Role: "power", Far: "controller", AmpsIs: catalogue.Taken{From: "ask the boatyard"}},
			{Cavity: "2", What: "ground", Role: "ground", Far: "controller", AmpsIs: catalogue.Taken{From: "ask the boatyard"}}}}
	s := calctest.Built(t, trunk)
	s.Cat = catalogue.Merge(s.Cat, &catalogue.Catalogue{Devices: []catalogue.Device{kind}})
	a, err := Devices(s, DevicesAsk{Kind: "winch", Count: 1, At: "J1", Controller: "P1", LengthsMM: []unit.Millimetre{200}})
	if err != nil {
		t.Fatal(err)
	}
	if got := says(a, Missing, "amps"); strings.Count(got, "no current is known (ask the boatyard)") == 0 {
		t.Errorf("%q", got)
	}
	if got := says(a, Missing, "colour"); got != "" {
		t.Errorf("%q", got)
	}
}

// An arrangement in a shell without a number has no boot, not even one that gives no shell either.
func TestNoShellNoBoot(t *testing.T) {
	c := catalogue.Merge(calctest.Catalogue(t), &catalogue.Catalogue{
		Inserts: map[string]catalogue.Insert{"own": {ID: "own", Cavities: []string{"1"}}},
		Boots:   map[string]catalogue.Boot{"sock": {ID: "sock", Shape: "straight"}}})
	if got := BootsFor(c, "own"); len(got) > 0 || StraightBoot(c, "own") != "" {
		t.Errorf("%v", got)
	}
}

// Of spares it is told which cavity each has got, at both ends.
func TestCavitiesOfSparesAreTold(t *testing.T) {
	a, err := Spares(calctest.Built(t, trunk), SparesAsk{Count: 2, From: "P1", To: "P2"})
	if err != nil {
		t.Fatal(err)
	}
	one, two := a.Wires[0], a.Wires[1]
	if got, want := says(a, Chosen, "cavity"), "At P1: "+one+" in 1, "+two+" in 2"; !strings.Contains(got, want) {
		t.Errorf("%q, want %q", got, want)
	}
}
