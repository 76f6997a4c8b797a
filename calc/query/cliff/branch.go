package cliff

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"contralay/calc"
	"contralay/calc/phase/bundle"
	"contralay/calc/phase/planning"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// branchAsk is what a question of a branch stands on.
type branchAsk struct {
	s    *sheet.Sheet
	i    int
	now  int
	out  []string // wires that may be taken out, the first first
	more func(h *model.Harness, k int) *model.Harness
}

// OfWires asks about the wires of the commonest size in branch i. What is taken out goes the way
// that most of them go, and what is put in is like them; what is locked or pinned stays. why says
// why there is no such question, else it is empty.
func OfWires(s *sheet.Sheet, i int) (a Ask, why string) {
	d, all := commonest(s, i)
	if len(all) == 0 {
		return Ask{}, "No single wire of a known size runs here: there is nothing to count"
	}
	like := alike(s, all)
	b := branchAsk{s: s.Frozen(), i: i, now: len(all)}
	held := heldIn(s, i)
	for k := len(like) - 1; k >= 0; k-- { // the last in the file first
		b.out = append(b.out, s.H.Wires[like[k]].ID)
	}
	for k := len(all) - 1; k >= 0; k-- {
		if id := s.H.Wires[all[k]].ID; !slices.Contains(b.out, id) {
			b.out = append(b.out, id)
		}
	}
	b.out = slices.DeleteFunc(b.out, func(id string) bool { return held[id] || needed(s, id) })
	one := s.H.Wires[like[0]]
	b.more = func(h *model.Harness, _ int) *model.Harness {
		return h.AddWire(model.Wire{ID: h.NextID(one.ID), From: one.From, To: one.To, CappedAt: one.CappedAt, Spec: one.Spec,
			Size: one.Size, Colour: one.Colour}, nil)
	}
	a = b.ask(Wires, all[0], d)
	a.Key += "\x00" + s.H.NextID(one.ID) // what is put in is named in the lay-up
	a.Most = a.Now + Reach
	return a, ""
}

// OfSpares asks about the spares of branch i: from none to what both ends can take. why is as with OfWires.
func OfSpares(s *sheet.Sheet, i int) (a Ask, why string) {
	b := branchAsk{s: s.Frozen(), i: i}
	held := heldIn(s, i)
	like := -1
	for _, id := range s.Branches[i].Components {
		c, ok := s.Index.Component(id)
		if !ok || c.Unit || s.H.Wires[c.At].Role.V != model.RoleSpare {
			continue
		}
		if b.now++; !held[id] && !needed(s, id) {
			b.out, like = append(b.out, id), c.At
		}
	}
	slices.Reverse(b.out)
	places, of := spareRoom(s, i)
	ends := ""
	switch {
	case len(places) == 0:
		ends = noRoom(s, i)
	case len(places) < Reach:
		ends = fmt.Sprintf("Both ends have cavities for %d more", len(places))
	}
	if of < 0 {
		return Ask{}, ends
	}
	b.more = func(h *model.Harness, k int) *model.Harness {
		p := places[k]
		w := s.H.Wires[p.Like]
		return h.AddWire(model.Wire{ID: h.NextID("SP0"), Signal: model.Some("Spare"), From: model.Some(p.From), To: model.Some(p.To),
			Spec: w.Spec, Size: w.Size, Colour: model.Some("9"), Amps: model.Some(unit.Ampere(0)), Role: model.Some(model.RoleSpare)}, nil)
	}
	d := s.Wires[of].Dia.Nominal
	if like >= 0 && !sameD(d, s.Wires[like].Dia.Nominal) {
		d = 0 // they are of several sizes
	}
	a = b.ask(Spares, of, d)
	a.Most, a.Ends = a.Now+len(places), ends
	a.Key += "\x00" + s.H.NextID("SP0")
	for _, p := range places {
		a.Key += "\x00" + p.From + "\x00" + p.To
	}
	if a.Most == a.Least {
		return a, ends
	}
	return a, ""
}

// ask is the question; like is a wire of the size that is counted.
func (b branchAsk) ask(what What, like int, d unit.Millimetre) Ask {
	a := Ask{What: what, Size: catalogue.CanonicalSize(b.s.H.Wires[like].Size), D: d, Now: b.now,
		Least: max(b.now-min(len(b.out), Reach), boolInt(what == Wires && b.now == len(b.s.Branches[b.i].Components))),
		Key:   fmt.Sprintf("%d\x00%s", what, key(b.s, b.i)),
		at:    func(n int) Point { return b.at(n, d) },
		with:  b.with,
	}
	if out := b.s.Branches[b.i]; !out.Proposed {
		a.Laid = pointOf(a.Now, out, 0, d)
	}
	return a
}

// boolInt is 1 where something holds: a branch holds at least one piece.
func boolInt(is bool) int {
	if is {
		return 1
	}
	return 0
}

// harness is the harness with n of what is counted, and the branch laid by nobody but for what is
// held there.
func (b branchAsk) harness(n int) *model.Harness {
	h := b.s.H
	for _, id := range b.out[:max(0, b.now-n)] {
		k := slices.IndexFunc(h.Wires, func(w model.Wire) bool { return w.ID == id })
		h, _ = h.RemoveWire(k) // those that cannot be removed are not in b.out
	}
	for k := range max(0, n-b.now) {
		h = b.more(h, k)
	}
	out := *h
	out.Rules.SparesWanted = model.Some(0) // it is proposed without spares that nobody counted
	if len(bundle.Held(b.s, b.i)) > 0 {
		return &out
	}
	return out.EditBranch(b.i, func(b *model.Branch) { b.Layers = nil })
}

