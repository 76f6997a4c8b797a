package whatif_test

import (
	"fmt"
	"maps"
	"reflect"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/phase/planning"
	"contralay/calc/query/offer"
	"contralay/calc/query/whatif"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/file"
	"contralay/model/shorttest"
)

func text(h *model.Harness) string { return string(file.Encode(file.Document{Harness: *h})) }

// Whatever way of whatever branch is asked for: its figures are those of a harness changed by hand in that way, what the
// change does not name is as it was, what is locked or pinned stays, the present way changes nothing, and what is
// made loads. Kept as a variant and taken up, it is the same harness.
func TestEveryWayIsAHarnessChangedByHand(t *testing.T) {
	done, refused := map[string]int{}, map[string]int{}
	try := func(r *rapid.T) {
		s := drawn(r, t)
		i := 0
		before, plans := text(s.H), len(s.Proposals)
		kinds := whatif.Kinds(s, i)
		if len(s.Proposals) != plans {
			r.Fatal("Kinds planned")
		}
		total := 0
		for _, k := range kinds {
			total += len(k.Values)
		}
		if total > whatif.Most {
			r.Fatalf("%d values", total)
		}
		if len(kinds) == 0 {
			r.Fatal("a branch that is laid has no ways")
		}
		k := rapid.SampledFrom(kinds).Draw(r, "kind")
		n := rapid.IntRange(0, len(k.Values)-1).Draw(r, "value")
		v := k.Values[n]
		got, err := whatif.Changed(s, i, v)
		if text(s.H) != before {
			r.Fatalf("%s: the harness that was asked about is another now", v.Key)
		}
		name, _, _ := strings.Cut(k.ID, " ")
		if err != nil {
			if n == k.Now || got != s.H || strings.Contains(err.Error(), ". ") || len(err.Error()) < 10 {
				r.Fatalf("%s: %v, and gives %v", v.Key, err, got == s.H)
			}
			refuses(r, s, v.Key, err)
			refused[name]++
			return
		}
		if (n == k.Now) != (got == s.H) {
			r.Fatalf("%s: present %v, changes nothing %v", v.Key, n == k.Now, got == s.H)
		}
		if n == k.Now {
			return
		}
		done[name]++
		if d, err := file.Parse([]byte(text(got)), v.Key); err != nil || text(&d.Harness) != text(got) {
			r.Fatalf("%s: what it makes does not load, or loads as another: %v\n%s", v.Key, err, text(got))
		}
		untouched(r, s.H, got, v.Key)
		heldStays(r, s.H, got, v.Key)
		hand := byHand(r, s, got, v.Key)
		want := calc.Complete(hand, s.Base, nil)
		is := calc.Complete(got, s.Base, s)
		if d := cmp.Diff(whatif.FiguresOf(want, i), whatif.FiguresOf(is, i)); d != "" {
			r.Fatalf("%s: by hand (-) and as made (+):\n%s\n%v\n%v", v.Key, d, hand.Branches[i].Layers, got.Branches[i].Layers)
		}
		if built, err := whatif.Built(s, i, v); err != nil || !reflect.DeepEqual(whatif.FiguresOf(built, i), whatif.FiguresOf(is, i)) ||
			text(built.H) != text(got) {
			r.Fatalf("%s: built, it has other figures (%v)", v.Key, err)
		}
		keptAndTaken(r, s, i, v, got)
	}
	kinds := []string{"centre", "spares", "hand", "size", "spec", "sheath"}
	rapid.Check(t, try)
	for range 5 { // another hand is drawn once in some thirty times, and refused more often than made
		if !shorttest.Long() || t.Failed() || !slices.ContainsFunc(kinds, func(name string) bool { return done[name] == 0 }) {
			break
		}
		rapid.Check(t, try)
	}
	if t.Failed() || testing.Short() {
		return
	}
	t.Log("done ", done, " refused ", refused)
	if len(done) == 0 || len(done) < 4 && shorttest.Long() {
		t.Errorf("only %v were made", done)
	}
	for _, name := range kinds {
		if done[name] == 0 && shorttest.Long() { // a few rounds need not meet all
			t.Errorf("no other %s was made", name)
		}
	}
}

