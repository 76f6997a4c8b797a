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
