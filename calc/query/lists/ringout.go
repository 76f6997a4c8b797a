package lists

import (
	"slices"

	"contralay/calc/phase/wires"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// What is rung out: which ends every cavity is joined to, and through how much copper.

// Ring is one cavity of a termination and what it must be joined to.
type Ring struct {
	Termination int
	Cavity      string
	Wire        int // the wire in the cavity; −1: the drain of a shield alone
	Drain       string
	To          []RungTo // every other end of the same net, in file order; none: it leads to none
}

// RungTo is one end that must ring, and the copper on the way at 20 °C.
type RungTo struct {
	End      string              // "INJ1:2", "shell of P1", "shield of C1"
	Ohm      model.Opt[unit.Ohm] // unset where that of a wire on the way is not known
	Via      []string
	Standing catalogue.Standing
}

// lead is a wire seen from one of its ends.
type lead struct {
	wire int
	far  string
}

// RingOut is what is rung out at every termination, cavity by cavity, in the order its
// insert has them. Resistance is that of the finished wires at 20 °C and at most, contacts
// and splices not counted: a meter's leads are taken off its reading.
func RingOut(s *sheet.Sheet) []Ring {
	leads := map[string][]lead{}
	for k := range s.H.Wires {
		w := &s.H.Wires[k]
		a, z := endName(s, w.From.V), endName(s, w.To.V)
		if a != "" {
			leads[a] = append(leads[a], lead{k, z})
		}
		if z != "" {
			leads[z] = append(leads[z], lead{k, a})
		}
	}
	drains := map[string][]string{} // end → units whose shield it takes
	for i := range s.H.Units {
		for _, text := range []string{s.H.Units[i].DrainFrom.V, s.H.Units[i].DrainTo.V} {
			if end := endName(s, text); end != "" {
				drains[end] = append(drains[end], s.H.Units[i].ID)
			}
		}
	}
	var out []Ring
	for t := range s.Terms {
		for _, name := range s.Terms[t].Cavities {
			c := s.Terms[t].State[name]
			if len(c.Wires) == 0 && c.Drain == "" {
				continue
			}
			r := Ring{Termination: t, Cavity: name, Wire: -1, Drain: c.Drain}
			if len(c.Wires) > 0 {
				r.Wire = s.Index.Wire[c.Wires[0]]
			}
			r.To = rungFrom(s, s.H.Terminations[t].ID+":"+name, leads, drains)
			out = append(out, r)
		}
	}
	return out
}

// endName is an end in one spelling; "" where it is none.
func endName(s *sheet.Sheet, text string) string {
	e, ok := s.Index.End(text)
	switch {
	case !ok || text == "shell" || text == "cut":
		return ""
	case e.Splice != "":
		return e.Splice
	}
	return e.Termination + ":" + e.Cavity
}

// rungFrom walks the net of one end: along each wire, and on through splices and through
// cavities that hold several.
func rungFrom(s *sheet.Sheet, start string, leads map[string][]lead, drains map[string][]string) []RungTo {
	type reached struct {
		end string
		RungTo
	}
	seen := map[string]bool{start: true}
	queue := []reached{{start, RungTo{Ohm: model.Some[unit.Ohm](0), Standing: catalogue.House}}}
	var out []RungTo
	for len(queue) > 0 {
		here := queue[0]
		queue = queue[1:]
		for _, id := range drains[here.end] {
			to := here.RungTo
			to.End, to.Ohm = "shield of "+id, model.Opt[unit.Ohm]{}
			out = append(out, to)
		}
		for _, l := range leads[here.end] {
			if l.far == "" || seen[l.far] {
				continue
			}
			seen[l.far] = true
			to := here.RungTo
			c := &s.Wires[l.wire]
			to.Via = append(slices.Clone(to.Via), s.H.Wires[l.wire].ID)
			if to.Ohm.Set = to.Ohm.Set && c.Entry.OhmPerKm > 0 && c.Finished > 0; to.Ohm.Set {
				to.Ohm.V += unit.Ohm(float64(c.Entry.OhmPerKm) * float64(c.Finished) / 1e6)
				to.Standing = catalogue.Weakest(to.Standing, wires.OhmStanding(c.Entry))
			}
			if _, splice := s.Index.Splice[l.far]; !splice {
				to.End = l.far
				out = append(out, to)
			}
			queue = append(queue, reached{l.far, to})
		}
	}
	return out
}

// Isolation is what each net must hold against every other, against shields and shells:
// 100 megohm at 200 to 1000 V DC within a minute, devices off; never more than the least
// rated part stands. Source: a service bulletin on wiring tests, SB 740-91-01. Volts is what is put on,
// one voltage within that range: common practice, no source.
var Isolation = struct {
	Megohm     float64
	Least, Top unit.Volt
	Volts      unit.Volt
	Minutes    float64
	Source     string
}{100, 200, 1000, 500, 1, "a service bulletin on wiring tests"}
