package ways

import (
	"fmt"
	"maps"
	"slices"

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

// VariantsID is the kind of the variants that are kept.
const VariantsID = "variants"

// Variants is the variants of the branch in hand, as ways of one kind.
func Variants(m *desk.Model) Kind {
	k := Kind{ID: VariantsID, Name: "variant", Now: -1}
	mb, _, ok := m.BranchHere()
	if !ok {
		return k
	}
	i := m.Branch
	for n, a := range mb.Asides {
		k.Ways = append(k.Ways, Way{Key: variantKey(n, a), Says: a.Name, Make: func(s *sheet.Sheet) Outcome {
			h, gone, err := whatif.Taken(s, i, a)
			if err != nil {
				return Outcome{Err: err}
			}
			return Outcome{Sheet: calc.Build(h, s.Base, s), Gone: gone}
		}})
	}
	return k
}

// variantKey tells a variant apart from another that has had its place.
func variantKey(n int, a model.Aside) string { return fmt.Sprintf("variant %d %v", n, a) }

// laidAside is a lay-up that is worth having, as a variant.
func laidAside(s *sheet.Sheet, i int, o sheet.Option) model.Aside {
	h := planning.Laid(s, s.H, i, o)
	a := model.Aside{Name: paper.Aloud(paper.Counts(o.Plan), true), Make: model.Some(model.MakeLaid), Outer: s.H.Branches[i].Outer,
		Layers: model.CloneLayers(h.Branches[i].Layers)}
	if len(o.Spares) > 0 {
		a.Spares = model.Some(whatif.FiguresOf(s, i).Spares + len(o.Spares))
	}
	a.Name = FreeName(&s.H.Branches[i], a.Name)
	return a
}

// FreeName is the first name like another that no variant of a branch has.
func FreeName(b *model.Branch, like string) string {
	for n := 1; ; n++ {
		name := like + words.Either(n > 1, fmt.Sprintf(" %d", n), "")
		if !slices.ContainsFunc(b.Asides, func(a model.Aside) bool { return a.Name == name }) {
			return name
		}
	}
}

// SameGround makes a change that no way rests on: what is worked out holds on.
func SameGround(m *desk.Model, change func()) {
	t := desk.State[table](m)
	was := t.begin(groundOf(m))
	change()
	if is := t.begin(groundOf(m)); is != was {
		maps.Copy(is.came, was.came)
	}
}
