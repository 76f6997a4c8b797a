package current

import (
	"encoding/binary"
	"fmt"
	"math"
	"slices"
	"strings"

	"contralay/calc/formula/derate"
	"contralay/calc/formula/heat"
	wiresphase "contralay/calc/phase/wires"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
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
	factor := make([]derating, len(s.H.Branches))
	for i := range s.Branches {
		factor[i] = DeratingOf(s, i, through[i])
		warm := s.Branches[i].Warm.Wires
		for n := range warm {
			met[warm[n].Wire] = append(met[warm[n].Wire], hotPlace{i, &warm[n]})
		}
	}
	for k := range s.H.Wires {
		w := &s.Wires[k]
		best := sheet.Limit{}
		w.Limits = limits(s, k, through, factor, met[k])
		for n, l := range w.Limits {
			if best.Where == "" || l.Amps < best.Amps {
				best, w.BoundAt = l, n
			}
		}
		w.Bound = model.Opt[sheet.Limit]{V: best, Set: best.Where != ""}
		for _, b := range w.Path {
			for _, c := range met[k] {
				if c.branch == b && wiresphase.Rates(s, k) && (!w.HottestC.Set || c.w.C > w.HottestC.V) {
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
}

// derating is the factors of a branch, where there are any.
type derating struct {
	F, high unit.Ratio
	says    string
	ok      bool
}

// limits is all that bounds the current of a wire, in the order of its way.
func limits(s *sheet.Sheet, k int, through [][]int, factor []derating, met []hotPlace) []sheet.Limit {
	w, mw := &s.Wires[k], &s.H.Wires[k]
	if !w.Known || !wiresphase.Rates(s, k) {
		return nil
	}
	var out []sheet.Limit
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
		id := s.H.Branches[b].ID
		if a, words, from, ok := Derated(s, k, b, len(through[b]), factor[b]); ok {
			out = append(out, sheet.Limit{Amps: a, Where: words, Origin: from})
		}
		for _, c := range met {
			if c.branch == b && c.w.Limit.Set {
				// The balance rests on conductivities and an emissivity from memory.
				out = append(out, sheet.Limit{Amps: c.w.Limit.V, Where: "heat in " + id,
					Origin: catalogue.Origin{Source: "heat balance", Standing: catalogue.Memory}})
			}
		}
	}
	if l, ok := feedLimit(s, k); ok {
		out = append(out, l)
	}
	return out
}

// Derated is what the public tables give a wire in a branch, by the table where it
// holds, else by the method, and how far that can be trusted; false where neither has
// a value.
func Derated(s *sheet.Sheet, k, b, through int, factor derating) (unit.Ampere, string, catalogue.Origin, bool) {
	from := catalogue.Origin{Source: "AC 43.13-1B table 11-9", Standing: catalogue.Published}
	e, air := s.Wires[k].Entry, s.Branches[b].Ambient
	size := catalogue.CanonicalSize(e.Size)
	if a, ok := derate.Table(size, e.RatedC, through, air); ok {
		return a, "table 11-9 (33 wires or more at 70 C, 20 % of them loaded) in " + s.H.Branches[b].ID, from, true
	}
	free, ok := derate.FreeAir(size, e.RatedC-air)
	if !ok {
		return 0, "", from, false
	}
	if !factor.ok {
		return 0, "", from, false
	}
	from.Source = "AC 43.13-1B, 11-66 to 11-69"
	if !derate.Read(size, through) || factor.high < 1 {
		from.Standing = catalogue.Memory
	}
	return free * unit.Ampere(factor.F*factor.high), factor.says, from, true
}

// DeratingOf is the bundle factor of a branch and that of thin air, and what is said of
// them, once for all its wires.
func DeratingOf(s *sheet.Sheet, b int, through []int) derating {
	f, ok := bundleFactor(s, b, through)
	high, up := derate.Altitude(unit.Millimetre(s.Limits.AltitudeM * 1000))
	if !ok || !up {
		return derating{}
	}
	says := "free air and bundle factor " + unit.Fixed(f, 2)
	if high < 1 {
		says += fmt.Sprintf(", %s m up", unit.Fixed(s.Limits.AltitudeM, 0))
	}
	return derating{f, high, says + " in " + s.H.Branches[b].ID, true}
}

// bundleFactor is that of the lowest curve whose share of the capacity is enough for
// the currents entered.
func bundleFactor(s *sheet.Sheet, b int, through []int) (unit.Ratio, bool) {
	used, all := 0.0, 0.0
	for _, k := range through {
		e := s.Wires[k].Entry
		free, ok := derate.FreeAir(catalogue.CanonicalSize(e.Size), e.RatedC-s.Branches[b].Ambient)
		if !ok {
			continue // its share cannot be told: neither does it count as capacity
		}
		used, all = used+float64(s.Wires[k].Heats), all+float64(free)
	}
	for share := unit.Ratio(0.2); share < 1.01; share += 0.2 {
		f, ok := derate.Bundle(len(through), min(share, 1))
		if !ok {
			return 0, false
		}
		if all > 0 && used <= all*float64(f)*float64(share)+1e-9 {
			return f, true
		}
	}
	return derate.Bundle(len(through), 1)
}

// warm balances the heat of a branch, or takes the prior's where nothing changed.
func warm(s *sheet.Sheet, i int, prior *sheet.Sheet) {
	out := &s.Branches[i]
	out.Warm = sheet.Warm{}
	if len(out.Layers) == 0 || out.OverMM <= 0 || s.Unrated {
		return
	}
	b, wires, ok := HeatOf(s, i)
	if !ok {
		return
	}
	key := warmKey(s, b, wires)
	if prior != nil && i < len(prior.Branches) && prior.Branches[i].Warm.Key == key && prior.Branches[i].Warm.Known {
		out.Warm = prior.Branches[i].Warm
		for n := range out.Warm.Wires { // the same wires, which may stand elsewhere in the file now
			if out.Warm.Wires[n].Wire != wires[n].Wire {
				out.Warm.Wires = slices.Clone(out.Warm.Wires)
				for m := range wires {
					out.Warm.Wires[m].Wire = wires[m].Wire
				}
				break
			}
		}
		nameHottest(&out.Warm, s.H)
		return
	}
	r, ok := b.Solve(nil)
	if !ok {
		s.Say(sheet.Warn, "heat.none", s.H.Branches[i].ID, "no steady temperature below 600 C at these currents")
		return
	}
	w := sheet.Warm{Known: true, SurfaceC: r.Surface, BundleC: r.Bundle, ShellC: r.Shells, WattPerM: r.Heat, Key: key}
	single := len(wires) == 1 && len(out.Layers) == 1
	limits := warmLimits(s, b, r, wires, single)
	for n, c := range wires {
		m := sheet.WarmWire{Wire: c.Wire, Layer: c.Layer, C: c.temperature(r, b, single)}
		if s.Wires[c.Wire].Entry.RatedC > 0 {
			m.Limit = model.Some(limits[n])
		}
		w.Wires = append(w.Wires, m)
	}
	if len(w.Wires) > 0 {
		nameHottest(&w, s.H)
		out.Warm = w
	}
}

// warmLimits is the current that brings each rated conductor of a bundle in balance to
// its rating, by the shop's margin. Conductors that are alike are worked out once, and
// each layer beside the others: they are most of what a key costs.
func warmLimits(s *sheet.Sheet, b heat.Bundle, r heat.Result, wires []Conductor, single bool) []unit.Ampere {
	type like struct {
		layer                   int
		amps, ohm, d, dc, rated float64
	}
	hottest := hottestRating(s, wires)
	out := make([]unit.Ampere, len(wires))
	sheet.Beside(len(b.Shells), func(layer int) {
		var v *curve
		known := map[like]unit.Ampere{}
		for n, c := range wires {
			rated := s.Wires[c.Wire].Entry.RatedC
			if c.Layer != layer || rated <= 0 {
				continue
			}
			l := like{c.Layer, float64(c.Amps), float64(c.ohm), float64(c.D), float64(c.Dc), float64(rated)}
			a, met := known[l]
			if !met {
				if v == nil {
					v = curveOf(b, r, layer, hottest)
				}
				a = c.most(v, b, single, rated) * unit.Ampere(s.Limits.BundleMargin)
				known[l] = a
			}
			out[n] = a
		}
	})
	return out
}

// nameHottest finds the hottest conductor; the first of equals.
func nameHottest(w *sheet.Warm, h *model.Harness) {
	w.HottestC = unit.Celsius(math.Inf(-1))
	for _, c := range w.Wires {
		if c.C > w.HottestC {
			w.HottestC, w.Hottest = c.C, h.Wires[c.Wire].ID
		}
	}
}

// hottestRating is the highest rating of the wires.
func hottestRating(s *sheet.Sheet, wires []Conductor) unit.Celsius {
	t := unit.Celsius(0)
	for _, c := range wires {
		t = max(t, s.Wires[c.Wire].Entry.RatedC)
	}
	return t
}

// Conductor is one wire as a source of heat.
type Conductor struct {
	Wire, Layer int
	Amps        unit.Ampere
	ohm         unit.OhmPerKilometre // at 20 °C, per km of branch: lay loss is in it
	D, Dc       unit.Millimetre
	Count       int // conductors in its layer
}

// Q20 is the heat a current makes in a metre of branch at 20 °C.
func (c Conductor) Q20(amps float64) float64 { return amps * amps * float64(c.ohm) / 1000 }

// temperature is that of the conductor: its shell's, and what it makes more than the
// mean of its shell across its own insulation; alone, all it makes.
func (c Conductor) temperature(r heat.Result, b heat.Bundle, single bool) unit.Celsius {
	t := r.Shells[c.Layer]
	grow := (234.5 + float64(t)) / 254.5
	ownHeat := c.Q20(float64(c.Amps)) * grow
	if single {
		return r.Bundle + heat.Rise(unit.WattPerMetre(ownHeat), c.D, c.Dc)
	}
	mean := float64(b.Shells[c.Layer].At20) * grow / float64(max(c.Count, 1))
	return t + heat.Rise(unit.WattPerMetre(math.Max(0, ownHeat-mean)), c.D, c.Dc)
}

// HeatOf is a branch as shells of heat, and its conductors; false where a wire's
// resistance or the layers are not known.
func HeatOf(s *sheet.Sheet, i int) (heat.Bundle, []Conductor, bool) {
	out := &s.Branches[i]
	b := heat.Bundle{Ambient: out.Ambient, Pressure: heat.Pressure(unit.Millimetre(s.Limits.AltitudeM * 1000))}
	var wires []Conductor
	fill, copper, area := 0.0, 0.0, 0.0
	for k := range out.Layers {
		l := &out.Layers[k]
		sh := heat.Shell{OuterMM: l.OverMM}
		if k > 0 && sh.OuterMM <= b.Shells[k-1].OuterMM {
			return b, nil, false
		}
		first := len(wires)
		for _, m := range l.Members {
			fill += float64(m.D * m.D)
			c, ok := s.Index.Component(m.ID)
			if !ok {
				continue // filler
			}
			ids := []int{c.At}
			twist := unit.Ratio(1)
			if c.Unit {
				ids, twist = nil, s.Units[c.At].Loss
				for _, id := range s.H.Units[c.At].Wires {
					if w, ok := s.Index.Wire[id]; ok {
						ids = append(ids, w)
					}
				}
			}
			for _, w := range ids {
				e := s.Wires[w].Entry
				if !s.Wires[w].Known || e.OhmPerKm <= 0 {
					return b, nil, false
				}
				d := s.Wires[w].Dia.Nominal
				n := Conductor{Wire: w, Layer: k, Amps: s.Wires[w].Heats, ohm: e.OhmPerKm * unit.OhmPerKilometre(m.Loss*twist), D: d,
					Dc: min(sheet.ConductorOf(e), d*0.95)}
				sh.At20 += unit.WattPerMetre(n.Q20(float64(n.Amps)))
				copper, area = copper+float64(n.Dc*n.Dc), area+float64(d*d)
				wires = append(wires, n)
			}
		}
		for n := first; n < len(wires); n++ {
			wires[n].Count = len(wires) - first
		}
		b.Shells = append(b.Shells, sh)
	}
	if len(wires) == 0 || area <= 0 {
		return b, nil, false
	}
	b.Fill = unit.Ratio(fill / float64(out.OverMM*out.OverMM))
	b.WireK = heat.Wire(unit.Ratio(copper/area), heat.InsulationK)
	if v := out.Sheath.Verdict; out.Sheath.Tube.Set && v.Wraps && v.OverMM > out.OverMM {
		b.SheathMM = v.OverMM
	}
	return b, wires, true
}

// warmKey is everything the heat of a branch rests on, as bytes.
func warmKey(s *sheet.Sheet, b heat.Bundle, wires []Conductor) string {
	buf := make([]byte, 0, 32*len(wires)+128)
	num := func(v float64) { buf = binary.LittleEndian.AppendUint64(buf, math.Float64bits(v)) }
	num(float64(b.Ambient))
	num(b.Pressure)
	num(float64(b.SheathMM))
	num(float64(b.WireK))
	num(float64(b.Fill))
	num(float64(s.Limits.BundleMargin))
	for _, sh := range b.Shells {
		num(float64(sh.OuterMM))
		num(float64(sh.At20))
	}
	for _, c := range wires {
		buf = append(buf, byte(c.Layer))
		num(float64(c.Amps))
		num(float64(c.ohm))
		num(float64(c.D))
		num(float64(c.Dc))
		num(float64(s.Wires[c.Wire].Entry.RatedC))
	}
	return string(buf)
}

// ConductorC is how warm the hottest conductor of a component gets in a branch; false
// where it has none or the heat is not known.
func ConductorC(s *sheet.Sheet, branch int, id string) (t unit.Celsius, ok bool) {
	for _, c := range s.Branches[branch].Warm.Wires {
		w := s.H.Wires[c.Wire].ID
		if u, in := s.Index.UnitOf[w]; in {
			w = s.H.Units[u].ID
		}
		if w == id && (!ok || c.C > t) {
			t, ok = c.C, true
		}
	}
	return t, ok
}
