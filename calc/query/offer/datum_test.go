package offer_test

import (
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/query/offer"
	"contralay/model"
	"contralay/model/unit"
)

// A length taken from another place of the connector is another length of the same
// branch; there and back it is what it was.
func TestRedatum(t *testing.T) {
	s := calctest.Carrying(t, 40, "", []string{"20 1.0"}, nil, "")
	h := s.H.EditTermination(0, func(t *model.Termination) {
		t.Datum, t.PartMM, t.Boot = model.Some(model.DatumMatingFace), model.Some[unit.Millimetre](31), model.Some("boot-straight-10")
	})
	s = calc.Complete(h, s.Cat, nil)
	boot, _ := s.Cat.Boot("boot-straight-10")
	for datum, want := range map[model.Datum]unit.Millimetre{model.DatumMatingFace: 1000, model.DatumShellRear: 969,
		model.DatumGrommet: 969,
		model.DatumBootLip: 969 - boot.LengthMM} {
		n, ok := offer.Redatum(s, 0, datum)
		if !ok || n.Branches[0].LengthMM != want || n.Terminations[0].Datum.V != datum {
			t.Errorf("%s: %v long, %v, want %v", datum, n.Branches[0].LengthMM, ok, want)
		}
		back, ok := offer.Redatum(calc.Build(n, s.Cat, nil), 0, model.DatumMatingFace)
		if !ok || back.Branches[0].LengthMM != 1000 {
			t.Errorf("from %s back: %v", datum, back.Branches[0].LengthMM)
		}
	}
	for _, edit := range []func(t *model.Termination){
		func(t *model.Termination) { t.PartMM = model.Opt[unit.Millimetre]{} },
		func(t *model.Termination) { t.Datum = model.Opt[model.Datum]{} },
		func(t *model.Termination) { t.PartMM = model.Some[unit.Millimetre](5000) },
	} {
		n, ok := offer.Redatum(calc.Build(s.H.EditTermination(0, edit), s.Cat, nil), 0, model.DatumShellRear)
		if ok || n.Branches[0].LengthMM != 1000 || n.Terminations[0].Datum.V != model.DatumShellRear {
			t.Errorf("converted what is not known: %v", n.Branches[0].LengthMM)
		}
	}
}
