package current_test

import (
	"strings"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
)

// fed is wires from A to Z, "size amps" each, with feeds and a supply.
func fed(t testing.TB, wires []string, feeds string) *sheet.Sheet {
	t.Helper()
	s := calctest.Carrying(t, 40, "", wires, nil, feeds)
	h := *s.H
	h.Head.SupplyV = model.Some[unit.Volt](13.8)
	return calc.Complete(&h, s.Cat, nil)
}

func feed(text string) string { return "[[feed]]\nid = \"F1\"\n" + text }

// Every rule of the devices: what is said, and of a sound feed nothing.
func TestFeeds(t *testing.T) {
	for _, c := range []struct {
		name  string
		wires []string
		feed  string
		rule  string
		says  string
	}{
		{"sound", []string{"20 4.0"}, `device = "blade"
amps = 5.0
before_mm = 150.0
wires = ["w0"]`, "", ""},
		{"no device", []string{"20 4.0"}, `wires = ["w0"]`, "feed.device", "has no device or no rating"},
		{"no such blade", []string{"20 4.0"}, `device = "blade"
amps = 6.0
wires = ["w0"]`, "feed.rating", "Nobody makes a blade of 6 A. Ratings: 1, 2, 3, 4, 5, 7.5, 10,"},
		{"no such large blade", []string{"12 4.0"}, `device = "large blade"
amps = 10.0
wires = ["w0"]`, "feed.rating", "Nobody makes a large blade of 10 A. Ratings: 20, 30"},
		{"half an ampere", []string{"20 4.0"}, `device = "electronic"
amps = 5.5
wires = ["w0"]`, "feed.rating", "set in whole amperes"},
		{"over four fifths", []string{"18 4.1"}, `device = "blade"
amps = 5.0
wires = ["w0"]`, "feed.load", "It carries 4.1 A of 5 A: at most 4 A, 80 % of its rating"},
		{"several wires, with duty", []string{"18 2.0", "18 8.0\non_s = 1.0\nperiod_s = 4.0"}, `device = "blade"
amps = 7.5
wires = ["w0", "w1"]`, "", ""},
		{"a start that opens it", []string{"14 2.0", "14 30.0\non_s = 1.0\nperiod_s = 100.0"}, `device = "blade"
amps = 10.0
wires = ["w0", "w1"]`, "feed.start", "may open when w1 comes on: 32 A for 1 s"},
		{"a limit that a start passes", []string{"14 12.0\non_s = 1.0\nperiod_s = 100.0"}, `device = "electronic"
amps = 10.0
trip_s = 0.1
wires = ["w0"]`, "feed.start", "may open when w0 comes on"},
		{"more than the wire", []string{"24 1.0"}, `device = "blade"
amps = 25.0
wires = ["w0"]`, "feed.wire", "At 25 A it can pass more current all the time than these wires may carry: w0 ("},
		{"a long way before it", []string{"20 4.0"}, `device = "blade"
amps = 5.0
before_mm = 400.0
wires = ["w0"]`, "feed.before", "The wire before it is unprotected for 400 mm; the shop allows 180 mm"},
		{"what a short lets through", []string{"24 1.0"}, `device = "blade"
amps = 20.0
wires = ["w0"]`, "feed.short", "A short heats the conductor past its rating before the device opens: w0"},
	} {
		t.Run(c.name, func(t *testing.T) {
			s := fed(t, c.wires, feed(c.feed+"\n"))
			var said []string
			for _, g := range s.Snags {
				if strings.HasPrefix(g.Rule, "feed.") || g.Rule == "wire.current" {
					said = append(said, g.Rule+": "+g.Says)
				}
			}
			if c.rule == "" && len(said) > 0 {
				t.Errorf("said %q", said)
			}
			if g, ok := calctest.Snag(s, c.rule, "F1"); c.rule != "" && (!ok || !strings.Contains(g.Says, c.says)) {
				t.Errorf("said %q, want %s: %s", said, c.rule, c.says)
			}
		})
	}
}

// A wire too long and thin for its device never opens it: 24 AWG of 20 m and back has
// 3.4 Ω at 20 °C and 5.2 at its rating, so that 13.8 V are sure to drive 2.6 A; a 3 A
// blade needs 4.1 A to open at all. With the dead short of a weak supply it takes less
// wire.
func TestNeverOpens(t *testing.T) {
	s := fed(t, []string{"24 1.0\nreturn = \"w1\"", "24 1.0"}, feed("device = \"blade\"\namps = 3.0\nwires = [\"w0\"]\n"))
	if g, ok := calctest.Snag(s, "feed.never", ""); ok {
		t.Errorf("one metre: %s", g.Says)
	}
	h := s.H.EditBranch(0, func(b *model.Branch) { b.LengthMM = 20_000 })
	s = calc.Build(h, s.Cat, nil)
	if g, ok := calctest.Snag(s, "feed.never", "F1"); !ok || !strings.Contains(g.Says, "takes 4.1 A: w0 (2.6 A), w1 (2.6 A)") {
		t.Errorf("20 m: %+v", g)
	}
	weak := *h.EditBranch(0, func(b *model.Branch) { b.LengthMM = 1000 })
	weak.Head.ShortA = model.Some[unit.Ampere](4)
	if _, ok := calctest.Snag(calc.Build(&weak, s.Cat, nil), "feed.never", "F1"); !ok {
		t.Error("4 A of dead short open a 3 A blade")
	}
}

