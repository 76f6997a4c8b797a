package layers

import (
	"fmt"
	"slices"
	"strings"

	"contralay/calc"
	"contralay/calc/phase/bundle"
	"contralay/calc/phase/planning"
	"contralay/calc/query/whatif"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/ui/bench/desk"
	"contralay/ui/paper"
)

// How the branch in hand could be otherwise, worked out beside the screen.

// way is one way in which the branch could be: what leads there, and how it is called.
type way struct {
	key  string // tells it apart from the other ways of its branch
	says string // "three", "AS22759/34"
	laid []int  // of a lay-up, in place of that: pieces in each layer
	make func(s *sheet.Sheet) outcome
	keep func(s *sheet.Sheet) (model.Aside, error) // the way as a variant; nil: it is one
}

// text is how a way is called.
func (w way) text(m *desk.Model) string {
	if w.laid != nil {
		return paper.Aloud(w.laid, m.Cfg.ASCII)
	}
	return w.says
}

// kind is ways that differ in one thing.
type kind struct {
	id, name string
	ways     []way
	now      int // the present one; -1 where it is none of them
}

// outcome is what came of a way: the branch as it would be, or why it cannot be.
type outcome struct {
	sheet   *sheet.Sheet
	figures whatif.Figures
	gone    []string // what it names and the branch no longer has
	err     error
}

// ground is all that the ways of a branch are worked out from. What rests on the same ground holds, whatever sheet
// it was worked out for: an undo finds again what was there before.
type ground struct {
	h      *model.Harness
	cat    *catalogue.Catalogue
	branch int
	lies   string // how the branches lie that are only proposed
}

// table is what the table keeps while the bench is open.
type table struct {
	shown  map[string]string // the way that a row is stepped to, by branch and kind
	kept   []*worked         // newest first
	kinds  desk.Kept[[]kind]
	ground desk.Kept[ground]
	now    desk.Kept[whatif.Figures]
}

// worked is what came of the ways on one ground.
type worked struct {
	on   ground
	came map[string]outcome
}

// mostGrounds is how many grounds are kept: the present one, and those that an undo and a redo lead to.
const mostGrounds = 4

// groundOf is the ground of the branch in hand.
func groundOf(m *desk.Model) ground {
	return desk.State[table](m).ground.Get(m.Sheet, m.Branch, "", func() ground {
		var lies strings.Builder
		for i := range m.Sheet.Branches {
			if b := &m.Sheet.Branches[i]; b.Proposed {
				fmt.Fprint(&lies, i, b.As, ";")
			}
		}
		return ground{m.H, m.Sheet.Base, m.Branch, lies.String()}
	})
}

// on is what is worked out on a ground; nil where nothing is kept of it.
func (t *table) on(g ground) *worked {
	for _, w := range t.kept {
		if w.on == g {
			return w
		}
	}
	return nil
}

// begin makes room for what is worked out on a ground.
func (t *table) begin(g ground) *worked {
	w := t.on(g)
	if w == nil {
		w = &worked{g, map[string]outcome{}}
		t.kept = slices.Insert(t.kept, 0, w)
		t.kept = t.kept[:min(len(t.kept), mostGrounds)]
	}
	return w
}

// cameOf is what came of a way; false while it is still to be worked out.
func cameOf(m *desk.Model, w way) (outcome, bool) {
	on := desk.State[table](m).on(groundOf(m))
	if on == nil {
		return outcome{}, false
	}
	o, ok := on.came[w.key]
	return o, ok
}

// present is the figures of the branch as it is.
func present(m *desk.Model) whatif.Figures {
	return desk.State[table](m).now.Get(m.Sheet, m.Branch, "", func() whatif.Figures { return whatif.FiguresOf(m.Sheet, m.Branch) })
}

// The kinds that the table puts first: what a person asks oftenest.
var kindOrder = []string{layupKind, "centre", "spares", "spec", "hand", "sheath"}

// layupKind is the kind of the lay-ups that were worked out for the branch.
const layupKind = "layup"

// kindsHere is every kind of way of the branch in hand.
func kindsHere(m *desk.Model) []kind {
	return desk.State[table](m).kinds.Get(m.Sheet, m.Branch, "", func() []kind {
		all := layupsHere(m)
		for _, k := range whatif.Kinds(m.Sheet, m.Branch) {
			if k.ID == layupKind { // those here lay new spares in too
				continue
			}
			one := kind{id: k.ID, name: k.Name, now: k.Now}
			for _, v := range k.Values {
				i := m.Branch
				one.ways = append(one.ways, way{key: v.Key, says: v.Says,
					make: func(s *sheet.Sheet) outcome {
						built, err := whatif.Built(s, i, v)
						return outcome{sheet: built, err: err}
					},
					keep: func(s *sheet.Sheet) (model.Aside, error) { return whatif.Aside(s, i, v) }})
			}
			all = append(all, one)
		}
		place := func(k kind) int {
			if n := slices.Index(kindOrder, k.id); n >= 0 {
				return n
			}
			return len(kindOrder)
		}
		slices.SortStableFunc(all, func(a, b kind) int { return place(a) - place(b) })
		return all
	})
}

