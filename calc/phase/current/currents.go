package current

import (
	"fmt"
	"strings"

	wiresphase "contralay/calc/phase/wires"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
)

// Currents works out how warm each branch gets, what each wire may carry and what
// bounds it, and says where more is asked of it.
func Currents(s *sheet.Sheet, prior *sheet.Sheet) {
	through := make([][]int, len(s.H.Branches))
	for k := range s.Wires {
		for _, b := range s.Wires[k].Path {
			through[b] = append(through[b], k)
		}
	}
	for i := range s.Branches {
		warm(s, i, prior)
	}
	// What each wire meets on its way is gathered branch by branch, once.
	met := make([][]hotPlace, len(s.H.Wires))
	factor := make([]Derating, len(s.H.Branches))
	for i := range s.Branches {
		factor[i] = DeratingOf(s, i, through[i])
		warm := s.Branches[i].Warm.Bounding()
		for n := range warm {
			met[warm[n].Wire] = append(met[warm[n].Wire], hotPlace{i, &warm[n], s.Branches[i].Warm.Known})
		}
	}
	alone := lone{}
	for k := range s.H.Wires {
		w := &s.Wires[k]
		best := sheet.Limit{}
		w.Limits = limits(s, k, through, factor, met[k], alone)
		for n, l := range w.Limits {
			if best.Where == "" || l.Amps < best.Amps {
				best, w.BoundAt = l, n
			}
		}
		w.Bound = model.Opt[sheet.Limit]{V: best, Set: best.Where != ""}
		for _, b := range w.Path {
			for _, c := range met[k] {
				if c.branch == b && c.steady && wiresphase.Rates(s, k) && (!w.HottestC.Set || c.w.C > w.HottestC.V) {
					w.HottestC, w.HottestIn = model.Some(c.w.C), s.H.Branches[b].ID
				}
			}
		}
		wiresphase.Pulses(s, k)
		// What its device leaves it is said of the device.
		if l, ok := passed(s, k); ok {
			s.Say(sheet.AtMost(l.Standing, sheet.Stop), "wire.current", s.H.Wires[k].ID,
				fmt.Sprintf("It carries %s A but may carry only %s A: %s", sheet.PlainAmps(w.Heats), sheet.PlainAmps(l.Amps), l.Where))
		} else if l, ok := peaks(s, k); ok {
			s.Say(sheet.Note, "wire.peak", s.H.Wires[k].ID,
				fmt.Sprintf("It passes %s A for %s s through %s, which is rated for %s A all the time: ask its maker",
					sheet.PlainAmps(s.H.Wires[k].Amps.V), sheet.Plain(float64(s.H.Wires[k].OnS.V)), l.Where, sheet.PlainAmps(l.Amps)))
		}
	}
}

// passed is the limit a wire passes that weighs most: one that may stop before one from
// memory, the least of each.
func passed(s *sheet.Sheet, k int) (worst sheet.Limit, ok bool) {
	for _, l := range s.Wires[k].Limits {
		if l.Feed || s.Wires[k].Heats <= l.Amps {
			continue
		}
		a, b := sheet.AtMost(l.Standing, sheet.Stop), sheet.AtMost(worst.Standing, sheet.Stop)
		if !ok || a > b || a == b && l.Amps < worst.Amps {
			worst, ok = l, true
		}
	}
	return worst, ok
}

// peaks is a contact or splice that a load which comes and goes passes while it is on.
func peaks(s *sheet.Sheet, k int) (sheet.Limit, bool) {
	w := &s.H.Wires[k]
	if !wiresphase.DutyOf(w).Comes() {
		return sheet.Limit{}, false
	}
	for _, l := range s.Wires[k].Limits {
		if (strings.HasPrefix(l.Where, "contact") || strings.HasPrefix(l.Where, "splice")) && w.Amps.V > l.Amps {
			return l, true
		}
	}
	return sheet.Limit{}, false
}

// hotPlace is a wire as a source of heat in a branch.
type hotPlace struct {
	branch int
	w      *sheet.WarmWire
	steady bool // its temperature is known
}

// limits is all that bounds the current of a wire, in the order of its way.
func limits(s *sheet.Sheet, k int, through [][]int, factor []Derating, met []hotPlace,
	alone lone) []sheet.Limit {
	w, mw := &s.Wires[k], &s.H.Wires[k]
	if !w.Known || !wiresphase.Rates(s, k) {
		return nil
	}
	out := make([]sheet.Limit, 0, 3+4*len(w.Path)) // contacts, device; and of each branch four
	for _, text := range []string{mw.From.V, mw.To.V} {
		e, ok := s.Index.End(text)
		if splice, is := s.Index.Splice[e.Splice]; ok && is {
			if p, known := s.Cat.Splice(s.H.Splices[splice].Part.V); known && p.MaxA > 0 {
				out = append(out, sheet.Limit{Amps: p.MaxA, Where: "splice " + text, Origin: p.Origin})
			}
		}
		t, known := s.Index.Termination[e.Termination]
		if !ok || !known {
			continue
		}
		if c, is := s.Cat.Contact(s.Terms[t].State[e.Cavity].Size); is && c.MaxA > 0 {
			out = append(out, sheet.Limit{Amps: c.MaxA, Where: "contact " + text + ", size " + c.Size, Origin: c.Origin})
		}
	}
	for _, b := range w.Path {
		for _, p := range Published(s, k, b, len(through[b]), &factor[b]) {
			out = append(out, sheet.Limit{Amps: p.Amps, Where: p.Where, Origin: p.Origin})
		}
		for _, c := range met {
			if c.branch == b && c.w.Limit.Set {
				// The balance rests on conductivities and an emissivity from memory.
				balance := catalogue.Origin{Source: "heat balance", Standing: catalogue.Memory}
				out = append(out, sheet.Limit{Amps: c.w.Limit.V, Where: factor[b].heatIn, Origin: balance},
					sheet.Limit{Amps: alone.limit(s, k, b), Where: factor[b].aloneIn, Origin: balance})
			}
		}
	}
	if l, ok := feedLimit(s, k); ok {
		out = append(out, l)
	}
	return out
}