// keptAndTaken keeps a way as a variant in the file and takes it up from there.
func keptAndTaken(r *rapid.T, s *sheet.Sheet, i int, v whatif.Value, got *model.Harness) {
	a, err := whatif.Aside(s, i, v)
	if err != nil {
		r.Fatalf("%s: %v", v.Key, err)
	}
	kept := s.H.EditBranch(i, func(b *model.Branch) { b.Asides = append(b.Asides, a) })
	d, err := file.Parse([]byte(text(kept)), v.Key)
	if err != nil {
		r.Fatalf("%s: as a variant it does not load: %v", v.Key, err)
	}
	h, gone, err := whatif.Taken(s, i, d.Harness.Branches[i].Asides[len(d.Harness.Branches[i].Asides)-1])
	if err != nil || len(gone) > 0 {
		r.Fatalf("%s: taken up again: %v, gone %v", v.Key, err, gone)
	}
	if diff := cmp.Diff(text(got), text(h)); diff != "" {
		r.Fatalf("%s: kept as %+v and taken up it is another:\n%s", v.Key, a, diff)
	}
}

// untouched fails where something is another that the change does not name: it puts back what the change may touch, and
// compares the files.
func untouched(r *rapid.T, was, is *model.Harness, key string) {
	n := *is
	n.Wires, n.Branches = slices.Clone(is.Wires), slices.Clone(is.Branches)
	word, _, _ := strings.Cut(key, " ")
	switch word {
	case "spec", "size":
		for k := range n.Wires {
			if word == "spec" {
				n.Wires[k].Spec = was.Wires[k].Spec
			} else {
				n.Wires[k].Size = was.Wires[k].Size
			}
		}
	case "spares":
		spare := func(w model.Wire) bool { return w.Role.V == model.RoleSpare }
		n.Wires = slices.DeleteFunc(n.Wires, spare)
		for b := 1; b < len(n.Branches); b++ {
			for k, l := range n.Branches[b].Layers {
				for _, id := range l.Of {
					all := slices.Concat(was.Wires, is.Wires)
					if !slices.ContainsFunc(all, func(w model.Wire) bool { return w.ID == id && spare(w) }) &&
						!slices.Contains(was.Branches[b].Layers[k].Of, id) {
						r.Fatalf("%s: %s lies in layer %d of another branch now", key, id, k)
					}
				}
			}
			n.Branches[b].Layers = was.Branches[b].Layers
		}
		bare := *was
		bare.Wires = slices.DeleteFunc(slices.Clone(was.Wires), spare)
		was = &bare
	}
	b, old := &n.Branches[0], &was.Branches[0]
	if word == "hand" {
		b.Outer = old.Outer
	} else {
		if word != "sheath" {
			b.Layers, b.Make = old.Layers, old.Make
		}
		b.Covers = slices.Clone(b.Covers)
		for k := range b.Covers {
			if k < len(old.Covers) && b.Covers[k].What == model.CoverSheath {
				b.Covers[k].Part = old.Covers[k].Part
			}
		}
		if word == "sheath" && len(old.Covers) == 0 {
			b.Covers = nil
		}
	}
	if d := cmp.Diff(text(was), text(&n)); d != "" {
		r.Fatalf("%s touches what it does not name:\n%s", key, d)
	}
}

