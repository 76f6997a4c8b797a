package bulk

import (
	"testing"

	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
)

// What bulk work says where there is nothing to work on: wires that are not there, a way through no branch, a drain at a splice or at a
// cavity that is not free. A wire is numbered after the last that is no spare, the first of all after 100.
func TestNothingToWorkOn(t *testing.T) {
	some := model.Some[string]
	h := &model.Harness{Terminations: []model.Termination{{ID: "P"}}, Splices: []model.Splice{{ID: "S", At: "J"}},
		Branches: []model.Branch{{ID: "T"},
			{ID: "L"}}, Wires: []model.Wire{{ID: "7", From: some("P:1"), To: some("S")}, {ID: "9", Role: model.Some(model.RoleSpare)}}}
	s := &sheet.Sheet{H: h, Cat: &catalogue.Catalogue{}, Index: model.NewIndex(h), Wires: []sheet.Wire{{}, {Path: []int{1, 0}}},
		Terms: []sheet.Term{{Cavities: []string{"1", "2"}, Free: []string{"2"}}}}
	if made, err := Remove(s, []string{"7", "nobody"}); err == nil || made.H != nil {
		t.Errorf("removed: %+v", made)
	}
	if got := wayText(s, 0); got != "no branch" {
		t.Error(got)
	}
	if got := wayText(s, 1); got != "L T" {
		t.Error(got)
	}
	for _, c := range []struct{ where, end, taken, want, err string }{
		{"", "P:1", "", "", ""}, {DrainShell, "P:1", "", DrainShell, ""}, {DrainCut, "S", "", DrainCut, ""}, {"S", "P:1", "", "S", ""},
		{"P:2", "P:1", "", "P:2", ""}, {"P:2", "P:1", "P:2", "", "the drain cannot go to P:2: it is no free cavity"},
		{"P:1", "P:1", "", "", "the drain cannot go to P:1: it is no free cavity"},
		{DrainCavity, "S", "", "", "the drain has no cavity at S: choose the shell or cut it"},
	} {
		got, err := drainAt(s, c.where, c.end, []int{0}, c.taken)
		says := ""
		if err != nil {
			says = err.Error()
		}
		if got.V != c.want || says != c.err {
			t.Errorf("%+v: %q, %q", c, got.V, says)
		}
	}
	if got := nextWire(h); got != "8" {
		t.Errorf("after 7 comes %s", got)
	}
	if got := nextWire(&model.Harness{}); got != "101" {
		t.Errorf("after nothing comes %s", got)
	}
}
