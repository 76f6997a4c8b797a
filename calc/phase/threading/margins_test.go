package threading_test

import (
	"strings"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/phase/threading"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
)

// In a zone of 90 °C a device that stands 65 stops; adhesive for 120 and wire for 150
// pass; all are listed, the least left first.
func TestMargins(t *testing.T) {
	s := calctest.Carrying(t, 90, "", []string{"22 0.1", "22 0.1"}, nil, "")
	h := *s.H
	h.Rules.AdhesiveC = model.Some[unit.Celsius](120)
	n := h.EditTermination(1, func(t *model.Termination) { t.LimitC = model.Some[unit.Celsius](65) })
	s = calc.Complete(n, s.Cat, nil)
	var got []string
	last := unit.Celsius(-1e9)
	for _, m := range threading.Margins(s, 0) {
		got = append(got, m.What)
		if m.Left() < last {
			t.Errorf("%s has %v left, after %v", m.What, m.Left(), last)
		}
		last = m.Left()
	}
	if text := strings.Join(got, "; "); !strings.HasPrefix(text, "device at Z; ") || !strings.Contains(text, "adhesive; wire w") {
		t.Errorf("%s", text)
	}
	if g, ok := calctest.Snag(s, "hot.device", "Z"); !ok || g.Level != sheet.Stop {
		t.Errorf("%+v", s.Snags)
	}
	for _, rule := range []string{"hot.adhesive", "hot.wire"} {
		if g, ok := calctest.Snag(s, rule, ""); ok {
			t.Error(g.Says)
		}
	}
	h = *n
	h.Rules.AdhesiveC = model.Some[unit.Celsius](85)
	if g, ok := calctest.Snag(calc.Complete(&h, s.Cat, nil), "hot.adhesive", "T1"); !ok || g.Level != sheet.Stop {
		t.Errorf("adhesive for 85: %+v", g)
	}
}

// Six wires at 6 A round an idle one, in air of 90 °C that all of them stand: the elastomer
// sheath for 120 °C, filler for 110, and an idle wire for 125 get too hot by the currents of the
// others, and each is said once. At 0.5 A nothing is.
func TestHotByCurrents(t *testing.T) {
	for amps, want := range map[string]int{"6.0": 3, "0.5": 0} {
		wires := []string{"22 0.0"}
		for range 6 {
			wires = append(wires, "22 "+amps)
		}
		s := calctest.Carrying(t, 90, "", wires, [][]int{{0}, {1, 2, 3, 4, 5, 6}}, "")
		h := *s.H.EditWire(0, func(w *model.Wire) { w.Spec = "SAE J1128 TXL" })
		h.Rules.FillerOf = model.Some("polyethylene")
		h = *h.EditBranch(0, func(b *model.Branch) {
			b.Layers[1].Fillers, b.Layers[1].FillerMM = model.Some(1), model.Some[unit.Millimetre](1.09)
		})
		s = calc.Complete(&h, s.Base, nil)
		if warm := s.Branches[0].Warm; !warm.Known || warm.UnderC < 90 {
			t.Fatalf("%+v", warm)
		}
		said, all := map[string]bool{}, ""
		for _, g := range s.Snags {
			if g.Rule == "hot.inside" {
				all += g.Says + "\n"
				if g.Level != sheet.Warn || g.Where != "T1" || said[g.Says] {
					t.Errorf("%+v", g)
				}
				said[g.Says] = true
			}
		}
		if len(said) != want || want > 0 && (!strings.Contains(all, "sheath AS23053/16") || !strings.Contains(all, "filler in stock to") ||
			!strings.Contains(all, "wire w0 of SAE J1128 TXL, which carries nothing, to")) {
			t.Errorf("%s A, bundle %v C: %q", amps, s.Branches[0].Warm.UnderC, all)
		}
	}
}