// heldStays fails where a locked layer is another, or a pinned piece lies elsewhere.
func heldStays(r *rapid.T, was, is *model.Harness, key string) {
	for b := range was.Branches {
		for k, l := range was.Branches[b].Layers {
			now := is.Branches[b].Layers
			if l.Locked.V && (k >= len(now) || !reflect.DeepEqual(l, now[k])) {
				r.Fatalf("%s: locked layer %d of %s was %v, is %v", key, k, was.Branches[b].ID, l, now)
			}
			for n, w := range was.Wires {
				u := slices.IndexFunc(was.Units, func(u model.Unit) bool { return slices.Contains(u.Wires, w.ID) })
				if l.Locked.V && (slices.Contains(l.Of, w.ID) || u >= 0 && slices.Contains(l.Of, was.Units[u].ID)) &&
					len(is.Wires) == len(was.Wires) && (is.Wires[n].Size != w.Size || is.Wires[n].Spec != w.Spec) {
					r.Fatalf("%s: %s in locked layer %d was %s %s, is %s %s", key, w.ID, k, w.Spec, w.Size, is.Wires[n].Spec,
						is.Wires[n].Size)
				}
			}
			if l.Locked.V && b == 0 && is.Branches[b].Outer != was.Branches[b].Outer {
				r.Fatalf("%s: locked layer %d turns the other way", key, k)
			}
			if l.Locked.V && (len(now)-len(was.Branches[b].Layers))%2 != 0 {
				r.Fatalf("%s: locked layer %d turns the other way", key, k)
			}
			for _, id := range l.Pinned {
				if k >= len(now) || !slices.Contains(now[k].Of, id) || !slices.Contains(now[k].Pinned, id) {
					r.Fatalf("%s: %s was pinned to layer %d, now %v", key, id, k, now)
				}
			}
		}
	}
}

// byHand is the harness that a person would make of it in the file. Where the planner is asked, it is asked for the
// whole proposal; where a person has a choice (which spares, which wires), what was made is judged.
func byHand(r *rapid.T, s *sheet.Sheet, got *model.Harness, key string) *model.Harness {
	word, rest, _ := strings.Cut(key, " ")
	h := s.H
	if b := &s.Branches[0]; b.Proposed && word != "hand" && word != "sheath" {
		h = h.EditBranch(0, func(m *model.Branch) { m.Layers, m.Make = model.CloneLayers(b.As), model.Some(b.Make) })
	}
	switch word {
	case "hand":
		return h.EditBranch(0, func(b *model.Branch) { b.Outer = model.Some(model.Hand(rest)) })
	case "sheath":
		best := rankedFirst(s, h, s.Cat.TubesOf(rest)[0].ID)
		return withTube(h, best)
	case "spec":
		for k := range h.Wires {
			if slices.Contains(s.Wires[k].Path, 0) && !bought(s, h.Wires[k].ID) {
				h = h.EditWire(k, func(w *model.Wire) { w.Spec = rest })
			}
		}
	case "size":
		from, to, _ := strings.Cut(rest, " ")
		for k := range h.Wires {
			if got.Wires[k].Size != h.Wires[k].Size {
				h = h.EditWire(k, func(w *model.Wire) { w.Size = to })
			}
		}
		mayBe(r, s, h, from, to)
	case "spares":
		h = sparesByHand(r, s, h, got, rest)
	case "centre", "layup":
		centreIs(r, s, got, rest)
		h = h.EditBranch(0, func(b *model.Branch) {
			b.Layers, b.Make = model.CloneLayers(got.Branches[0].Layers), model.Some(model.MakeLaid)
		})
	}
	if word == "spec" || word == "size" || word == "spares" {
		h = laidByHand(s, h, word != "spares")
	}
	if word == "layup" {
		return tubeByHand(s, h)
	}
	return tubeByHand(s, h)
}

// bought reports whether a wire is of a unit whose OD is given.
func bought(s *sheet.Sheet, id string) bool {
	for _, u := range s.H.Units {
		if slices.Contains(u.Wires, id) {
			return u.OverMM.Set
		}
	}
	return false
}

