package built

import (
	"fmt"
	"slices"
	"strings"

	"contralay/model"
)

// replaced finds the parts that have come in the place of others: of the same kind at the same
// place, and not on record yet.
func (c *comparison) replaced() {
	for _, key := range c.keys {
		if _, is := c.at[key]; is {
			continue
		}
		for _, f := range c.facts {
			stem := strings.TrimSuffix(f.Key, f.What.Part.V)
			if f.Kind == Put && stem != f.Key && strings.HasPrefix(key, stem) && !c.done[f.Key] && c.instead[f.Key] == "" {
				c.instead[f.Key] = key
				break
			}
		}
	}
}

// gone is what was done and has no step any more: the wire, the layer, the part is not in the
// sheet. Where another part has come in its place, that is one difference and not two.
func (c *comparison) gone() {
	for _, key := range c.keys {
		if _, is := c.at[key]; is || c.waits(key) {
			continue
		}
		if verb, _ := Work(key); slices.Contains([]string{"hold", "lot", "pull", "weigh"}, verb) { // they make nothing
			continue
		}
		t := c.ticks[key]
		if t == nil || !t.What.Set && !t.Sheet.Set { // by key alone: the revision tells
			c.old = append(c.old, key)
			continue
		}
		verb, id := Work(key)
		if now, is := c.cameFor(key); is {
			c.exchanged(key, verb, id, now, t.What.V)
			continue
		}
		if t.Sheet.Set {
			continue
		}
		says := goneSays(verb, id, t.What.V)
		steps := []string{key}
		if verb == "cut" || verb == "make" {
			steps = append(steps, c.come[id]...)
			delete(c.come, id)
		}
		at := id
		switch verb {
		case "lay":
			at = layerOf(id)
		case buildUp:
			at = LayerAt(id, 0)
		}
		c.add(Difference{At: at, Says: says, Built: "what was done"}, steps...)
	}
}

// cameFor is the step that has come in the place of one that is gone.
func (c *comparison) cameFor(key string) (Fact, bool) {
	for _, f := range c.facts {
		if c.instead[f.Key] == key {
			return f, true
		}
	}
	return Fact{}, false
}

// exchanged is a part in whose place another has come. It was threaded on and shrunk: one
// difference; where it is to be done again anyway, none.
func (c *comparison) exchanged(key, verb, id string, now Fact, was model.What) {
	k := kept{key, now.What, now.Key}
	if verb == "shrink" {
		for n := range c.out {
			if d := &c.out[n]; slices.Contains(d.Steps, "thread "+id) {
				d.Steps, d.keep = append(d.Steps, key), append(d.keep, k)
				d.Again = c.over(d.Steps)
				return
			}
		}
	}
	if c.follows(k) {
		return
	}
	d := Difference{At: now.At, Says: fmt.Sprintf("%s is %s, was %s", partOf(now), now.What.Part.V, was.Part.V), Built: was.Part.V}
	c.add(d, key)
	c.out[len(c.out)-1].keep = []kept{k}
}

// waits reports whether a step belongs to what cannot be compared yet: a branch whose lay-up
// is still being worked out, a wire that has no way.
func (c *comparison) waits(key string) bool {
	for i := range c.s.Branches {
		if id := c.s.H.Branches[i].ID; c.s.Branches[i].Waiting && strings.Contains(key+" ", " "+id+" ") {
			return true
		}
	}
	id, cut := strings.CutPrefix(key, "cut ")
	_, there := c.s.Index.Wire[id]
	return cut && there
}

// partOf is a part without its number, as a person says it: "sheath of T1".
func partOf(f Fact) string {
	return strings.TrimSpace(strings.TrimPrefix(strings.TrimSuffix(f.At, f.What.Part.V), f.Of)) + " of " + f.Of
}

func goneSays(verb, id string, was model.What) string {
	switch verb {
	case "cut":
		return fmt.Sprintf("wire %s is no longer in the sheet: %s, %s was cut", id, wireSays(was, false), millimetres(was.MM, 0))
	case "make":
		return fmt.Sprintf("unit %s is no longer in the sheet: it was made of %s", id, strings.Join(was.Members, " "))
	case "lay":
		return fmt.Sprintf("%s is no longer in the sheet: it was laid with %s", layerOf(id), strings.Join(was.Members, " "))
	case buildUp:
		return fmt.Sprintf("%s is no longer built up: %s of tape was wound on", LayerAt(id, 0), millimetres(was.BindMM, 2))
	case "join":
		return fmt.Sprintf("splice %s is no longer in the sheet: %s joined %s", id, was.Part.Or("it"), strings.Join(was.Members, " "))
	case "pin":
		return fmt.Sprintf("%s is no longer in the sheet: its contacts are on", id)
	case "glue":
		return fmt.Sprintf("mix %s of adhesive is no longer in the sheet", id)
	}
	return fmt.Sprintf("%s is no longer in the sheet: it was put on", id)
}

// buildUp is the one work of two words.
const buildUp = "build up"

// Work is what a step does and to what, by its key: "cut" and "101", "build up" and "T1".
func Work(key string) (verb, id string) {
	if id, is := strings.CutPrefix(key, buildUp+" "); is {
		return buildUp, id
	}
	verb, id, _ = strings.Cut(key, " ")
	return verb, id
}

// layerOf is a layer by what its key has behind "lay": "T1 2" is T1 layer 2.
func layerOf(id string) string {
	k := strings.LastIndexByte(id, ' ')
	if k < 0 {
		return id
	}
	if id[k+1:] == "0" {
		return LayerAt(id[:k], 0)
	}
	return id[:k] + " layer " + id[k+1:]
}

// piece is the wire or unit that a step has more or less than when it was done, where nothing
// else is otherwise and the piece came into the sheet or left it since: it is the cause.
func (c *comparison) piece(d differs) (string, bool) {
	first := ""
	if d.fact.Kind == Glue || d.fact.Kind == Hold {
		return "", false
	}
	for _, x := range d.changes {
		switch {
		case x.field.follows():
		case x.field != fieldMembers && x.field != fieldEnds, d.fact.Kind == Make && x.field == fieldEnds:
			return "", false
		default:
			more, less := apart(pieces(d.fact.What), pieces(d.was))
			for _, id := range slices.Concat(less, more) {
				if _, there := c.s.Index.Component(id); there && c.done[makes(c.s, id)] {
					return "", false
				}
				if first == "" {
					first = id
				}
			}
		}
	}
	return first, first != ""
}

// pieces are the wires and units that a step puts to use.
func pieces(w model.What) []string {
	if len(w.Members) > 0 {
		return w.Members
	}
	var out []string
	for _, end := range w.Ends {
		_, in, _ := strings.Cut(end, " ")
		out = append(out, strings.Split(strings.TrimPrefix(in, "drain "), "+")...)
	}
	return out
}

// pieces names each wire and unit that came into the sheet or left it since, with the steps
// that have it more or less; a wire that was cut and is gone is named by what was cut.
func (c *comparison) pieces() {
	for _, id := range c.order {
		if len(c.come[id]) == 0 {
			continue
		}
		what := "wire"
		if _, is := c.s.Index.Unit[id]; is {
			what = "unit"
		}
		d := Difference{At: id, Says: what + " " + id + " is new", Built: "built without it"}
		if _, there := c.s.Index.Component(id); !there {
			d.Says, d.Built = id+" is no longer in the sheet", "built with it"
		}
		c.add(d, c.come[id]...)
	}
}
