package calc_test

import (
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"

	"contralay/calc"
	"contralay/calc/formula/cut"
	"contralay/calc/formula/lay"
	"contralay/calc/phase/length"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
)

// Take-up of 61 × 22 AWG over 2.00 m, pitch diameter of the outer layer 8.72 mm: 74 mm
// at 100 mm lay, 199 mm at 60 mm. Worked out by hand: 2000 (√(1 + (π 8.72/L)²) − 1).
func TestTakeUpOfSixtyOne(t *testing.T) {
	for l, want := range map[unit.Millimetre]float64{100: 74, 60: 199} {
		if got := 2000 * (float64(lay.TakeUp(8.72/2, l)) - 1); math.Abs(got-want) > 0.5 {
			t.Errorf("%v mm lay: %v mm, want %v", l, got, want)
		}
	}
}

// Paths of 300, 650 and 3000 mm without zones, lay loss 2.2 %, loops 16 and 8, tails 100
// and 75, steps of 10: cut 510, 870, 3270, worked out by hand.
func TestCutOfThree(t *testing.T) {
	for path, want := range map[unit.Millimetre]unit.Millimetre{300: 510, 650: 870, 3000: 3270} {
		l, ok := cut.Of(cut.Wire{Pieces: []cut.Piece{{LengthMM: path, LaidMM: path, Loss: 1.022}}, From: cut.End{LoopMM: 16, TailMM: 100},
			To: cut.End{LoopMM: 8, TailMM: 75}, StepMM: 10})
		if !ok || l.CutMM != want {
			t.Errorf("%v mm: cut %v, want %v", path, l.CutMM, want)
		}
	}
}

// ended is wires of sizes in one cavity of a termination, or each in its own.
func ended(t *testing.T, term string, wires ...string) *sheet.Sheet {
	t.Helper()
	var b strings.Builder
	b.WriteString("format = 1\n[[termination]]\nid = \"A\"\n" + term + "\n[[termination]]\nid = \"Z\"\n")
	for k, w := range wires {
		size, cavity, _ := strings.Cut(w, " ")
		fmt.Fprintf(&b, "[[wire]]\nid = \"w%d\"\nfrom = \"A:%s\"\nto = \"Z:%d\"\nspec = \"AS22759/32\"\nsize = %q\n", k, cavity, k, size)
	}
	b.WriteString("[[branch]]\nid = \"T1\"\nfrom = \"A\"\nto = \"Z\"\nlength_mm = 500.0\n")
	return sheetOf(t, b.String())
}

// Several wires in one contact go by the sum of their circular mils: two 20 AWG make
// 2432, into a barrel for 16 AWG (2426) within 1 %; two 22 AWG make 1508, too much for
// size 20 (1216) and right for size 16 (18 AWG, 1900, and thicker … 20 AWG, 1216). The
// file loads in every case. Sources: circular mils AC 43.13-1B table 11-9; the rule
// NASA-STD-8739.4 § 19.11.
func TestSeveralInOneContact(t *testing.T) {
	for _, c := range []struct {
		size, wires string
		refused     bool
	}{{"16", "20 20", false}, {"20", "22 22", true}, {"16", "22 22", false}} {
		a, b, _ := strings.Cut(c.wires, " ")
		s := ended(t, `cavities = ["1"]
contacts = { "`+c.size+`" = ["1"] }`, a+" 1", b+" 1")
		if g, said := snag(s, "cavity.barrel", ""); said != c.refused {
			t.Errorf("%s in size %s: %+v", c.wires, c.size, g)
		}
	}
	// Under one seal two wires are refused, whatever their barrel.
	s := ended(t, "cavities = [\"1\"]\nseal_mm = [1.0, 2.1]", "22 1", "22 1")
	if g, ok := snag(s, "cavity.twice", "A:1"); !ok || g.Level != sheet.Stop {
		t.Errorf("%+v", s.Snags)
	}
}

// Light 22 AWG of 1.09 mm in a seal of 1.30 to 2.54 mm stops, 20 AWG of 1.27 by 0.03 mm,
// 18 AWG of 1.52 passes. Diameters from memory of AS22759/32.
func TestSealRange(t *testing.T) {
	for size, stops := range map[string]bool{"22": true, "20": true, "18": false} {
		s := ended(t, "cavities = [\"1\"]\nseal_mm = [1.30, 2.54]", size+" 1")
		if g, ok := snag(s, "cavity.seal", "A:1"); ok != stops || ok && g.Level != sheet.Stop {
			t.Errorf("%s AWG: %+v", size, s.Snags)
		}
	}
}

