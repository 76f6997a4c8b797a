package add

import (
	"fmt"
	"math"
	"strconv"

	"contralay/calc/formula/derate"
	"contralay/calc/formula/wire"
	"contralay/calc/phase/wires"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// What the sizes to begin with are chosen by: the column of wires for 150 °C of AC 43.13-1B
// table 11-9, in 70 °C air, among as many wires as the table was drawn up for.
const (
	ratedC     unit.Celsius = 150
	bundleOf                = 33
	leastPower              = "22" // the least size for power: practice, see the kinds
)

// inTurnBelow is how short a period is where devices fire one after another, as injectors and
// coils do: two turns of an engine that idles at 500 rpm take 0.24 s. Longer ones may fall
// together.
const inTurnBelow unit.Second = 0.25

// shared is what flows in a wire that feeds n like devices, entered like one device: while it is
// on, how long, how often, and in between.
type shared struct {
	amps, rest   unit.Ampere
	onS, periodS unit.Second // 0: always on
	words        string      // how it was worked out
}

// share works out the wire that feeds n like devices. What is always on adds up, and so does what
// may come on together. What fires in turn, evenly spaced, for x = n · on ÷ period: f of them are
// on all the time, f being the whole part of x, and one more for the rest of x.
func share(c catalogue.DeviceCavity, n int) shared {
	if n == 1 || c.OnS == 0 || c.PeriodS >= inTurnBelow {
		total := c.Amps * unit.Ampere(n)
		return shared{amps: total, rest: c.RestA * unit.Ampere(n), onS: c.OnS, periodS: c.PeriodS,
			words: fmt.Sprintf("%d times %s A, %s A", n, plainAmps(c.Amps), plainAmps(total))}
	}
	x := float64(n) * float64(c.OnS) / float64(c.PeriodS)
	f := math.Floor(x)
	level := func(on float64) unit.Ampere { return c.Amps*unit.Ampere(on) + c.RestA*unit.Ampere(float64(n)-on) }
	out := shared{amps: level(f + 1), rest: level(f), periodS: c.PeriodS / unit.Second(n)}
	out.onS = out.periodS * unit.Second(x-f)
	most := f + 1
	const sliver = 1e-6 // of a period: it is on all the time, or never
	if x-f < sliver {
		out, most = shared{amps: out.rest}, f
	}
	out.words = fmt.Sprintf("%d fire in turn, at most %s at once with %s A each, RMS current %s A", n, unit.Fixed(most, 0),
		plainAmps(c.Amps),
		plainAmps(unit.Ampere(math.Round(float64(out.rms())*100)/100)))
	return out
}

// rms is what the wire carries as heat sees it.
func (s shared) rms() unit.Ampere {
	w := model.Wire{Amps: model.Some(s.amps)}
	s.put(&w)
	d := wires.DutyOf(&w)
	return d.RMS()
}

// put writes what flows into a wire.
func (s shared) put(w *model.Wire) {
	if s.amps > 0 {
		w.Amps = model.Some(unit.Ampere(rounded(float64(s.amps))))
	}
	if s.onS > 0 {
		w.OnS, w.PeriodS = model.Some(unit.Second(rounded(float64(s.onS)))), model.Some(unit.Second(rounded(float64(s.periodS))))
		if s.rest > 0 {
			w.RestA = model.Some(unit.Ampere(rounded(float64(s.rest))))
		}
	}
}

// rounded is a figure to six digits, which is how a file is read by a person.
func rounded(v float64) float64 {
	if v == 0 {
		return 0
	}
	scale := math.Pow(10, 5-math.Floor(math.Log10(math.Abs(v))))
	return math.Round(v*scale) / scale
}

// feedSize is the smallest size of the table that bears a current, not thinner than what one
// device's own wire begins with. bears is false where the thickest does not.
func feedSize(amps unit.Ampere, least string) (size string, allowed unit.Ampere, bears bool) {
	thin, ok := catalogue.AWGNumber(least)
	if !ok {
		thin, _ = catalogue.AWGNumber(leastPower)
	}
	for _, text := range tableSizes {
		n, _ := catalogue.AWGNumber(text)
		row, known := derate.SizeOf(text, 0)
		if !known || n > thin {
			continue
		}
		count := bundleOf
		allowed, _, ok = derate.Table(row, ratedC, count, derate.TableAmbient)
		size = text
		if ok && allowed >= amps {
			return size, allowed, true
		}
	}
	return size, allowed, false
}

// tableSizes are the sizes that the table has, thin to thick.
var tableSizes = []string{"24", "22", "20", "18", "16", "14", "12", "10", "8", "6", "4", "2", "1", "1/0", "2/0", "3/0", "4/0"}

// made is a size as a specification has it: the same, else the smallest that has as much copper,
// else the same size of another specification.
func (m *maker) made(spec, size string) wireSize {
	if _, ok := m.s.Cat.Wire(spec, size); ok {
		return wireSize{spec, size, ""}
	}
	want, known := areaOf(size)
	sizes := m.s.Cat.Sizes(spec)
	if len(sizes) == 0 {
		return wireSize{spec, size, fmt.Sprintf("no catalogue has %s: its diameter and its copper are not known", spec)}
	}
	const near = 0.95 // gauges and metric sizes meet within a few per cent
	for _, other := range sizes {
		if e, ok := m.s.Cat.Wire(spec, other); known && ok && float64(e.AreaMM2) >= near*float64(want) {
			return wireSize{spec, other, fmt.Sprintf("%s has no %s: the next thicker, %s, is taken", spec, model.SizeWords(size),
				model.SizeWords(other))}
		}
	}
	mine, _ := m.s.Cat.Wire(spec, sizes[len(sizes)-1])
	best, found := catalogue.Wire{}, false
	for _, other := range m.s.Cat.Specs() {
		e, ok := m.s.Cat.Wire(other, size)
		if ok && (!found || better(e, best, mine)) {
			best, found = e, true
		}
	}
	if !found {
		return wireSize{spec, size, fmt.Sprintf("no catalogue has %s in %s", model.SizeWords(size), spec)}
	}
	return wireSize{best.Spec, size, fmt.Sprintf("%s has no %s: %s is taken", spec, model.SizeWords(size), best.Spec)}
}

// better reports whether a wire serves better in the place of a specification than another: for
// as much heat, then of the same plating, which decides what it is crimped with and how hard it
// holds, then the thinner.
func better(a, b, like catalogue.Wire) bool {
	hotA, hotB := a.RatedC >= like.RatedC, b.RatedC >= like.RatedC
	if hotA != hotB {
		return hotA
	}
	if plateA, plateB := a.Plating == like.Plating, b.Plating == like.Plating; plateA != plateB {
		return plateA
	}
	return a.OverMM < b.OverMM
}

// areaOf is the copper of a size.
func areaOf(size string) (unit.SquareMM, bool) {
	if v, ok := catalogue.MetricArea(size); ok {
		return unit.SquareMM(v), true
	}
	awg, err := wire.ParseAWG(size)
	if err != nil {
		return 0, false
	}
	return awg.Area()
}

// plainAmps is a current as it is typed: "0.95", "4".
func plainAmps(a unit.Ampere) string { return strconv.FormatFloat(rounded(float64(a)), 'f', -1, 64) }

// plain is a figure as it is typed.
func plain(v float64) string { return strconv.FormatFloat(rounded(v), 'f', -1, 64) }
