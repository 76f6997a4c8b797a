package sheet_test

import (
	"testing"

	"contralay/calc/formula/plan"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
)

// What a sheet says of itself in words, by hand.
func TestWordsOfASheet(t *testing.T) {
	l := sheet.Layer{OverMM: 4.8, BuiltMM: 1.9, BuiltOf: "fibre tape", Members: []sheet.Member{{ID: "C1", Kind: sheet.OfUnit},
		{ID: "filler",
			Kind: sheet.OfFiller}, {ID: "102"}}}
	for _, c := range []struct{ got, want string }{
		{l.BuiltUp(unit.MM), "C1 + 102 built up to 4.8 with 1.90 mm of fibre tape"},
		{sheet.BuiltUp(unit.MM, []string{"9"}, 3, 0.5, ""), "9 built up to 3.0 with 0.50 mm of tape"},
		{(&sheet.Layer{OverMM: 4.8}).BuiltUp(unit.MM), ""},
		{sheet.Group{Count: 1, Places: nil}.More(), ""},
		{sheet.Group{Count: 2, Places: []string{"L7"}}.More(), " (and 1 more: L7)"},
		{sheet.Group{Count: 5, Places: []string{"a", "b", "c", "d"}}.More(), " (and 4 more: a, b, c, d)"},
		{sheet.Group{Count: 6, Places: []string{"a", "b", "c", "d", "e"}}.More(), " (and 5 more: a, b, c, d ...)"},
		{sheet.Capital(""), ""}, {sheet.Capital("layer 2"), "Layer 2"}, {sheet.Capital("x"), "X"},
		{sheet.Note.String() + sheet.Warn.String() + sheet.Stop.String(), "notewarnstop"},
		{string(sheet.PartBoot.GoesOn() + "," + sheet.PartTransition.GoesOn() + "," + sheet.PartLabel.GoesOn() + "," +
			sheet.PartContacts.GoesOn()), "shrunk,shrunk,shrunk,"},
	} {
		if c.got != c.want {
			t.Errorf("%q, want %q", c.got, c.want)
		}
	}
	if l.BareMM() < 2.899 || l.BareMM() > 2.901 {
		t.Errorf("bare %v", l.BareMM())
	}
	if sheet.PartBoot.GoesOn() != model.ShrunkOn || sheet.PartBoot.IsCover() || !sheet.PartSheath.IsCover() {
		t.Error("a boot is shrunk on and no cover; a sheath is one")
	}
}

// Worst first, each level in the order found; of one cause one line, notes by their rule, warnings by what they say.
func TestSnagsInOrder(t *testing.T) {
	say := func(l sheet.Level, rule, where, says, like string) sheet.Snag {
		return sheet.Snag{Level: l, Rule: rule, Where: where, Says: says, Like: like}
	}
	all := []sheet.Snag{say(sheet.Note, "n", "a", "1 mm", ""), say(sheet.Warn, "w", "b", "tight", ""), say(sheet.Stop, "s", "c",
		"no", ""),
		say(sheet.Warn, "w", "d", "loose", ""), say(sheet.Note, "n", "e", "2 mm", ""), say(sheet.Stop, "s", "f", "no", ""),
		say(sheet.Warn, "w", "g", "tight", ""), say(sheet.Warn, "w", "h", "9 V", "volt"), say(sheet.Warn, "w", "i", "8 V", "volt"),
		say(sheet.Note, "n", "k", "3 mm", "own"), say(sheet.Note, "m", "l", "1 mm", "")}
	was := append([]sheet.Snag(nil), all...)
	order := ""
	for _, g := range sheet.Worst(all) {
		order += g.Where
	}
	if order != "cfbdghiaekl" {
		t.Errorf("worst first: %s", order)
	}
	groups := ""
	for _, g := range sheet.Grouped(all) {
		groups += g.Where
		for _, p := range g.Places {
			groups += "+" + p
		}
		if g.Count != len(g.Places)+1 {
			t.Errorf("%s counts %d", g.Where, g.Count)
		}
		groups += " "
	}
	if groups != "c+f b+g d h+i a+e k l " {
		t.Errorf("by cause: %s", groups)
	}
	s := &sheet.Sheet{Snags: all}
	if about := s.About("d"); len(about.Snags) != 1 || about.Snags[0].Says != "loose" || len(s.Snags) != len(was) {
		t.Errorf("about d: %v", about.Snags)
	}
	for k := range was {
		if all[k] != was[k] {
			t.Error("the list itself was changed")
		}
	}
}

// The cheapest lay-up is the one that leaves the fewest limits, then that costs least, the first of equals.
func TestCheapest(t *testing.T) {
	option := func(relaxed int, cost unit.Ratio) sheet.Option {
		var o sheet.Option
		o.Plan.Relaxed, o.Cost = plan.Relaxed(relaxed), cost
		return o
	}
	for _, c := range []struct {
		all  []sheet.Option
		want int
	}{
		{[]sheet.Option{option(0, 3), option(0, 2), option(0, 2)}, 1},
		{[]sheet.Option{option(1, 1), option(0, 9), option(2, 0)}, 1},
		{[]sheet.Option{option(0, 1), option(1, 0), option(0, 5)}, 0},
	} {
		if k, ok := (sheet.Proposal{Options: c.all}).Cheapest(); k != c.want || !ok {
			t.Errorf("%v: option %d, want %d", c.all, k, c.want)
		}
	}
	if k, ok := (sheet.Proposal{}).Cheapest(); k != 0 || ok {
		t.Error("of none one is cheapest")
	}
}
