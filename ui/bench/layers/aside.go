package layers

import (
	"fmt"
	"slices"
	"strings"

	"contralay/model"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/layers/ways"
)

// Variants: ways that the file keeps, each under its letter.

// mostAsides is how many variants a branch keeps.
const mostAsides = 9

// variantName is a variant by its letter and its name.
func variantName(m *desk.Model, n int) string {
	mb, _, _ := m.BranchHere()
	return strings.TrimSpace(string(mb.AsideLetters()[n]) + "  " + mb.Asides[n].Name)
}

// variantRows are the variants in the table.
func variantRows(m *desk.Model, t ways.Columns) []desk.Row {
	k := ways.Variants(m)
	if len(k.Ways) == 0 {
		return nil
	}
	out := []desk.Row{{Text: "variants that are kept", Heads: true}}
	for n, w := range k.Ways {
		r := outcomeRow(m, t, "  "+variantName(m, n), w)
		r.Key = "aside " + w.Says
		if o, known := ways.Came(m, w); known && o.Err == nil {
			r.More = func() string { return ways.DiffersText(m, "Variant "+variantName(m, n), o, "Enter: side by side") }
		}
		r.Enter, r.Drop = func(m *desk.Model) { openWays(m, ways.VariantsID, n) }, dropVariant(n)
		out = append(out, r)
	}
	return out
}

// dropVariant takes a variant out of the file.
func dropVariant(n int) func(m *desk.Model) {
	return func(m *desk.Model) {
		name := variantName(m, n)
		ways.SameGround(m, func() {
			m.Change(m.H.EditBranch(m.Branch, func(b *model.Branch) {
				if b.Asides = slices.Delete(b.Asides, n, n+1); len(b.Asides) == 0 {
					b.Asides = nil
				}
			}), "variant "+name+" is no longer kept")
		})
	}
}

// keepWay keeps a way as a variant.
func keepWay(m *desk.Model, k ways.Kind, n int) {
	if o, known := ways.Came(m, k.Ways[n]); !known || o.Err != nil {
		m.Refuse("there is nothing to keep yet: it is still being worked out")
		return
	}
	a, err := k.Ways[n].Keep(m.Sheet)
	if err != nil {
		m.Refuse(err.Error())
		return
	}
	if err := keep(m, a); err != nil {
		m.Refuse(err.Error())
	}
}

// keep adds a variant to the branch in hand.
func keep(m *desk.Model, a model.Aside) error {
	mb, _, _ := m.BranchHere()
	switch {
	case a.Name == "":
		return fmt.Errorf("type a name")
	case len(mb.Asides) >= mostAsides:
		return fmt.Errorf("%d variants are kept already. Remove one with . first", mostAsides)
	case slices.ContainsFunc(mb.Asides, func(o model.Aside) bool { return o.Name == a.Name }):
		return fmt.Errorf("%s is kept already. Give another name", a.Name)
	}
	a.Letter = mb.FreeLetter()
	ways.SameGround(m, func() {
		m.Change(m.H.EditBranch(m.Branch, func(b *model.Branch) { b.Asides = append(b.Asides, a) }),
			fmt.Sprintf("kept as variant %s, %s. It stands in the table", a.Letter.V, a.Name))
	})
	return nil
}

// variantField names the branch as it is, to keep it.
func variantField(m *desk.Model) *desk.Field {
	return &desk.Field{Label: "keep as variant", Value: freeName(m, "as it was"), Set: func(m *desk.Model, text string) error {
		return keep(m, asideOfNow(m, text))
	}}
}

// keepNow keeps the branch as it is under the next name.
func keepNow(m *desk.Model) {
	if err := keep(m, asideOfNow(m, freeName(m, "as it was"))); err != nil {
		m.Refuse(err.Error())
	}
}

// asideOfNow is the branch as it is, as a variant: its lay-up and covers, and as far as a variant can say it the wires
// that they are made of.
func asideOfNow(m *desk.Model, name string) model.Aside {
	mb, b, _ := m.BranchHere()
	a := model.Aside{Name: name, Make: model.Some(b.Make), Outer: mb.Outer, Layers: editLayers(m), Covers: slices.Clone(mb.Covers)}
	if n := ways.Present(m).Spares; n > 0 {
		a.Spares = model.Some(n)
	}
	return a
}

// freeName is the first name like another that no variant of the branch in hand has.
func freeName(m *desk.Model, like string) string {
	mb, _, ok := m.BranchHere()
	if !ok {
		return like
	}
	return ways.FreeName(mb, like)
}
