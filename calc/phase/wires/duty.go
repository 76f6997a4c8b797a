package wires

import (
	"cmp"
	"fmt"

	"contralay/calc/formula/protect"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// Duties works out what each wire carries as heat sees it, and refuses what the sheet
// does not rate.
func Duties(s *sheet.Sheet) {
	if s.H.Head.Use.V == model.UseAircraft {
		s.Unrated = true
		s.Say(sheet.Stop, "use", "harness", "It is for an aircraft: this sheet approves nothing that flies, and gives no electrical "+
			"figures")
	}
	if s.H.Head.SupplyV.V > MaxVolts {
		s.Unrated = true
	}
	for k := range s.H.Wires {
		w, out := &s.H.Wires[k], &s.Wires[k]
		d := DutyOf(w)
		out.Heats = d.RMS()
		if w.Safety.V {
			s.Say(sheet.Stop, "wire.safety", w.ID,
				"Marked safety-critical: this sheet gives no rating for it. Have it designed by a licensed engineer")
		}
		switch {
		case !w.OnS.Set && !w.PeriodS.Set:
		case w.OnS.V <= 0 || w.PeriodS.V <= w.OnS.V:
			s.Say(sheet.Warn, "wire.duty", w.ID, dutyText(w))
		case !d.Comes() && w.RestA.V < w.Amps.V:
			s.Say(sheet.Note, "wire.duty", w.ID, fmt.Sprintf("It is on for %s s at a time: above %s s it counts as always on",
				sheet.Plain(float64(w.OnS.V)), sheet.Plain(float64(protect.AdiabaticFor))))
		}
	}
	comeBack(s)
}

// dutyText is what is wrong with a duty that is none.
func dutyText(w *model.Wire) string {
	switch {
	case !w.PeriodS.Set:
		return fmt.Sprintf("It is on for %s s, but how often is not given: it counts as always on", sheet.Plain(float64(w.OnS.V)))
	case !w.OnS.Set:
		return fmt.Sprintf("It comes on every %s s, but for how long is not given: it counts as always on",
			sheet.Plain(float64(w.PeriodS.V)))
	}
	return fmt.Sprintf("It is on for %s s in every %s s, which is all the time", sheet.Plain(float64(w.OnS.V)),
		sheet.Plain(float64(w.PeriodS.V)))
}

// comeBack gives a return for which no current is entered what comes through the wires
// that name it, so that it is judged and heats its bundle.
func comeBack(s *sheet.Sheet) {
	s.Back = map[int][]int{}
	for k := range s.H.Wires {
		if r, ok := s.Index.Wire[s.H.Wires[k].Return.V]; ok && r != k {
			s.Back[r] = append(s.Back[r], k)
		}
	}
	done := map[int]bool{}
	var heats func(r int) unit.Ampere
	heats = func(r int) unit.Ampere {
		if done[r] || s.H.Wires[r].Amps.Set {
			return s.Wires[r].Heats
		}
		done[r] = true // returns that name each other in a ring come to what is entered
		sum := unit.Ampere(0)
		for _, k := range s.Back[r] {
			sum += heats(k)
		}
		s.Wires[r].Heats = sum
		return sum
	}
	for r := range s.H.Wires {
		if len(s.Back[r]) > 0 {
			heats(r)
		}
	}
}

// ComesBack is what comes back through a return for which no current is entered, all of
// its wires on at once.
func ComesBack(s *sheet.Sheet, r int) unit.Ampere {
	sum := unit.Ampere(0)
	for _, k := range s.Back[r] {
		sum += s.H.Wires[k].Amps.V
	}
	return sum
}

// pulseOf is what one time on puts into a wire, A²s: its own load, or that of all wires
// it is the return of, at once and for the longest of them.
func pulseOf(s *sheet.Sheet, k int) (a2s unit.AmpereSqSecond, amps unit.Ampere, onTime unit.Second) {
	if w := &s.H.Wires[k]; w.Amps.Set {
		return DutyOf(w).Pulse(), w.Amps.V, w.OnS.V
	}
	for _, i := range s.Back[k] {
		if d := DutyOf(&s.H.Wires[i]); d.Comes() {
			amps, onTime = amps+d.Amps, max(onTime, d.On)
		}
	}
	return unit.AmpereSqSecond(float64(amps) * float64(amps) * float64(onTime)), amps, onTime
}

// Warmest is the temperature a wire starts a pulse or a short from: its hottest, or where
// that is not known the warmest air on its way.
func Warmest(s *sheet.Sheet, k int) unit.Celsius {
	c := &s.Wires[k]
	if c.HottestC.Set {
		return c.HottestC.V
	}
	t := s.Limits.AmbientC
	for n, b := range c.Path {
		if a := s.Branches[b].Ambient; n == 0 || a > t {
			t = a
		}
	}
	return t
}

// Serves is the wires that name a wire as their return.
func Serves(s *sheet.Sheet, k int) []int {
	return s.Back[k]
}

// Carries reports whether it is known what a wire carries: it is entered, or comes back
// from wires that name it as their return.
func Carries(s *sheet.Sheet, k int) bool { return s.H.Wires[k].Amps.Set || s.Wires[k].Heats > 0 }

// DutyOf is how a wire's load comes and goes.
func DutyOf(w *model.Wire) protect.Duty {
	return protect.Duty{On: w.OnS.V, Period: w.PeriodS.V, Amps: w.Amps.V, Rest: w.RestA.V}
}

// Rates reports whether the sheet gives a wire electrical figures at all.
func Rates(s *sheet.Sheet, k int) bool { return !s.Unrated && !s.H.Wires[k].Safety.V }

// DropLimit is what the circuit of a wire may drop.
func DropLimit(s *sheet.Sheet, k int) unit.Volt {
	if DutyOf(&s.H.Wires[k]).Comes() {
		return s.Limits.DropShortV
	}
	return s.Limits.DropMaxV
}

// Pulses tests what one time on puts into a conductor against what it bears from its
// steady temperature up to its rating.
func Pulses(s *sheet.Sheet, k int) {
	w, out := &s.H.Wires[k], &s.Wires[k]
	p, amps, onTime := pulseOf(s, k)
	if p <= 0 || !out.Known || out.Entry.AreaMM2 <= 0 || !Rates(s, k) {
		return
	}
	if bears, ok := protect.Withstand(out.Entry.AreaMM2, Warmest(s, k), out.Entry.RatedC); !ok || p > bears {
		out.PulseBurns = true
		s.Say(sheet.AtMost(catalogue.Weakest(out.Entry.Standing, RatedStanding(out.Entry)), sheet.Stop), "wire.pulse", w.ID,
			fmt.Sprintf("%s A for %s s heats its conductor above %s C in a single pulse: take a thicker size", sheet.PlainAmps(amps),
				sheet.Plain(float64(onTime)), unit.Fixed(out.Entry.RatedC, 0)))
	}
}

// RatedStanding is how far a wire's temperature rating can be trusted: its own standing, else that of its entry.
func RatedStanding(e catalogue.Wire) catalogue.Standing {
	return cmp.Or(e.RatedStanding, e.Standing)
}

// OhmStanding is how far a wire's resistance can be trusted: its own standing, else that of its entry.
func OhmStanding(e catalogue.Wire) catalogue.Standing { return cmp.Or(e.OhmStanding, e.Standing) }

// contactDrop is what the two ends of a wire may drop together before a measured drop
// points at them: 50 mV an end, common practice, no source. slack is how far a drop may
// be measured over what the wire explains besides.
const (
	contactDrop unit.Volt  = 0.1
	slack       unit.Ratio = 0.1
)

// Measured sets a drop that was measured against what the wire explains.
func Measured(s *sheet.Sheet, k int) {
	w, out := &s.H.Wires[k], &s.Wires[k]
	if !w.DropV.Set || !out.Drop.Set || w.Amps.V <= 0 {
		return
	}
	lost := w.DropV.V - out.Drop.V
	switch {
	case lost > contactDrop+unit.Volt(slack)*out.Drop.V:
		s.Say(sheet.Warn, "wire.measured", w.ID,
			fmt.Sprintf("You measured %s V, and the wire accounts for %s V at %s A. The other %s V are lost in contacts, crimps, splices "+
				"or the ground point, which get %s W of heat",
				unit.Fixed(w.DropV.V, 2), unit.Fixed(out.Drop.V, 2), sheet.PlainAmps(w.Amps.V),
				unit.Fixed(lost, 2),
				unit.Fixed(float64(lost)*float64(w.Amps.V), 0)))
	case w.DropV.V < out.Drop.V/2:
		s.Say(sheet.Note, "wire.measured", w.ID,
			fmt.Sprintf("You measured %s V, but the wire alone drops %s V at %s A: did it carry that current?",
				unit.Fixed(w.DropV.V, 2), unit.Fixed(out.Drop.V, 2), sheet.PlainAmps(w.Amps.V)))
	}
}