// laidByHand keeps the lay-up of a harness where every layer closes, and else takes the first that is proposed.
func laidByHand(s *sheet.Sheet, h *model.Harness, sizes bool) *model.Harness {
	b := calc.Build(h, s.Base, nil)
	was, is := &s.Branches[0], &b.Branches[0]
	if was.Make != model.MakeLaid {
		if len(is.Components) < s.Limits.LaidFrom || s.H.Branches[0].Make.Set {
			return h
		}
	} else {
		good := len(was.Layers) == len(is.Layers) && is.OverMM > 0
		for k := range is.Layers {
			if !good {
				break
			}
			l, o := is.Layers[k], was.Layers[k]
			gap := s.Limits.GapInner
			if k == len(is.Layers)-1 {
				gap = s.Limits.GapOuter
			}
			good = k == 0 || (l.Lift <= s.Limits.LiftMax || l.Lift <= o.Lift+1e-6) && (l.Gap <= gap || l.Gap <= o.Gap+1e-6)
			ml := h.Branches[0].Layers[k]
			if sizes && !ml.Locked.V && (k > 0 && ml.Fillers.V > 0 || k == 0 && ml.BindMM.V > 0) {
				good = false // made for other sizes
			}
			if k == 0 && !ml.Locked.V {
				count := map[any]bool{}
				for _, id := range ml.Of {
					count[b.Dia(id).Nominal] = true
				}
				if n := len(ml.Of); n > 5 || n > 3 && len(count) > 1 {
					good = false
				}
			}
		}
		if good {
			return h
		}
		held := slices.ContainsFunc(s.H.Branches[0].Layers, func(l model.Layer) bool { return l.Locked.V || len(l.Pinned) > 0 })
		if len(is.Components) < s.Limits.LaidFrom && !s.H.Branches[0].Make.Set && !held {
			return h.EditBranch(0, func(b *model.Branch) { b.Layers, b.Make = nil, model.Opt[model.Make]{} })
		}
	}
	o, _ := planning.Propose(b, 0).Best()
	return h.EditBranch(0, func(b *model.Branch) { b.Layers, b.Make = model.CloneLayers(o.Layers), model.Some(model.MakeLaid) })
}

// rankedFirst is the best tube of the kind of a part.
func rankedFirst(s *sheet.Sheet, h *model.Harness, part string) string {
	b := calc.Build(withTube(h, part), s.Base, s)
	return b.Branches[0].Sheath.Others[0].Tube.ID
}

func withTube(h *model.Harness, part string) *model.Harness {
	return h.EditBranch(0, func(b *model.Branch) {
		k := slices.IndexFunc(b.Covers, func(c model.Cover) bool { return c.What == model.CoverSheath })
		if k < 0 {
			b.Covers, k = append(b.Covers, model.Cover{What: model.CoverSheath}), len(b.Covers)
		}
		b.Covers[k].Part = model.Some(part)
	})
}

// tubeByHand is the sheath that a person takes: the first of the kind again, where it was the first; another only where
// the one in use does not do any more.
func tubeByHand(s *sheet.Sheet, h *model.Harness) *model.Harness {
	was := s.Branches[0].Sheath
	if was.Proposed || was.Part == "" {
		return h
	}
	is := calc.Build(h, s.Base, s).Branches[0].Sheath
	does := (!is.Verdict.Stops() || was.Verdict.Stops()) && (!is.Verdict.Sticks || was.Verdict.Sticks) // nothing that it did before is lost
	if (was.Others[0].Tube.ID == was.Part || !does) && len(is.Others) > 0 && !is.Others[0].Verdict.Stops() {
		return withTube(h, is.Others[0].Tube.ID)
	}
	return h
}

// mayBe fails where a wire changed that the bench would warn of, or one is left that could have changed.
func mayBe(r *rapid.T, s *sheet.Sheet, h *model.Harness, from, to string) {
	laid := offer.AsLaid(s)
	for k := range h.Wires {
		if h.Wires[k].Size != s.H.Wires[k].Size {
			laid = laid.EditWire(k, func(w *model.Wire) { w.Size = to })
		}
	}
	together, every := calc.Build(laid, s.Base, nil), offer.AsLaid(s)
	for k := range h.Wires {
		w := &s.H.Wires[k]
		if _, in := s.Index.UnitOf[w.ID]; !in && w.Size == from && w.Amps.Set && slices.Contains(s.Wires[k].Path, 0) {
			every = every.EditWire(k, func(w *model.Wire) { w.Size = to })
		}
	}
	all := calc.Build(every, s.Base, nil) // the warmest that it can be
	for k := range h.Wires {
		w := &s.H.Wires[k]
		if _, in := s.Index.UnitOf[w.ID]; in || w.Size != from || !slices.Contains(s.Wires[k].Path, 0) {
			if h.Wires[k].Size != w.Size {
				r.Fatalf("%s has another size: it is %s, in a unit %v", w.ID, w.Size, in)
			}
			continue
		}
		locked := false
		for _, b := range s.H.Branches {
			for _, l := range b.Layers {
				locked = locked || l.Locked.V && slices.Contains(l.Of, w.ID)
			}
		}
		changed := h.Wires[k].Size != w.Size
		thinner := s.Cat.Wires[catalogue.WireKey{Spec: w.Spec, Size: to}].AreaMM2 < s.Wires[k].Entry.AreaMM2
		switch {
		case changed && locked:
			r.Fatalf("%s lies in a locked layer", w.ID)
		case changed && thinner && (!w.Amps.Set || offer.Doubts(together, k) != ""):
			r.Fatalf("%s of %s to %s: %s", w.ID, from, to, offer.Doubts(together, k))
		case changed && offer.Handles(s, k, to) != "":
			r.Fatalf("%s of %s to %s: %s", w.ID, from, to, offer.Handles(s, k, to))
		case !changed && !locked && offer.Handles(s, k, to) == "":
			if !thinner {
				r.Fatalf("%s stays %s, and nothing speaks against %s", w.ID, from, to)
			}
			if w.Amps.Set && offer.Doubts(all, k) == "" {
				r.Fatalf("%s stays %s, and does in %s however many do", w.ID, from, to)
			}
		}
	}
}

