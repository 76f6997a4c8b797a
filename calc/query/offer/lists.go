package offer

import (
	"cmp"
	"slices"

	"contralay/calc"
	"contralay/calc/phase/ends"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
)

// Substitute is a spare wire that goes the way of another: in place of a damaged one its
// ends change cavities.
type Substitute struct {
	Wire         int
	FromA, FromB string // the cavities of the damaged wire, and
	ToA, ToB     string // those the spare comes out of, in the same order
}

// Substitutes are the spares that run between the same terminations as a wire.
func Substitutes(s *sheet.Sheet, k int) []Substitute {
	a, _ := s.Index.End(s.H.Wires[k].From.V)
	b, _ := s.Index.End(s.H.Wires[k].To.V)
	if a.Termination == "" || b.Termination == "" {
		return nil
	}
	var out []Substitute
	for j := range s.H.Wires {
		w := &s.H.Wires[j]
		if j == k || w.Role.V != model.RoleSpare {
			continue
		}
		x, _ := s.Index.End(w.From.V)
		y, _ := s.Index.End(w.To.V)
		if x.Termination == b.Termination && y.Termination == a.Termination && a.Termination != b.Termination {
			x, y = y, x
		}
		// A thinner one does not stand in.
		if x.Termination == a.Termination && y.Termination == b.Termination && s.Wires[j].Entry.AreaMM2 >= s.Wires[k].Entry.AreaMM2 {
			out = append(out, Substitute{j, s.H.Wires[k].From.V, s.H.Wires[k].To.V, x.Termination + ":" + x.Cavity,
				y.Termination + ":" + y.Cavity})
		}
	}
	return out
}

// Pairing is what two terminations could still take between them.
type Pairing struct {
	A, B   int // terminations
	Wires  int // that run between them
	Spares int // of those
	More   int // free cavities that fit at both ends
}

// Pairings are the terminations a wire could run on to from termination t, those it
// shares wires with, the most first.
func Pairings(s *sheet.Sheet, t int) []Pairing {
	byFar := map[int]*Pairing{}
	id := s.H.Terminations[t].ID
	for k := range s.H.Wires {
		w := &s.H.Wires[k]
		a, _ := s.Index.End(w.From.V)
		b, _ := s.Index.End(w.To.V)
		if b.Termination == id {
			a, b = b, a
		}
		o, ok := s.Index.Termination[b.Termination]
		if a.Termination != id || !ok || o == t {
			continue
		}
		if byFar[o] == nil {
			byFar[o] = &Pairing{A: t, B: o}
		}
		byFar[o].Wires++
		if w.Role.V == model.RoleSpare {
			byFar[o].Spares++
		}
	}
	var out []Pairing
	for o := range s.H.Terminations {
		p := byFar[o]
		if p == nil {
			continue
		}
		size := commonSize(s, t, o)
		p.More = min(freeTaking(s, t, size), freeTaking(s, o, size))
		out = append(out, *p)
	}
	slices.SortStableFunc(out, func(a, b Pairing) int { return -cmp.Compare(a.Wires, b.Wires) })
	return out
}

// commonSize is the wire most used between two terminations.
func commonSize(s *sheet.Sheet, a, b int) [2]string {
	n := map[[2]string]int{}
	best := [2]string{s.Limits.Spec, "22"}
	for k := range s.H.Wires {
		w := &s.H.Wires[k]
		x, _ := s.Index.End(w.From.V)
		y, _ := s.Index.End(w.To.V)
		ia, okA := s.Index.Termination[x.Termination]
		ib, okB := s.Index.Termination[y.Termination]
		if okA && okB && (ia == a && ib == b || ia == b && ib == a) {
			key := [2]string{w.Spec, w.Size}
			if n[key]++; n[key] > n[best] {
				best = key
			}
		}
	}
	return best
}

func freeTaking(s *sheet.Sheet, t int, size [2]string) int {
	n := 0
	for _, c := range s.Terms[t].Free {
		if ends.Takes(s, t, c, size[0], size[1]) {
			n++
		}
	}
	return n
}

// OneMore is what one more wire between two terminations does: how much thicker the
// branch that swells most gets, and which layer it starts there, 0 where it finds room.
// It is laid outermost beside the others. False where a branch on the way is not laid.
func OneMore(s *sheet.Sheet, p Pairing) (branch int, thicker unit.Millimetre, starts int, ok bool) {
	way, ok := s.Index.Between(s.H.Terminations[p.A].ID, s.H.Terminations[p.B].ID)
	if !ok || p.More == 0 {
		return 0, 0, 0, false
	}
	size := commonSize(s, p.A, p.B)
	h := AsLaid(s)
	w := model.Wire{ID: "one more", Spec: size[0], Size: size[1], From: model.Some(s.H.Terminations[p.A].ID + ":" + s.Terms[p.A].Free[0]),
		To: model.Some(s.H.Terminations[p.B].ID + ":" + s.Terms[p.B].Free[0])}
	n := *h
	n.Wires = append(slices.Clone(h.Wires), w)
	h = &n
	for _, b := range way {
		layers := s.Branches[b].Layers
		if len(layers) == 0 {
			return 0, 0, 0, false
		}
		last := len(layers) - 1
		room := last > 0 && layers[last].Room > 0
		h = h.EditBranch(b, func(mb *model.Branch) {
			switch {
			case len(mb.Layers) == 0:
			case room || s.Branches[b].Make != model.MakeLaid:
				mb.AddTo(len(mb.Layers)-1, w.ID)
			default:
				mb.Layers = append(mb.Layers, model.Layer{Of: []string{w.ID}})
			}
		})
	}
	t := calc.Build(h, s.Cat, nil)
	branch = way[0]
	for _, b := range way {
		if d := t.Branches[b].OverMM - s.Branches[b].OverMM; d > thicker {
			branch, thicker = b, d
		}
	}
	if len(t.Branches[branch].Layers) > len(s.Branches[branch].Layers) {
		starts = len(t.Branches[branch].Layers) - 1
	}
	return branch, thicker, starts, true
}
