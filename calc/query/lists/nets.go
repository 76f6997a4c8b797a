package lists

import (
	"math"
	"slices"

	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
)

// What is joined by copper, each net once: how it is rung out, and which nets insulation keeps apart.

// Net is ends that copper joins, through splices and cavities that hold several wires. What a device or
// a diode joins is no net: each of its ends is one of its own.
type Net struct {
	From   string   // the end where one probe stays: "P1:A", "shell of P1"
	To     []RungTo // every other end, one test each; none: it must ring to nothing
	Wires  []int    // all of it, in file order
	Loops  []int    // wires that join ends which others join too: ringing cannot tell that they are there
	Signal string   // of its first wire that has one
	Group  Group
}

// Group is what a net is for, as far as insulation is concerned.
type Group string

// The groups, in the order in which they are tested.
const (
	GroupPower   Group = "power"
	GroupGround  Group = "ground"
	GroupSignal  Group = "signal and data"
	GroupSpare   Group = "spare"
	GroupUnknown Group = "no role given"
	GroupShield  Group = "shield"
)

// Groups are all groups.
var Groups = []Group{GroupPower, GroupGround, GroupSignal, GroupSpare, GroupUnknown, GroupShield}

// Nets is what is rung out, each pair of ends once: the nets in the order of their first cavity, then the
// shields that end on a shell. A net without a cavity is not in it: no probe reaches it.
func Nets(s *sheet.Sheet) []Net {
	var out []Net
	of := map[string]int{} // end, or splice → its net
	for _, r := range RingOut(s) {
		from := s.H.Terminations[r.Termination].ID + ":" + r.Cavity
		if _, met := of[from]; met {
			continue
		}
		n := Net{From: from, To: r.To}
		of[from] = len(out)
		for _, to := range r.To {
			of[to.End] = len(out)
		}
		out = append(out, n)
	}
	wiresOfNets(s, out, of)
	for k := range out {
		out[k].Group = groupOf(s, out[k])
		for _, w := range out[k].Wires {
			if out[k].Signal = s.H.Wires[w].Signal.V; out[k].Signal != "" {
				break
			}
		}
	}
	return append(out, shells(s)...)
}

// wiresOfNets gives each wire to the net of an end of it. A wire between two splices has none: it goes to
// the net that reaches it on the way to one of its ends.
func wiresOfNets(s *sheet.Sheet, nets []Net, of map[string]int) {
	onWay := map[string]bool{}
	splices := map[string]int{}
	for n := range nets {
		for _, to := range nets[n].To {
			for _, id := range to.Via {
				onWay[id] = true
				w := &s.H.Wires[s.Index.Wire[id]]
				for _, end := range []string{endName(s, w.From.V), endName(s, w.To.V)} {
					if _, is := s.Index.Splice[end]; is {
						splices[end] = n
					}
				}
			}
		}
	}
	for k := range s.H.Wires {
		w := &s.H.Wires[k]
		a, z := endName(s, w.From.V), endName(s, w.To.V)
		for _, end := range []string{a, z} {
			n, met := of[end]
			if !met {
				n, met = splices[end]
			}
			if !met || end == "" {
				continue
			}
			nets[n].Wires = append(nets[n].Wires, k)
			if a != "" && z != "" && !onWay[w.ID] {
				nets[n].Loops = append(nets[n].Loops, k)
			}
			break
		}
	}
}

// groupOf is what a net is for: what any of its wires carries counts, power before ground before signals.
func groupOf(s *sheet.Sheet, n Net) Group {
	has := map[model.Role]bool{}
	for _, k := range n.Wires {
		has[s.H.Wires[k].Role.V] = true
	}
	switch {
	case has[model.RolePower]:
		return GroupPower
	case has[model.RoleGround]:
		return GroupGround
	case has[model.RoleSignal] || has[model.RoleData]:
		return GroupSignal
	case has[model.RoleSpare]:
		return GroupSpare
	case len(n.Wires) == 0: // a drain alone in its cavity
		return GroupShield
	}
	return GroupUnknown
}

// shells are the shells that shields end on, each with its shields.
func shells(s *sheet.Sheet) []Net {
	var out []Net
	for i := range s.H.Units {
		u := &s.H.Units[i]
		if !u.Shield.V || len(u.Wires) == 0 {
			continue
		}
		w, ok := s.Index.Wire[u.Wires[0]]
		if !ok {
			continue
		}
		for k, drain := range []string{u.DrainFrom.V, u.DrainTo.V} {
			if drain != "shell" {
				continue
			}
			text := []string{s.H.Wires[w].From.V, s.H.Wires[w].To.V}[k]
			end, ok := s.Index.End(text)
			if !ok || end.Termination == "" {
				continue
			}
			from := "shell of " + end.Termination
			n := slices.IndexFunc(out, func(n Net) bool { return n.From == from })
			if n < 0 {
				n, out = len(out), append(out, Net{From: from, Group: GroupShield})
			}
			out[n].To = append(out[n].To, RungTo{End: "shield of " + u.ID})
		}
	}
	return out
}

// What a hand meter reads over the copper: its leads and probes, and the last digit it shows. Common
// practice, no source.
const (
	leadOhm = 0.3
	handOhm = 0.1
)

// ContactOhm is what a four-wire meter may read over the copper where contacts are in: two crimps, and
// how the probes lie. Common practice, no source.
const ContactOhm unit.Ohm = 0.01

// HandOhm is what a hand meter may read at most, its leads not taken off, where copper has a resistance in
// ohm, up to the next tenth. Common practice, no source.
func HandOhm(copper unit.Ohm) unit.Ohm {
	const nothing = 1e-9 // what a sum of tenths may be over a tenth
	return unit.Ohm(math.Ceil((float64(copper)+leadOhm+handOhm)/handOhm-nothing) * handOhm)
}

// Apart is the nets of one group, which are tested for insulation one after the other against all else.
type Apart struct {
	Group Group
	Nets  []string // by the end where the probe stays; of shields their names
}

// Isolations is what insulation keeps apart, group by group; none where there is but one conductor.
func Isolations(s *sheet.Sheet) []Apart {
	names := map[Group][]string{}
	all := 0
	for _, n := range Nets(s) {
		if n.Group != GroupShield {
			names[n.Group] = append(names[n.Group], n.From)
			all++
		}
	}
	for i := range s.H.Units {
		if s.H.Units[i].Shield.V {
			names[GroupShield] = append(names[GroupShield], "shield of "+s.H.Units[i].ID)
			all++
		}
	}
	var out []Apart
	for _, g := range Groups {
		if len(names[g]) > 0 && all > 1 {
			out = append(out, Apart{g, names[g]})
		}
	}
	return out
}
