package add

import (
	"math"
	"strings"
	"testing"

	"contralay/calc/calctest"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// The size of a feed by table 11-9, for wires of 150 °C in air of 70: 22 AWG bears 5 A, 20 AWG 7 A, 12 AWG 19 A (AC 43.13-1B CHG 1,
// p. 11-23), each its limit and no more; never thinner than one device's own wire, nor than 22 AWG where that has none.
func TestSizesOfFeedsByTheTable(t *testing.T) {
	for _, c := range []struct {
		amps  unit.Ampere
		least string
		size  string
		most  unit.Ampere
		bears bool
	}{{5, "22", "22", 5, true}, {5.01, "22", "20", 7, true}, {7, "22", "20", 7, true}, {1, "20", "20", 7, true}, {1, "12", "12", 19, true},
		{0, "", "22", 5, true}, {19, "", "12", 19, true}, {1e6, "22", "4/0", 0, false}} {
		size, most, bears := feedSize(c.amps, c.least)
		if size != c.size || bears != c.bears || c.most > 0 && most != c.most {
			t.Errorf("%v A from %q: %s AWG, %v A, %v; want %+v", c.amps, c.least, size, most, bears, c)
		}
	}
}

// Small ones by hand: figures to six digits, the weakest standing of several, what serves better in another's place, ids and names.
func TestSmallOnesOfAdding(t *testing.T) {
	for v, want := range map[float64]float64{0: 0, 1234567: 1234570, 0.12345649: 0.123456, -0.12345651: -0.123457, 2: 2,
		999999.6: 1000000} {
		if got := rounded(v); math.Abs(got-want) > 1e-9*math.Abs(want) {
			t.Errorf("%v is %v, want %v", v, got, want)
		}
	}
	taken := func(s catalogue.Standing) Taken { return Taken{Standing: s} }
	for _, c := range []struct {
		of   []Taken
		want catalogue.Standing
	}{{nil, catalogue.House}, {[]Taken{taken(catalogue.Published), taken(catalogue.Memory)}, catalogue.Memory},
		{[]Taken{taken(catalogue.Memory), taken(catalogue.House)}, catalogue.Memory}, {[]Taken{taken(catalogue.House)}, catalogue.House}} {
		if got := worst(c.of...); got.Standing != c.want || !got.Worked {
			t.Errorf("%+v: %+v", c.of, got)
		}
	}
	w := func(rated unit.Celsius, plating string, over unit.Millimetre) catalogue.Wire {
		return catalogue.Wire{RatedC: rated, Plating: plating, OverMM: over}
	}
	like := w(150, "tin", 1)
	for _, c := range []struct {
		a, b catalogue.Wire
		want bool
	}{{w(150, "tin", 2), w(105, "tin", 1), true}, {w(105, "tin", 1), w(150, "nickel", 2), false}, {w(200, "tin", 2), w(150, "nickel", 1),
		true},
		{w(200, "nickel", 1), w(200, "tin", 2), false}, {w(200, "tin", 1), w(150, "tin", 1.1), true}, {w(200, "tin", 1.1), w(150, "tin",
			1), false},
		{w(200, "tin", 1), w(150, "tin", 1), false}} {
		if got := better(c.a, c.b, like); got != c.want {
			t.Errorf("%+v before %+v: %v", c.a, c.b, got)
		}
	}
	for id, want := range map[string]string{"INJ12": "INJ", "101": "", "A": "A", "A1B": "A1B", "": ""} {
		if head(id) != want {
			t.Errorf("%q begins with %q", id, head(id))
		}
	}
	if number("INJ12") != 12 || number("A") != 0 || number("101") != 101 {
		t.Error("the number of an id")
	}
	if capital("fuel pump") != "Fuel pump" || capital("") != "" {
		t.Error("a capital letter")
	}
	c := catalogue.DeviceCavity{AmpsIs: taken(catalogue.House), DutyIs: taken(catalogue.Memory)}
	if duty(c).Standing != catalogue.House {
		t.Error("what is always on has the standing of its current")
	}
	if c.OnS = 0.1; duty(c).Standing != catalogue.Memory {
		t.Error("a duty has its own standing")
	}
	if because("") != "" || because("a sheet") != " (a sheet)" {
		t.Error("whence it is known")
	}
}

// What is told of the wires of a device by hand: the current, how it comes and goes, a peak below 1 A; and of three of them on one feed
// what it carries and how far that can be trusted. The feed of three times 1.6 A, 4.8 A, needs 22 AWG: as much is enough, 24 AWG is not.
func TestWhatFlowsIsTold(t *testing.T) {
	taken := func(s catalogue.Standing) Taken { return Taken{Standing: s, From: "own"} }
	row := catalogue.DeviceCavity{Cavity: "1", What: "feed", Role: "power", Far: "controller", Feed: "feed", Size: "24", Amps: 1.6,
		RestA: 0.1, OnS: 0.5,
		PeriodS: 2, PeakA: 0.8, PeakS: 0.05, AmpsIs: taken(catalogue.Published), DutyIs: taken(catalogue.Memory),
		PeakIs: taken(catalogue.House)}
	steady := row
	steady.OnS, steady.PeriodS, steady.RestA, steady.PeakA = 0, 0, 0, 0
	ground := catalogue.DeviceCavity{Cavity: "2", What: "ground", Role: "ground", Far: "controller", Size: "24", LimitA: 3}
	s := calctest.Built(t, trunk)
	device := func(id string, c catalogue.DeviceCavity) catalogue.Device {
		return catalogue.Device{ID: id, Names: []string{id}, Prefix: []string{strings.ToUpper(id)}, Group: "own", Cavities: 2,
			Carries: []catalogue.DeviceCavity{c, ground}}
	}
	s.Cat = catalogue.Merge(s.Cat, &catalogue.Catalogue{Devices: []catalogue.Device{device("pump", row), device("lamp", steady)}})
	a, err := Devices(s, DevicesAsk{Kind: "pump", Count: 1, At: "J1", Controller: "P1"})
	if err != nil {
		t.Fatal(err)
	}
	for about, want := range map[string]string{"amps": "1.6 A", "on_s": "on for 0.5 s in every 2 s, 0.1 A in between",
		"peak": "0.8 A for 0.05 s at first"} {
		if got := says(a, Chosen, about); !strings.Contains(got, want) {
			t.Errorf("%s: %q, want %q", about, got, want)
		}
	}
	if got := says(a, Missing, "amps"); !strings.Contains(got, "The contact may carry 3 A") {
		t.Errorf("%q", got)
	}
	for _, c := range []struct {
		size  string
		thin  bool
		wires string
	}{{"", false, "22"}, {"22", false, "22"}, {"20", false, "20"}, {"24", true, "24"}} {
		a, err := Devices(s, DevicesAsk{Kind: "lamp", Count: 3, At: "J1", Controller: "P1", Size: c.size})
		if err != nil {
			t.Fatal(err)
		}
		if got := says(a, Missing, "size"); strings.Contains(got, "is too thin for it") != c.thin {
			t.Errorf("%q: %q", c.size, got)
		}
		if got := says(a, Chosen, "peak") + says(a, Chosen, "on_s"); got != "" {
			t.Errorf("%q", got)
		}
		if got := says(a, Chosen, "amps"); !strings.Contains(got, "3 times 1.6 A, 4.8 A") {
			t.Errorf("%q", got)
		}
		for _, w := range a.H.Wires {
			if w.To.V == a.Splices[0] && (w.Size != c.wires || w.Amps.V != 4.8) {
				t.Errorf("%q: the feed is %+v", c.size, w)
			}
		}
	}
	a, err = Devices(s, DevicesAsk{Kind: "pump", Count: 2, At: "J1", Controller: "P1"})
	if err != nil {
		t.Fatal(err)
	}
	for _, g := range a.Says { // the duty is from memory, and so is what comes of it
		if g.About == "amps" && strings.Contains(g.Says, " feeds ") && g.Taken.Standing != catalogue.Memory {
			t.Errorf("%+v", g)
		}
	}
}