// 34 × 22 and 4 × 16 AWG and two shielded pairs are 42 conductors: in 37 cavities of 22D
// they load and stop, for what has no cavity and for 16 AWG, which needs larger contacts.
func TestTooManyForTheConnector(t *testing.T) {
	var wires []string
	for k := range 42 {
		size := "22"
		if k >= 34 && k < 38 {
			size = "16"
		}
		wires = append(wires, fmt.Sprintf("%s %d", size, k+1))
	}
	s := ended(t, `insert = "14-35"`, wires...)
	none, thick := 0, 0
	for _, g := range s.Snags {
		if g.Rule == "cavity.none" && g.Level == sheet.Stop {
			none++
		}
		if g.Rule == "cavity.barrel" && strings.Contains(g.Says, "too thick for a size 22D contact") {
			thick++
		}
	}
	if none != 5 || thick != 4-1 { // the last 16 AWG is the 38th wire, which has no cavity
		t.Errorf("%d without a cavity, %d too thick: %+v", none, thick, s.Snags)
	}
}

// A trunk of 1 · 6 RH · 12 LH of which all twelve leave at J1: what goes on is 1 · 6, RH
// if it runs through and LH if it is laid anew by the rule of the outer hand. Both are
// named, and with RH outside nothing is said.
func TestRunThroughOrLayAnew(t *testing.T) {
	var b strings.Builder
	b.WriteString("format = 1\n[[termination]]\nid = \"A\"\n[[termination]]\nid = \"Z\"\n[[termination]]\nid = \"Y\"\n[[breakout]]\nid = " +
		"\"J1\"\n")
	var inner, outer []string
	for k := range 19 {
		to := "Z"
		if k >= 7 {
			to = "Y"
		}
		fmt.Fprintf(&b, "[[wire]]\nid = \"w%d\"\nfrom = \"A:%d\"\nto = \"%s:%d\"\nspec = \"AS22759/32\"\nsize = \"22\"\n", k, k, to, k)
		id := fmt.Sprintf("\"w%d\"", k)
		if k >= 1 && k < 7 {
			inner = append(inner, id)
		} else if k >= 7 {
			outer = append(outer, id)
		}
	}
	b.WriteString("[[branch]]\nid = \"T1\"\nfrom = \"A\"\nto = \"J1\"\nlength_mm = 500.0\n  [[branch.layer]]\n  of = [\"w0\"]\n  " +
		"[[branch.layer]]\n  of = [" + strings.Join(inner, ", ") + "]\n  [[branch.layer]]\n  of = [" + strings.Join(outer, ", ") + "]\n")
	b.WriteString("[[branch]]\nid = \"R1\"\nfrom = \"J1\"\nto = \"Z\"\nlength_mm = 500.0\n  [[branch.layer]]\n  of = [\"w0\"]\n  " +
		"[[branch.layer]]\n  of = [" + strings.Join(inner, ", ") + "]\n")
	b.WriteString("[[branch]]\nid = \"R2\"\nfrom = \"J1\"\nto = \"Y\"\nlength_mm = 500.0\n")
	s := sheetOf(t, b.String())
	s = calc.Complete(s.H, s.Cat, s)
	g, ok := snag(s, "through.hand", "R1")
	if !ok || !strings.Contains(g.Says, "layer 1 of T1 goes on into R1 at J1 and turns from RH to LH there: run it through, RH outside, "+
		"or lay it anew LH") {
		t.Errorf("%+v", g)
	}
	h := s.H.EditBranch(1, func(b *model.Branch) { b.Outer = model.Some(model.HandRight) })
	if g, ok := snag(calc.Build(h, s.Cat, s), "through.hand", ""); ok {
		t.Errorf("RH outside: %s", g.Says)
	}
}