// Joined outputs: each leg is sized for its own limit, not for its share of the load,
// and the load may use the share of all of them; what hangs on their splice is
// protected by all together.
func TestJoinedOutputs(t *testing.T) {
	one := feed("device = \"electronic\"\namps = 12.0\noutputs = 2\ntrip_s = 0.002\nwires = [\"w0\", \"w1\"]\n")
	s := fed(t, []string{"14 8.0", "14 8.0"}, one)
	if g, ok := calctest.Snag(s, "feed.load", "F1"); ok {
		t.Error(g.Says)
	}
	if g := s.Wires[0].Guard.V; g.Amps != 12 || g.Feed != 0 {
		t.Errorf("leg: %+v", g)
	}
	s = fed(t, []string{"14 10.0", "14 10.0"}, one)
	if g, ok := calctest.Snag(s, "feed.load", "F1"); !ok || !strings.Contains(g.Says, "It carries 20 A of 24 A: at most 19.2 A") {
		t.Errorf("%+v", g)
	}
	s = fed(t, []string{"24 3.0", "24 3.0"}, one)
	if g, ok := calctest.Snag(s, "feed.wire", "F1"); !ok || !strings.Contains(g.Says, "w0 (") || !strings.Contains(g.Says, "w1 (") {
		t.Errorf("two thin legs that share 6 A: %+v", s.Snags)
	}
}

// A feed protects what hangs on its wires by splices, to the last; a wire that stands
// on another feed, or on the other side of a load, is not its own.
func TestFeedReachesOverSplices(t *testing.T) {
	text := `format = 1
[harness]
supply_v = 13.8
[[termination]]
id = "A"
cavities = ["1", "2"]
[[termination]]
id = "Z"
cavities = ["1", "2", "3", "4"]
[[breakout]]
id = "J1"
[[splice]]
id = "S1"
at = "J1"
[[splice]]
id = "S2"
at = "J1"
`
	for _, w := range [][3]string{{"f", "A:1", "S1"}, {"a", "S1", "Z:1"}, {"j", "S1", "S2"}, {"b", "S2", "Z:2"}, {"back", "Z:2", "Z:4"},
		{"own", "S2", "Z:3"}} {
		text += "[[wire]]\nid = \"" + w[0] + "\"\nfrom = \"" + w[1] + "\"\nto = \"" + w[2] +
			"\"\nspec = \"AS22759/32\"\nsize = \"20\"\namps = 1.0\nrole = \"power\"\n"
	}
	text += `[[feed]]
id = "F1"
device = "blade"
amps = 5.0
wires = ["f"]
[[feed]]
id = "F2"
device = "blade"
amps = 3.0
wires = ["own"]
[[branch]]
id = "T1"
from = "A"
to = "J1"
length_mm = 500.0
[[branch]]
id = "L1"
from = "J1"
to = "Z"
length_mm = 500.0
`
	s := calctest.Built(t, text)
	s = calc.Complete(s.H, s.Cat, s)
	for id, want := range map[string]struct {
		amps unit.Ampere
		by   int
	}{"f": {5, 0}, "a": {8, -1}, "j": {8, -1}, "b": {8, -1}, "own": {3, 1}, "back": {0, 0}} {
		k := s.Index.Wire[id]
		if g := s.Wires[k].Guard.V; g.Amps != want.amps || g.Feed != want.by || s.Wires[k].Guard.Set != (want.amps > 0) {
			t.Errorf("%s: %+v, want %+v", id, g, want)
		}
	}
	if _, ok := calctest.Snag(s, "feed.none", "back"); ok {
		t.Error("a wire behind a load was called unprotected")
	}
}

// Fuses are not joined, and an output without a leg carries nothing; a start that opens
// the device is told beside an overload.
func TestOutputsThatAreNone(t *testing.T) {
	for _, c := range []struct {
		name, feed string
		most       unit.Ampere
		said       bool
	}{
		{"one output", "device = \"electronic\"\namps = 10.0\nwires = [\"w0\"]\n", 8, false},
		{"three outputs, one leg", "device = \"electronic\"\namps = 10.0\noutputs = 3\nwires = [\"w0\"]\n", 8, true},
		{"two outputs, two legs", "device = \"electronic\"\namps = 10.0\noutputs = 2\nwires = [\"w0\", \"w1\"]\n", 16, false},
		{"fuses side by side", "device = \"blade\"\namps = 10.0\noutputs = 2\nwires = [\"w0\", \"w1\"]\n", 8, true},
	} {
		s := fed(t, []string{"14 1.0", "14 1.0"}, feed(c.feed))
		if _, said := calctest.Snag(s, "feed.outputs", "F1"); said != c.said || s.Feeds[0].Most != c.most {
			t.Errorf("%s: may carry %v, said %v", c.name, s.Feeds[0].Most, said)
		}
	}
	s := fed(t, []string{"12 36.0\non_s = 1.5\nperiod_s = 60.0\nrest_a = 11.0"},
		feed("device = \"blade\"\namps = 10.0\nwires = [\"w0\"]\n"))
	if _, a := calctest.Snag(s, "feed.load", "F1"); !a {
		t.Error("the load is not told")
	}
	if _, b := calctest.Snag(s, "feed.start", "F1"); !b {
		t.Error("the start is not told")
	}
	if _, c := calctest.Snag(fed(t, []string{"14 1.0"}, feed("device = \"blade\"\namps = 10.0\n")), "feed.empty", "F1"); !c {
		t.Error("a feed of nothing is not told")
	}
}
