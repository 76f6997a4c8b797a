package current

import (
	"fmt"

	"contralay/calc/formula/wire"
	"contralay/calc/phase/wires"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
)

// Drops works out what each wire drops along itself and with its return, each branch at
// the temperature of the conductor in it, and says where the shop allows less.
func Drops(s *sheet.Sheet) {
	at := conductors(s)
	isReturn := map[string]bool{}
	for i := range s.H.Wires {
		w, out := &s.H.Wires[i], &s.Wires[i]
		out.Drop = model.Opt[unit.Volt]{V: dropAt(s, i, w.Amps.V, at[i]), Set: out.Known && out.Finished > 0 && w.Amps.Set &&
			wires.Rates(s, i)}
		if w.Return.V != w.ID {
			isReturn[w.Return.V] = true
		}
	}
	for i := range s.H.Wires {
		w, out := &s.H.Wires[i], &s.Wires[i]
		out.Circuit = out.Drop.V
		k, has := s.Index.Wire[w.Return.V]
		if has = has && k != i; has {
			back := s.Wires[k].Drop.V
			if !s.H.Wires[k].Amps.Set {
				back = dropAt(s, k, wires.ComesBack(s, k), at[k]) // it carries what comes through all it serves
			}
			out.Circuit += back
		}
		wires.Measured(s, i)
		// A return is tested with the wires it serves, and of two that name each
		// other the first speaks.
		if isReturn[w.ID] && (!has || k < i) {
			continue
		}
		if most := wires.DropLimit(s, i); out.Drop.Set && out.Circuit > most {
			what := "this wire alone"
			if has {
				what = "with its return"
			}
			s.Say(sheet.Warn, "wire.drop", w.ID, fmt.Sprintf("It drops %s V at %s A (%s); the shop allows %s V",
				unit.Fixed(out.Circuit, 2), unit.Fixed(w.Amps.V, 2), what, unit.Fixed(most, 2)))
		}
	}
}

// conductors is how warm each wire's conductor is in each branch of its way.
func conductors(s *sheet.Sheet) [][]unit.Celsius {
	at := make([][]unit.Celsius, len(s.Wires))
	size := 0
	for i := range s.Wires {
		size += len(s.Wires[i].Path)
	}
	all := make([]unit.Celsius, size)
	for i := range s.Wires {
		n := len(s.Wires[i].Path)
		at[i], all = all[:n:n], all[n:]
		for p, b := range s.Wires[i].Path {
			at[i][p] = s.Branches[b].Ambient // until its heat is known
		}
	}
	for b := range s.Branches {
		for _, c := range s.Branches[b].Warm.Wires {
			for p, on := range s.Wires[c.Wire].Path {
				if on == b {
					at[c.Wire][p] = c.C
				}
			}
		}
	}
	return at
}

// ConductorIn is how warm a wire's conductor is in a branch of its way: at the currents
// entered, else, where the heat of the branch is not known, the air.
func ConductorIn(s *sheet.Sheet, k, b int) unit.Celsius {
	for _, c := range s.Branches[b].Warm.Wires {
		if c.Wire == k {
			return c.C
		}
	}
	return s.Branches[b].Ambient
}

// DropAt is amps × R(T) × finished length, each branch at the temperature of the wire's
// conductor in it; loops and splice offsets at that of the branch they hang on.
func DropAt(s *sheet.Sheet, i int, amps unit.Ampere) unit.Volt {
	var at []unit.Celsius
	for _, b := range s.Wires[i].Path {
		at = append(at, ConductorIn(s, i, b))
	}
	return dropAt(s, i, amps, at)
}

// dropAt is DropAt with the temperatures along the way.
func dropAt(s *sheet.Sheet, i int, amps unit.Ampere, at []unit.Celsius) unit.Volt {
	out := &s.Wires[i]
	if !out.Known || out.Finished <= 0 {
		return 0
	}
	whole := unit.Millimetre(0)
	for _, b := range out.Path {
		whole += s.H.Branches[b].LengthMM
	}
	total := unit.Volt(0)
	for n, b := range out.Path {
		// Lay loss, loops and offsets spread over the branches by length: they
		// differ by a few per cent of a length, and temperature between branches
		// moves the resistance by less than that again.
		v, _ := wire.Drop(amps, out.Entry.OhmPerKm, at[n], out.Finished*s.H.Branches[b].LengthMM/whole)
		total += v
	}
	if len(out.Path) == 0 {
		total, _ = wire.Drop(amps, out.Entry.OhmPerKm, s.Limits.AmbientC, out.Finished)
	}
	return total
}
