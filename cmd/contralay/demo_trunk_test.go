package main

import (
	"testing"

	"contralay/calc"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/file"
)

// demoSheet is the demonstration with every branch laid, against the embedded
// catalogue alone.
func demoSheet(t *testing.T) *sheet.Sheet {
	t.Helper()
	d, err := file.Parse(demonstration, "the demonstration")
	if err != nil {
		t.Fatal(err)
	}
	cat, err := catalogue.Default()
	if err != nil {
		t.Fatal(err)
	}
	return calc.Complete(&d.Harness, cat, nil)
}

// Every wire has what the current and the tracer are worked out of, and its
// spares are of use: each stands alone in a cavity at both ends.
func TestDemonstrationWires(t *testing.T) {
	s := demoSheet(t)
	live := 0
	for _, w := range s.H.Wires {
		if !w.Amps.Set {
			t.Errorf("wire %s has no current", w.ID)
		}
		if w.Colour.V == "" {
			t.Errorf("wire %s has no colour", w.ID)
		}
		if w.Role.V != model.RoleSpare {
			continue
		}
		if standsAlone(s, w.From.V) && standsAlone(s, w.To.V) {
			live++
		} else {
			t.Errorf("spare %s shares a cavity or has one end only", w.ID)
		}
	}
	if live < 3 {
		t.Errorf("%d spares have a cavity of their own at both ends, at least three are wanted", live)
	}
}

func standsAlone(s *sheet.Sheet, text string) bool {
	e, given := model.ParseEnd(text)
	k, known := s.Index.Termination[e.Termination]
	return given && known && len(s.Terms[k].State[e.Cavity].Wires) == 1
}

// The trunk is a lay-up to copy: what runs on lies inside what leaves, nothing
// stands tight, no layer is open, each has a tracer, and a sheath is given.
func TestDemonstrationTrunk(t *testing.T) {
	s := demoSheet(t)
	i, found := s.Index.Branch["T1"]
	if !found {
		t.Fatal("there is no trunk T1")
	}
	b := s.Branches[i]
	if b.Proposed || b.Make != model.MakeLaid || len(b.Layers) < 3 {
		t.Fatalf("the file lays it as %q in %d layers; a centre and two layers are wanted", b.Make, len(b.Layers))
	}
	if b.Buried > 0 {
		t.Errorf("%d components leave earlier than what lies over them", b.Buried)
	}
	for k, l := range b.Layers[1:] {
		if l.Lift > s.Limits.LiftMax {
			t.Errorf("layer %d stands %.2f mm proud", k+1, float64(l.ProudMM))
		}
		if l.Gap > s.Limits.GapInner {
			t.Errorf("layer %d is open by %.3f of its round", k+1, float64(l.Gap))
		}
		if l.Tracer == "" {
			t.Errorf("layer %d has no tracer", k+1)
		}
	}
	if b.Sheath.Proposed || !b.Sheath.Tube.Set || !b.Sheath.Verdict.KeepsAll() {
		t.Errorf("its sheath %q is not given, or not sound", b.Sheath.Part)
	}
}
