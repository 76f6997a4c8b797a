package bulk

import (
	"fmt"
	"slices"

	"contralay/calc/formula/hue"
	"contralay/calc/phase/bundle"
	"contralay/model"
)

// layers finds what needs a tracer: each layer of a laid branch with two pieces or more, the
// centre apart, for it is not counted round.
func (c *palette) layers() {
	for i := range c.s.Branches {
		b := &c.s.Branches[i]
		if b.Make != model.MakeLaid {
			continue
		}
		if len(b.Layers) == 0 && slices.ContainsFunc(b.Components, func(id string) bool {
			k, wire := c.s.Index.Wire[id]
			_, free := c.place[k]
			return wire && free
		}) {
			c.unlaid = append(c.unlaid, c.s.H.Branches[i].ID)
		}
		for k := range b.Layers {
			if k > 0 && len(b.Layers[k].Members) > 1 {
				c.layer(i, k)
			}
		}
	}
}

// layer is one of them; one that has its tracer whatever the wires get is left out.
func (c *palette) layer(branch, layer int) {
	r := ring{branch: branch, layer: layer}
	others, asked := map[string]int{}, false
	for _, m := range c.s.Branches[branch].Layers[layer].Members {
		k, wire := c.s.Index.Wire[m.ID]
		if wire && m.ID != "filler" {
			asked = asked || slices.Contains(c.at, k)
			if w, free := c.place[k]; free {
				r.Wires = append(r.Wires, w)
				continue
			}
		}
		others[keyOf(bundle.Looks(c.s, m.ID))]++
	}
	if !asked {
		return
	}
	for look, n := range others {
		code, stocked := c.known[look]
		switch {
		case look == "":
		case n == 1 && !(stocked && len(r.Wires) > 0):
			return // nothing that is coloured now can have its colour
		case n == 1:
			r.Once = append(r.Once, code)
		case stocked:
			r.Often = append(r.Often, code)
		}
	}
	slices.Sort(r.Once)
	slices.Sort(r.Often)
	r.barren = len(r.Wires) == 0
	c.rings = append(c.rings, r)
}

// short is what could not be had.
type short struct {
	rings []ring // layers without a tracer
	spent bool   // the search ran out of steps: there may be a better answer
}

// solve colours the wires: all of it as it should be; else with as few colours more as the
// connectors need; else without the tracers that cannot be had.
func (c *palette) solve() ([]int, short) {
	var out short
	c.ask.Lacking = c.least
	var want []hue.Ring
	for _, r := range c.rings {
		if r.barren {
			out.rings = append(out.rings, r)
		} else {
			want = append(want, r.Ring)
		}
	}
	try := func(rings []hue.Ring) hue.Answer {
		ask := c.ask
		ask.Rings = rings
		a := hue.Solve(ask, steps)
		out.spent = out.spent || a.Spent
		return a
	}
	if a := try(want); a.Found {
		return c.fewer(a.Colours, want), out
	}
	best := try(nil)
	for !best.Found { // as many colours as wires always do
		c.ask.Lacking++
		best = try(nil)
	}
	var kept []hue.Ring
	for _, r := range c.rings {
		if r.barren {
			continue
		}
		if a := try(append(slices.Clone(kept), r.Ring)); a.Found {
			best, kept = a, append(kept, r.Ring)
		} else {
			out.rings = append(out.rings, r)
		}
	}
	return c.fewer(best.Colours, kept), out
}

// fewer gives a colour of the stock to each wire that has a made-up one and need not.
func (c *palette) fewer(got []int, rings []hue.Ring) []int {
	ask := c.ask
	ask.Rings = rings
	for w, made := range got {
		for code := 0; made >= len(c.codes) && code < len(c.codes); code++ {
			if got[w] = code; ask.Holds(got) {
				break
			}
			got[w] = made
		}
	}
	return got
}

// lacks says what was not to be had, connectors first.
func (c *palette) lacks(got []int, missed short) []Lack {
	var out []Lack
	h := c.s.H
	maybe := ""
	if missed.spent {
		maybe = " (there may be a way that was not found)"
	}
	told := map[int]bool{}
	for pass := range 2 { // first the connectors that are full for certain, then what is left
		for _, j := range c.joints {
			var bare []int
			for _, w := range j.free {
				if got[w] >= len(c.codes) && !told[w] {
					bare = append(bare, c.free[w])
				}
			}
			if len(bare) == 0 || (j.lack > 0) != (pass == 0) {
				continue
			}
			slices.Sort(bare)
			for _, k := range bare {
				told[c.place[k]] = true
			}
			l := Lack{Connector: h.Terminations[j.term].ID, Colours: len(bare), Wires: idsOf(h, bare)}
			l.Says = fmt.Sprintf("%s needs %s more in stock: %s %s none%s", l.Connector, count(len(bare), "colour"), Named(l.Wires),
				oneOrMany(len(bare), "gets", "get"), maybe)
			out = append(out, l)
		}
	}
	for _, j := range c.joints {
		for _, pair := range j.alike {
			l := Lack{Connector: h.Terminations[j.term].ID, Wires: idsOf(h, pair)}
			l.Says = fmt.Sprintf("%s: %s were given one colour, %s", l.Connector, Named(l.Wires),
				model.ColourWords(h.Wires[pair[0]].Colour.V))
			out = append(out, l)
		}
	}
	for _, r := range missed.rings {
		l := Lack{Branch: h.Branches[r.branch].ID, Layer: r.layer}
		l.Says = fmt.Sprintf("Layer %d of %s has no tracer: the colours of its wires are all given", r.layer, l.Branch)
		if !r.barren {
			l.Colours = 1
			l.Says = fmt.Sprintf("Layer %d of %s gets no tracer: it needs 1 colour more in stock%s", r.layer, l.Branch, maybe)
		}
		out = append(out, l)
	}
	if n := len(c.unlaid); n > 0 {
		out = append(out, Lack{Branch: c.unlaid[0], Says: fmt.Sprintf("%s %s no lay-up yet: tracers there are not looked at",
			Named(c.unlaid),
			oneOrMany(n, "has", "have"))})
	}
	return out
}

func oneOrMany(n int, one, many string) string {
	if n == 1 {
		return one
	}
	return many
}