// Every conductor is once in each branch of its way and nowhere else; the states of a
// termination's cavities add up to their count; no wire is cut shorter than its way.
func TestHarnessAddsUp(t *testing.T) {
	for _, name := range []string{"demo", "whole", "example", "feeds", "trunk"} {
		s := laidFile(t, name)
		for i := range s.Branches {
			n := map[string]int{}
			for _, l := range s.Branches[i].Layers {
				for _, m := range l.Members {
					n[m.ID]++
				}
			}
			for k := range s.Wires {
				id := s.H.Wires[k].ID
				if u, in := s.X.UnitOf[id]; in {
					id = s.H.Units[u].ID
				}
				want := map[bool]int{true: 1}[slices.Contains(s.Wires[k].Path, i)]
				if n[id] != want {
					t.Errorf("%s: %s is %d times in %s, want %d", name, id, n[id], s.H.Branches[i].ID, want)
				}
			}
		}
		for i, term := range s.Terms {
			if term.Used+term.Spare+term.Reserved+term.Blank != len(term.Cavities) {
				t.Errorf("%s: %s: %d + %d + %d + %d are not %d", name, s.H.Terminations[i].ID, term.Used, term.Spare, term.Reserved,
					term.Blank, len(term.Cavities))
			}
		}
		for k, w := range s.Wires {
			long := unit.Millimetre(0)
			for _, b := range w.Path {
				long += s.H.Branches[b].LengthMM
			}
			long += length.SpliceOffset(s, s.H.Wires[k].From.V, w.Path) + length.SpliceOffset(s, s.H.Wires[k].To.V, w.Path)
			if w.Cut > 0 && w.Cut < long || w.Cut < w.Finished {
				t.Errorf("%s: wire %s is cut %v, its way is %v and finished %v", name, s.H.Wires[k].ID, w.Cut, long, w.Finished)
			}
		}
	}
}

// What is clocked apart on a short run, what can be swapped, what looks alike, and too
// many shields on one lead are told; what is sound is not.
func TestClockTwinsAndShields(t *testing.T) {
	s := loaded(t, 40, "", []string{"20 1.0", "20 1.0"}, nil, "")
	with := func(edit func(h *model.Harness)) *sheet.Sheet {
		h := *s.H
		h.Terminations = slices.Clone(h.Terminations)
		edit(&h)
		return calc.Complete(&h, s.Cat, nil)
	}
	for _, c := range []struct {
		name, rule string
		edit       func(h *model.Harness)
		said       bool
	}{
		{"clocked apart, far", "clock", func(h *model.Harness) {
			h.Terminations[0].Clock, h.Terminations[1].Clock = model.Some(12), model.Some(3)
		}, false},
		{"clocked apart, near", "clock", func(h *model.Harness) {
			h.Terminations[0].Clock, h.Terminations[1].Clock = model.Some(12), model.Some(3)
			*h = *h.EditBranch(0, func(b *model.Branch) { b.LengthMM = 60 })
		}, true},
		{"clocked alike, near", "clock", func(h *model.Harness) {
			h.Terminations[0].Clock, h.Terminations[1].Clock = model.Some(3), model.Some(3)
			*h = *h.EditBranch(0, func(b *model.Branch) { b.LengthMM = 60 })
		}, false},
		{"same insert and key within reach", "twins", func(h *model.Harness) {
			for k := range h.Terminations {
				h.Terminations[k].Insert, h.Terminations[k].Key, h.Terminations[k].Cavities = model.Some("8-35"), model.Some("N"), nil
			}
			*h = *h.EditBranch(0, func(b *model.Branch) { b.LengthMM = 400 })
		}, true},
		{"another key", "twins", func(h *model.Harness) {
			for k := range h.Terminations {
				h.Terminations[k].Insert, h.Terminations[k].Key, h.Terminations[k].Cavities = model.Some("8-35"),
					model.Some([]string{"N", "A"}[k]), nil
			}
			*h = *h.EditBranch(0, func(b *model.Branch) { b.LengthMM = 400 })
		}, false},
		{"the same colour twice", "colour.same", func(h *model.Harness) {
			*h = *h.EditWire(0, func(w *model.Wire) { w.Colour = model.Some("3") })
			*h = *h.EditWire(1, func(w *model.Wire) { w.Colour = model.Some("3") })
		}, true},
		{"two colours", "colour.same", func(h *model.Harness) {
			*h = *h.EditWire(0, func(w *model.Wire) { w.Colour = model.Some("3") })
			*h = *h.EditWire(1, func(w *model.Wire) { w.Colour = model.Some("4") })
		}, false},
		{"four shields on one lead", "shield.many", func(h *model.Harness) {
			for k := range 4 {
				h.Units = append(h.Units, model.Unit{ID: fmt.Sprint("u", k), DrainFrom: model.Some("A:1")})
			}
		}, false},
		{"five", "shield.many", func(h *model.Harness) {
			for k := range 5 {
				h.Units = append(h.Units, model.Unit{ID: fmt.Sprint("u", k), DrainFrom: model.Some("A:1")})
			}
		}, true},
	} {
		if g, ok := snag(with(c.edit), c.rule, ""); ok != c.said {
			t.Errorf("%s: said %v %s", c.name, ok, g.Says)
		}
	}
}
