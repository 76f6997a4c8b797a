package offer

import (
	"fmt"
	"maps"
	"slices"
	"strconv"
	"strings"

	"contralay/calc/phase/ends"
	"contralay/calc/phase/wires"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
)

// What saves typing where a loom repeats itself: like legs, like banks, like
// branches.

// Like lists the terminations that could be wired as t is: with the same cavities
// and contacts, and none of the cavities that t uses taken. In file order.
func Like(s *sheet.Sheet, t int) []int {
	var out []int
	if s.Terms[t].Used == 0 {
		return nil
	}
	for k := range s.H.Terminations {
		// Where nothing is free there is no room for anything, which is soon told. What t uses is not free at t itself.
		if len(s.Terms[k].Free) == 0 || !sameCavities(s, t, k) {
			continue
		}
		free := true
		for c, v := range s.Terms[t].State {
			if len(v.Wires) > 0 && !slices.Contains(s.Terms[k].Free, c) {
				free = false
			}
		}
		if free {
			out = append(out, k)
		}
	}
	return out
}

func sameCavities(s *sheet.Sheet, a, b int) bool {
	if !slices.Equal(s.Terms[a].Cavities, s.Terms[b].Cavities) {
		return false
	}
	for _, c := range s.Terms[a].Cavities {
		if s.Terms[a].State[c].Size != s.Terms[b].State[c].Size {
			return false
		}
	}
	return true
}

// Bank is the terminations and splices beyond the to end of a branch, in file order.
func Bank(s *sheet.Sheet, i int) (terms, splices []int) {
	seen := map[string]bool{s.H.Branches[i].From: true}
	todo := []string{s.H.Branches[i].To}
	for len(todo) > 0 {
		place := todo[0]
		todo = todo[1:]
		if seen[place] {
			continue
		}
		seen[place] = true
		for k := range s.H.Branches {
			if b := &s.H.Branches[k]; b.From == place || b.To == place {
				if next := s.Index.Other(k, place); !seen[next] {
					todo = append(todo, next)
				}
			}
		}
		if k, ok := s.Index.Termination[place]; ok {
			terms = append(terms, k)
		}
		for k := range s.H.Splices {
			if s.H.Splices[k].At == place {
				splices = append(splices, k)
			}
		}
	}
	slices.Sort(terms)
	slices.Sort(splices)
	return terms, splices
}

// LikeBanks lists the branches whose bank could be wired here too: as many
// terminations with the same cavities, as many splices; and nothing is wired here.
func LikeBanks(s *sheet.Sheet, i int) []int {
	terms, splices := Bank(s, i)
	if len(terms) == 0 || slices.ContainsFunc(terms, func(t int) bool { return s.Terms[t].Used > 0 || s.Terms[t].Spare > 0 }) {
		return nil
	}
	var out []int
	for k := range s.H.Branches {
		t, p := Bank(s, k)
		if k == i || len(t) != len(terms) || len(p) != len(splices) ||
			slices.ContainsFunc(t, func(v int) bool { return slices.Contains(terms, v) }) {
			continue
		}
		used := false
		for n := range t {
			used = used || s.Terms[t[n]].Used > 0
			if !sameCavities(s, t[n], terms[n]) {
				t = nil
				break
			}
		}
		if t != nil && used {
			out = append(out, k)
		}
	}
	return out
}

// Repeated is the harness with every wire of termination of once more on termination
// to, and the ids of the new wires. Wires of a splice go to the same splice, others
// to the next free cavities of their other end. What stands in the way is said in
// the error, and nothing is changed then.
func Repeated(s *sheet.Sheet, like, to int) (*model.Harness, []string, error) {
	return repeat(s, map[int]int{like: to}, nil, nil)
}

// Mirrored is the harness with all wires of the bank of one branch once more on the
// bank of another: see Repeated.
func Mirrored(s *sheet.Sheet, like, to int) (*model.Harness, []string, error) {
	a, as := Bank(s, like)
	b, bs := Bank(s, to)
	if len(a) != len(b) || len(as) != len(bs) {
		return s.H, nil, fmt.Errorf("the banks of %s and %s are not alike", s.H.Branches[like].ID, s.H.Branches[to].ID)
	}
	terms, splices := map[int]int{}, map[string]string{}
	for k := range a {
		terms[a[k]] = b[k]
	}
	for k := range as {
		splices[s.H.Splices[as[k]].ID] = s.H.Splices[bs[k]].ID
	}
	ja, jb := bankBreakouts(s, like), bankBreakouts(s, to)
	places := map[string]string{}
	for k := range ja {
		if places[ja[k]] = ""; len(ja) == len(jb) {
			places[ja[k]] = jb[k]
		}
	}
	return repeat(s, terms, splices, places)
}