// sparesByHand takes the last spares out that may go, or lays new ones in where got has them, which it judges.
func sparesByHand(r *rapid.T, s *sheet.Sheet, h, got *model.Harness, want string) *model.Harness {
	runs := func(h *model.Harness) (out []string) {
		b := calc.Build(h, s.Base, nil)
		for k := range h.Wires {
			if h.Wires[k].Role.V == model.RoleSpare && slices.Contains(b.Wires[k].Path, 0) {
				out = append(out, h.Wires[k].ID)
			}
		}
		return out
	}
	was, is := runs(h), runs(got)
	if fmt.Sprint(len(is)) != want {
		r.Fatalf("%d spares, %s were asked for", len(is), want)
	}
	for n := len(was) - 1; n >= 0 && len(was) > len(is); n-- {
		held := false
		for _, b := range s.H.Branches {
			for _, l := range b.Layers {
				held = held || l.Locked.V && slices.Contains(l.Of, was[n]) || slices.Contains(l.Pinned, was[n])
			}
		}
		if !held {
			h, _ = h.RemoveWire(slices.IndexFunc(h.Wires, func(w model.Wire) bool { return w.ID == was[n] }))
			was = slices.Delete(was, n, n+1)
		}
	}
	taken := map[string]bool{}
	for _, w := range s.H.Wires {
		taken[w.From.V], taken[w.To.V] = true, true
	}
	for _, w := range got.Wires {
		if slices.Contains(was, w.ID) || !slices.Contains(is, w.ID) {
			continue
		}
		for _, end := range []string{w.From.V, w.To.V} {
			if taken[end] || end == "" {
				r.Fatalf("spare %s ends in %q, which is taken", w.ID, end)
			}
			taken[end] = true
		}
		path, _ := calc.Build(got, s.Base, nil), 0
		way := path.Wires[path.Index.Wire[w.ID]].Path
		h = h.AddWire(w, slices.DeleteFunc(slices.Clone(way), func(b int) bool { return b == 0 }))
		// It goes where there is room, outermost first; else outermost.
		h = h.EditBranch(0, func(b *model.Branch) {
			last, to := -1, -1
			for k := len(b.Layers) - 1; k >= 0; k-- {
				if b.Layers[k].Locked.V {
					continue
				}
				if last < 0 {
					last = k
				}
				fresh := 0
				for _, id := range b.Layers[k].Of {
					if _, old := s.Index.Wire[id]; !old && s.Index.Unit[id] == 0 && !isOld(s, id) {
						fresh++
					}
				}
				if to < 0 && s.Branches[0].Layers[k].Room > fresh {
					to = k
				}
			}
			if to < 0 {
				to = last
			}
			b.AddTo(to, w.ID)
		})
	}
	return h
}

func isOld(s *sheet.Sheet, id string) bool { _, ok := s.Index.Component(id); return ok }

