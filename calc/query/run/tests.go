package run

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"contralay/calc/query/lists"
	"contralay/calc/sheet"
	"contralay/model"
)

// What is tested in a run, one thing at a time, and what a test comes to: each net at both
// ring-outs, isolation, the drop of each feed under load, samples of each crimp.

// CheckKind is what sort of test a piece of a step is.
type CheckKind int

// The kinds of test; NoCheck is a piece that is none.
const (
	NoCheck  CheckKind = iota
	Rings              // ohm, at most
	Silent             // rings to nothing
	Isolated           // megohm, at least
	Drops              // volt, at most
	Pulled             // newton, at least
)

// Check is one test: what is tested, and what it must read.
type Check struct {
	Kind     CheckKind
	Name     string // as a record has it
	From, To string // ends of a net
	Via      []string
	Limit    float64 // in the unit of the kind; 0: none is known
	Expect   float64 // by the sheet; 0: not known
	Sample   int     // of a crimp that is pulled, from 1
}

// Samples is how many of a crimp are pulled before the first real one. Common practice, no source.
const Samples = 3

// Unit is what a test is read in; "" of one that only passes or not.
func (c Check) Unit() string {
	return map[CheckKind]string{Rings: "ohm", Isolated: "Mohm", Drops: "V", Pulled: "N"}[c.Kind]
}

// AtLeast reports whether the limit is the least that may be read; else it is the most.
func (c Check) AtLeast() bool { return c.Kind == Isolated || c.Kind == Pulled }

// NeedsReading reports whether a test has not passed without a number.
func (c Check) NeedsReading() bool { return c.Kind == Isolated || c.Kind == Drops }

// Passes reports whether a reading is within the limit.
func (c Check) Passes(v float64) bool {
	switch {
	case c.Limit <= 0:
		return true
	case c.AtLeast():
		return v >= c.Limit
	}
	return v <= c.Limit
}

// Record is a test of it at a step, in the unit of its kind; without a reading it has passed.
func (c Check) Record(step string, read model.Opt[float64], fault string) model.Test {
	t := model.Test{Step: model.Some(step)}
	switch c.Kind {
	case Drops:
		t.Feed = model.Some(c.Name)
	case Pulled:
		t.Pull = model.Some(c.Name)
	default:
		t.Net = model.Some(c.Name)
	}
	*c.reading(&t) = read
	if c.Limit > 0 {
		t.Limit = model.Some(c.Limit)
	}
	if fault != "" {
		t.Fault = model.Some(fault)
	}
	return t
}

// reading is where a record of its kind has what was read.
func (c Check) reading(t *model.Test) *model.Opt[float64] {
	switch c.Kind {
	case Isolated:
		return &t.Megohm
	case Drops:
		return &t.Volt
	case Pulled:
		return &t.Newton
	}
	return &t.Ohm
}

// Reading is what a record of its kind read.
func (c Check) Reading(t model.Test) model.Opt[float64] { return *c.reading(&t) }

// Is reports whether a record is of this test, at whatever step; of samples, of the same crimp.
func (c Check) Is(t model.Test) bool { return cmp.Or(t.Net.V, t.Feed.V, t.Pull.V) == c.Name }

// Result is what a test comes to.
type Result int

// The results, in the order of what is still to be done.
const (
	Untested Result = iota
	Failed          // out of its limit, or a fault was found
	Conceded        // that, and somebody with a name has decided that it stays so
	Passed
)

// Result is what the last test of it at a step came to, with that test. Of a crimp the sample counts
// that was pulled as the nth after the last that failed.
func (c Check) Result(b *model.Build, step string) (Result, model.Test) {
	var all []model.Test
	for _, t := range b.Tests {
		if c.Is(t) && t.Step.V == step {
			all = append(all, t)
		}
	}
	if len(all) == 0 {
		return Untested, model.Test{}
	}
	last := all[len(all)-1]
	switch {
	case c.failed(last):
		if c.explained(b, step) {
			return Conceded, last
		}
		return Failed, last
	case c.Kind == Pulled:
		n := 0
		for k := len(all) - 1; k >= 0 && !c.failed(all[k]); k-- {
			n++
		}
		if n < c.Sample {
			return Untested, model.Test{}
		}
		return Passed, all[len(all)-n+c.Sample-1]
	}
	return Passed, last
}

