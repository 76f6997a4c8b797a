package add

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/model"
	"contralay/model/catalogue"
)

// owned is devices of a kind of this shop, one more of them where the first was made.
func owned(t *testing.T, more string, rows []catalogue.DeviceCavity, ask DevicesAsk) Added {
	t.Helper()
	s := calctest.Built(t, trunk+more)
	kind := catalogue.Device{ID: "own", Names: []string{"gauge"}, Prefix: []string{"G"}, Group: "own", Cavities: len(rows), Carries: rows}
	s = calc.Build(s.H, catalogue.Merge(s.Base, &catalogue.Catalogue{Devices: []catalogue.Device{kind}}), nil)
	ask.Kind, ask.At = "own", "J1"
	a, err := Devices(s, ask)
	if err != nil {
		t.Fatal(err)
	}
	return a
}

// row is what a cavity of a device carries, in a shield where one is named.
func rowOf(cavity, shield string) catalogue.DeviceCavity {
	return catalogue.DeviceCavity{Cavity: cavity, What: "line " + cavity, Role: "signal", Far: "controller", Size: "22", Shield: shield}
}

// A drain that stands in the middle of a kind parts nothing: the rows behind it have their wires, those of its shield one unit, and rows
// that belong to nothing may stand anywhere.
func TestADrainInTheMiddle(t *testing.T) {
	rows := []catalogue.DeviceCavity{rowOf("1", ""), rowOf("2", "A"), rowOf("", "A"), rowOf("3", "A"), rowOf("4", "")}
	a := owned(t, "", rows, DevicesAsk{Count: 1, Controller: "P1"})
	var to []string
	for _, id := range a.Wires {
		to = append(to, wireOf(t, a.H, id).To.V)
	}
	if got := strings.Join(to, " "); got != "G1:1 G1:2 G1:3 G1:4" {
		t.Errorf("wires to %s", got)
	}
	if len(a.H.Units) != 1 {
		t.Fatalf("%+v", a.H.Units)
	}
	u := a.H.Units[0]
	if !slices.Equal(u.Wires, a.Wires[1:3]) || !u.Shield.V || u.DrainTo.V != "cut" || !strings.HasPrefix(u.DrainFrom.V, "P1:") {
		t.Errorf("%+v", u)
	}
	if _, cavity, _ := strings.Cut(u.DrainFrom.V, ":"); !strings.Contains(says(a, Chosen, "cavity"), "the drain of "+u.ID+" in "+cavity) {
		t.Errorf("where its drain is put is not told: %q", says(a, Chosen, "cavity"))
	}
	if got := says(a, Chosen, "drain_from"); got != fmt.Sprintf("The shield of %s is joined at %s and cut at G1", u.ID, u.DrainFrom.V) {
		t.Errorf("%q", got)
	}
	units := (&devices{kind: catalogue.Device{Carries: rows}}).unitsOf()
	if len(units) != 2 || units[1] == nil || units[1] != units[3] || !slices.Equal(units[1].rows, []int{1, 3}) || !units[1].drained {
		t.Errorf("%+v", units)
	}
}

// What has no place is told: the drain of a shield whose wires take the last cavities, and a connector from which no branch leads.
func TestWhatHasNoPlaceIsTold(t *testing.T) {
	rows := []catalogue.DeviceCavity{rowOf("1", "A"), rowOf("2", "A"), rowOf("", "A")}
	small := "[[termination]]\nid = \"C\"\ncavities = [\"1\", \"2\"]\n"
	a := owned(t, small+"[[branch]]\nid = \"T3\"\nfrom = \"C\"\nto = \"J1\"\nlength_mm = 100.0\n", rows, DevicesAsk{Count: 1,
		Controller: "C"})
	want := fmt.Sprintf("The drain of %s has no cavity at its other end: join it there, or to the shell", a.H.Units[0].ID)
	if got := says(a, Missing, "drain_from"); got != want || a.H.Units[0].DrainFrom.Set || a.H.Units[0].DrainTo.V != "cut" {
		t.Errorf("%q, want %q: %+v", got, want, a.H.Units[0])
	}
	if got := says(a, Missing, "branch"); got != "" {
		t.Errorf("%q", got)
	}
	a = owned(t, small, rows, DevicesAsk{Count: 1, Controller: "C"})
	if got := says(a, Missing, "branch"); got != "No branch leads from C to J1: the wires between them have no way" {
		t.Errorf("%q", got)
	}
}

