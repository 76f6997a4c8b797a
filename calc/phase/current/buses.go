package current

import (
	"fmt"
	"slices"

	"contralay/calc/formula/pair"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
)

// Pairs works out what data units do to a signal.
func Pairs(s *sheet.Sheet) {
	said := map[int]bool{} // wires of buses that were told about
	for i := range s.H.Units {
		u, out := &s.H.Units[i], &s.Units[i]
		if len(u.Wires) != 2 {
			continue
		}
		a, ok1 := s.Index.Wire[u.Wires[0]]
		b, ok2 := s.Index.Wire[u.Wires[1]]
		if !ok1 || !ok2 {
			continue
		}
		x, y := &s.Wires[a], &s.Wires[b]
		if !x.Known || !y.Known || x.Entry.Key() != y.Entry.Key() {
			continue
		}
		er, soft, ok := pair.Permittivity(x.Entry.Insulation)
		z, twist, ok3 := pair.Impedance(x.Dia.Nominal, sheet.ConductorOf(x.Entry), out.LayMM, er, soft)
		if !ok || !ok3 || x.Entry.OhmPerKm <= 0 {
			continue
		}
		out.Pair = sheet.Pair{Known: true, Ohm: z, Twist: twist, Loop: 2 * x.Entry.OhmPerKm, Shielded: u.Shield.V}
		if u.Kbit.V <= 0 {
			continue
		}
		way, wires := bus(s, a)
		out.Pair.Bus = way
		first := !slices.ContainsFunc(wires, func(k int) bool { return said[k] })
		for _, k := range wires {
			said[k] = true
		}
		sayPair(s, i, first)
	}
}

func sayPair(s *sheet.Sheet, i int, bus bool) {
	u, p := &s.H.Units[i], &s.Units[i].Pair
	spec := s.Wires[p.Bus.Wire].Entry
	if p.Ohm < pair.LeastOhm || p.Ohm > pair.MostOhm {
		s.Say(sheet.Note, "unit.impedance", u.ID,
			fmt.Sprintf("A pair of %s %s has about %s ohm alone in air; a bus of ISO 11898-2 needs %s to %s", spec.Spec, spec.Size,
				unit.Fixed(p.Ohm, 0), unit.Fixed(pair.LeastOhm, 0), unit.Fixed(pair.MostOhm, 0)))
	}
	if spec.OhmPerKm > pair.ConductorMax {
		s.Say(sheet.Note, "unit.resistance", u.ID,
			fmt.Sprintf("Each conductor has %s mohm per metre; a bus of ISO 11898-2 needs %s mohm or less, which matters on tens of metres",
				unit.Fixed(spec.OhmPerKm, 0), unit.Fixed(pair.ConductorMax, 0)))
	}
	if !bus || !p.Bus.Known {
		return
	}
	l, ok := pair.At(u.Kbit.V)
	m := func(v unit.Millimetre) string { return sheet.Plain(float64(v)/1000) + " m" }
	switch {
	case !ok:
		s.Say(sheet.Note, "unit.rate", u.ID, fmt.Sprintf("No lengths are published for %s kbit/s: they end at %s kbit/s",
			sheet.Plain(float64(u.Kbit.V)),
			sheet.Plain(1000)))
	case p.Bus.MM > l.Bus:
		s.Say(sheet.Note, "unit.bus", u.ID, fmt.Sprintf("Its bus is %s long; at %s kbit/s the limit is %s", m(p.Bus.MM),
			sheet.Plain(float64(u.Kbit.V)), m(l.Bus)))
	case p.Bus.StubMM > l.Stub:
		s.Say(sheet.Note, "unit.stub", u.ID, fmt.Sprintf("The stub to %s is %s long; at %s kbit/s the limit is %s", p.Bus.StubAt,
			m(p.Bus.StubMM), sheet.Plain(float64(u.Kbit.V)), m(l.Stub)))
	case p.Bus.AllMM > l.Stubs:
		s.Say(sheet.Note, "unit.stub", u.ID, fmt.Sprintf("Its stubs are %s long together; at %s kbit/s the limit is %s", m(p.Bus.AllMM),
			sheet.Plain(float64(u.Kbit.V)), m(l.Stubs)))
	}
}

// bus is the line a wire belongs to, over splices and cavities it shares, and the wires
// of that line.
func bus(s *sheet.Sheet, first int) (sheet.Bus, []int) {
	wiresAt := map[string][]int{} // end → wires
	for k := range s.H.Wires {
		for _, e := range ends(&s.H.Wires[k]) {
			wiresAt[e] = append(wiresAt[e], k)
		}
	}
	var wires []int
	in := map[int]bool{first: true}
	known := true
	for queue := []int{first}; len(queue) > 0; queue = queue[1:] {
		k := queue[0]
		wires = append(wires, k)
		known = known && s.Wires[k].Finished > 0
		for _, e := range ends(&s.H.Wires[k]) {
			for _, n := range wiresAt[e] {
				if !in[n] {
					in[n] = true
					queue = append(queue, n)
				}
			}
		}
	}
	// Twice to the end farthest off: from anywhere, and from there.
	node := ends(&s.H.Wires[first])
	if !known || len(node) == 0 {
		return sheet.Bus{Wire: first}, wires
	}
	a, _ := farthest(s, node[0], wiresAt, nil)
	b, way := farthest(s, a, wiresAt, nil)
	out := sheet.Bus{Known: true, Wire: first, MM: way[b].far}
	reached := map[string]bool{a: true}
	out.Way[0] = track(way, a, b, func(e string) { reached[e] = true })
	for _, w := range wires {
		e := ends(&s.H.Wires[w])
		if len(e) == 2 && (!reached[e[0]] || !reached[e[1]]) {
			out.AllMM += s.Wires[w].Finished
			out.Way[2] = append(out.Way[2], w)
		}
	}
	var main []string
	for e := range reached {
		main = append(main, e)
	}
	slices.Sort(main)
	for _, e := range main {
		to, off := farthest(s, e, wiresAt, reached)
		if d := off[to].far; d > out.StubMM {
			out.StubMM, out.StubAt = d, to
			out.Way[1] = track(off, e, to, func(string) {})
		}
	}
	return out, wires
}

// hop is how an end is reached.
type hop struct {
	far  unit.Millimetre
	from string
	wire int // wire
}

// track is the wires from one end to another of a way, met the ends on it.
func track(way map[string]hop, from, to string, met func(string)) []int {
	var out []int
	for e := to; e != from; e = way[e].from {
		met(e)
		out = append(out, way[e].wire)
	}
	return out
}

// farthest is the end farthest from one along wires, and how each is reached; ends in
// not are not entered.
func farthest(s *sheet.Sheet, from string, wiresAt map[string][]int, not map[string]bool) (string, map[string]hop) {
	way := map[string]hop{from: {}}
	best := from
	for queue := []string{from}; len(queue) > 0; queue = queue[1:] {
		e := queue[0]
		if d := way[e].far; d > way[best].far {
			best = e
		}
		for _, k := range wiresAt[e] {
			for _, n := range ends(&s.H.Wires[k]) {
				if _, met := way[n]; !met && !not[n] {
					way[n] = hop{way[e].far + s.Wires[k].Finished, e, k}
					queue = append(queue, n)
				}
			}
		}
	}
	return best, way
}

// ends is where a wire ends, as the file says it.
func ends(w *model.Wire) []string {
	var out []string
	for _, e := range []string{w.From.V, w.To.V} {
		if e != "" {
			out = append(out, e)
		}
	}
	return out
}
