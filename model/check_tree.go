package model

import "fmt"

// branches judges the tree and what each branch holds.
func (c *checker) branches() {
	tree := joined{}
	unitOf := map[string]string{}
	for _, u := range c.h.Units {
		for _, w := range u.Wires {
			unitOf[w] = u.ID
		}
	}
	for i := range c.h.Branches {
		b := &c.h.Branches[i]
		f := Finding{Table: "branch", Index: i, ID: b.ID}
		from, to := c.place(f, "from", b.From), c.place(f, "to", b.To)
		f.Key = "to"
		switch {
		case !from || !to:
		case b.From == b.To:
			c.say(f, fmt.Sprintf("the branch runs from %q to itself", b.From), "two different places")
		case !tree.join(b.From, b.To):
			c.say(f, fmt.Sprintf("the branch closes a loop: %q and %q are joined already", b.From, b.To),
				"a tree: one way from any place to any other")
		}
		c.layers(f, b, unitOf)
	}
}

func (c *checker) place(f Finding, key, id string) bool {
	if c.termination.is[id] || c.breakout.is[id] {
		return true
	}
	f.Key = key
	c.say(f, fmt.Sprintf("no termination or breakout has the id %q", id),
		list("a breakout", c.breakout)+"; or "+list("a termination", c.termination))
	return false
}

// layers judges the members of a branch. A wire is twice in a branch too where
// it is laid by itself beside the unit that it is part of.
func (c *checker) layers(f Finding, b *Branch, unitOf map[string]string) {
	laid := map[string]bool{}
	for _, l := range b.Layers {
		for _, id := range l.Of {
			laid[id] = true
		}
	}
	seen := map[string]bool{}
	f.Sub = "layer"
	for i, l := range b.Layers {
		f.SubIndex, f.Key = i, "of"
		for _, id := range l.Of {
			u, inUnit := unitOf[id]
			switch {
			case !c.member(f, id):
			case seen[id]:
				c.say(f, fmt.Sprintf("%q is in this branch twice", id), "each wire and unit once in a branch")
			case inUnit && laid[u] && u != id:
				c.say(f, fmt.Sprintf("wire %q is in this branch twice: by itself and in unit %q", id, u),
					"each wire once in a branch")
			}
			seen[id] = true
		}
		f.Key = "pinned"
		for _, id := range l.Pinned {
			c.member(f, id)
		}
	}
}

func (c *checker) member(f Finding, id string) bool {
	if c.wire.is[id] || c.unit.is[id] {
		return true
	}
	c.say(f, fmt.Sprintf("no wire or unit has the id %q", id), list("a unit", c.unit)+"; or "+list("a wire", c.wire))
	return false
}

// joined says which places hang together: a forest that is merged branch by
// branch (union-find; each place points towards the root of its tree).
type joined map[string]string

func (j joined) root(id string) string {
	for {
		up, ok := j[id]
		if !ok {
			return id
		}
		if next, ok := j[up]; ok {
			j[id] = next // halve the way for the next one
		}
		id = up
	}
}

// join joins two places; false where they hung together before.
func (j joined) join(a, b string) bool {
	ra, rb := j.root(a), j.root(b)
	if ra == rb {
		return false
	}
	j[ra] = rb
	return true
}