// centreIs fails where the centre is not what was asked for, or the layers do not hold each piece once.
func centreIs(r *rapid.T, s *sheet.Sheet, got *model.Harness, says string) {
	b := &got.Branches[0]
	held := map[string]int{}
	for _, l := range b.Layers {
		for _, id := range l.Of {
			held[id]++
		}
	}
	want := map[string]int{}
	for _, id := range s.Branches[0].Components {
		want[id] = 1
	}
	if !maps.Equal(held, want) {
		r.Fatalf("%s: the layers hold %v", says, held)
	}
	in := b.Layers[0].Of
	units, sizes := 0, map[any]bool{}
	for _, id := range in {
		if _, is := s.Index.Unit[id]; is {
			units++
		}
		sizes[s.Dia(id).Nominal] = true
	}
	bound := b.Layers[0].BindMM.V > 0 && len(in) == 1
	ok := true
	switch number := slices.Index([]string{"", "one", "two", "three", "four", "five"}, says); {
	case number > 0:
		ok = len(in) == number && !bound && (len(sizes) == 1 || len(s.H.Units) > 0 && number <= 3)
	case says == "units":
		ok = units == len(in) && units > 0 && !bound
	case says == "mixed":
		ok = len(sizes) > 1 && len(in) <= 3
	case says == "built up":
		ok = bound
	}
	if !ok {
		r.Fatalf("%q: the centre holds %v, sizes %v, bound %v", says, in, sizes, bound)
	}
}

// refuses fails where a way is refused that could be.
func refuses(r *rapid.T, s *sheet.Sheet, key string, err error) {
	word, rest, _ := strings.Cut(key, " ")
	locked := slices.ContainsFunc(s.H.Branches, func(b model.Branch) bool {
		return slices.ContainsFunc(b.Layers, func(l model.Layer) bool { return l.Locked.V || len(l.Pinned) > 0 })
	})
	switch word {
	case "hand", "spec", "spares":
		if !locked {
			r.Fatalf("%s: %v, and nothing is locked", key, err)
		}
	case "sheath":
		for _, t := range s.Cat.TubesOf(rest) {
			b := calc.Build(withTube(s.H, t.ID), s.Base, s)
			if b.Branches[0].Sheath.Tube.Set && !b.Branches[0].Sheath.Verdict.Stops() {
				r.Fatalf("%s: %v, and %s does", key, err, t.ID)
			}
		}
	case "size":
		from, to, _ := strings.Cut(rest, " ")
		if locked {
			return
		}
		for k := range s.H.Wires {
			w := &s.H.Wires[k]
			if _, in := s.Index.UnitOf[w.ID]; !in && w.Size == from && slices.Contains(s.Wires[k].Path, 0) && offer.Does(s, k, to) {
				all := true // it may yet not do beside the others
				for _, o := range s.H.Wires {
					all = all && (o.Size != from || o.ID == w.ID)
				}
				if all {
					r.Fatalf("%s: %v, and %s does", key, err, w.ID)
				}
			}
		}
	}
}

