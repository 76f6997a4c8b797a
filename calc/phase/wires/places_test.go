package wires

import (
	"fmt"
	"testing"

	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// The tree as a person walks it, by hand: A to J, and from there B and K, and C behind K; D to E hangs on nothing. It begins where most
// cavities are, of equals where most are used, of those where the file says first.
func TestTreeAsItIsWalked(t *testing.T) {
	const fromA = "0 A-J 0[true] 1 J-B 1[true false] 2 J-K 1[true true] 3 K-C 2[true true true]"
	const fromC = "3 C-K 0[true] 2 K-J 1[true true] 0 J-A 2[true true false] 1 J-B 2[true true true]"
	for _, c := range []struct {
		cavities, used [5]int // of A to E
		want           string
	}{
		{[5]int{9, 3, 4, 2, 1}, [5]int{}, fromA + " 4 D-E 0[true]"}, {[5]int{3, 3, 4, 1, 2}, [5]int{}, fromC + " 4 E-D 0[true]"},
		{[5]int{9, 3, 9, 5, 5}, [5]int{4, 0, 5, 1, 2}, fromC + " 4 E-D 0[true]"},
		{[5]int{9, 3, 9, 5, 5}, [5]int{4, 0, 4, 2, 2}, fromA + " 4 D-E 0[true]"},
		{[5]int{3, 1, 2, 9, 4}, [5]int{}, "4 D-E 0[true] " + fromA},
	} {
		h := &model.Harness{Breakouts: []model.Breakout{{ID: "J"}, {ID: "K"}}}
		s := &sheet.Sheet{H: h}
		for n, id := range []string{"A", "B", "C", "D", "E"} {
			h.Terminations = append(h.Terminations, model.Termination{ID: id})
			s.Terms = append(s.Terms, sheet.Term{Cavities: make([]string, c.cavities[n]), Used: c.used[n]})
		}
		for n, ends := range []string{"AJ", "JB", "KJ", "KC", "DE"} {
			h.Branches = append(h.Branches, model.Branch{ID: fmt.Sprint("T", n), From: ends[:1], To: ends[1:]})
		}
		s.Index = model.NewIndex(h)
		got := ""
		for _, w := range Walked(s) {
			got += fmt.Sprintf(" %d %s-%s %d%v", w.Branch, w.From, w.To, w.Deep, w.Last)
		}
		if got != " "+c.want {
			t.Errorf("%v %v:%s, want %s", c.cavities, c.used, got, c.want)
		}
	}
}

// When wires are worked out anew: as soon as anything differs around them, or in where a wire runs and what it is; not for a name.
func TestWhenWiresAreTheSame(t *testing.T) {
	base := func() *model.Harness {
		return &model.Harness{Rules: model.Rules{DropMaxV: model.Some(unit.Volt(1))}, Reels: []model.Reel{{}},
			Units:        []model.Unit{{ID: "U"}},
			Terminations: []model.Termination{{ID: "A"}}, Breakouts: []model.Breakout{{ID: "J"}}, Splices: []model.Splice{{ID: "S"}},
			Branches: []model.Branch{{ID: "T", From: "A", To: "J"}}}
	}
	one := base()
	two := *one
	if !SamePlaces(one, &two) {
		t.Error("a copy is told apart")
	}
	two.Branches = []model.Branch{{ID: "T", From: "A", To: "J", LengthMM: 300}}
	two.Wires, two.Head.Name = []model.Wire{{ID: "w"}}, model.Some("other")
	if !SamePlaces(one, &two) {
		t.Error("a length, a wire or a name makes the places others")
	}
	for name, change := range map[string]func(h *model.Harness){
		"rules": func(h *model.Harness) { h.Rules.DropMaxV = model.Some(unit.Volt(2)) },
		"reels": func(h *model.Harness) { h.Reels = nil }, "units": func(h *model.Harness) { h.Units = []model.Unit{{ID: "V"}} },
		"terminations": func(h *model.Harness) { h.Terminations = nil }, "breakouts": func(h *model.Harness) { h.Breakouts = nil },
		"splices": func(h *model.Harness) { h.Splices = nil }, "no branch": func(h *model.Harness) { h.Branches = nil },
		"branch": func(h *model.Harness) { h.Branches = []model.Branch{{ID: "V", From: "A", To: "J"}} },
		"from":   func(h *model.Harness) { h.Branches = []model.Branch{{ID: "T", From: "B", To: "J"}} },
		"to":     func(h *model.Harness) { h.Branches = []model.Branch{{ID: "T", From: "A", To: "K"}} },
	} {
		two := *one
		change(&two)
		if SamePlaces(one, &two) {
			t.Errorf("%s: the places are the same", name)
		}
	}
	w := model.Wire{ID: "w", From: model.Some("A:1"), To: model.Some("B:1"), Spec: "s", Size: "22"}
	named := w
	named.ID, named.Signal = "v", model.Some("OTHER")
	if !SameWire(&w, &named) {
		t.Error("another name is another wire")
	}
	for name, change := range map[string]func(w *model.Wire){
		"from": func(w *model.Wire) { w.From = model.Some("A:2") }, "to": func(w *model.Wire) { w.To = model.Some("B:2") },
		"capped": func(w *model.Wire) { w.CappedAt = model.Some("J") }, "spec": func(w *model.Wire) { w.Spec = "r" },
		"size": func(w *model.Wire) { w.Size = "20" },
	} {
		v := w
		change(&v)
		if SameWire(&w, &v) {
			t.Errorf("%s: the same wire", name)
		}
	}
}

// A rating and a resistance stand as they say themselves, else as the entry does.
func TestStandingsOfAWire(t *testing.T) {
	e := catalogue.Wire{Origin: catalogue.Origin{Standing: catalogue.Practice}}
	if RatedStanding(e) != catalogue.Practice || OhmStanding(e) != catalogue.Practice {
		t.Error("they do not stand as the entry does")
	}
	e.RatedStanding, e.OhmStanding = catalogue.Memory, catalogue.House
	if RatedStanding(e) != catalogue.Memory || OhmStanding(e) != catalogue.House {
		t.Error("they do not stand as they say")
	}
}
