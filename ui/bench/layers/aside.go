package layers

import (
	"fmt"
	"slices"
	"strings"

	"contralay/calc"
	"contralay/calc/phase/planning"
	"contralay/calc/query/whatif"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/words"
	"contralay/ui/paper"
)

// Variants: ways that the file keeps, each under its letter.

// mostAsides is how many variants a branch keeps.
const mostAsides = 9

// variantsKind is the kind of the variants that are kept.
const variantsKind = "variants"

// variantsHere is the variants of the branch in hand, as ways of one kind.
func variantsHere(m *desk.Model) kind {
	k := kind{id: variantsKind, name: "variant", now: -1}
	mb, _, ok := m.BranchHere()
	if !ok {
		return k
	}
	i := m.Branch
	for n, a := range mb.Asides {
		k.ways = append(k.ways, way{key: variantKey(n, a), says: a.Name, make: func(s *sheet.Sheet) outcome {
			h, gone, err := whatif.Taken(s, i, a)
			if err != nil {
				return outcome{err: err}
			}
			return outcome{sheet: calc.Build(h, s.Base, s), gone: gone}
		}})
	}
	return k
}

// variantKey tells a variant apart from another that has had its place.
func variantKey(n int, a model.Aside) string { return fmt.Sprintf("variant %d %v", n, a) }

// variantName is a variant by its letter and its name.
func variantName(m *desk.Model, n int) string {
	mb, _, _ := m.BranchHere()
	return strings.TrimSpace(string(mb.AsideLetters()[n]) + "  " + mb.Asides[n].Name)
}

// variantRows are the variants in the table.
func variantRows(m *desk.Model, t columnsOf) []desk.Row {
	k := variantsHere(m)
	if len(k.ways) == 0 {
		return nil
	}
	out := []desk.Row{{Text: "variants that are kept", Heads: true}}
	for n, w := range k.ways {
		r := outcomeRow(m, t, "  "+variantName(m, n), w)
		r.Key = "aside " + w.says
		if o, known := cameOf(m, w); known && o.err == nil {
			r.More = func() string { return differsText(m, "Variant "+variantName(m, n), o, "Enter: side by side") }
		}
		r.Enter, r.Drop = func(m *desk.Model) { openWays(m, variantsKind, n) }, dropVariant(n)
		out = append(out, r)
	}
	return out
}

// dropVariant takes a variant out of the file.
func dropVariant(n int) func(m *desk.Model) {
	return func(m *desk.Model) {
		name := variantName(m, n)
		sameGround(m, func() {
			m.Change(m.H.EditBranch(m.Branch, func(b *model.Branch) {
				if b.Asides = slices.Delete(b.Asides, n, n+1); len(b.Asides) == 0 {
					b.Asides = nil
				}
			}), "variant "+name+" is no longer kept")
		})
	}
}

// keepWay keeps a way as a variant.
func keepWay(m *desk.Model, k kind, n int) {
	if o, known := cameOf(m, k.ways[n]); !known || o.err != nil {
		m.Refuse("there is nothing to keep yet: it is still being worked out")
		return
	}
	a, err := k.ways[n].keep(m.Sheet)
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
	sameGround(m, func() {
		m.Change(m.H.EditBranch(m.Branch, func(b *model.Branch) { b.Asides = append(b.Asides, a) }),
			fmt.Sprintf("kept as variant %s, %s. It stands in the table", a.Letter.V, a.Name))
	})
	return nil
}

// sameGround makes a change that no way rests on: what is worked out holds on.
func sameGround(m *desk.Model, change func()) {
	t := desk.State[table](m)
	was := t.begin(groundOf(m))
	change()
	if is := t.begin(groundOf(m)); is != was {
		for key, o := range was.came {
			is.came[key] = o
		}
	}
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
	if n := present(m).Spares; n > 0 {
		a.Spares = model.Some(n)
	}
	return a
}

// laidAside is a lay-up that is worth having, as a variant.
func laidAside(s *sheet.Sheet, i int, o sheet.Option) model.Aside {
	h := planning.Laid(s, s.H, i, o)
	a := model.Aside{Name: paper.Aloud(paper.Counts(o.Plan), true), Make: model.Some(model.MakeLaid), Outer: s.H.Branches[i].Outer,
		Layers: model.CloneLayers(h.Branches[i].Layers)}
	if len(o.Spares) > 0 {
		a.Spares = model.Some(whatif.FiguresOf(s, i).Spares + len(o.Spares))
	}
	a.Name = freeNameIn(&s.H.Branches[i], a.Name)
	return a
}

// freeName is the first name like another that no variant of the branch in hand has.
func freeName(m *desk.Model, like string) string {
	mb, _, ok := m.BranchHere()
	if !ok {
		return like
	}
	return freeNameIn(mb, like)
}

func freeNameIn(b *model.Branch, like string) string {
	for n := 1; ; n++ {
		name := like + words.Either(n > 1, fmt.Sprintf(" %d", n), "")
		if !slices.ContainsFunc(b.Asides, func(a model.Aside) bool { return a.Name == name }) {
			return name
		}
	}
}
