package model_test

import (
	"slices"
	"testing"

	"contralay/model"
)

// A letter stays with its variant; who has none gets the next that no other has; of two that have
// the same the first keeps it; past Z there is none.
func TestLettersOfVariants(t *testing.T) {
	with := func(letters ...string) *model.Branch {
		b := &model.Branch{}
		for _, l := range letters {
			b.Asides = append(b.Asides, model.Aside{Letter: model.Opt[model.Letter]{V: model.Letter(l), Set: l != ""}})
		}
		return b
	}
	for _, c := range []struct {
		own, shown []string
		next       model.Letter
	}{
		{nil, nil, "A"},
		{[]string{"", "", ""}, []string{"A", "B", "C"}, "D"},
		{[]string{"", "A", ""}, []string{"B", "A", "C"}, "D"},
		{[]string{"D", "", "D", "B"}, []string{"D", "A", "C", "B"}, "E"},
		{[]string{"Z"}, []string{"Z"}, "A"},
	} {
		b := with(c.own...)
		var shown []string
		for _, l := range b.AsideLetters() {
			shown = append(shown, string(l))
		}
		if !slices.Equal(shown, c.shown) || b.FreeLetter() != model.Some(c.next) {
			t.Errorf("%q are shown as %q, next %v; wanted %q, next %s", c.own, shown, b.FreeLetter(), c.shown, c.next)
		}
	}
	full := with(make([]string, 27)...)
	if shown := full.AsideLetters(); shown[25] != "Z" || shown[26] != "" || full.FreeLetter().Set {
		t.Errorf("27 variants: %q, next %v", shown, full.FreeLetter())
	}
}

// A changed copy of a branch shares nothing with the branch that a change of a variant could reach.
func TestVariantIsCopied(t *testing.T) {
	h := &model.Harness{Branches: []model.Branch{{ID: "T1", Asides: []model.Aside{{Name: "wide", Sizes: map[string]string{"22": "24"},
		Layers: []model.Layer{{Of: []string{"101"}}}, Covers: []model.Cover{{What: model.CoverSheath}}}}}}}
	was := h.EditBranch(0, func(*model.Branch) {})
	h.EditBranch(0, func(b *model.Branch) {
		a := &b.Asides[0]
		a.Name, a.Sizes["22"], a.Layers[0].Of[0], a.Covers[0].What = "other", "20", "102", model.CoverBraid
	})
	if !h.Same(was) {
		t.Errorf("a change of a copy reached the branch: %+v", h.Branches[0].Asides[0])
	}
}
