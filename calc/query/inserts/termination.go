package inserts

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
)

// holder is a cavity of a termination that must have a place in another arrangement, and what is in
// it: of several wires in one contact the thickest.
type holder struct {
	cavity string
	wire   Wire
	role   Role
}

// holders are the cavities in use, in the order of the termination; those it lacks come last.
func holders(s *sheet.Sheet, t int) []holder {
	id := s.H.Terminations[t].ID
	wires, drains := map[string]int{}, map[string]int{}
	order := slices.Clone(s.Terms[t].Cavities)
	at := func(text string) (string, bool) {
		e, ok := s.Index.End(text)
		if !ok || e.Termination != id {
			return "", false
		}
		if !slices.Contains(order, e.Cavity) {
			order = append(order, e.Cavity)
		}
		return e.Cavity, true
	}
	for k := range s.H.Wires {
		for _, text := range []string{s.H.Wires[k].From.V, s.H.Wires[k].To.V} {
			c, here := at(text)
			was, twice := wires[c]
			if here && (!twice || s.Wires[k].Entry.AreaMM2 > s.Wires[was].Entry.AreaMM2) {
				wires[c] = k
			}
		}
	}
	for k := range s.H.Units {
		u := &s.H.Units[k]
		for _, text := range []string{u.DrainFrom.V, u.DrainTo.V} {
			if c, here := at(text); here && len(u.Wires) > 0 {
				if w, known := s.Index.Wire[u.Wires[0]]; known {
					drains[c] = w
				}
			}
		}
	}
	for _, c := range s.H.Terminations[t].Reserved {
		at(id + ":" + c)
	}
	var out []holder
	for _, c := range order {
		k, wired := wires[c]
		d, drain := drains[c]
		switch w := (*model.Wire)(nil); {
		case wired:
			w = &s.H.Wires[k]
			out = append(out, holder{c, Wire{Spec: w.Spec, Size: w.Size, OverMM: s.Wires[k].Dia.Nominal, Count: 1}, ForWire})
		case drain:
			w = &s.H.Wires[d]
			out = append(out, holder{c, Wire{Spec: w.Spec, Size: w.Size, Count: 1}, ForDrain})
		case s.H.Terminations[t].Reserves(c):
			out = append(out, holder{cavity: c, role: ForSpare})
		}
	}
	return out
}

// Shared are the cavities of a termination that hold more than one wire or drain: no sealed cavity of
// an arrangement does, so none takes it as it is.
func Shared(s *sheet.Sheet, t int) []string {
	count := map[string]int{}
	var order []string
	at := func(text string) {
		if e, ok := s.Index.End(text); ok && e.Termination == s.H.Terminations[t].ID {
			if count[e.Cavity]++; count[e.Cavity] == 2 {
				order = append(order, e.Cavity)
			}
		}
	}
	for k := range s.H.Wires {
		at(s.H.Wires[k].From.V)
		at(s.H.Wires[k].To.V)
	}
	for k := range s.H.Units {
		at(s.H.Units[k].DrainFrom.V)
		at(s.H.Units[k].DrainTo.V)
	}
	return order
}

// Of is what must go into the connector of a termination: the wires that end there, the drains, and
// the cavities that are kept free as spares.
func Of(s *sheet.Sheet, t int) Want { return wantOf(holders(s, t)) }

func wantOf(all []holder) Want {
	var w Want
	put := func(to []Wire, x Wire) []Wire {
		k := slices.IndexFunc(to, func(o Wire) bool { return o.Spec == x.Spec && o.Size == x.Size && o.OverMM == x.OverMM })
		if k < 0 {
			return append(to, x)
		}
		to[k].Count++
		return to
	}
	for _, h := range all {
		switch h.role {
		case ForWire:
			w.Wires = put(w.Wires, h.wire)
		case ForDrain:
			w.Drains = put(w.Drains, h.wire)
		case ForSpare:
			w.Spares++
		}
	}
	slices.SortStableFunc(w.Wires, func(a, b Wire) int { return -cmp.Compare(a.Count, b.Count) })
	return w
}

// Taken is a harness in which a termination has another arrangement.
type Taken struct {
	H      *model.Harness
	Kept   int  // cavities in use that keep their names
	Moved  int  // and those that have another
	Names  int  // other names of cavities that the arrangement lacks: they are gone
	Listed bool // the independent list has cavities of it by their old names
	Mixed  bool // which of its cavities has which contact is not known
}