// drawn is the sheet of a stem that forks into arms, or does not: wires of some sizes with and without currents, spares,
// units, and whatever is laid, locked, pinned and covered.
func drawn(r *rapid.T, t *testing.T) *sheet.Sheet {
	var b strings.Builder
	arms := rapid.IntRange(1, 3).Draw(r, "arms")
	n := rapid.IntRange(5, 20).Draw(r, "wires")
	spares := rapid.IntRange(0, 3).Draw(r, "spares")
	pairs := rapid.IntRange(0, 2).Draw(r, "pairs")
	free := rapid.IntRange(0, 2).Draw(r, "free")
	total := n + spares + 2*pairs
	fmt.Fprintf(&b, "format = 1\n[rules]\nspares_wanted = %d\n[[breakout]]\nid = \"Y\"\n", rapid.IntRange(0, 2).Draw(r, "wanted"))
	contact := rapid.SampledFrom([]string{"", "20", "22", "both"}).Draw(r, "contact")
	cavities := func(id string) {
		var list []string
		for k := range total + free {
			list = append(list, fmt.Sprintf("%q", fmt.Sprint(k)))
		}
		fmt.Fprintf(&b, "[[termination]]\nid = %q\ncavities = [%s]\n", id, strings.Join(list, ", "))
		switch contact {
		case "":
		case "both":
			fmt.Fprintf(&b, "contacts = { \"20\" = [%s], \"22\" = [%s] }\n", strings.Join(list[:len(list)/2], ", "),
				strings.Join(list[len(list)/2:], ", "))
		default:
			fmt.Fprintf(&b, "contacts = { %q = [%s] }\n", contact, strings.Join(list, ", "))
		}
	}
	cavities("S")
	for k := range arms {
		cavities(fmt.Sprint("E", k))
	}
	sizes := rapid.SliceOfNDistinct(rapid.SampledFrom([]string{"24", "22", "20"}), 1, 2, rapid.ID[string]).Draw(r, "sizes")
	spec := rapid.SampledFrom([]string{"AS22759/32", "AS22759/32", "AS22759/34"}).Draw(r, "spec")
	for k := range total {
		arm, more := rapid.IntRange(0, arms-1).Draw(r, "arm"), ""
		switch {
		case k >= n+2*pairs:
			more = "role = \"spare\"\namps = 0.0\n"
		case k >= n:
			arm, more = 0, "amps = 0.1\n"
		default:
			if a := rapid.SampledFrom([]string{"", "0.2", "1.0", "6.0"}).Draw(r, "amps"); a != "" {
				more = "amps = " + a + "\n"
			}
		}
		fmt.Fprintf(&b, "[[wire]]\nid = \"w%d\"\nfrom = \"S:%d\"\nto = \"E%d:%d\"\nspec = %q\nsize = %q\n%snote = \"n%d\"\n", k, k, arm, k,
			spec, rapid.SampledFrom(sizes).Draw(r, "size"), more, k)
	}
	for k := range pairs {
		fmt.Fprintf(&b, "[[unit]]\nid = \"U%d\"\nwires = [\"w%d\", \"w%d\"]\nbuild = \"pair\"\n", k, n+2*k, n+2*k+1)
		if rapid.Bool().Draw(r, "bought") {
			b.WriteString("shield = true\nover_mm = 2.9\n")
		}
	}
	fmt.Fprintf(&b, "[[branch]]\nid = \"STEM\"\nfrom = \"S\"\nto = \"Y\"\nlength_mm = 500\n")
	if rapid.Bool().Draw(r, "outer") {
		b.WriteString("outer = \"RH\"\n")
	}
	at := "Y"
	if arms > 1 && rapid.Bool().Draw(r, "deep") { // some leave before others
		b.WriteString("[[breakout]]\nid = \"Z\"\n[[branch]]\nid = \"MID\"\nfrom = \"Y\"\nto = \"Z\"\nlength_mm = 150\n")
		at = "Z"
	}
	for k := range arms {
		from := at
		if k == 0 {
			from = "Y"
		}
		fmt.Fprintf(&b, "[[branch]]\nid = \"ARM%d\"\nfrom = %q\nto = \"E%d\"\nlength_mm = %d\n", k, from, k, 200+100*k)
	}
	d, err := file.Parse([]byte(b.String()), "drawn")
	if err != nil {
		r.Fatal(err, b.String())
	}
	s := calc.Complete(&d.Harness, calctest.Catalogue(t), nil)
	h := s.H
	if as := s.Branches[0].As; rapid.Bool().Draw(r, "laid") {
		h = h.EditBranch(0, func(b *model.Branch) {
			b.Layers = model.CloneLayers(as)
			if s.Branches[0].Make == model.MakeLaid {
				b.Make = model.Some(model.MakeLaid)
			}
			k := rapid.IntRange(0, len(as)-1).Draw(r, "layer")
			l := &b.Layers[k]
			switch rapid.IntRange(0, 4).Draw(r, "held") {
			case 0:
				l.Locked = model.Some(true)
			case 1:
				l.Pinned = []string{rapid.SampledFrom(l.Of).Draw(r, "pinned")}
			}
		})
	}
	if others := s.Branches[0].Sheath.Others; len(others) > 0 && rapid.Bool().Draw(r, "sheathed") {
		h = withTube(h, others[rapid.IntRange(0, min(1, len(others)-1)).Draw(r, "tube")].Tube.ID)
	}
	return calc.Complete(h, s.Base, s)
}
