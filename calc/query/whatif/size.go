package whatif

import (
	"cmp"
	"errors"
	"fmt"
	"maps"
	"slices"

	"contralay/calc"
	"contralay/calc/phase/wires"
	"contralay/calc/query/offer"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// size is another size for the wires of one size that may have it.
type size struct{ from, to string }

// sizeSteps is how many sizes are offered on either side of the present one.
const sizeSteps = 2

// ofSize is the wires of branch i that are laid by themselves, have that size and are locked in nowhere.
func ofSize(s *sheet.Sheet, i int, of string) []int {
	var out []int
	for _, id := range s.Branches[i].Components {
		if k, ok := s.Index.Wire[id]; ok && catalogue.CanonicalSize(s.H.Wires[k].Size) == of && mayResize(s, id) == nil {
			out = append(out, k)
		}
	}
	return out
}

// sizes is one kind for each size in the branch, thin to thick.
func sizes(s *sheet.Sheet, i int) []Kind {
	area := map[string]unit.SquareMM{}
	var all []string
	for _, id := range s.Branches[i].Components {
		if k, ok := s.Index.Wire[id]; ok && s.Wires[k].Known {
			if z := catalogue.CanonicalSize(s.H.Wires[k].Size); !slices.Contains(all, z) {
				all, area[z] = append(all, z), s.Wires[k].Entry.AreaMM2
			}
		}
	}
	slices.SortStableFunc(all, func(a, b string) int { return cmp.Compare(area[a], area[b]) })
	var out []Kind
	for _, from := range all {
		to := near(s, i, from)
		k := Kind{ID: "size " + from, Name: "size " + from, Now: slices.Index(to, from)}
		for _, to := range to {
			k.Values = append(k.Values, Value{Key: to, Says: to, change: size{from, to}})
		}
		out = append(out, k)
	}
	return out
}

// near is the sizes next to one that some wire could have as far as its ends and the shop go, thin to thick, itself
// among them.
func near(s *sheet.Sheet, i int, from string) []string {
	group := ofSize(s, i, from)
	if len(group) == 0 {
		return nil
	}
	all := s.Cat.Sizes(s.H.Wires[group[0]].Spec)
	for n := range all {
		all[n] = catalogue.CanonicalSize(all[n])
	}
	at := slices.Index(all, from)
	if at < 0 {
		return nil
	}
	var out []string
	for n := at - sizeSteps; n <= at+sizeSteps; n++ {
		if n < 0 || n >= len(all) {
			continue
		}
		if n == at || slices.ContainsFunc(group, func(k int) bool { return offer.Handles(s, k, all[n]) == "" }) {
			out = append(out, all[n])
		}
	}
	return out
}

func (c size) present(*sheet.Sheet, int) bool { return c.from == c.to }

func (c size) make(s *sheet.Sheet, i int) (trial, error) {
	return resized(s, i, map[string]string{c.from: c.to})
}

// resized gives other sizes, by size now, to every wire that may have them: its ends take it, the shop handles it, and a
// thinner one carries what runs through it, beside the others that are thinner, too. The rest stay as they are; the
// error says of one of them why, where none may.
func resized(s *sheet.Sheet, i int, sizes map[string]string) (trial, error) {
	take := map[int]string{}
	for _, from := range slices.Sorted(maps.Keys(sizes)) {
		to, why := sizes[from], errors.New("every wire of size "+from+" here lies in a unit or a locked layer")
		for _, k := range ofSize(s, i, catalogue.CanonicalSize(from)) {
			says := offer.Handles(s, k, to)
			if says == "" {
				says = unjudged(s, k, to)
			}
			if says == "" {
				take[k] = to
			} else {
				why = staysAs(s, k, to, says)
			}
		}
		if !hasSize(s, take, from) {
			return trial{}, why
		}
	}
	laid := offer.AsLaid(s)
	for {
		t := trial{built: calc.Build(given(laid, take), s.Base, s), lays: true, resized: true}
		var most float64
		before, bad := len(take), map[int]string{}
		for k, to := range take {
			if says := offer.Doubts(t.built, k); says != "" && thinner(s, k, to) {
				bad[k], most = says, max(most, heat(t.built, k))
			}
		}
		// What makes the most heat stays first: a wire that others warm may yet be thinner without them.
		for _, k := range slices.Sorted(maps.Keys(bad)) {
			if heat(t.built, k) < most/2 {
				continue
			}
			to := take[k]
			delete(take, k)
			if !hasSize(s, take, s.H.Wires[k].Size) {
				return trial{}, staysAs(s, k, to, bad[k])
			}
		}
		if len(take) == before {
			t.h = given(written(s, s.H, i), take)
			return t, nil
		}
	}
}

// staysAs says why no wire of a size can have another, by one of them.
func staysAs(s *sheet.Sheet, k int, to, says string) error {
	w := &s.H.Wires[k]
	return fmt.Errorf("none of size %s can be %s here; wire %s: %s", w.Size, to, w.ID, says)
}

// Share is how many wires have another size in h, the harness that Changed made of a value of a "size" kind, of those
// that have the size now and are laid by themselves: 2 of 4, where two may not. Of another kind it is 0 of 0.
func Share(s *sheet.Sheet, i int, v Value, h *model.Harness) (n, of int) {
	c, ok := v.change.(size)
	if !ok || i < 0 || i >= len(s.Branches) {
		return 0, 0
	}
	for _, id := range s.Branches[i].Components {
		k, single := s.Index.Wire[id]
		if !single || !catalogue.SameSize(s.H.Wires[k].Size, c.from) {
			continue
		}
		of++
		if k < len(h.Wires) && h.Wires[k].ID == id && !catalogue.SameSize(h.Wires[k].Size, c.from) {
			n++
		}
	}
	return n, of
}

// heat is what a wire makes of it, to compare with another's.
func heat(s *sheet.Sheet, k int) float64 {
	c := &s.Wires[k]
	return float64(c.Heats) * float64(c.Heats) * float64(c.Entry.OhmPerKm)
}

// hasSize reports whether some wire that is taken has that size now.
func hasSize(s *sheet.Sheet, take map[int]string, size string) bool {
	for k := range take {
		if catalogue.SameSize(s.H.Wires[k].Size, size) {
			return true
		}
	}
	return false
}

// thinner reports whether a wire would be thinner in a size.
func thinner(s *sheet.Sheet, k int, size string) bool {
	e, ok := s.Cat.Wire(s.H.Wires[k].Spec, size)
	return ok && e.AreaMM2 < s.Wires[k].Entry.AreaMM2
}

// unjudged says why nobody can tell whether a wire may have a thinner size, "" where the sheet can.
func unjudged(s *sheet.Sheet, k int, size string) string {
	switch {
	case !thinner(s, k, size):
		return ""
	case !wires.Carries(s, k):
		return "no current is entered"
	case !wires.Rates(s, k):
		return "the sheet does not rate it"
	}
	return ""
}

// given is a harness with other sizes for some of its wires.
func given(h *model.Harness, sizes map[int]string) *model.Harness {
	n := *h
	n.Wires = slices.Clone(h.Wires)
	for k, size := range sizes {
		n.Wires[k].Size = size
	}
	return &n
}