// Take gives a termination an arrangement. What is in use keeps the name of its cavity where the
// arrangement has that cavity, with a contact that takes the wire; the rest goes in order to the next
// free cavity that takes it, a small contact first. An arrangement that lacks room is refused.
func Take(s *sheet.Sheet, t int, insert string) (Taken, error) {
	i, known := s.Cat.Insert(insert)
	if !known {
		return Taken{}, fmt.Errorf("insert %q is in no catalogue", insert)
	}
	if several := Shared(s, t); len(several) > 0 {
		return Taken{}, fmt.Errorf("cavity %s of %s holds several wires, and a sealed cavity takes one: splice them first. Nothing was "+
			"changed",
			strings.Join(several, ", "), s.H.Terminations[t].ID)
	}
	all := holders(s, t)
	ks, of := kindsOf(s.Cat, all)
	rooms, bySize := places(s.Cat, i)
	to, ok := placed(s.Cat, all, ks, of, rooms, bySize, true)
	if !ok {
		to, ok = placed(s.Cat, all, ks, of, rooms, bySize, false)
	}
	if !ok {
		got, _ := assign(s.Cat, ks, rooms)
		text := ""
		for _, k := range lacking(ks, got) {
			text += fmt.Sprintf(", %d x %s", k.Count, k.Says)
			switch k.For {
			case ForDrain:
				text += " (drain)"
			case ForSpare:
				text += " (kept free)"
			}
		}
		return Taken{}, fmt.Errorf("%s has no place for%s: nothing was changed", i.ID, text[1:])
	}
	out := Taken{H: s.H.TakeInsert(t, i.ID, to, i.Has), Mixed: len(bySize[""]) > 0}
	for was, now := range to {
		if was == now {
			out.Kept++
		} else {
			out.Moved++
		}
	}
	out.Names = len(s.H.Terminations[t].Aliases) - len(out.H.Terminations[t].Aliases)
	if out.Moved > 0 {
		out.Listed = slices.ContainsFunc(s.H.Listed, func(l model.Listed) bool {
			return slices.ContainsFunc(l.Ends, func(text string) bool {
				e, _ := model.ParseEnd(text)
				now, moves := to[s.H.Terminations[t].CavityOf(e.Cavity)]
				return e.Termination == s.H.Terminations[t].ID && moves && now != e.Cavity
			})
		})
	}
	return out, nil
}

// kindsOf are the kinds of what is in use, and which of them each is.
func kindsOf(cat *catalogue.Catalogue, all []holder) (ks []kind, of []int) {
	w := wantOf(all)
	several := len(specs(w)) > 1
	ks = kinds(cat, w)
	for _, h := range all {
		k := kindOf(cat, h.wire, h.role, several)
		of = append(of, slices.IndexFunc(ks, func(o kind) bool {
			return o.role == h.role && (h.role == ForSpare || o.says == k.says && o.over == k.over)
		}))
	}
	return ks, of
}

// places are the contacts of an arrangement and their cavities, in order; a contact size that no
// catalogue has takes anything. Where it is not known which cavity has which size, all of them stand
// under "".
func places(cat *catalogue.Catalogue, i catalogue.Insert) (rooms []room, bySize map[string][]string) {
	bySize = map[string][]string{}
	for _, c := range i.Cavities {
		size := i.ContactSize(c)
		bySize[size] = append(bySize[size], c)
	}
	rooms, missing := roomsOf(cat, i)
	for _, size := range missing {
		rooms = append(rooms, room{catalogue.Contact{Size: size}, len(bySize[size])})
	}
	if unsorted := bySize[""]; len(unsorted) > 0 {
		for k := range rooms {
			bySize[rooms[k].contact.Size] = nil
		}
	}
	return rooms, bySize
}

// placed says which cavity each of those in use becomes; ok is false where one has no place. With
// keep those that can stay do.
func placed(cat *catalogue.Catalogue, all []holder, ks []kind, of []int, rooms []room, bySize map[string][]string,
	keep bool) (to map[string]string, ok bool) {
	to, used := map[string]string{}, map[string]bool{}
	rest, free := slices.Clone(ks), slices.Clone(rooms)
	unsorted := len(bySize[""]) > 0
	for n, h := range all {
		for r := range free {
			if !keep || unsorted || !slices.Contains(bySize[free[r].contact.Size], h.cavity) ||
				taking(cat, free[r].contact, ks[of[n]]) != well {
				continue
			}
			to[h.cavity], used[h.cavity] = h.cavity, true
			rest[of[n]].count--
			free[r].count--
		}
	}
	got, n := assign(cat, rest, free)
	if n < total(rest) {
		return nil, false
	}
	for n, h := range all {
		if to[h.cavity] != "" {
			continue
		}
		r := slices.IndexFunc(got[of[n]], func(left int) bool { return left > 0 })
		got[of[n]][r]--
		from := bySize[free[r].contact.Size]
		if unsorted {
			from = bySize[""]
			if keep && slices.Contains(from, h.cavity) && !used[h.cavity] {
				to[h.cavity], used[h.cavity] = h.cavity, true
				continue
			}
		}
		next := slices.IndexFunc(from, func(c string) bool { return !used[c] && !(unsorted && keep && inUse(all, c)) })
		if next < 0 {
			return nil, false
		}
		to[h.cavity], used[from[next]] = from[next], true
	}
	return to, true
}

func inUse(all []holder, cavity string) bool {
	return slices.ContainsFunc(all, func(h holder) bool { return h.cavity == cavity })
}