// bankBreakouts are the breakouts of the bank beyond the to end of a branch, in file order.
func bankBreakouts(s *sheet.Sheet, i int) []string {
	seen := map[string]bool{s.H.Branches[i].From: true}
	todo, in := []string{s.H.Branches[i].To}, map[string]bool{}
	for len(todo) > 0 {
		place := todo[0]
		if todo = todo[1:]; seen[place] {
			continue
		}
		seen[place] = true
		if _, ok := s.Index.Breakout[place]; ok {
			in[place] = true
		}
		for _, k := range s.Index.Meeting(place) {
			todo = append(todo, s.Index.Other(k, place))
		}
	}
	var out []string
	for k := range s.H.Breakouts {
		if id := s.H.Breakouts[k].ID; in[id] {
			out = append(out, id)
		}
	}
	return out
}

// repeat copies the wires of a set; places are the breakouts of it and their likes, "" for
// one that has none.
func repeat(s *sheet.Sheet, terms map[int]int, splices, places map[string]string) (*model.Harness, []string, error) {
	h := s.H
	taken := map[string]bool{}
	newID := map[string]string{}
	var ids []string
	// capAt is where the copy of a capped spare is capped: at the like of its place where
	// that is in the set, else where it is. "" is nowhere.
	capAt := func(place string) string {
		if t, is := s.Index.Termination[place]; is {
			if n, copied := terms[t]; copied {
				return s.H.Terminations[n].ID
			}
		}
		if like, in := places[place]; in {
			return like
		}
		return place
	}
	// end is where the copy of an end goes: in the set, or out of it.
	end := func(text string, w *model.Wire) (to string, err error) {
		if text == "" && wires.Capped(w) {
			return "", nil
		}
		e, _ := s.Index.End(text)
		t, known := s.Index.Termination[e.Termination]
		switch {
		case e.Splice != "":
			if n, is := splices[e.Splice]; is {
				return n, nil
			}
			return text, nil
		case !known:
			return "", fmt.Errorf("wire %s has an end that leads nowhere: %q", w.ID, text)
		}
		if n, is := terms[t]; is {
			return s.H.Terminations[n].ID + ":" + e.Cavity, nil
		}
		for _, c := range s.Terms[t].Free {
			if free := e.Termination + ":" + c; !taken[free] && ends.Takes(s, t, c, w.Spec, w.Size) {
				return free, nil
			}
		}
		return "", fmt.Errorf("%s has no free cavity for one more like wire %s", e.Termination, w.ID)
	}
	for k := range s.H.Wires {
		w := s.H.Wires[k]
		if !touches(s, &w, terms, splices) {
			continue
		}
		a, err := end(w.From.V, &w)
		if err != nil {
			return s.H, nil, err
		}
		taken[a] = a != ""
		z, err := end(w.To.V, &w)
		if err != nil {
			return s.H, nil, err
		}
		taken[z] = z != ""
		n := w
		n.ID = h.NextID(w.ID)
		n.From, n.To = orNone(a), orNone(z)
		if wires.Capped(&w) {
			place := capAt(w.CappedAt.V)
			if place == "" {
				return s.H, nil, fmt.Errorf("spare %s is capped at %s, and the other side has no place like it", w.ID, w.CappedAt.V)
			}
			n.CappedAt = model.Some(place)
		}
		n.Signal = renumbered(s, w.Signal, &w, terms)
		newID[w.ID] = n.ID
		path, ok := wires.Path(s, &n)
		if !ok {
			return s.H, nil, fmt.Errorf("no branch leads from %s to %s", a, z)
		}
		h = h.AddWire(n, path)
		ids = append(ids, n.ID)
	}
	if len(ids) == 0 {
		return s.H, nil, fmt.Errorf("there is no wire to repeat")
	}
	for k := range h.Wires { // a return that was repeated is the copy's return
		if r, is := newID[h.Wires[k].Return.V]; is && slices.Contains(ids, h.Wires[k].ID) {
			h = h.EditWire(k, func(w *model.Wire) { w.Return = model.Some(r) })
		}
	}
	for _, u := range s.H.Units {
		n := u
		n.Wires = nil
		for _, id := range u.Wires {
			if c, is := newID[id]; is {
				n.Wires = append(n.Wires, c)
			}
		}
		if len(n.Wires) == len(u.Wires) && len(n.Wires) > 0 {
			n.ID = h.NextID(u.ID)
			for _, d := range []*model.Opt[string]{&n.DrainFrom, &n.DrainTo} {
				if _, cavity := s.Index.End(d.V); cavity {
					*d = model.Opt[string]{} // a cavity of its own is for the person to choose
				}
			}
			h = h.AddUnit(n)
		}
	}
	return h, ids, nil
}