// failed holds a test against the limit it was made by: a changed catalogue changes no test that was made.
func (c Check) failed(t model.Test) bool {
	if t.Limit.Set {
		c.Limit = t.Limit.V
	}
	read := *c.reading(&t)
	return t.Fault.Set || read.Set && !c.Passes(read.V)
}

// explained reports whether somebody has decided that it stays out of its limit.
func (c Check) explained(b *model.Build, step string) bool {
	return slices.ContainsFunc(b.Apart, func(d model.Deviation) bool { return d.Step.V == step && d.At == c.Name && d.By.Set })
}

// Tests are the tests of a step, in the order they are made; none of a step that has none.
func Tests(s *sheet.Sheet, r RunStep) []Check {
	switch r.Key {
	case HoldBare:
		return nets(s)
	case HoldPinned:
		return append(nets(s), isolation(s)...)
	case HoldLoaded:
		return drops(s)
	}
	if r.Kind != PullStep {
		return nil
	}
	var out []Check
	for n := range Samples {
		out = append(out, Check{Kind: Pulled, Name: r.Of, Limit: float64(r.Crimp.PullN), Sample: n + 1})
	}
	return out
}

// nets is each pair of ends that must ring, each net once: from its first end to every other. An end
// that leads to none must not ring.
func nets(s *sheet.Sheet) []Check {
	var out []Check
	met := map[string]bool{}
	for _, r := range lists.RingOut(s) {
		from := s.H.Terminations[r.Termination].ID + ":" + r.Cavity
		if met[from] {
			continue
		}
		met[from] = true
		if len(r.To) == 0 {
			out = append(out, Check{Kind: Silent, Name: from, From: from})
		}
		for _, to := range r.To {
			met[to.End] = true
			c := Check{Kind: Rings, Name: from + " " + to.End, From: from, To: to.End, Via: to.Via}
			if to.Ohm.Set {
				c.Expect, c.Limit = float64(to.Ohm.V), float64(lists.HandOhm(to.Ohm.V))
			}
			out = append(out, c)
		}
	}
	return out
}

// isolation is each termination that a net begins at: its nets against all else.
func isolation(s *sheet.Sheet) []Check {
	var out []Check
	met := map[string]bool{}
	for _, c := range nets(s) {
		end, _, _ := strings.Cut(c.From, ":")
		if !met[end] {
			met[end] = true
			out = append(out, Check{Kind: Isolated, Name: "isolation " + end, From: end, Limit: lists.Isolation.Megohm})
		}
	}
	return out
}

// drops is each feed whose drop the sheet knows: that of its worst circuit.
func drops(s *sheet.Sheet) []Check {
	var out []Check
	known, _ := lists.Drops(s)
	for _, d := range known {
		c := Check{Kind: Drops, Name: s.H.Feeds[d.Feed].ID, From: d.From, To: d.To, Expect: float64(d.Expect), Limit: float64(d.Limit)}
		for _, k := range d.Wires {
			c.Via = append(c.Via, s.H.Wires[k].ID)
		}
		out = append(out, c)
	}
	return out
}

// tested are the tests of a step as pieces.
func tested(s *sheet.Sheet, r RunStep) []Piece {
	var out []Piece
	for _, c := range Tests(s, r) {
		p := Piece{Key: c.Name, Check: c}
		if c.Kind == Pulled {
			p.Key = fmt.Sprintf("%s, sample %d", c.Name, c.Sample)
		}
		if len(c.Via) > 0 {
			p.ID = c.Via[0]
		}
		out = append(out, p)
	}
	return out
}
