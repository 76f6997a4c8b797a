package ways

import (
	"fmt"
	"slices"
	"strings"

	"contralay/calc/query/whatif"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/ui/bench/desk"
	"contralay/ui/paper"
)

// How the branch in hand could be otherwise, worked out beside the screen.

// Screen is the screen of every way of one kind, side by side: it is about the kind's id.
const Screen desk.Kind = "ways"

// Way is one way in which the branch could be: what leads there, and how it is called.
type Way struct {
	Key  string // tells it apart from the other ways of its branch
	Says string // "three", "AS22759/34"
	Laid []int  // of a lay-up, in place of that: pieces in each layer

	Option int  // of a lay-up: which it is of those that are worked out
	Letter rune // of a lay-up: what it is called
	Found  bool // of a lay-up: a longer search found it, and it stands behind the others

	Make func(s *sheet.Sheet) Outcome
	Keep func(s *sheet.Sheet) (model.Aside, error) // the way as a variant; nil: it is one
}

// Text is how a way is called.
func (w Way) Text(m *desk.Model) string {
	if w.Laid != nil {
		return paper.Aloud(w.Laid, m.Cfg.ASCII)
	}
	return w.Says
}

// Kind is ways that differ in one thing.
type Kind struct {
	ID, Name string
	Ways     []Way
	Now      int // the present one; -1 where it is none of them
}

// Outcome is what came of a way: the branch as it would be, or why it cannot be.
type Outcome struct {
	Sheet   *sheet.Sheet
	Figures whatif.Figures
	Gone    []string // what it names and the branch no longer has
	Err     error
}

// ground is all that the ways of a branch are worked out from. What rests on the same ground holds, whatever sheet
// it was worked out for: an undo finds again what was there before, and so does a step up and down again.
type ground struct {
	h      *model.Harness
	cat    *catalogue.Catalogue
	branch int
	lies   string // how the branches lie that are only proposed
}

// same reports whether two grounds hold the same.
func (g ground) same(o ground) bool {
	return g.branch == o.branch && g.cat == o.cat && g.lies == o.lies && g.h.Same(o.h)
}

// table is what the table keeps while the bench is open.
type table struct {
	shown  map[string]string // the way that a row is stepped to, by branch and kind
	kept   []*worked         // newest first
	kinds  desk.Kept[[]Kind]
	ground desk.Kept[ground]
	now    desk.Kept[whatif.Figures]
}

// worked is what came of the ways on one ground.
type worked struct {
	on   ground
	came map[string]Outcome
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
	if n := slices.IndexFunc(t.kept, func(w *worked) bool { return w.on.same(g) }); n >= 0 {
		return t.kept[n]
	}
	return nil
}

// begin makes room for what is worked out on a ground: the one that was not looked at longest gives way.
func (t *table) begin(g ground) *worked {
	w := t.on(g)
	if w == nil {
		w = &worked{g, map[string]Outcome{}}
	}
	t.kept = slices.DeleteFunc(t.kept, func(o *worked) bool { return o == w })
	t.kept = slices.Insert(t.kept, 0, w)
	t.kept = t.kept[:min(len(t.kept), mostGrounds)]
	return w
}

// Came is what came of a way; false while it is still to be worked out.
func Came(m *desk.Model, w Way) (Outcome, bool) {
	on := desk.State[table](m).on(groundOf(m))
	if on == nil {
		return Outcome{}, false
	}
	o, ok := on.came[w.Key]
	return o, ok
}

// Present is the figures of the branch as it is.
func Present(m *desk.Model) whatif.Figures {
	return desk.State[table](m).now.Get(m.Sheet, m.Branch, "", func() whatif.Figures { return whatif.FiguresOf(m.Sheet, m.Branch) })
}

// The kinds that the table puts first: what a person asks oftenest.
var kindOrder = []string{LayupID, "centre", "spares", "spec", "hand", "sheath"}

// LayupID is the kind of the lay-ups that were worked out for the branch.
const LayupID = "layup"

// Here is every kind of way of the branch in hand.
func Here(m *desk.Model) []Kind {
	return desk.State[table](m).kinds.Get(m.Sheet, m.Branch, "", func() []Kind {
		all := layupsHere(m)
		for _, k := range whatif.Kinds(m.Sheet, m.Branch) {
			if k.ID == LayupID { // those here lay new spares in too
				continue
			}
			one := Kind{ID: k.ID, Name: k.Name, Now: k.Now}
			for _, v := range k.Values {
				i := m.Branch
				one.Ways = append(one.Ways, Way{Key: v.Key, Says: v.Says,
					Make: func(s *sheet.Sheet) Outcome {
						built, err := whatif.Built(s, i, v)
						return Outcome{Sheet: built, Err: err}
					},
					Keep: func(s *sheet.Sheet) (model.Aside, error) { return whatif.Aside(s, i, v) }})
			}
			all = append(all, one)
		}
		place := func(k Kind) int {
			if n := slices.Index(kindOrder, k.ID); n >= 0 {
				return n
			}
			return len(kindOrder)
		}
		slices.SortStableFunc(all, func(a, b Kind) int { return place(a) - place(b) })
		return all
	})
}