// Two that are on for half of the time in turn are one that is always on: 7 A through their feed, without a duty. Of four and eight it is
// said how many are on at once: 4 · 3.5 ÷ 15 = 0.93, so one, and 8 · 3.5 ÷ 15 = 1.87, so two.
func TestInTurnWithoutAPause(t *testing.T) {
	coil := catalogue.DeviceCavity{Cavity: "1", What: "feed", Role: "power", Far: "controller", Feed: "coils", Size: "20", Amps: 7,
		OnS:     0.005,
		PeriodS: 0.010}
	a := owned(t, "", []catalogue.DeviceCavity{coil}, DevicesAsk{Count: 2, Controller: "P2"})
	if len(a.H.Splices) != 1 {
		t.Fatalf("%+v", a.Says)
	}
	if w := wireOf(t, a.H, "101"); w.To.V != a.H.Splices[0].ID || w.Amps.V != 7 || w.OnS.Set || w.PeriodS.Set || w.RestA.Set {
		t.Errorf("%+v", w)
	}
	coil.OnS, coil.PeriodS = 0.0035, 0.015
	for n, want := range map[int]string{4: "4 fire in turn, at most 1 at once with 7 A each, RMS current 6.76 A",
		8: "8 fire in turn, at most 2 at once with 7 A each, RMS current 13.28 A"} {
		if got := share(coil, n).words; got != want {
			t.Errorf("%q, want %q", got, want)
		}
	}
	w := model.Wire{}
	if (shared{}).put(&w); w.Amps.Set || w.OnS.Set || w.PeriodS.Set || w.RestA.Set {
		t.Errorf("of nothing: %+v", w)
	}
	if (shared{amps: 2, onS: 1, periodS: 4}).put(&w); w.Amps.V != 2 || w.OnS.V != 1 || w.PeriodS.V != 4 || w.RestA.Set {
		t.Errorf("without a rest: %+v", w)
	}
}

// A wire goes into the room of a layer that it closes: a sixth of 22 AWG round one, and not one of 2 where no layer may be lifted by more
// than 0.05, which begins a layer. One that has no way holds up none of those after it.
func TestOneMoreIntoATrunkOfSix(t *testing.T) {
	more := "[[termination]]\nid = \"X\"\ncavities = [\"1\"]\n[[termination]]\nid = \"C\"\ncavities = [\"1\", \"2\", \"3\", " +
		"\"4\", \"5\", \"6\", \"7\"]\n"
	for k := range 6 {
		more += fmt.Sprintf("[[wire]]\nid = \"w%d\"\nfrom = \"C:%d\"\nto = \"P1:%d\"\nspec = \"AS22759/32\"\nsize = \"22\"\n", k, k+1, k+1)
	}
	more += "[rules]\nlift_tight = 0.05\n[[branch]]\nid = \"T3\"\nfrom = \"C\"\nto = \"J1\"\nlength_mm = 300.0\n" +
		"make = \"laid\"\n  [[branch.layer]]\n  of = [\"w0\"]\n" +
		"  [[branch.layer]]\n  of = [\"w1\", \"w2\", \"w3\", \"w4\", \"w5\"]\n"
	for size, want := range map[string]string{"22": "w0, w1 w2 w3 w4 w5 w7", "2": "w0, w1 w2 w3 w4 w5, w7"} {
		lost, is := rowOf("1", ""), rowOf("2", "")
		lost.Far, is.Size = "feed", size
		a := owned(t, more, []catalogue.DeviceCavity{lost, is}, DevicesAsk{Count: 1, Controller: "C", Spec: "AS22759/41",
			Ends: map[string]string{"feed": "X"}})
		k := slices.IndexFunc(a.H.Branches, func(b model.Branch) bool { return b.ID == "T3" })
		var got []string
		for _, l := range a.H.Branches[k].Layers {
			got = append(got, strings.Join(l.Of, " "))
		}
		if strings.Join(got, ", ") != want {
			t.Errorf("%s AWG: %s, want %s", size, strings.Join(got, ", "), want)
		}
	}
}
