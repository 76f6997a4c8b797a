package bundle_test

import (
	"fmt"
	"math/rand/v2"
	"slices"
	"strings"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/formula/plan"
	"contralay/calc/phase/bundle"
	"contralay/calc/sheet"
)

// row is n wires from A to Z over one branch, and what the branch says beside its ends.
func row(n int, branch string) string {
	return calctest.OneSize(n, "22", "length_mm = 500.0\n"+branch)
}

// layer is one layer of the file of wires a to b, with further keys.
func layer(a, b int, keys string) string {
	var of []string
	for k := a; k <= b; k++ {
		of = append(of, fmt.Sprintf("%q", fmt.Sprint(k)))
	}
	return "  [[branch.layer]]\n  of = [" + strings.Join(of, ", ") + "]\n  " + keys + "\n"
}

// Each thing that a branch says of its layers stands by itself: its level, its rule, and the whole sentence with its numbers.
func TestEachSentenceOfABranch(t *testing.T) {
	pair := strings.Replace(row(4, layer(0, 3, "")), "[[branch]]",
		"[[unit]]\nid = \"U\"\nwires = [\"0\", \"1\"]\nbuild = \"pair\"\n[[branch]]", 1)
	for _, c := range []struct {
		name, text string
		want       []string // "level rule: sentence", all that the branch says of these rules
	}{
		{"sound", row(7, layer(0, 0, "")+layer(1, 6, "")), nil},
		{"nothing runs", row(0, ""), []string{"warn branch.empty: No wire runs through it"}},
		{"one lacks", row(7, layer(0, 0, "")+layer(1, 5, "")), []string{"stop layer.missing: 6 is in no layer"}},
		{"two lack", row(8, layer(0, 0, "")+layer(1, 5, "")), []string{"stop layer.missing: 6, 7 are in no layer"}},
		{"seven lack", row(14, layer(0, 0, "")+layer(1, 6, "")),
			[]string{"stop layer.missing: 7, 8, 9, 10, 11 and 2 more are in no layer"}},
		{"six lack", row(13, layer(0, 0, "")+layer(1, 6, "")), []string{"stop layer.missing: 7, 8, 9, 10, 11, 12 are in no layer"}},
		{"a wire of a unit", pair, []string{"stop layer.missing: U is in no layer",
			"stop layer.unit: 0 belongs to unit U: lay the unit instead",
			"stop layer.unit: 1 belongs to unit U: lay the unit instead"}},
		{"one lacks its size in the catalogue, and the layer", strings.Replace(row(7, layer(0, 0, "")+layer(1, 5, "")), "size = \"22\"",
			"size = \"99\"", 1),
			[]string{"stop layer.missing: 6 is in no layer"}},
		{"filler without a size", row(3, layer(0, 2, "")+"  [[branch.layer]]\n  of = []\n  fillers = 4\n"),
			[]string{"stop layer.filler: Layer 1 is all filler: give its filler_mm"}},
		{"an empty layer", row(3, layer(0, 2, "")+"  [[branch.layer]]\n  of = []\n"),
			[]string{"stop layer.empty: Layer 1 is empty: move a piece into it, or take it out of the file"}},
		{"twisted in two layers", row(7, "make = \"twisted\"\n"+layer(0, 0, "")+layer(1, 6, "")),
			[]string{"note branch.make: It has layers, so it is laid and not twisted"}},
		{"twisted with filler", row(3, "make = \"twisted\"\n"+layer(0, 2, "fillers = 2\n  filler_mm = 1.0")),
			[]string{"note branch.filler: It is made twisted, which takes no filler: its fillers are left out (2)"}},
		{"a centre of seven", row(14, layer(0, 6, "")+layer(7, 13, "")),
			[]string{"warn layer.centre: A centre of these 7 pieces is not round: use one, two to five of one size, " +
				"or two or three of different sizes"}},
	} {
		s := calctest.Built(t, c.text)
		var got []string
		for _, g := range s.Snags {
			switch g.Rule {
			case "branch.empty", "layer.missing", "layer.unit", "layer.filler", "layer.empty", "branch.make", "branch.filler",
				"layer.centre", "layer.stray":
				if g.Where != "T1" {
					t.Errorf("%s: said of %s", c.name, g.Where)
				}
				got = append(got, fmt.Sprintf("%s %s: %s", g.Level, g.Rule, g.Says))
			}
		}
		if !slices.Equal(got, c.want) {
			t.Errorf("%s:\n%q, want\n%q", c.name, got, c.want)
		}
		// A branch keeps all that was said of it, for the next sheet that takes it over.
		again := *s
		again.Snags, again.Reuse = nil, sheet.Reuse{}
		bundle.LayBranches(&again, nil)
		if len(again.Snags) == 0 && c.want != nil || !slices.Equal(again.Branches[0].Said, again.Snags) {
			t.Errorf("%s: of %+v the branch keeps %+v", c.name, again.Snags, again.Branches[0].Said)
		}
	}
}

