package model

import (
	"fmt"
	"strings"
)

// Finding is one thing a harness cannot be: an id given twice, a reference to an
// id that is not there, a loop in the tree, a component twice in one branch, a
// wire in two units. What can be drawn but not built is no Finding; it is a snag,
// and calc says so.
type Finding struct {
	Table    string // table of the file: "wire", "branch" …
	Index    int    // which of that table, from 0; -1 where there is only one
	ID       string // its id
	Sub      string // table inside it, "layer", or "" where it is the thing itself
	SubIndex int    // which of those, from 0
	Key      string
	Says     string // what is wrong
	Allowed  string // what is allowed
}

// Check returns everything a harness cannot be, table by table in the order of
// the file. None means that every reference leads somewhere and that the
// branches make a tree, or several that do not touch.
func (h *Harness) Check() []Finding {
	c := checker{h: h}
	c.names()
	c.board()
	c.splices()
	c.wires()
	c.feeds()
	c.units()
	c.branches()
	return c.found
}

// checker gathers findings and the ids they are judged by. Terminations and
// breakouts share their ids, since a branch may run to either; so do wires and
// units, since a layer may hold either.
type checker struct {
	h                                *Harness
	termination, breakout            idSet
	splice, wire, unit, branch, none idSet
	feed                             idSet
	found                            []Finding
}

// idSet is the ids of a table: which there are, and in what order.
type idSet struct {
	is    map[string]bool
	order []string
}

func (s *idSet) add(id string) {
	if s.is == nil {
		s.is = map[string]bool{}
	}
	if !s.is[id] {
		s.is[id] = true
		s.order = append(s.order, id)
	}
}

func (c *checker) names() {
	h := c.h
	var parts idSet
	for i := range h.Parts {
		c.name("part", i, h.Parts[i].ID, &parts, &c.none)
	}
	for i := range h.Terminations {
		c.name("termination", i, h.Terminations[i].ID, &c.termination, &c.none)
	}
	for i := range h.Breakouts {
		c.name("breakout", i, h.Breakouts[i].ID, &c.breakout, &c.termination)
	}
	for i := range h.Splices {
		c.name("splice", i, h.Splices[i].ID, &c.splice, &c.none)
	}
	for i := range h.Wires {
		c.name("wire", i, h.Wires[i].ID, &c.wire, &c.none)
	}
	for i := range h.Feeds {
		c.name("feed", i, h.Feeds[i].ID, &c.feed, &c.none)
	}
	for i := range h.Units {
		c.name("unit", i, h.Units[i].ID, &c.unit, &c.wire)
	}
	for i := range h.Branches {
		c.name("branch", i, h.Branches[i].ID, &c.branch, &c.none)
	}
	serial := map[string]bool{}
	for i := range h.Builds {
		id := h.Builds[i].Serial
		f := Finding{Table: "build", Index: i, ID: id, Key: "serial"}
		switch {
		case id == "":
			c.say(f, "it is empty", "any text that no other build has as its serial")
		case serial[id]:
			c.say(f, fmt.Sprintf("%q is given twice", id), "a serial that no other build has")
		}
		serial[id] = true
	}
}

// name enters one id; alike is the other table that it must differ from too.
func (c *checker) name(table string, i int, id string, own, alike *idSet) {
	f := Finding{Table: table, Index: i, ID: id, Key: "id"}
	switch {
	case id == "":
		c.say(f, "it is empty", "any text that no other "+table+" has as its id")
	case own.is[id]:
		c.say(f, fmt.Sprintf("%q is given twice", id), "an id that no other "+table+" has")
	case alike.is[id] && table == "unit":
		c.say(f, fmt.Sprintf("%q is the id of a wire", id), "an id that no unit and no wire has, because a layer may name either")
	case alike.is[id]:
		c.say(f, fmt.Sprintf("%q is the id of a termination", id),
			"an id that no breakout and no termination has, because a branch may name either")
	case strings.Contains(id, ":") && (table == "termination" || table == "splice"):
		c.say(f, fmt.Sprintf("%q has a colon", id), "an id without a colon, because wires write TERMINATION:CAVITY")
	}
	own.add(id)
}

// board judges the datum. The table is one, so the finding has no index.
func (c *checker) board() {
	if d := c.h.Board.Datum; d.Set {
		c.place(Finding{Table: "board", Index: -1}, "datum", d.V)
	}
}

