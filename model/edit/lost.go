package edit

import (
	"fmt"
	"slices"
	"strings"

	"contralay/model"
)

// Lost is what a harness is left without after an edit, worst first, each in one clause: wires
// that lost an end or their way, what went along, returns, drains and caps that lead nowhere
// now, splices and units with a single wire, feeds without one, and places where no branch leads.
// besides is what the edit was asked to take away: it is not said again.
func Lost(was, is *model.Harness, besides ...string) []string {
	l := &loss{was: was, is: is, a: model.NewIndex(was), b: model.NewIndex(is)}
	l.ends()
	l.ways()
	l.along(besides)
	l.mentions()
	l.counts()
	l.places()
	return l.says
}

// loss gathers what is said.
type loss struct {
	was, is *model.Harness
	a, b    *model.Index
	says    []string
}

func (l *loss) say(format string, args ...any) { l.says = append(l.says, fmt.Sprintf(format, args...)) }

// plural is one or many of a noun with a verb: "wire 104 has", "wires 104, 105 have".
func plural(noun string, all []string, has, have string) string {
	if len(all) == 1 {
		return strings.TrimSpace(noun + " " + all[0] + " " + has)
	}
	return strings.TrimSpace(noun + "s " + few(all) + " " + have)
}

// along is what the edit took away and was not asked for: the things of the tree together, then
// wires and units.
func (l *loss) along(besides []string) {
	went := func(noun Noun) []string {
		left := IDs(l.is, noun)
		return slices.DeleteFunc(IDs(l.was, noun), func(id string) bool {
			return slices.Contains(left, id) || slices.Contains(besides, id)
		})
	}
	places := slices.DeleteFunc(slices.Concat(went(Termination), went(Breakout)), func(id string) bool {
		_, err := place(l.is, id) // one that became another kind of place is still there
		return err == nil
	})
	if tree := slices.Concat(went(Branch), places, went(Splice)); len(tree) > 0 {
		l.say("%s went with it", few(tree))
	}
	for _, noun := range []Noun{Wire, Unit} {
		if all := went(noun); len(all) > 0 {
			l.say("%s went with it", plural(string(noun), all, "", ""))
		}
	}
}

// both calls f with each wire that is in both harnesses.
func (l *loss) both(f func(was, is *model.Wire)) {
	for i := range l.was.Wires {
		w := &l.was.Wires[i]
		if k, stays := l.b.Wire[w.ID]; stays {
			f(w, &l.is.Wires[k])
		}
	}
}

// grouped collects ids under what they have in common, in the order they come.
type grouped struct {
	order []string
	of    map[string][]string
}

func (g *grouped) add(under, id string) {
	if g.of == nil {
		g.of = map[string][]string{}
	}
	if g.of[under] == nil {
		g.order = append(g.order, under)
	}
	g.of[under] = append(g.of[under], id)
}

// ends is the wires that end nowhere now, by where they ended.
func (l *loss) ends() {
	var lost grouped
	l.both(func(was, is *model.Wire) {
		for _, e := range [][2]string{{was.From.V, is.From.V}, {was.To.V, is.To.V}} {
			if end, given := model.ParseEnd(e[0]); given && e[1] == "" {
				lost.add(end.Termination+end.Splice, was.ID)
			}
		}
	})
	for _, at := range lost.order {
		l.say("%s lost an end at %s", plural("wire", lost.of[at], "has", "have"), at)
	}
}

// ways is the wires whose ends no branches join any more.
func (l *loss) ways() {
	var out []string
	l.both(func(was, is *model.Wire) {
		from, to, ok := l.a.Places(was)
		if _, led := l.a.Between(from, to); !ok || !led {
			return
		}
		from, to, ok = l.b.Places(is)
		if _, leads := l.b.Between(from, to); ok && !leads {
			out = append(out, was.ID)
		}
	})
	if len(out) > 0 {
		l.say("%s no way", plural("wire", out, "has", "have"))
	}
}

// mentions is what wires, units and splices named and name no more.
func (l *loss) mentions() {
	var returns grouped
	var caps, drains, along []string
	l.both(func(was, is *model.Wire) {
		if was.Return.V != "" && is.Return.V == "" {
			returns.add(was.Return.V, was.ID)
		}
		if was.CappedAt.V != "" && is.CappedAt.V == "" {
			caps = append(caps, was.ID)
		}
	})
	for _, id := range returns.order {
		l.say("%s lost its return %s", plural("wire", returns.of[id], "has", "have each"), id)
	}
	if len(caps) > 0 {
		l.say("%s not capped anywhere", plural("wire", caps, "is", "are"))
	}
	for i := range l.was.Units {
		u := &l.was.Units[i]
		k, stays := l.b.Unit[u.ID]
		if stays && (u.DrainFrom.V != "" && l.is.Units[k].DrainFrom.V == "" || u.DrainTo.V != "" && l.is.Units[k].DrainTo.V == "") {
			drains = append(drains, u.ID)
		}
	}
	if len(drains) > 0 {
		l.say("%s lost an end of the drain", plural("unit", drains, "has", "have"))
	}
	for i := range l.was.Splices {
		s := &l.was.Splices[i]
		if k, stays := l.b.Splice[s.ID]; stays && s.Toward.V != "" && l.is.Splices[k].Toward.V == "" {
			along = append(along, s.ID)
		}
	}
	if len(along) > 0 {
		l.say("%s at the centre of the breakout now", plural("splice", along, "lies", "lie"))
	}
}

// counts is what has one wire left, or none, and had more.
func (l *loss) counts() {
	joins := func(h *model.Harness) map[string]int {
		n := map[string]int{}
		for i := range h.Wires {
			n[h.Wires[i].From.V]++
			n[h.Wires[i].To.V]++
		}
		return n
	}
	before, now := joins(l.was), joins(l.is)
	for i := range l.is.Splices {
		id := l.is.Splices[i].ID
		if _, had := l.a.Splice[id]; had {
			l.left("splice "+id, before[id], now[id])
		}
	}
	for i := range l.is.Units {
		u := &l.is.Units[i]
		if k, had := l.a.Unit[u.ID]; had {
			l.left("unit "+u.ID, len(l.was.Units[k].Wires), len(u.Wires))
		}
	}
	for i := range l.is.Feeds {
		f := &l.is.Feeds[i]
		if k, had := l.a.Feed[f.ID]; had && len(f.Wires) == 0 {
			l.left("feed "+f.ID, len(l.was.Feeds[k].Wires), 0)
		}
	}
}

func (l *loss) left(what string, before, now int) {
	switch {
	case now >= before || now > 1:
	case now == 1:
		l.say("%s has one wire left", what)
	default:
		l.say("%s has no wire left", what)
	}
}

// places is the terminations and breakouts where a branch led and none leads now.
func (l *loss) places() {
	var bare []string
	for _, id := range slices.Concat(IDs(l.is, Termination), IDs(l.is, Breakout)) {
		if len(l.a.Meeting(id)) > 0 && len(l.b.Meeting(id)) == 0 {
			bare = append(bare, id)
		}
	}
	if len(bare) > 0 {
		l.say("no branch leads to %s", few(bare))
	}
}
