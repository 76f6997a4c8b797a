package threading_test

import (
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/phase/threading"
	"contralay/calc/phase/wires"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
)

// A sleeve clear of a transition goes on after it, and does not stop it; one beneath it
// goes on before.
func TestSleeveAfterTheTransition(t *testing.T) {
	s := withTransition(t, outletsFor(calctest.Laid(t, "demo"), 1.4))
	done := 0
	for _, k := range wires.Walked(s) {
		if k.From != "J1" || s.H.Branches[k.Branch].LengthMM < 120 {
			continue
		}
		done++
		for far, want := range map[bool]bool{true: true, false: false} {
			c := model.Cover{What: model.CoverSleeve, Part: model.Some("AS23053/16 25.4"), FromMM: model.Some[unit.Millimetre](80),
				ToMM: model.Some[unit.Millimetre](100)}
			if s.H.Branches[k.Branch].To == k.From {
				c.FromMM, c.ToMM = model.Some(s.H.Branches[k.Branch].LengthMM-100), model.Some(s.H.Branches[k.Branch].LengthMM-80)
			}
			if !far {
				c.FromMM, c.ToMM = model.Opt[unit.Millimetre]{}, model.Opt[unit.Millimetre]{}
			}
			n := calc.Build(s.H.EditBranch(k.Branch, func(b *model.Branch) { b.Covers = []model.Cover{{What: model.CoverSheath}, c} }),
				s.Cat, s)
			seen, after := false, false
			for _, th := range threading.Threading(n) {
				seen = seen || th.What == "transition" && th.Of == k.From
				if th.What == "sleeve" {
					after = seen
				}
			}
			if after != want {
				t.Errorf("%s, far %v: after its transition: %v", s.H.Branches[k.Branch].ID, far, after)
			}
		}
	}
	if done == 0 {
		t.Fatal("no branch of the demonstration goes on from J1")
	}
}

// Joints of one mix are glued together; a part is not torn over two packs where it fits one.
func TestMixes(t *testing.T) {
	s := calctest.Laid(t, "demo")
	if threading.Glue(s) != nil || threading.Mixes(s) != nil {
		t.Error("no adhesive is named and something is glued")
	}
	h := *s.H
	h.Rules.Adhesive, h.Rules.PackJoints = model.Some("epoxy"), model.Some(4)
	s = calc.Build(&h, s.Base, s)
	joints := 0
	for _, g := range threading.Glue(s) {
		joints += len(g.Joints)
	}
	if joints == 0 || len(threading.Mixes(s)) < (joints+3)/4 {
		t.Errorf("%d joints in %d packs", joints, len(threading.Mixes(s)))
	}
	for _, m := range threading.Mixes(s) {
		if len(m.Joints) > 2 {
			t.Errorf("boots have two joints each, and one pack does %v", m.Joints)
		}
	}
	h.Rules.Adhesive = model.Some("hot melt")
	s = calc.Build(h.EditBranch(0, func(b *model.Branch) { b.AmbientC = model.Some[unit.Celsius](95) }), s.Base, s)
	if g, ok := calctest.Snag(s, "adhesive.pair", ""); !ok || g.Level != sheet.Note {
		t.Errorf("hot melt on an elastomer: %+v", s.Snags)
	}
	if _, ok := calctest.Snag(s, "hot.adhesive", ""); !ok {
		t.Error("hot melt stands 90 C, and nothing is said of a branch at 95")
	}
}
