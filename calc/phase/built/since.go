package built

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
)

// Comparison is a build beside the sheet as it is now.
type Comparison struct {
	Differences []Difference
	Again       int // steps to do again if none of it is kept; wires that are cut together are one
	Unknown     int // steps on record by key alone
}

// Difference is one thing that the sheet has otherwise since a build did it.
type Difference struct {
	At    string   // the wire, layer, part or branch; or one of those that belong to no step
	Says  string   // "wire 101 is 20 AWG yellow, was 22 AWG brown, 750 mm"
	Built string   // what was built, for whoever keeps it
	Steps []string // the steps that differ themselves, by key
	Again []string // every step to do again if it is not kept: those, and what goes over them
	keep  []kept
	then  func(b *model.Build) // what else is settled when it is kept; may be nil
}

// AboutRevision is a difference that belongs to no step.
const AboutRevision = "revision"

// kept is a step that stays as it was built, with what the sheet has instead.
type kept struct {
	key     string
	sheet   model.What
	instead string // the step that has come in its place; "" where it has the same
}

// comparison is a comparison while it is made.
type comparison struct {
	s       *sheet.Sheet
	b       *model.Build
	facts   []Fact
	at      map[string]int // facts by key
	keys    []string       // the steps that are done, the record of each, and which they are
	ticks   map[string]*model.Ticked
	done    map[string]bool
	instead map[string]string // the step in whose place another has come, by the other
	out     []Difference
	old     []string            // steps on record by key alone: what they made is not known
	come    map[string][]string // steps that have a wire or unit more or less than when they were done
	order   []string            // those wires and units, as they were found
}

// differs is a step that was done otherwise than the sheet has it now.
type differs struct {
	fact    Fact
	was     model.What
	changes []change
}

// Since is what the sheet has otherwise than a build made it: causes, each with every step that
// has to be done again for it. A step that is to be done again for one cause is not named as
// another where it only follows. A step on record by key alone is compared by revision.
func Since(s *sheet.Sheet, b *model.Build) Comparison {
	if idle(b) && len(b.Shelf) == 0 {
		return Comparison{}
	}
	return since(s, b, Facts(s))
}

func since(s *sheet.Sheet, b *model.Build, facts []Fact) Comparison {
	c := &comparison{s: s, b: b, facts: facts, at: map[string]int{}, instead: map[string]string{}, come: map[string][]string{}}
	for k := range facts {
		c.at[facts[k].Key] = k
	}
	c.keys, c.ticks, c.done = append(b.Keys(), begun(b)...), map[string]*model.Ticked{}, map[string]bool{}
	for _, key := range c.keys {
		c.done[key] = true
	}
	for k := range b.Steps { // the last that counts
		if t := &b.Steps[k]; !t.Undone.Set {
			c.ticks[t.Key] = t
		}
	}
	c.catalogue()
	if !idle(b) {
		c.replaced()
		c.steps()
		c.gone()
		c.pieces()
		c.revision()
	}
	out := Comparison{Differences: c.out, Unknown: len(c.old)}
	met := map[string]bool{}
	for _, d := range c.out {
		for _, key := range d.Again {
			step := key
			if k, is := c.at[key]; is {
				step = facts[k].Step
			}
			if !met[step] {
				met[step] = true
				out.Again++
			}
		}
	}
	return out
}

// idle reports whether nothing of a build is done.
func idle(b *model.Build) bool { return len(b.Keys())+len(begun(b)) == 0 }

// begun are the steps that are begun and not done: what is on already is compared as what is done.
func begun(b *model.Build) []string {
	var out []string
	for k := range b.Steps {
		if t := &b.Steps[k]; t.Begun() && !t.Undone.Set && !b.Did(t.Key) {
			out = append(out, t.Key)
		}
	}
	return out
}

// steps compares each step that is done with what the sheet has it make.
func (c *comparison) steps() {
	var all []differs
	for _, f := range c.facts {
		if !c.done[f.Key] || f.Kind == Hold && f.Key != HoldStops {
			continue
		}
		t := c.ticks[f.Key]
		if t == nil || !t.What.Set && !t.Sheet.Set {
			if f.Kind != Hold {
				c.old = append(c.old, f.Key)
			}
			continue
		}
		was := t.What.Or(t.Sheet.V)
		ch := c.changed(f, was)
		if len(ch) > 0 && (!t.Sheet.Set || len(c.changed(f, t.Sheet.V)) > 0) {
			all = append(all, differs{f, was, ch})
		}
	}
	for _, d := range c.lengths(all) {
		if id, only := c.piece(d); only {
			if len(c.come[id]) == 0 {
				c.order = append(c.order, id)
			}
			c.come[id] = append(c.come[id], d.fact.Key)
			continue
		}
		if onlyFollows(d.changes) && c.follows(kept{d.fact.Key, d.fact.What, ""}) {
			continue
		}
		text, was := says(d.fact, d.was, d.changes)
		if d.fact.Kind == Hold {
			text, was = c.unsigned(d), "what was signed for"
		}
		c.add(Difference{At: d.fact.At, Says: text, Built: was}, d.fact.Key)
	}
}

