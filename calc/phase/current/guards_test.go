package current_test

import (
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/query/why/power"
	"contralay/model"
	"contralay/model/unit"
)

// joinedFeeds is two outputs joined at S1, on to a load and to a second splice; another feed joins at S2 as well, where %s.
const joinedFeeds = `format = 1
[harness]
supply_v = 13.8
short_a = 400.0
[[termination]]
id = "B"
cavities = ["1", "2", "3", "4"]
[[termination]]
id = "L"
cavities = ["1", "2"]
[[breakout]]
id = "J"
[[splice]]
id = "S1"
at = "J"
[[splice]]
id = "S2"
at = "J"
[[wire]]
id = "a"
from = "B:1"
to = "S1"
spec = "AS22759/32"
size = "16"
amps = 4.0
[[wire]]
id = "b"
from = "B:2"
to = "S1"
spec = "AS22759/32"
size = "16"
amps = 4.0
[[wire]]
id = "c"
from = "S1"
to = "L:1"
spec = "AS22759/32"
size = "12"
amps = 8.0
return = "r"
[[wire]]
id = "d"
from = "B:3"
to = "S2"
spec = "AS22759/32"
size = "16"
amps = 2.0
[[wire]]
id = "e"
from = "S2"
to = "L:2"
spec = "AS22759/32"
size = "16"
amps = 2.0
return = "r"
[[wire]]
id = "r"
from = "B:4"
to = "L:3"
spec = "AS22759/32"
size = "12"
amps = 10.0
[[feed]]
id = "F1"
device = "electronic"
amps = 6.0
trip_s = 0.01
outputs = 2
wires = ["a", "b"]
[[feed]]
id = "F2"
device = "electronic"
amps = 5.0
trip_s = 0.01
wires = ["d"]
[[branch]]
id = "T"
from = "B"
to = "J"
length_mm = 500.0
[[branch]]
id = "U"
from = "J"
to = "L"
length_mm = 500.0
`

// Two joined outputs of 6 A: each leg bears its own 6, what lies beyond bears 12; what may be used is 80 % of 12. Load is what comes
// out of them, 8 A. A wire on two feeds must bear both. The return of both is behind both, and named by each once.
func TestGuardsByHand(t *testing.T) {
	s := calctest.Built(t, joinedFeeds)
	at := func(id string) int { return s.Index.Wire[id] }
	for id, want := range map[string]unit.Ampere{"a": 6, "b": 6, "c": 12, "d": 5, "e": 5} {
		feed := map[string]int{"a": 0, "b": 0, "c": 0, "d": 1, "e": 1}[id]
		if g := s.Wires[at(id)].Guard; !g.Set || g.V.Amps != want || g.V.Feed != feed {
			t.Errorf("%s is guarded by %+v, want %v A of feed %d", id, g, want, feed)
		}
	}
	if g := s.Wires[at("r")].Guard; g.Set {
		t.Errorf("the return is guarded by %+v", g)
	}
	f := s.Feeds[0]
	if f.All != 12 || f.Outputs != 2 || len(f.Legs) != 2 || len(f.Beyond) != 1 || f.Beyond[0] != at("c") || len(f.Back) != 1 ||
		f.Back[0] != at("r") {
		t.Errorf("%+v", f)
	}
	calctest.Near(t, "most", float64(f.Most), 9.6, 1e-12)
	calctest.Near(t, "load", float64(f.Load), 8, 1e-12)
	// Leg a is left the less of 9.6 less what b takes and 80 % of one output, 4.8; c all of the 9.6.
	for id, want := range map[string]float64{"a": 4.8, "b": 4.8, "c": 9.6, "d": 4, "e": 4} {
		found := false
		for _, l := range power.LimitsOf(s, at(id)) {
			if l.Feed {
				found = true
				calctest.Near(t, "left for "+id, float64(l.Amps), want, 1e-9)
			}
		}
		if !found {
			t.Errorf("no limit of a feed for %s", id)
		}
	}
	// The far short: supply by the resistance out, back and of the supply. More is on a shorter way; where the way back is not known
	// nothing is.
	if far := f.Far; !(far[0] > 0) || !(far[2] > 0) || !(far[2] < far[0]) {
		t.Errorf("shorts %v", far)
	}
	// With both feeds on one splice what lies beyond bears both, 12 + 5, as does each other's leg.
	h := s.H.EditWire(at("d"), func(w *model.Wire) { w.To = model.Some("S1") })
	s = calc.Build(h, s.Cat, nil)
	if g := s.Wires[at("c")].Guard.V; g.Feed != -1 || g.Amps != 17 {
		t.Errorf("on two feeds c is guarded by %+v, want 17 A of several", g)
	}
	if g := s.Wires[at("e")].Guard; g.Set {
		t.Errorf("e hangs on nothing and is guarded by %+v", g)
	}
}