// touches reports whether a wire belongs to what is repeated: one end in a
// termination of the set, or both on its splices or beyond them.
func touches(s *sheet.Sheet, w *model.Wire, terms map[int]int, splices map[string]string) bool {
	for _, text := range []string{w.From.V, w.To.V} {
		e, _ := s.Index.End(text)
		t, known := s.Index.Termination[e.Termination]
		if _, in := terms[t]; known && in {
			return true
		}
		if _, in := splices[e.Splice]; in {
			return true
		}
	}
	if t, ok := s.Index.Termination[w.CappedAt.V]; ok && wires.Capped(w) {
		_, in := terms[t]
		return in
	}
	return false
}

// renumbered puts the number of the new termination where the signal has that of the
// old: "Injector 1 feed" to INJ1 becomes "Injector 2 feed" to INJ2.
func renumbered(s *sheet.Sheet, signal model.Opt[string], w *model.Wire, terms map[int]int) model.Opt[string] {
	for _, text := range []string{w.From.V, w.To.V} {
		e, _ := s.Index.End(text)
		t, known := s.Index.Termination[e.Termination]
		n, in := terms[t]
		if !known || !in {
			continue
		}
		was, is := tailNumber(e.Termination), tailNumber(s.H.Terminations[n].ID)
		if was == "" || is == "" {
			continue
		}
		words := strings.Split(signal.V, " ")
		for k, word := range words {
			if word == was {
				words[k] = is
				return model.Some(strings.Join(words, " "))
			}
		}
	}
	return signal
}

// tailNumber is the number an id ends in, without leading noughts; "" where none.
func tailNumber(id string) string {
	cut := len(id)
	for cut > 0 && id[cut-1] >= '0' && id[cut-1] <= '9' {
		cut--
	}
	n, err := strconv.Atoi(id[cut:])
	if err != nil {
		return ""
	}
	return strconv.Itoa(n)
}

// LaidLike is the lay-up of branch of for the components of branch to, which must
// be of the same sizes and as many: size for size, those of a role first, in file
// order. False where they do not match.
func LaidLike(s *sheet.Sheet, like, to int) ([]model.Layer, bool) {
	src, dst := &s.Branches[like], &s.Branches[to]
	if like == to || len(src.As) == 0 || src.Make != model.MakeLaid {
		return nil, false
	}
	type class struct {
		size unit.Millimetre
		unit bool
	}
	kind := func(id string) class {
		c, _ := s.Index.Component(id)
		return class{size: s.Dia(id).Nominal, unit: c.Unit}
	}
	pool := map[class][]string{}
	for _, id := range dst.Components {
		pool[kind(id)] = append(pool[kind(id)], id)
	}
	have, want := map[class]int{}, map[class]int{}
	for c, ids := range pool {
		have[c] = len(ids)
	}
	for _, id := range src.Components {
		want[kind(id)]++
	}
	if !maps.Equal(have, want) {
		return nil, false
	}
	out := model.CloneLayers(src.As)
	for k := range out {
		out[k].Pinned, out[k].Locked = nil, model.Opt[bool]{}
		for j, id := range out[k].Of {
			ids := pool[kind(id)]
			if len(ids) == 0 {
				return nil, false
			}
			index := max(0, slices.IndexFunc(ids, func(o string) bool { return roleOf(s, o) == roleOf(s, id) }))
			out[k].Of[j] = ids[index]
			pool[kind(id)] = slices.Delete(slices.Clone(ids), index, index+1)
		}
	}
	return out, true
}

func roleOf(s *sheet.Sheet, id string) model.Role {
	if k, ok := s.Index.Wire[id]; ok {
		return s.H.Wires[k].Role.V
	}
	return ""
}

// orNone is an end, or none where there is no text for it.
func orNone(text string) model.Opt[string] {
	if text == "" {
		return model.Opt[string]{}
	}
	return model.Some(text)
}