// unsigned names the stops that came after the hold before them was signed.
func (c *comparison) unsigned(d differs) string {
	var names []string
	more, _ := apart(d.fact.What.Members, d.was.Members)
	for _, g := range c.s.Snags {
		if g.Level == sheet.Stop && slices.Contains(more, stopAt(g)) {
			names = append(names, g.Where+": "+g.Says)
		}
	}
	return "the sheet has a stop that nobody has signed for: " + strings.Join(names, "; ")
}

func (c *comparison) changed(f Fact, was model.What) []change {
	if f.Kind == Hold {
		if more, _ := apart(f.What.Members, was.Members); len(more) == 0 {
			return nil
		}
	}
	return changes(f.Kind, c.s.Limits.CutStepMM, was, f.What)
}

// onlyFollows reports whether nothing is otherwise but what follows from something else.
func onlyFollows(all []change) bool {
	return !slices.ContainsFunc(all, func(x change) bool { return !x.field.follows() })
}

// follows reports whether a step is to be done again for a difference that is known; whoever
// keeps that keeps this too.
func (c *comparison) follows(k kept) bool {
	for n := range c.out {
		if slices.Contains(c.out[n].Again, k.key) {
			c.out[n].keep = append(c.out[n].keep, k)
			return true
		}
	}
	return false
}

// lengths takes out what only follows from branches that are longer or shorter now: each such
// branch is one difference, whatever goes along it.
func (c *comparison) lengths(all []differs) []differs {
	var rest []differs
	steps := map[string][]string{}
	was := map[string]unit.Millimetre{}
	for _, d := range all {
		branch, most := "", float64(samePlace)
		for k, id := range d.was.Path {
			i, is := c.s.Index.Branch[id]
			if !is || k >= len(d.was.PathMM) || !onlyFollows(d.changes) {
				continue
			}
			if by := math.Abs(float64(c.s.H.Branches[i].LengthMM - d.was.PathMM[k])); by > most+1e-9 {
				branch, most, was[id] = id, by, d.was.PathMM[k]
			}
		}
		if branch == "" {
			rest = append(rest, d)
			continue
		}
		steps[branch] = append(steps[branch], d.fact.Key)
	}
	for i := range c.s.H.Branches {
		id := c.s.H.Branches[i].ID
		if len(steps[id]) == 0 {
			continue
		}
		by, than := c.s.H.Branches[i].LengthMM-was[id], "longer"
		if by < 0 {
			by, than = -by, "shorter"
		}
		c.add(Difference{At: id, Says: fmt.Sprintf("%s is %s %s", id, millimetres(model.Some(by), 0), than),
			Built: "built for " + millimetres(model.Some(was[id]), 0)}, steps[id]...)
	}
	return rest
}

// add writes a difference down: what differs itself, and all that goes over it.
func (c *comparison) add(d Difference, steps ...string) {
	d.Steps, d.Again = steps, c.over(steps)
	for _, key := range steps {
		k := kept{key: key} // kept though the sheet has it no more
		if f, is := c.at[key]; is {
			k.sheet = c.facts[f].What
		}
		d.keep = append(d.keep, k)
	}
	c.out = append(c.out, d)
}

// over is steps and every step done since that goes over them or puts them to use.
func (c *comparison) over(steps []string) []string {
	in := map[string]bool{}
	for _, key := range steps {
		in[key] = true
	}
	did := func(f Fact) string { // what was done of a fact: itself, or the step in whose place it has come
		if c.done[f.Key] {
			return f.Key
		}
		return c.instead[f.Key]
	}
	for grown := true; grown; {
		grown = false
		for _, f := range c.facts {
			key := did(f)
			if key == "" {
				continue
			}
			if !in[f.Key] && (in[key] || slices.ContainsFunc(f.On, func(on string) bool { return in[on] })) {
				in[f.Key], in[key], grown = true, true, true
			}
		}
	}
	out := slices.Clone(steps)
	for _, f := range c.facts {
		if key := did(f); in[key] && !slices.Contains(out, key) {
			out = append(out, key)
		}
	}
	return out
}
