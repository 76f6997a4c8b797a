package edit_test

import (
	"fmt"
	"reflect"
	"slices"
	"strings"
	"testing"

	"contralay/model"
	"contralay/model/edit"
	"contralay/model/unit"
)

// Every field of a variant was thought of when branches are copied, split, joined and turned:
// whoever adds one adds it here, after looking at those four.
func TestVariantHasNoFieldUnthought(t *testing.T) {
	known := strings.Fields("Name Letter Make Outer Spec Sizes Spares Layers Covers")
	for f := range reflect.TypeFor[model.Aside]().Fields() {
		if !slices.Contains(known, f.Name) {
			t.Errorf("Aside.%s: see CloneAsides, Split, Join and TurnRound, then name it here", f.Name)
		}
	}
}

// stations is where the covers of a branch's variants start and stop.
func stations(b *model.Branch) string {
	var out []string
	for _, a := range b.Asides {
		for _, c := range a.Covers {
			out = append(out, fmt.Sprintf("%s %s %s", a.Name, plainOf(c.FromMM), plainOf(c.ToMM)))
		}
	}
	return strings.Join(out, ", ")
}

func plainOf(v model.Opt[unit.Millimetre]) string {
	if !v.Set {
		return "-"
	}
	return fmt.Sprint(float64(v.V))
}

// The covers of a variant stay where they lie when its branch is turned round, split and joined. T1
// is 450 mm long in the file, its variant's sheath from 12.5 to 440.
func TestCoversOfVariantsStay(t *testing.T) {
	h := everyKey(t)
	turned, err := edit.TurnRound(h, "T1")
	if err != nil {
		t.Fatal(err)
	}
	if got := stations(branch(t, turned, "T1")); got != "wide centre 10 437.5" {
		t.Errorf("turned round: %s", got)
	}
	if got := stations(branch(t, h, "T1")); got != "wide centre 12.5 440" {
		t.Errorf("the branch that was turned has %s now", got)
	}
	part, j, err := edit.Split(h, "T1", 200)
	if err != nil {
		t.Fatal(err)
	}
	if got := stations(branch(t, part, "T1")); got != "wide centre 12.5 -" {
		t.Errorf("split at 200: %s", got)
	}
	k := slices.IndexFunc(part.Branches, func(b model.Branch) bool { return b.From == j })
	part = part.EditBranch(k, func(b *model.Branch) {
		b.Asides = []model.Aside{
			{Name: "wide centre", Letter: model.Some(model.Letter("C")),
				Covers: []model.Cover{{What: model.CoverSheath, ToMM: model.Some[unit.Millimetre](30)}}},
			{Name: "more spares", Letter: model.Some(model.Letter("D"))},
		}
	})
	one, _, err := edit.Join(part, j)
	if err != nil {
		t.Fatal(err)
	}
	b := branch(t, one, "T1")
	second := part.Branches[k].ID
	if got, want := stations(b), "wide centre 12.5 200, wide centre ("+second+") 200 230"; got != want {
		t.Errorf("joined: %s, wanted %s", got, want)
	}
	if got := fmt.Sprint(b.AsideLetters()); got != "[C A D]" || b.Asides[1].Letter.Set {
		t.Errorf("letters %s", got)
	}
}
