package calc

import (
	"fmt"
	"slices"

	"contralay/calc/pair"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// Pair is what is worked out of a unit of two like wires as a line for signals.
type Pair struct {
	Known    bool
	Ohm      unit.Ohm             // characteristic impedance, alone and without its shield
	Twist    unit.Degree          // too little for the formula, in a harness
	Loop     unit.OhmPerKilometre // both conductors, at 20 °C at most
	Shielded bool
	Bus      Bus
}

// Bus is the line a unit belongs to, over splices and shared cavities: its longest way
// from end to end, and what hangs on that.
type Bus struct {
	Known  bool
	Wire   int // the wire of the unit it was followed along
	MM     unit.Millimetre
	StubMM unit.Millimetre // the longest
	StubAt string          // where that ends
	AllMM  unit.Millimetre // of all stubs
	way    [3][]int        // wires of the bus, of the longest stub, of all stubs
}

// pairs works out what data units do to a signal.
func (s *Sheet) pairs() {
	said := map[int]bool{} // wires of buses that were told about
	for i := range s.H.Units {
		u, out := &s.H.Units[i], &s.Units[i]
		if len(u.Wires) != 2 {
			continue
		}
		a, ok1 := s.X.Wire[u.Wires[0]]
		b, ok2 := s.X.Wire[u.Wires[1]]
		if !ok1 || !ok2 {
			continue
		}
		x, y := &s.Wires[a], &s.Wires[b]
		if !x.Known || !y.Known || x.Entry.Key() != y.Entry.Key() {
			continue
		}
		er, soft, ok := pair.Permittivity(x.Entry.Insulation)
		z, twist, ok3 := pair.Impedance(x.Dia.Nominal, conductorOf(x.Entry), out.LayMM, er, soft)
		if !ok || !ok3 || x.Entry.OhmPerKm <= 0 {
			continue
		}
		out.Pair = Pair{Known: true, Ohm: z, Twist: twist, Loop: 2 * x.Entry.OhmPerKm, Shielded: u.Shield.V}
		if u.Kbit.V <= 0 {
			continue
		}
		way, wires := s.bus(a)
		out.Pair.Bus = way
		first := !slices.ContainsFunc(wires, func(k int) bool { return said[k] })
		for _, k := range wires {
			said[k] = true
		}
		s.sayPair(i, first)
	}
}

func (s *Sheet) sayPair(i int, bus bool) {
	u, p := &s.H.Units[i], &s.Units[i].Pair
	spec := s.Wires[p.Bus.Wire].Entry
	if p.Ohm < pair.LeastOhm || p.Ohm > pair.MostOhm {
		s.say(Note, "unit.impedance", u.ID, fmt.Sprintf("%s %s makes a pair of about %s ohm alone in air; a bus of ISO 11898-2 wants %s to %s", spec.Spec, spec.Size, unit.Fixed(float64(p.Ohm), 0), unit.Fixed(float64(pair.LeastOhm), 0), unit.Fixed(float64(pair.MostOhm), 0)))
	}
	if spec.OhmPerKm > pair.ConductorMax {
		s.say(Note, "unit.resistance", u.ID, fmt.Sprintf("%s mohm a metre and conductor; a bus of ISO 11898-2 wants %s, which matters on tens of metres", unit.Fixed(float64(spec.OhmPerKm), 0), unit.Fixed(float64(pair.ConductorMax), 0)))
	}
	if !bus || !p.Bus.Known {
		return
	}
	l, ok := pair.At(u.Kbit.V)
	m := func(v unit.Millimetre) string { return plain(float64(v)/1000) + " m" }
	switch {
	case !ok:
		s.say(Note, "unit.rate", u.ID, fmt.Sprintf("no lengths are published for %s kbit/s: up to %s", plain(float64(u.Kbit.V)), plain(1000)))
	case p.Bus.MM > l.Bus:
		s.say(Note, "unit.bus", u.ID, fmt.Sprintf("its bus is %s long; at %s kbit/s %s is stated", m(p.Bus.MM), plain(float64(u.Kbit.V)), m(l.Bus)))
	case p.Bus.StubMM > l.Stub:
		s.say(Note, "unit.stub", u.ID, fmt.Sprintf("the stub to %s is %s long; at %s kbit/s %s is stated", p.Bus.StubAt, m(p.Bus.StubMM), plain(float64(u.Kbit.V)), m(l.Stub)))
	case p.Bus.AllMM > l.Stubs:
		s.say(Note, "unit.stub", u.ID, fmt.Sprintf("its stubs are %s together; at %s kbit/s %s is stated", m(p.Bus.AllMM), plain(float64(u.Kbit.V)), m(l.Stubs)))
	}
}

// bus is the line a wire belongs to, over splices and cavities it shares, and the wires
// of that line.
func (s *Sheet) bus(first int) (Bus, []int) {
	at := map[string][]int{} // end → wires
	for k := range s.H.Wires {
		for _, e := range ends(&s.H.Wires[k]) {
			at[e] = append(at[e], k)
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
			for _, n := range at[e] {
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
		return Bus{Wire: first}, wires
	}
	a, _ := s.farthest(node[0], at, nil)
	b, way := s.farthest(a, at, nil)
	out := Bus{Known: true, Wire: first, MM: way[b].far}
	on := map[string]bool{a: true}
	out.way[0] = track(way, a, b, func(e string) { on[e] = true })
	for _, w := range wires {
		e := ends(&s.H.Wires[w])
		if len(e) == 2 && (!on[e[0]] || !on[e[1]]) {
			out.AllMM += s.Wires[w].Finished
			out.way[2] = append(out.way[2], w)
		}
	}
	var main []string
	for e := range on {
		main = append(main, e)
	}
	slices.Sort(main)
	for _, e := range main {
		to, off := s.farthest(e, at, on)
		if d := off[to].far; d > out.StubMM {
			out.StubMM, out.StubAt = d, to
			out.way[1] = track(off, e, to, func(string) {})
		}
	}
	return out, wires
}

// hop is how an end is reached.
type hop struct {
	far  unit.Millimetre
	from string
	by   int // wire
}

// track is the wires from one end to another of a way, met the ends on it.
func track(way map[string]hop, from, to string, met func(string)) []int {
	var out []int
	for e := to; e != from; e = way[e].from {
		met(e)
		out = append(out, way[e].by)
	}
	return out
}

// farthest is the end farthest from one along wires, and how each is reached; ends in
// not are not entered.
func (s *Sheet) farthest(from string, at map[string][]int, not map[string]bool) (string, map[string]hop) {
	way := map[string]hop{from: {}}
	best := from
	for queue := []string{from}; len(queue) > 0; queue = queue[1:] {
		e := queue[0]
		if d := way[e].far; d > way[best].far {
			best = e
		}
		for _, k := range at[e] {
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

func (e explainer) unitOhm(f Figure) (Why, bool) {
	i, ok := e.X.Unit[f.Of]
	if !ok || !e.Units[i].Pair.Known {
		return Why{}, false
	}
	u := &e.Units[i]
	id := e.H.Units[i].Wires[0]
	ent := e.Wires[e.X.Wire[id]].Entry
	er, soft, _ := pair.Permittivity(ent.Insulation)
	return Why{Name: "impedance of " + f.Of, Value: float64(u.Pair.Ohm), Measure: Ohms,
		Says: "119.9 / root(e) times arcosh(D/d), e = 1 + q (er - 1), q = 0.25 + 0.0004 (or 0.001 for soft insulation) times the square of the twist angle in degrees: Lefferson 1971, as quoted; fitted to tighter twist than a harness has, and for a pair alone in air: a shield, a sheath and wires beside it lower it",
		In: []Input{e.from("finished diameter", Figure{What: "component.over", Part: id}), known("conductor", float64(conductorOf(ent)), Diameter, ent.Origin), exact("length of one turn", float64(u.LayMM), Length),
			known("permittivity of "+ent.Insulation, float64(er), Times, catalogue.Origin{Source: "handbook and a cable maker's table", Standing: catalogue.Published})},
		make: func(in []float64) float64 {
			z, _, _ := pair.Impedance(unit.Millimetre(in[0]), unit.Millimetre(in[1]), unit.Millimetre(in[2]), unit.Ratio(in[3]), soft)
			return float64(z)
		}}, true
}

func (e explainer) unitLoop(f Figure) (Why, bool) {
	i, ok := e.X.Unit[f.Of]
	if !ok || !e.Units[i].Pair.Known {
		return Why{}, false
	}
	ent := e.Wires[e.X.Wire[e.H.Units[i].Wires[0]]].Entry
	return Why{Name: "loop resistance of " + f.Of, Value: float64(e.Units[i].Pair.Loop), Measure: OhmsPerKm, Says: "both conductors, at 20 C at most",
		In: []Input{known("one conductor", float64(ent.OhmPerKm), OhmsPerKm, catalogue.Origin{Source: ent.Source, Standing: ohmStanding(ent)}), exact("conductors", 2, Count)}, make: func(in []float64) float64 { return in[0] * in[1] }}, true
}

// unitBus is the length of a bus, of its longest stub, of all stubs.
func (e explainer) unitBus(f Figure) (Why, bool) {
	i, ok := e.X.Unit[f.Of]
	if !ok || !e.Units[i].Pair.Bus.Known {
		return Why{}, false
	}
	b := e.Units[i].Pair.Bus
	v, name, of := b.MM, "length of the bus of "+f.Of, b.way[0]
	switch f.What {
	case "unit.stub":
		v, name, of = b.StubMM, "longest stub of the bus of "+f.Of, b.way[1]
	case "unit.stubs":
		v, name, of = b.AllMM, "all stubs of the bus of "+f.Of, b.way[2]
	}
	w := Why{Name: name, Value: float64(v), Measure: Length, Says: "finished lengths of its wires, over splices and shared cavities: the longest way from end to end is the bus, the rest are stubs", make: sum}
	for _, k := range of {
		w.In = append(w.In, e.from(e.H.Wires[k].ID, Figure{What: "wire.finished", Of: e.H.Wires[k].ID}))
	}
	return w, len(of) > 0
}
