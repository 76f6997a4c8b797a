package lists

import (
	"slices"

	"contralay/calc/phase/wires"
	"contralay/calc/sheet"
	"contralay/model/unit"
)

// Drop is the test of a feed under load: the way from the feed to the load that drops most, between two cavities that
// a meter reaches when the splices on the way are covered.
type Drop struct {
	Feed     int         // its place in the harness
	Wires    []int       // on the way, from the feed to the load
	Back     []int       // the returns that the wires on the way name, each once
	From, To string      // the cavities at its ends
	Amps     unit.Ampere // in its first wire, with every load of the feed on
	Expect   unit.Volt   // along the way and back
	Limit    unit.Volt
	Partly   bool // the drop of another way of the feed is not known: it may be more
}

// Drops is each feed of which a way from a cavity to a cavity is known, and the ids of the others.
func Drops(s *sheet.Sheet) (known []Drop, unknown []string) {
	for f := range s.H.Feeds {
		w := ways{s: s}
		if f < len(s.Feeds) {
			w.beyond = s.Feeds[f].Beyond
			for _, leg := range s.Feeds[f].Legs {
				for _, ends := range bothWays(s, leg) {
					if cavityAt(s, ends[0]) {
						w.follow([]int{leg}, nil, ends[0], ends[1])
					}
				}
			}
		}
		if w.best.Expect <= 0 {
			unknown = append(unknown, s.H.Feeds[f].ID)
			continue
		}
		w.best.Feed, w.best.Partly = f, w.lacks
		known = append(known, w.best)
	}
	return known, unknown
}

// bothWays are the ends of a wire, from either.
func bothWays(s *sheet.Sheet, k int) [2][2]string {
	w := &s.H.Wires[k]
	return [2][2]string{{w.From.V, w.To.V}, {w.To.V, w.From.V}}
}

// cavityAt reports whether an end of a wire is a cavity.
func cavityAt(s *sheet.Sheet, end string) bool {
	p, ok := s.Index.End(end)
	return ok && p.Splice == ""
}

// ways are those of a feed, as far as they were followed.
type ways struct {
	s      *sheet.Sheet
	beyond []int // the wires of the feed behind a splice
	best   Drop  // of those that are known, the one that drops most
	lacks  bool  // a wire of one has no drop that is known
}

// follow goes on from the end of a way over splices, over none of them twice, to every cavity that it comes to.
func (w *ways) follow(way []int, over []string, from, end string) {
	p, ok := w.s.Index.End(end)
	switch {
	case !ok:
		return
	case !w.s.Wires[way[len(way)-1]].Drop.Set:
		w.lacks = true
		return
	case p.Splice == "":
		if d := dropOf(w.s, way, from, end); d.Expect > w.best.Expect {
			w.best = d
		}
		return
	case slices.Contains(over, p.Splice):
		return
	}
	over = append(slices.Clone(over), p.Splice)
	for _, k := range w.beyond {
		for _, ends := range bothWays(w.s, k) {
			if at, ok := w.s.Index.End(ends[0]); ok && at.Splice == p.Splice && !slices.Contains(way, k) {
				w.follow(append(slices.Clone(way), k), over, from, ends[1])
			}
		}
	}
}

// dropOf is what a way drops, with the returns that its wires name.
func dropOf(s *sheet.Sheet, way []int, from, to string) Drop {
	d := Drop{Wires: way, From: from, To: to, Amps: s.H.Wires[way[0]].Amps.V, Limit: wires.DropLimit(s, way[len(way)-1])}
	for _, k := range way {
		d.Expect += s.Wires[k].Drop.V
		back, ok := s.Index.Wire[s.H.Wires[k].Return.V]
		if ok && !slices.Contains(d.Back, back) && !slices.Contains(way, back) {
			d.Back = append(d.Back, back)
			d.Expect += s.Wires[k].Circuit - s.Wires[k].Drop.V
		}
	}
	return d
}
