package whatif

import (
	"cmp"
	"errors"
	"fmt"
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
		k := Kind{ID: "size " + from, Name: "size " + from, Now: -1}
		for _, to := range near(s, i, from) {
			if to == from {
				k.Now = len(k.Values)
			}
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

func (c size) present(s *sheet.Sheet, i int) bool { return c.from == c.to }

// make gives the size to every wire that may have it: its ends take it, the shop handles it, and a thinner one carries
// what runs through it, beside the others that are thinner, too. The rest stay as they are.
func (c size) make(s *sheet.Sheet, i int) (trial, error) {
	t := trial{h: written(s, s.H, i), lays: true, resized: true}
	var take []int
	why := "no wire of that size may change here"
	for _, k := range ofSize(s, i, c.from) {
		if says := offer.Handles(s, k, c.to); says != "" {
			why = fmt.Sprintf("wire %s: %s", s.H.Wires[k].ID, says)
			continue
		}
		if says := c.unjudged(s, k); says != "" {
			why = fmt.Sprintf("wire %s: %s", s.H.Wires[k].ID, says)
			continue
		}
		take = append(take, k)
	}
	laid := offer.AsLaid(s)
	for len(take) > 0 {
		t.built = calc.Build(c.given(laid, take), s.Base, s)
		before := len(take)
		take = slices.DeleteFunc(take, func(k int) bool {
			says := ""
			if c.thinner(s, k) {
				says = offer.Doubts(t.built, k)
			}
			if says != "" {
				why = fmt.Sprintf("wire %s: %s", s.H.Wires[k].ID, says)
			}
			return says != ""
		})
		if len(take) == before {
			t.h = c.given(t.h, take)
			return t, nil
		}
	}
	return t, errors.New(why)
}

// thinner reports whether a wire would be thinner.
func (c size) thinner(s *sheet.Sheet, k int) bool {
	e, ok := s.Cat.Wire(s.H.Wires[k].Spec, c.to)
	return ok && e.AreaMM2 < s.Wires[k].Entry.AreaMM2
}

// unjudged says why nobody can tell whether a wire may be thinner.
func (c size) unjudged(s *sheet.Sheet, k int) string {
	switch {
	case !c.thinner(s, k):
		return ""
	case !wires.Carries(s, k):
		return "no current is entered"
	case !wires.Rates(s, k):
		return "the sheet does not rate it"
	}
	return ""
}

// given is a harness with the size for some of its wires.
func (c size) given(h *model.Harness, take []int) *model.Harness {
	n := *h
	n.Wires = slices.Clone(h.Wires)
	for _, k := range take {
		n.Wires[k].Size = c.to
	}
	return &n
}