func (c *checker) splices() {
	for i := range c.h.Splices {
		s := &c.h.Splices[i]
		f := Finding{Table: "splice", Index: i, ID: s.ID}
		f.Key = "at"
		if !c.breakout.is[s.At] {
			c.say(f, fmt.Sprintf("no breakout has the id %q", s.At), list("a breakout", c.breakout))
		}
		f.Key = "toward"
		if s.Toward.V != "" && !c.branch.is[s.Toward.V] {
			c.say(f, fmt.Sprintf("no branch has the id %q", s.Toward.V), list("a branch", c.branch))
		}
	}
}

func (c *checker) wires() {
	for i := range c.h.Wires {
		w := &c.h.Wires[i]
		f := Finding{Table: "wire", Index: i, ID: w.ID}
		c.end(f, "from", w.From.V)
		c.end(f, "to", w.To.V)
		f.Key = "capped_at"
		if at := w.CappedAt.V; at != "" && !c.breakout.is[at] && !c.termination.is[at] {
			c.say(f, fmt.Sprintf("no breakout and no termination has the id %q", at),
				list("a breakout", c.breakout)+"; or "+list("a termination", c.termination))
		}
		f.Key = "return"
		if w.Return.V != "" && !c.wire.is[w.Return.V] {
			c.say(f, fmt.Sprintf("no wire has the id %q", w.Return.V), list("a wire", c.wire))
		}
	}
}

// end judges where a wire stops. A cavity that the termination lacks is not
// judged here, nor an end that is left out or empty: both are snags.
func (c *checker) end(f Finding, key, text string) {
	f.Key = key
	end, given := ParseEnd(text)
	switch {
	case !given:
	case end.Splice != "":
		if !c.splice.is[end.Splice] {
			c.say(f, fmt.Sprintf("no splice has the id %q", text),
				"TERMINATION:CAVITY, or the id of "+list("a splice", c.splice))
		}
	case end.Cavity == "":
		c.say(f, fmt.Sprintf("%q names no cavity", text), "TERMINATION:CAVITY, or the id of a splice")
	case !c.termination.is[end.Termination]:
		c.say(f, fmt.Sprintf("no termination has the id %q", end.Termination),
			"TERMINATION:CAVITY, where TERMINATION is "+list("a termination", c.termination))
	}
}

// feeds judges what each device feeds: a wire comes out of one device.
func (c *checker) feeds() {
	on := map[string]string{}
	for i := range c.h.Feeds {
		f := Finding{Table: "feed", Index: i, ID: c.h.Feeds[i].ID, Key: "wires"}
		for _, id := range c.h.Feeds[i].Wires {
			other, taken := on[id]
			switch {
			case !c.wire.is[id]:
				c.say(f, fmt.Sprintf("no wire has the id %q", id), list("a wire", c.wire))
			case taken:
				c.say(f, fmt.Sprintf("wire %q is on feed %q already", id, other), "each wire on one feed only, and once")
			}
			on[id] = c.h.Feeds[i].ID
		}
	}
}

func (c *checker) units() {
	in := map[string]string{}
	for i := range c.h.Units {
		u := &c.h.Units[i]
		f := Finding{Table: "unit", Index: i, ID: u.ID, Key: "wires"}
		for _, id := range u.Wires {
			other, taken := in[id]
			switch {
			case !c.wire.is[id]:
				c.say(f, fmt.Sprintf("no wire has the id %q", id), list("a wire", c.wire))
			case taken:
				c.say(f, fmt.Sprintf("wire %q is in unit %q already", id, other), "each wire in one unit only, and once")
			}
			in[id] = u.ID
		}
		c.drain(f, "drain_from", u.DrainFrom.V)
		c.drain(f, "drain_to", u.DrainTo.V)
	}
}

func (c *checker) drain(f Finding, key, text string) {
	if text == "shell" || text == "cut" {
		return
	}
	before := len(c.found)
	c.end(f, key, text)
	if len(c.found) > before {
		last := &c.found[before]
		last.Allowed = `"shell", "cut", ` + last.Allowed
	}
}

// list says what is allowed and which there are, as far as a person would read.
func list(what string, ids idSet) string {
	const most = 8
	if len(ids.order) == 0 {
		return what + " of this file, which has none"
	}
	var b strings.Builder
	b.WriteString(what + " of this file: ")
	for i, id := range ids.order {
		if i == most {
			fmt.Fprintf(&b, " … (%d in all)", len(ids.order))
			break
		}
		if i > 0 {
			b.WriteString(", ")
		}
		fmt.Fprintf(&b, "%q", id)
	}
	return b.String()
}

func (c *checker) say(f Finding, says, allowed string) {
	f.Says, f.Allowed = says, allowed
	c.found = append(c.found, f)
}