// layupsHere is the lay-ups worth having, as a kind.
func layupsHere(m *desk.Model) []kind {
	if _, b, ok := m.BranchHere(); !ok || b.Make != model.MakeLaid {
		return nil
	}
	k := kind{id: layupKind, name: "lay-up", now: -1}
	i := m.Branch
	for n, o := range m.Sheet.Proposals[bundle.PlanKey(m.Sheet, i)].Options {
		if n == mostOptions {
			break
		}
		if k.now < 0 && usesOption(m, o) {
			k.now = n
		}
		counts := paper.Counts(o.Plan)
		k.ways = append(k.ways, way{key: fmt.Sprintf("option %d: %v, %d spares, %v", n, counts, len(o.Spares), o.Cost), laid: counts,
			make: func(s *sheet.Sheet) outcome {
				return outcome{sheet: calc.Build(planning.Laid(s, s.H, i, o), s.Base, s)}
			},
			keep: func(s *sheet.Sheet) (model.Aside, error) { return laidAside(s, i, o), nil }})
	}
	if len(k.ways) == 0 {
		return nil
	}
	return []kind{k}
}

// kindOf is the kind of an id; false where the branch has no other ways of it.
func kindOf(m *desk.Model, id string) (kind, bool) {
	if id == variantsKind {
		k := variantsHere(m)
		return k, len(k.ways) > 0
	}
	for _, k := range kindsHere(m) {
		if k.id == id {
			return k, true
		}
	}
	return kind{}, false
}

// waysAtOnce is how many ways one work works out: so few that the first figures are soon on the screen.
const waysAtOnce = 2

// PlanWays asks for the ways that the table shows, then for those of the page in front, then for those that one more
// step on a row would show.
func PlanWays(m *desk.Model) (desk.Work, bool) {
	_, b, ok := m.BranchHere()
	if !ok || len(b.Layers) == 0 {
		return desk.Work{}, false
	}
	t, g := desk.State[table](m), groundOf(m)
	came := t.begin(g).came
	var next []way
	for _, w := range wanted(m) {
		if _, known := came[w.key]; !known && len(next) < waysAtOnce &&
			!slices.ContainsFunc(next, func(o way) bool { return o.key == w.key }) {
			next = append(next, w)
		}
	}
	if len(next) == 0 {
		return desk.Work{}, false
	}
	s := *m.Sheet // what is adopted meanwhile goes into the sheet in hand
	return desk.Work{Key: fmt.Sprintf("ways\x00%s\x00%p", next[0].key, m.Sheet), Do: func() func(m *desk.Model) {
		out := make([]outcome, len(next))
		for n, w := range next {
			if out[n] = w.make(&s); out[n].err == nil {
				out[n].figures = whatif.FiguresOf(out[n].sheet, g.branch)
			}
		}
		return func(m *desk.Model) { // they hold for their ground, whatever is in hand now
			if on := desk.State[table](m).on(g); on != nil {
				for n, w := range next {
					on.came[w.key] = out[n]
				}
			}
		}
	}}, true
}

// wanted is the ways that are to be worked out, the first first.
func wanted(m *desk.Model) []way {
	var front, first, then []way
	if m.Top() == WaysKind {
		if k, ok := kindOf(m, m.Subject()); ok {
			front = k.ways
		}
	}
	for _, k := range kindsHere(m) {
		if k.id == layupKind {
			first = append(first, k.ways[:min(len(k.ways), firstLayups)]...)
			continue
		}
		n, settled := shownOf(m, k)
		first = append(first, k.ways[n])
		for _, by := range []int{1, -1} {
			if next, is := k.beside(n, by); is && settled {
				then = append(then, k.ways[next])
			}
		}
	}
	return slices.Concat(front, first, variantsHere(m).ways, then)
}

// beside is the way one step from another, past the present one; false at the end.
func (k kind) beside(n, by int) (int, bool) {
	if n += by; n == k.now {
		n += by
	}
	return n, n >= 0 && n < len(k.ways)
}

// others is the ways of a kind but the present one, the nearest to it first, of two as near the later.
func (k kind) others() []int {
	var out []int
	for d := 1; d <= len(k.ways)+1; d++ {
		for _, n := range []int{max(k.now, -1) + d, k.now - d} {
			if n >= 0 && n < len(k.ways) {
				out = append(out, n)
			}
		}
	}
	return out
}

// shownKey is what the way that a row is stepped to is kept under.
func shownKey(m *desk.Model, id string) string { return m.H.Branches[m.Branch].ID + "\x00" + id }

// show steps the row of a kind to a way, by its key.
func show(m *desk.Model, id, key string) {
	t := desk.State[table](m)
	if t.shown == nil {
		t.shown = map[string]string{}
	}
	t.shown[shownKey(m, id)] = key
}

// shownOf is the way that the row of a kind shows: the one it was stepped to, else the nearest that makes a
// difference, so that one is seen without a key. Until that is known it is the next to be worked out, and false.
func shownOf(m *desk.Model, k kind) (int, bool) {
	at := slices.IndexFunc(k.ways, func(w way) bool { return w.key == desk.State[table](m).shown[shownKey(m, k.id)] })
	if at >= 0 && at != k.now {
		return at, true
	}
	can := -1
	for _, n := range k.others() {
		o, known := cameOf(m, k.ways[n])
		if !known {
			return n, false
		}
		if o.err == nil && differs(m, o.figures) {
			show(m, k.id, k.ways[n].key)
			return n, true
		}
		if o.err == nil && can < 0 {
			can = n
		}
	}
	if can < 0 {
		can = k.others()[0]
	}
	return can, true
}

// differs reports whether a way differs from the branch as it is in what the table shows.
func differs(m *desk.Model, f whatif.Figures) bool {
	now := present(m)
	return slices.ContainsFunc(measures, func(c measure) bool { return c.text(m.Sys, f) != c.text(m.Sys, now) })
}
