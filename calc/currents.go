package calc

import (
	"encoding/binary"
	"fmt"
	"math"
	"runtime"
	"slices"
	"strings"
	"sync"
	"sync/atomic"

	"contralay/calc/derate"
	"contralay/calc/heat"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// Warm is the heat of a branch in balance, at the currents entered.
type Warm struct {
	Known    bool
	HottestC unit.Celsius // the hottest conductor
	Hottest  string       // its wire
	SurfaceC unit.Celsius
	BundleC  unit.Celsius   // under the sheath
	ShellC   []unit.Celsius // at the inner face of each layer
	WattPerM unit.WattPerMetre
	wires    []warmWire
	key      string
}

// warmWire is one conductor of a branch.
type warmWire struct {
	at     int // wire
	layer  int
	c      unit.Celsius
	limit  unit.Ampere // that brings it to its rating, others as entered, with the margin
	heated bool        // limit is known
}

// Limit is one thing that bounds a wire's current.
type Limit struct {
	Amps unit.Ampere
	By   string // "heat in T1", "contact P1:A"
	Feed bool   // what its device leaves it
	catalogue.Origin
}

// currents works out how warm each branch gets, what each wire may carry and what
// bounds it, and says where more is asked of it.
func (s *Sheet) currents(prior *Sheet) {
	through := make([][]int, len(s.H.Branches))
	for k := range s.Wires {
		for _, b := range s.Wires[k].Path {
			through[b] = append(through[b], k)
		}
	}
	for i := range s.Branches {
		s.warm(i, prior)
	}
	// What each wire meets on its way is gathered branch by branch, once.
	met := make([][]hotPlace, len(s.H.Wires))
	factor := make([]bundled, len(s.H.Branches))
	for i := range s.Branches {
		factor[i] = s.bundle(i, through[i])
		warm := s.Branches[i].Warm.wires
		for n := range warm {
			met[warm[n].at] = append(met[warm[n].at], hotPlace{i, &warm[n]})
		}
	}
	for k := range s.H.Wires {
		w := &s.Wires[k]
		best := Limit{}
		w.limits = s.limits(k, through, factor, met[k])
		for n, l := range w.limits {
			if best.By == "" || l.Amps < best.Amps {
				best, w.BoundAt = l, n
			}
		}
		w.Bound, w.Bounded = best, best.By != ""
		for _, b := range w.Path {
			for _, c := range met[k] {
				if c.branch == b && s.rates(k) && (!w.HottestKnown || c.w.c > w.HottestC) {
					w.HottestC, w.HottestKnown, w.HottestIn = c.w.c, true, s.H.Branches[b].ID
				}
			}
		}
		s.pulses(k)
		// What its device leaves it is said of the device.
		if l, ok := s.passed(k); ok {
			s.say(atMost(l.Standing, Stop), "wire.current", s.H.Wires[k].ID, fmt.Sprintf("carries %s A and may carry %s: %s", plainAmps(w.Heats), plainAmps(l.Amps), l.By))
		} else if l, ok := s.peaks(k); ok {
			s.say(Note, "wire.peak", s.H.Wires[k].ID, fmt.Sprintf("passes %s A for %s s through %s, which is for %s A steadily: ask its maker", plainAmps(s.H.Wires[k].Amps.V), plain(float64(s.H.Wires[k].OnS.V)), l.By, plainAmps(l.Amps)))
		}
	}
}

// passed is the limit a wire passes that weighs most: one that may stop before one from
// memory, the least of each.
func (s *Sheet) passed(k int) (worst Limit, ok bool) {
	for _, l := range s.Wires[k].limits {
		if l.Feed || s.Wires[k].Heats <= l.Amps {
			continue
		}
		a, b := atMost(l.Standing, Stop), atMost(worst.Standing, Stop)
		if !ok || a > b || a == b && l.Amps < worst.Amps {
			worst, ok = l, true
		}
	}
	return worst, ok
}

// peaks is a contact or splice that a load which comes and goes passes while it is on.
func (s *Sheet) peaks(k int) (Limit, bool) {
	w := &s.H.Wires[k]
	if !DutyOf(w).Comes() {
		return Limit{}, false
	}
	for _, l := range s.Wires[k].limits {
		if (strings.HasPrefix(l.By, "contact") || strings.HasPrefix(l.By, "splice")) && w.Amps.V > l.Amps {
			return l, true
		}
	}
	return Limit{}, false
}

// hotPlace is a wire as a source of heat in a branch.
type hotPlace struct {
	branch int
	w      *warmWire
}

// bundled is the factors of a branch, where there are any.
type bundled struct {
	f, high unit.Ratio
	says    string
	ok      bool
}

// plainAmps writes a current to 0.1 A, without noughts that say nothing.
func plainAmps(v unit.Ampere) string {
	t := unit.Fixed(float64(v), 1)
	if len(t) > 2 && t[len(t)-2:] == ".0" {
		return t[:len(t)-2]
	}
	return t
}

// limits is all that bounds the current of a wire, in the order of its way.
func (s *Sheet) limits(k int, through [][]int, factor []bundled, met []hotPlace) []Limit {
	w, mw := &s.Wires[k], &s.H.Wires[k]
	if !w.Known || !s.rates(k) {
		return nil
	}
	var out []Limit
	for _, text := range []string{mw.From.V, mw.To.V} {
		e, ok := s.X.End(text)
		if at, is := s.X.Splice[e.Splice]; ok && is {
			if p, known := s.Cat.Splice(s.H.Splices[at].Part.V); known && p.MaxA > 0 {
				out = append(out, Limit{Amps: p.MaxA, By: "splice " + text, Origin: p.Origin})
			}
		}
		t, known := s.X.Termination[e.Termination]
		if !ok || !known {
			continue
		}
		if c, is := s.Cat.Contact(s.Terms[t].State[e.Cavity].Size); is && c.MaxA > 0 {
			out = append(out, Limit{Amps: c.MaxA, By: "contact " + text + ", size " + c.Size, Origin: c.Origin})
		}
	}
	for _, b := range w.Path {
		id := s.H.Branches[b].ID
		if a, by, from, ok := s.derated(k, b, len(through[b]), factor[b]); ok {
			out = append(out, Limit{Amps: a, By: by, Origin: from})
		}
		for _, c := range met {
			if c.branch == b && c.w.heated {
				// The balance rests on conductivities and an emissivity from memory.
				out = append(out, Limit{Amps: c.w.limit, By: "heat in " + id, Origin: catalogue.Origin{Source: "heat balance", Standing: catalogue.Memory}})
			}
		}
	}
	if l, ok := s.feedLimit(k); ok {
		out = append(out, l)
	}
	return out
}

// derated is what the public tables give a wire in a branch, by the table where it
// holds, else by the method, and how far that can be trusted; false where neither has
// a value.
func (s *Sheet) derated(k, b, through int, factor bundled) (unit.Ampere, string, catalogue.Origin, bool) {
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
	return free * unit.Ampere(factor.f*factor.high), factor.says, from, true
}

// bundle is the bundle factor of a branch and that of thin air, and what is said of
// them, once for all its wires.
func (s *Sheet) bundle(b int, through []int) bundled {
	f, ok := s.bundleFactor(b, through)
	high, up := derate.Altitude(unit.Millimetre(s.Limits.AltitudeM * 1000))
	if !ok || !up {
		return bundled{}
	}
	says := "free air and bundle factor " + unit.Fixed(float64(f), 2)
	if high < 1 {
		says += fmt.Sprintf(", %s m up", unit.Fixed(float64(s.Limits.AltitudeM), 0))
	}
	return bundled{f, high, says + " in " + s.H.Branches[b].ID, true}
}

// bundleFactor is that of the lowest curve whose share of the capacity is enough for
// the currents entered.
func (s *Sheet) bundleFactor(b int, through []int) (unit.Ratio, bool) {
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
func (s *Sheet) warm(i int, prior *Sheet) {
	out := &s.Branches[i]
	out.Warm = Warm{}
	if len(out.Layers) == 0 || out.OverMM <= 0 || s.Unrated {
		return
	}
	b, wires, ok := s.heatOf(i)
	if !ok {
		return
	}
	key := s.warmKey(b, wires)
	if prior != nil && i < len(prior.Branches) && prior.Branches[i].Warm.key == key && prior.Branches[i].Warm.Known {
		out.Warm = prior.Branches[i].Warm
		for n := range out.Warm.wires { // the same wires, which may stand elsewhere in the file now
			if out.Warm.wires[n].at != wires[n].at {
				out.Warm.wires = slices.Clone(out.Warm.wires)
				for m := range wires {
					out.Warm.wires[m].at = wires[m].at
				}
				break
			}
		}
		out.Warm.nameHottest(s.H)
		return
	}
	r, ok := b.Solve(nil)
	if !ok {
		s.say(Warn, "heat.none", s.H.Branches[i].ID, "no steady temperature below 600 C at these currents")
		return
	}
	w := Warm{Known: true, SurfaceC: r.Surface, BundleC: r.Bundle, ShellC: r.Shells, WattPerM: r.Heat, key: key}
	single := len(wires) == 1 && len(out.Layers) == 1
	limits := s.warmLimits(b, r, wires, single)
	for n, c := range wires {
		m := warmWire{at: c.at, layer: c.layer, c: c.temperature(r, b, single)}
		if s.Wires[c.at].Entry.RatedC > 0 {
			m.limit, m.heated = limits[n], true
		}
		w.wires = append(w.wires, m)
	}
	if len(w.wires) > 0 {
		w.nameHottest(s.H)
		out.Warm = w
	}
}

// warmLimits is the current that brings each rated conductor of a bundle in balance to
// its rating, by the shop's margin. Conductors that are alike are worked out once, and
// each layer beside the others: they are most of what a key costs.
func (s *Sheet) warmLimits(b heat.Bundle, r heat.Result, wires []conductor, single bool) []unit.Ampere {
	type like struct {
		layer                   int
		amps, ohm, d, dc, rated float64
	}
	hottest := s.hottestRating(wires)
	out := make([]unit.Ampere, len(wires))
	beside(len(b.Shells), func(layer int) {
		var v *curve
		known := map[like]unit.Ampere{}
		for n, c := range wires {
			rated := s.Wires[c.at].Entry.RatedC
			if c.layer != layer || rated <= 0 {
				continue
			}
			l := like{c.layer, float64(c.amps), float64(c.ohm), float64(c.d), float64(c.dc), float64(rated)}
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

// beside does n things that do not touch each other on as many processors as there are.
// The last come first: the layers outside hold most.
func beside(n int, do func(k int)) {
	next := atomic.Int64{}
	next.Store(int64(n))
	var all sync.WaitGroup
	for range min(n, runtime.GOMAXPROCS(0)) {
		all.Go(func() {
			for k := next.Add(-1); k >= 0; k = next.Add(-1) {
				do(int(k))
			}
		})
	}
	all.Wait()
}

// nameHottest finds the hottest conductor; the first of equals.
func (w *Warm) nameHottest(h *model.Harness) {
	w.HottestC = unit.Celsius(math.Inf(-1))
	for _, c := range w.wires {
		if c.c > w.HottestC {
			w.HottestC, w.Hottest = c.c, h.Wires[c.at].ID
		}
	}
}

// hottestRating is the highest rating of the wires.
func (s *Sheet) hottestRating(wires []conductor) unit.Celsius {
	t := unit.Celsius(0)
	for _, c := range wires {
		t = max(t, s.Wires[c.at].Entry.RatedC)
	}
	return t
}

// conductor is one wire as a source of heat.
type conductor struct {
	at, layer int
	amps      unit.Ampere
	ohm       unit.OhmPerKilometre // at 20 °C, per km of branch: lay loss is in it
	d, dc     unit.Millimetre
	count     int // conductors in its layer
}

// q20 is the heat a current makes in a metre of branch at 20 °C.
func (c conductor) q20(amps float64) float64 { return amps * amps * float64(c.ohm) / 1000 }

// temperature is that of the conductor: its shell's, and what it makes more than the
// mean of its shell across its own insulation; alone, all it makes.
func (c conductor) temperature(r heat.Result, b heat.Bundle, single bool) unit.Celsius {
	t := r.Shells[c.layer]
	grow := (234.5 + float64(t)) / 254.5
	own := c.q20(float64(c.amps)) * grow
	if single {
		return r.Bundle + heat.Rise(unit.WattPerMetre(own), c.d, c.dc)
	}
	mean := float64(b.Shells[c.layer].At20) * grow / float64(max(c.count, 1))
	return t + heat.Rise(unit.WattPerMetre(math.Max(0, own-mean)), c.d, c.dc)
}

// heatOf is a branch as shells of heat, and its conductors; false where a wire's
// resistance or the layers are not known.
func (s *Sheet) heatOf(i int) (heat.Bundle, []conductor, bool) {
	out := &s.Branches[i]
	b := heat.Bundle{Ambient: out.Ambient, Pressure: heat.Pressure(unit.Millimetre(s.Limits.AltitudeM * 1000))}
	var wires []conductor
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
			c, ok := s.X.Component(m.ID)
			if !ok {
				continue // filler
			}
			ids := []int{c.At}
			twist := unit.Ratio(1)
			if c.Unit {
				ids, twist = nil, s.Units[c.At].Loss
				for _, id := range s.H.Units[c.At].Wires {
					if w, ok := s.X.Wire[id]; ok {
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
				n := conductor{at: w, layer: k, amps: s.Wires[w].Heats, ohm: e.OhmPerKm * unit.OhmPerKilometre(m.Loss*twist), d: d, dc: min(conductorOf(e), d*0.95)}
				sh.At20 += unit.WattPerMetre(n.q20(float64(n.amps)))
				copper, area = copper+float64(n.dc*n.dc), area+float64(d*d)
				wires = append(wires, n)
			}
		}
		for n := first; n < len(wires); n++ {
			wires[n].count = len(wires) - first
		}
		b.Shells = append(b.Shells, sh)
	}
	if len(wires) == 0 || area <= 0 {
		return b, nil, false
	}
	b.Fill = unit.Ratio(fill / float64(out.OverMM*out.OverMM))
	b.WireK = heat.Wire(unit.Ratio(copper/area), heat.InsulationK)
	if v := out.Sheath.Verdict; out.Sheath.Known && v.Wraps && v.OverMM > out.OverMM {
		b.SheathMM = v.OverMM
	}
	return b, wires, true
}

// conductorOf is a conductor's diameter: as the catalogue has it, else that of its
// copper packed as strands pack, some three quarters.
func conductorOf(e catalogue.Wire) unit.Millimetre {
	if e.ConductorMM > 0 {
		return e.ConductorMM
	}
	return unit.Millimetre(math.Sqrt(4 / math.Pi * float64(e.AreaMM2) / 0.75))
}

// warmKey is everything the heat of a branch rests on, as bytes.
func (s *Sheet) warmKey(b heat.Bundle, wires []conductor) string {
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
		buf = append(buf, byte(c.layer))
		num(float64(c.amps))
		num(float64(c.ohm))
		num(float64(c.d))
		num(float64(c.dc))
		num(float64(s.Wires[c.at].Entry.RatedC))
	}
	return string(buf)
}

// ConductorC is how warm the hottest conductor of a component gets in a branch; false
// where it has none or the heat is not known.
func (s *Sheet) ConductorC(branch int, id string) (t unit.Celsius, ok bool) {
	for _, c := range s.Branches[branch].Warm.wires {
		w := s.H.Wires[c.at].ID
		if u, in := s.X.UnitOf[w]; in {
			w = s.H.Units[u].ID
		}
		if w == id && (!ok || c.c > t) {
			t, ok = c.c, true
		}
	}
	return t, ok
}