// at plans the branch with n of what is counted, of diameter d.
func (b branchAsk) at(n int, d unit.Millimetre) Point {
	h := b.harness(n)
	s := calc.Build(h, b.s.Base, b.s)
	if out := &s.Branches[b.i]; !out.Waiting && out.Make != model.MakeLaid {
		return pointOf(n, *out, 0, d)
	}
	o, ok := b.best(s, n)
	if !ok {
		return Point{N: n}
	}
	s = calc.Build(planning.Laid(s, h, b.i, o), b.s.Base, s)
	return pointOf(n, s.Branches[b.i], o.Plan.Relaxed, d)
}

// best is the lay-up that the planner proposes for n; of the present count it is known already.
func (b branchAsk) best(s *sheet.Sheet, n int) (sheet.Option, bool) {
	if n == b.now {
		if known, ok := b.s.Proposals[bundle.PlanKey(b.s, b.i)]; ok {
			return known.Best()
		}
	}
	return planning.Propose(s, b.i).Best()
}

// with is the harness laid as a point is, in the tube that it names.
func (b branchAsk) with(p Point) *model.Harness {
	h := *b.harness(p.N)
	h.Rules = b.s.H.Rules
	return h.EditBranch(b.i, func(to *model.Branch) {
		to.Layers = model.CloneLayers(p.Branch.As)
		to.Make = model.Some(p.Branch.Make)
		for k := range to.Covers {
			if c := &to.Covers[k]; c.What == model.CoverSheath && c.Part.V != "" && p.Tube.ID != "" {
				c.Part = model.Some(p.Tube.ID)
			}
			if to.Covers[k].What == model.CoverSheath {
				break
			}
		}
	})
}

// commonest is the size of which most single wires run through branch i, of two the smaller, and
// those wires in the order of the file.
func commonest(s *sheet.Sheet, i int) (d unit.Millimetre, all []int) {
	by := map[unit.Millimetre][]int{}
	for _, id := range s.Branches[i].Components {
		c, ok := s.Index.Component(id)
		if !ok || c.Unit || !s.Dia(id).Known() {
			continue
		}
		by[s.Dia(id).Nominal] = append(by[s.Dia(id).Nominal], c.At)
	}
	for z, wires := range by {
		if len(wires) > len(all) || len(wires) == len(all) && z < d {
			d, all = z, wires
		}
	}
	return d, all
}

// alike are those wires that go the way most of them go, wires that are no spares before spares.
func alike(s *sheet.Sheet, all []int) []int {
	by := map[string][]int{}
	var order []string
	for _, k := range all {
		w := &s.H.Wires[k]
		path := slices.Sorted(slices.Values(s.Wires[k].Path))
		way := fmt.Sprint(w.CappedAt.V != "", w.Role.V == model.RoleSpare, path)
		if by[way] == nil {
			order = append(order, way)
		}
		by[way] = append(by[way], k)
	}
	slices.SortStableFunc(order, func(a, b string) int { // a folded end stands out of the bundle, and a wire has none
		return cmp.Or(cmp.Compare(strings.Count(a, "true"), strings.Count(b, "true")), -cmp.Compare(len(by[a]), len(by[b])))
	})
	return by[order[0]]
}

// heldIn is what is locked or pinned in branch i.
func heldIn(s *sheet.Sheet, i int) map[string]bool {
	out := map[string]bool{}
	for _, h := range bundle.Held(s, i) {
		for _, id := range h.Ids {
			out[id] = true
		}
	}
	return out
}

// needed reports whether a wire cannot go because another names it as its return.
func needed(s *sheet.Sheet, id string) bool {
	return slices.ContainsFunc(s.H.Wires, func(w model.Wire) bool { return w.Return.V == id })
}

// key is everything that the figures of branch i hang on: what there is to lay and how it is held,
// the hand and the place of the branch, and what its sheath must get over.
func key(s *sheet.Sheet, i int) string {
	b, out := &s.H.Branches[i], &s.Branches[i]
	sh := &out.Sheath
	var k strings.Builder
	fmt.Fprint(&k, bundle.PlanKey(s, i), "\x00", out.Learned.Correction, "\x00", b.ID, b.Make, b.Outer, b.LengthMM, b.Environment,
		s.Limits.LaidFrom, "\x00", sh.Part, sh.Proposed, sh.FromMM, sh.ToMM, sh.BeneathMM, sh.BeneathMinMM, sh.PassMM, len(sh.Others))
	if best, ok := s.Proposals[bundle.PlanKey(s, i)].Best(); ok { // a longer search may find a better one
		fmt.Fprint(&k, "\x00", best.Cost, best.Plan.Over)
	}
	for _, c := range b.Covers {
		fmt.Fprint(&k, "\x00", c.What, c.Part.V, c.FromMM, c.ToMM, c.ThickMM)
	}
	for _, id := range out.Components {
		fmt.Fprint(&k, "\x00", s.Dia(id).Min, s.Dia(id).Max)
		if c, ok := s.Index.Component(id); ok && !c.Unit {
			w := &s.H.Wires[c.At]
			fmt.Fprint(&k, "\x00", w.From.V, w.To.V, w.CappedAt.V, w.Role.V, w.Spec, w.Size)
		}
	}
	return k.String()
}
