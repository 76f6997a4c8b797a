package sheet

import (
	"math"
	"runtime"
	"sync"
	"sync/atomic"

	"contralay/calc/formula/heat"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// Warm is the heat of a branch in balance, at the currents entered: degrees Celsius, and watts
// per metre of it. The zero value is a branch whose heat is not known.
type Warm struct {
	Known    bool
	HottestC unit.Celsius // the hottest conductor
	Hottest  string       // its wire
	SurfaceC unit.Celsius
	UnderC   unit.Celsius            // the sheath where it is warmest
	FillerC  model.Opt[unit.Celsius] // the warmest filler; unset where there is none
	WattPerM unit.WattPerMetre
	Wires    []WarmWire
	Endless  []WarmWire // instead, where no temperature is steady at the currents entered: their limits alone
	Key      string     // everything it rests on
	Shape    string     // and what the rays rest on
	Rays     *heat.Rays // what each piece of the section sees
}

// Bounding is the conductors with their limits, whether or not a temperature is steady.
func (w *Warm) Bounding() []WarmWire {
	if len(w.Endless) > 0 {
		return w.Endless
	}
	return w.Wires
}

// WarmWire is one conductor in the heat of a branch, with its temperature C there.
type WarmWire struct {
	Wire  int // its index in the harness
	Layer int
	C     unit.Celsius
	Limit model.Opt[unit.Ampere] // that brings it to its rating, others as entered, with the margin
}

// Limit is one thing that bounds a wire's current, r.m.s. amperes, and where that is. The zero
// value, without a place, bounds nothing.
type Limit struct {
	Amps  unit.Ampere
	Where string // "heat in T1", "contact P1:A"
	Feed  bool   // what its device leaves it
	catalogue.Origin
}

// PlainAmps writes a current to 0.1 A, without noughts that say nothing.
func PlainAmps(v unit.Ampere) string {
	t := unit.Fixed(v, 1)
	if len(t) > 2 && t[len(t)-2:] == ".0" {
		return t[:len(t)-2]
	}
	return t
}

// Beside does n things that do not touch each other on as many processors as there are.
// The last come first: the layers outside hold most.
func Beside(n int, do func(k int)) {
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

// ConductorOf is a conductor's diameter: as the catalogue has it, else that of its
// copper packed as strands pack, some three quarters.
func ConductorOf(e catalogue.Wire) unit.Millimetre {
	if e.ConductorMM > 0 {
		return e.ConductorMM
	}
	return unit.Millimetre(math.Sqrt(4 / math.Pi * float64(e.AreaMM2) / 0.75))
}