// Of is the kind of an id; false where the branch has no other ways of it.
func Of(m *desk.Model, id string) (Kind, bool) {
	if id == VariantsID {
		k := Variants(m)
		return k, len(k.Ways) > 0
	}
	for _, k := range Here(m) {
		if k.ID == id {
			return k, true
		}
	}
	return Kind{}, false
}

// waysAtOnce is how many ways one work works out: so few that the first figures are soon on the screen.
const waysAtOnce = 2

// Plan asks for the ways that the table shows, then for those of the page in front, then for those that one more
// step on a row would show.
func Plan(m *desk.Model) (desk.Work, bool) {
	_, b, ok := m.BranchHere()
	if !ok || len(b.Layers) == 0 {
		return desk.Work{}, false
	}
	t, g := desk.State[table](m), groundOf(m)
	came := t.begin(g).came
	var next []Way
	for _, w := range wanted(m) {
		if _, known := came[w.Key]; !known && len(next) < waysAtOnce &&
			!slices.ContainsFunc(next, func(o Way) bool { return o.Key == w.Key }) {
			next = append(next, w)
		}
	}
	if len(next) == 0 {
		return desk.Work{}, false
	}
	s := *m.Sheet // what is adopted meanwhile goes into the sheet in hand
	return desk.Work{Key: fmt.Sprintf("ways\x00%s\x00%p", next[0].Key, m.Sheet), Do: func() func(m *desk.Model) {
		out := make([]Outcome, len(next))
		for n, w := range next {
			if out[n] = w.Make(&s); out[n].Err == nil {
				out[n].Figures = whatif.FiguresOf(out[n].Sheet, g.branch)
			}
		}
		return func(m *desk.Model) { // they hold for their ground, whatever is in hand now
			if on := desk.State[table](m).on(g); on != nil {
				for n, w := range next {
					on.came[w.Key] = out[n]
				}
			}
		}
	}}, true
}

// wanted is the ways that are to be worked out, the first first.
func wanted(m *desk.Model) []Way {
	var front, first, then []Way
	if m.Top() == Screen {
		if k, ok := Of(m, m.Subject()); ok {
			front = k.Ways
		}
	}
	for _, k := range Here(m) {
		if k.ID == LayupID {
			first = append(first, k.Ways[:min(len(k.Ways), FirstLayups)]...)
			then = append(then, slices.DeleteFunc(slices.Clone(k.Ways), func(w Way) bool { return !w.Found })...)
			continue
		}
		n, settled := Shown(m, k)
		first = append(first, k.Ways[n])
		for _, by := range []int{1, -1} {
			if next, is := k.Beside(n, by); is && settled {
				then = append(then, k.Ways[next])
			}
		}
	}
	return slices.Concat(front, first, Variants(m).Ways, then)
}

// Beside is the way one step from another, past the present one; false at the end.
func (k Kind) Beside(n, by int) (int, bool) {
	if n += by; n == k.Now {
		n += by
	}
	return n, n >= 0 && n < len(k.Ways)
}

// others is the ways of a kind but the present one, the nearest to it first, of two as near the later.
func (k Kind) others() []int {
	var out []int
	for d := 1; d <= len(k.Ways)+1; d++ {
		for _, n := range []int{max(k.Now, -1) + d, k.Now - d} {
			if n >= 0 && n < len(k.Ways) {
				out = append(out, n)
			}
		}
	}
	return out
}

// shownKey is what the way that a row is stepped to is kept under.
func shownKey(m *desk.Model, id string) string { return m.H.Branches[m.Branch].ID + "\x00" + id }

// Show steps the row of a kind to a way, by its key.
func Show(m *desk.Model, id, key string) {
	t := desk.State[table](m)
	if t.shown == nil {
		t.shown = map[string]string{}
	}
	t.shown[shownKey(m, id)] = key
}

// Shown is the way that the row of a kind shows: the one it was stepped to, else the nearest that can be built and makes
// a difference, so that one is seen without a key. Until that is known it is the next to be worked out, and false.
func Shown(m *desk.Model, k Kind) (int, bool) {
	at := slices.IndexFunc(k.Ways, func(w Way) bool { return w.Key == desk.State[table](m).shown[shownKey(m, k.ID)] })
	if at >= 0 && at != k.Now {
		return at, true
	}
	can := -1
	for _, n := range k.others() {
		o, known := Came(m, k.Ways[n])
		if !known {
			return n, false
		}
		if o.Err == nil && o.Figures.Stops <= Present(m).Stops && differs(m, o.Figures) {
			Show(m, k.ID, k.Ways[n].Key)
			return n, true
		}
		if o.Err == nil && can < 0 {
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
	now := Present(m)
	return slices.ContainsFunc(measures, func(c measure) bool { return c.text(m.Sys, f) != c.text(m.Sys, now) })
}
