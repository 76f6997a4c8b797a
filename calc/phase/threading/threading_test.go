package threading_test

import (
	"slices"
	"strings"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	overphase "contralay/calc/phase/over"
	"contralay/calc/phase/threading"
	"contralay/calc/phase/wires"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// Whatever is threaded never has to pass something larger than its supplied bore, or the
// sheet says so; every sheath, boot and end stands in the list once.
func TestThreadingFits(t *testing.T) {
	for _, name := range calctest.Files("demo", "whole", "feeds", "trunk", "example") {
		s := calctest.Laid(t, name)
		n := map[string]int{}
		for _, th := range threading.Threading(s) {
			n[string(th.What)+" "+th.Of]++
			if !th.Fits() {
				said := false
				for _, g := range s.Snags {
					said = said || g.Level >= sheet.Warn && g.Where == th.Of
				}
				if !said {
					t.Errorf("%s: %+v does not fit and nothing says so", name, th)
				}
			}
		}
		for i := range s.Branches {
			id := s.H.Branches[i].ID
			if want := calctest.Once(s.Branches[i].Sheath.Tube.Set); n["sheath "+id] != want {
				t.Errorf("%s: sheath of %s %d times", name, id, n["sheath "+id])
			}
		}
		for i := range s.H.Terminations {
			id := s.H.Terminations[i].ID
			if n["contacts "+id] != 1 || n["boot "+id] != calctest.Once(s.H.Terminations[i].Boot.V != "") {
				t.Errorf("%s: %s: contacts %d, boot %d times", name, id, n["contacts "+id], n["boot "+id])
			}
		}
	}
}

// withTransition closes J1 of the demonstration with a part of the shop's own.
func withTransition(t *testing.T, outlets []catalogue.Outlet) *sheet.Sheet {
	t.Helper()
	s := calctest.Laid(t, "demo")
	h := *s.H
	h.Breakouts = slices.Clone(h.Breakouts)
	h.Breakouts[s.Index.Breakout["J1"]].Transition = model.Some("own-1")
	cat := catalogue.Merge(s.Cat, &catalogue.Catalogue{Transitions: map[string]catalogue.Transition{"own-1": {ID: "own-1", Outlets: outlets,
		Origin: catalogue.Origin{Source: "measured", Standing: catalogue.House}}}})
	return calc.Complete(&h, cat, nil)
}

// outletsFor is outlets at a breakout that hold what is there by a factor over what each
// must pass, the trunk first.
func outletsFor(s *sheet.Sheet, by unit.Ratio) []catalogue.Outlet {
	out := []catalogue.Outlet{{ExpandedMM: 40, RecoveredMM: 8, PortMM: 30}}
	for _, k := range wires.Walked(s) {
		if k.From == "J1" {
			pass, _ := overphase.Tails(s, k)
			out = append(out, catalogue.Outlet{ExpandedMM: pass * unit.Millimetre(by), RecoveredMM: s.Branches[k.Branch].OverMM * 0.5,
				PortMM: 25})
		}
	}
	return out
}

// A transition goes on after the sheaths that meet there and before those beyond the next
// breakout: bare, the tails there gather to less than in their sheaths. One that is too
// narrow stops, by name; one with a leg too many, too.
func TestTransitionOrder(t *testing.T) {
	bare := calctest.Laid(t, "demo")
	s := withTransition(t, outletsFor(bare, 1.4))
	list := threading.Threading(s)
	at := func(what, of string) int {
		return slices.IndexFunc(list, func(th threading.Threaded) bool { return string(th.What) == what && th.Of == of })
	}
	if tr := at("transition", "J1"); tr < 0 || tr < at("sheath", "R1") || tr > at("sheath", "L1") || tr > at("boot", "P1") {
		t.Errorf("sheath R1 at %d, transition at %d, sheath L1 beyond J2 at %d", at("sheath", "R1"), at("transition", "J1"),
			at("sheath", "L1"))
	}
	var beyond []int
	for _, k := range wires.Walked(s) {
		if k.From == "J2" {
			beyond = append(beyond, k.Branch)
		}
	}
	rail := s.Branches[s.Index.Branch["R1"]]
	if g := threading.Gathered(s, beyond); g <= rail.OverMM*unit.Millimetre(s.Limits.ZoneLump) {
		t.Errorf("sheathed they gather to %v, bare to %v", g, rail.OverMM*unit.Millimetre(s.Limits.ZoneLump))
	}
	if g, ok := calctest.Snag(s, "transition.slide", ""); ok {
		t.Error(g.Says)
	}
	tight := withTransition(t, outletsFor(bare, 0.9))
	if g, ok := calctest.Snag(tight, "transition.slide", "J1"); !ok || g.Level != sheet.Stop ||
		!strings.Contains(g.Says, "own-1 does not pass") {
		t.Errorf("%+v", g)
	}
	if g, ok := calctest.Snag(withTransition(t, outletsFor(bare, 1.4)[:3]), "transition.outlets", "J1"); !ok || g.Level != sheet.Stop {
		t.Errorf("%+v", g)
	}
	if g, ok := calctest.Snag(withTransition(t, outletsFor(bare, 1.01)), "transition.stretch", "J1"); !ok || g.Level != sheet.Note {
		t.Errorf("filled past four fifths: %+v", g)
	}
	loose := outletsFor(bare, 1.4)
	loose[1].RecoveredMM = loose[1].ExpandedMM * 0.9
	if g, ok := calctest.Snag(withTransition(t, loose), "transition.grip", "J1"); !ok || g.Level != sheet.Stop {
		t.Errorf("loose: %+v", g)
	}
}

// Three sheathed tails of 7.9, 4.6 and 4.6 mm gather to 12.8 mm, more than an outlet of 12
// passes (worked out by hand: the circle round three touching circles).
func TestGathered(t *testing.T) {
	s := &sheet.Sheet{Branches: []sheet.Branch{{OverMM: 7.9}, {OverMM: 4.6}, {OverMM: 4.6}}}
	if got := threading.Gathered(s, []int{0, 1, 2}); got < 12.7 || got > 12.85 {
		t.Errorf("%v", got)
	}
}

// What comes over a tail is in the order of the whole list, from the trunk outward, and
// ends with its contacts.
func TestTailOf(t *testing.T) {
	s := calctest.Laid(t, "whole")
	var got []string
	for _, th := range threading.TailOf(s, "RRW1") {
		got = append(got, string(th.What)+" "+th.Of)
	}
	want := "sheath T1, sheath T2, sheath T3, sheath L8, label RRW1, contacts RRW1"
	if strings.Join(got, ", ") != want {
		t.Errorf("%s, want %s", strings.Join(got, ", "), want)
	}
}
