package values

import (
	"cmp"
	"fmt"

	"contralay/model/file/schema"
	"contralay/model/unit"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/values/label"
)

// stepNumber changes a number or a count by one step, from what holds.
func stepNumber(m *desk.Model, at schema.At, k schema.Key, l label.Label, now any, by int) {
	if k.Kind == schema.KindCount {
		stepCount(m, at, k, l, now, by)
		return
	}
	v, given := now.(float64)
	if !given {
		refuse(m, put(m, at, k, start(m, k, l)))
		return
	}
	next := nudged(m, k, l, v, by)
	if !k.Holds(next) {
		m.Tell(fmt.Sprintf("%s is the lowest step. Allowed: %s", shown(m, k, l, v), allowed(m, k)))
		return
	}
	refuse(m, put(m, at, k, next))
}

// firsts are where a number begins of which nothing is known, by its unit.
var firsts = map[string]float64{"mm": 10, "°C": 20, "m": 10, "degrees": 90}

// start is where a number begins: a round one in the unit of the screen.
func start(m *desk.Model, k schema.Key, l label.Label) float64 {
	v := l.First
	if v == 0 {
		v = cmp.Or(firsts[k.Unit], 1)
	}
	if isLength(k) && m.Sys == unit.Inch {
		inch := v / unit.MillimetrePerInch
		return unit.RoundHalfUp(cmp.Or(unit.RoundHalfUp(inch, 0.125), unit.RoundHalfUp(inch, 0.01))*unit.MillimetrePerInch, 0.001)
	}
	return v
}

// nudged is a number one step further, on a whole step.
func nudged(m *desk.Model, k schema.Key, l label.Label, v float64, by int) float64 {
	scale := 1.0
	if isLength(k) && m.Sys == unit.Inch {
		scale = unit.MillimetrePerInch
	}
	v /= scale
	step := stepOf(v)
	if by < 0 && v > 0 {
		step = stepOf(v - step/1e6) // down from 10 goes by the finer step
	}
	if l.Step > 0 && scale == 1 {
		step = l.Step
	}
	return unit.RoundHalfUp(unit.RoundHalfUp(v+float64(by)*step, 1e-6)*scale, 0.0001)
}

// stepOf is a step as fine as a number is small.
func stepOf(v float64) float64 {
	switch {
	case v < 1:
		return 0.01
	case v < 10:
		return 0.1
	case v < 100:
		return 1
	case v < 1000:
		return 5
	}
	return 100
}

// stepCount changes a whole number by one; hours go round.
func stepCount(m *desk.Model, at schema.At, k schema.Key, l label.Label, now any, by int) {
	n, given := now.(int64)
	switch {
	case !given && l.First > 0:
		n = int64(l.First)
	case !given:
		n = int64(k.Least)
	default:
		n += int64(by)
	}
	least, most := int64(k.Least), int64(k.Most)
	switch {
	case l.Round && n > most:
		n = least
	case l.Round && n < least:
		n = most
	case n < least || n > most:
		m.Tell(fmt.Sprintf("%s goes from %d to %d", l.Says, least, most))
		return
	}
	refuse(m, put(m, at, k, n))
}
