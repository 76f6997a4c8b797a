package current_test

import (
	"strings"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/phase/current"
	"contralay/model"
)

// What a conductor bears in a short goes with the square of its copper (Onderdonk, as the adiabatic rule of
// IEC 60364-5-54: I²t = k²·S²): of 24 and 20 AWG of one kind and one rating (0.2407 and 0.6159 mm²) the thicker bears 6.55 times.
func TestBearsByWire(t *testing.T) {
	s := fed(t, []string{"24 1.0", "20 1.0"}, feed("device = \"blade\"\namps = 5.0\nwires = [\"w0\", \"w1\"]\n"))
	_, thin, _, ok := current.ShortBears(s, 0, 0)
	_, thick, _, ok2 := current.ShortBears(s, 0, 1)
	if !ok || !ok2 {
		t.Fatalf("not known: %v %v", ok, ok2)
	}
	a, b := float64(s.Wires[0].Entry.AreaMM2), float64(s.Wires[1].Entry.AreaMM2)
	calctest.Near(t, "20 AWG against 24", float64(thick/thin)/(b*b/a/a), 1, 0.01)
	if _, _, _, ok := current.ShortBears(s, 0, 2); ok {
		t.Error("a third wire is known")
	}
}

// A drop is said with its return where there is one, and as this wire alone where there is none.
func TestDropSaysWhat(t *testing.T) {
	for wire, want := range map[string]string{"22 5.0\nreturn = \"w1\"": "(with its return)", "22 5.0": "(this wire alone)"} {
		s := calctest.Carrying(t, 20, "", []string{wire, "22 0.0"}, nil, "")
		h := s.H.EditBranch(0, func(b *model.Branch) { b.LengthMM = 8000 })
		if g, ok := calctest.Snag(calc.Complete(h, s.Cat, nil), "wire.drop", "w0"); !ok || !strings.Contains(g.Says, want) {
			t.Errorf("%q: %+v", wire, g)
		}
	}
}

// The impedance of a pair is worked out whatever units stand before it: one of three wires has none.
func TestPairAfterATriple(t *testing.T) {
	s := calctest.Carrying(t, 20, "", calctest.Repeated(5, "22 0.1"), nil, "")
	h := *s.H
	h.Units = []model.Unit{{ID: "three", Wires: []string{"w0", "w1", "w2"}, Build: model.Some(model.BuildTriple)},
		{ID: "pair", Wires: []string{"w3", "w4"}, Build: model.Some(model.BuildPair)}}
	s = calc.Complete(&h, s.Cat, nil)
	if s.Units[0].Pair.Known || !s.Units[1].Pair.Known {
		t.Errorf("%+v, %+v", s.Units[0], s.Units[1])
	}
}