// A proposal that leaves a limit says which, and one that keeps all says nothing.
func TestLimitsLeftBySentence(t *testing.T) {
	s := calctest.Built(t, row(9, ""))
	s = calc.Complete(s.H, s.Cat, nil)
	k := bundle.PlanKey(s, 0)
	for relaxed, want := range map[plan.Relaxed]string{plan.Keeps: "",
		plan.Gaps:    "warn plan.gaps No lay-up keeps the gap limits. The best one has gaps",
		plan.GapLift: "warn plan.tight No lay-up closes easily. The best one is tight and has gaps",
		plan.Nothing: "warn plan.none No lay-up closes. This one will not close either"} {
		prior := *s
		prior.Proposals = map[string]sheet.Proposal{}
		for key, p := range s.Proposals {
			p.Options = slices.Clone(p.Options)
			for n := range p.Options {
				p.Options[n].Plan.Relaxed = relaxed
			}
			prior.Proposals[key] = p
		}
		if _, ok := prior.Proposals[k]; !ok {
			t.Fatal("there is no proposal")
		}
		prior.Branches = nil
		next := prior
		next.Snags = nil
		next.Reuse = sheet.Reuse{}
		bundle.LayBranches(&next, nil)
		got := ""
		for _, g := range next.Snags {
			if strings.HasPrefix(g.Rule, "plan.") {
				got += fmt.Sprint(g.Level, " ", g.Rule, " ", g.Says)
			}
		}
		if got != want || len(next.Branches[0].Layers) == 0 {
			t.Errorf("%v: %q, want %q", relaxed, got, want)
		}
		said := 0
		for _, g := range next.Branches[0].Said {
			if strings.HasPrefix(g.Rule, "plan.") {
				said++
			}
		}
		if (said == 1) != (want != "") {
			t.Errorf("%v: the branch keeps %d of what it said", relaxed, said)
		}
	}
}

// Where a wire ends beyond a branch, and what it goes on into, is found a second time by walking its way from its from end; in looms
// drawn at random and in those of testdata, at both ends of every branch.
func TestBeyondByWalking(t *testing.T) {
	walked := 0
	check := func(name string, s *sheet.Sheet) {
		for k := range s.H.Wires {
			w, path := &s.H.Wires[k], s.Wires[k].Path
			place, _, _ := s.Index.Places(w)
			_, in := s.Index.UnitOf[w.ID]
			for n, i := range path {
				b := &s.H.Branches[i]
				forward := b.From == place
				place = s.Index.Other(i, place)
				end, after, before := w.To.V, -1, -1
				if n+1 < len(path) {
					after = path[n+1]
				}
				if n > 0 {
					before = path[n-1]
				}
				if !forward {
					end, after, before = w.From.V, before, after
				}
				walked++
				if got := bundle.FarEnd(s, i, w.ID); got != end {
					t.Fatalf("%s: beyond %s %s ends at %q, want %q", name, b.ID, w.ID, got, end)
				}
				if in || w.CappedAt.Set {
					continue
				}
				want := strings.Split(end, ":")[0]
				if after >= 0 {
					want = s.H.Branches[after].ID
				}
				if got := bundle.NextAfter(s, i, w.ID); got != want {
					t.Fatalf("%s: after %s %s goes to %q, want %q", name, b.ID, w.ID, got, want)
				}
				for at, want := range map[string]int{b.To: after, b.From: before} {
					if got, ok := bundle.NextAt(s, i, at, w.ID); got != want || !ok {
						t.Fatalf("%s: at %s of %s %s goes into %d, want %d", name, at, b.ID, w.ID, got, want)
					}
				}
			}
			for i := range s.H.Branches {
				if _, ok := bundle.NextAt(s, i, s.H.Branches[i].To, w.ID); ok && !in && !slices.Contains(path, i) {
					t.Fatalf("%s: %s goes on from %s, where it does not run", name, w.ID, s.H.Branches[i].ID)
				}
			}
		}
		if bundle.FarEnd(s, 0, "no such")+bundle.NextAfter(s, 0, "no such") != "" {
			t.Error("a wire that is not there ends somewhere")
		}
		if _, ok := bundle.NextAt(s, 0, s.H.Branches[0].To, "no such"); ok {
			t.Error("a wire that is not there goes on")
		}
	}
	for seed := range uint64(30) {
		check(fmt.Sprint("seed ", seed), calctest.Built(t, wandering(rand.New(rand.NewPCG(seed, 9)))))
	}
	for _, name := range calctest.Files("demo", "whole", "trunk") {
		check(name, calctest.Laid(t, name))
	}
	if walked < 1000 {
		t.Errorf("only %d branches were walked", walked)
	}
}

// A branch waits for a proposal only where the size of everything in it is known.
func TestWhoWaits(t *testing.T) {
	for text, want := range map[string]bool{row(9, ""): true, strings.Replace(row(9, ""), "size = \"22\"", "size = \"99\"", 1): false,
		row(3, ""): false} {
		if got := calctest.Built(t, text).Branches[0].Waiting; got != want {
			t.Errorf("it waits: %v, want %v, in\n%s", got, want, text)
		}
	}
}
