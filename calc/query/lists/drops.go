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
}

// Drops is each feed of which a way from a cavity to a cavity is known, and the ids of the others.
func Drops(s *sheet.Sheet) (known []Drop, unknown []string) {
	for f := range s.H.Feeds {
		best := Drop{}
		if f < len(s.Feeds) {
			for _, leg := range s.Feeds[f].Legs {
				w := &s.H.Wires[leg]
				for _, start := range [][2]string{{w.From.V, w.To.V}, {w.To.V, w.From.V}} {
					if d := worst(s, s.Feeds[f].Beyond, []int{leg}, start[0], start[1]); cavityAt(s, start[0]) && d.Expect > best.Expect {
						best = d
					}
				}
			}
		}
		if best.Expect <= 0 {
			unknown = append(unknown, s.H.Feeds[f].ID)
			continue
		}
		best.Feed = f
		known = append(known, best)
	}
	return known, unknown
}

// cavityAt reports whether an end of a wire is a cavity.
func cavityAt(s *sheet.Sheet, end string) bool {
	p, ok := s.Index.End(end)
	return ok && p.Splice == ""
}

// worst is the way that drops most of those that go on from an end, over splices and wires beyond them; nothing where
// none of them is known from end to end.
func worst(s *sheet.Sheet, beyond, way []int, from, end string) (best Drop) {
	last := way[len(way)-1]
	if !s.Wires[last].Drop.Set {
		return Drop{}
	}
	p, ok := s.Index.End(end)
	switch {
	case !ok:
		return Drop{}
	case p.Splice == "":
		return dropOf(s, way, from, end)
	}
	for _, k := range beyond {
		w := &s.H.Wires[k]
		for _, ends := range [][2]string{{w.From.V, w.To.V}, {w.To.V, w.From.V}} {
			if at, ok := s.Index.End(ends[0]); ok && at.Splice == p.Splice && !slices.Contains(way, k) {
				if d := worst(s, beyond, append(slices.Clone(way), k), from, ends[1]); d.Expect > best.Expect {
					best = d
				}
			}
		}
	}
	return best
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
