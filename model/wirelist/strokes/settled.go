package strokes

import (
	"slices"
	"strings"
)

// settled settles what the ends of a run are whose pins do not stand at their strokes; false where the run is no table of wires.
// Numbers outside of the names are pins where every line has them and the headings name both parts. Ends without any number are pins
// of the parts by their names, where the headings name both; else their lines are drawings.
//
//	WINCH BOX             REMOTE            MCU              DRIVER
//	1 GND --------------- GND 7             PB0 ------------ STEP
//	2 UP ---------------- UP 8              PB1 ------------ DIR
func settled(run []told, wires []wire, h heads, least int) bool {
	titled := h.near != "" && h.far != ""
	near, far := true, true
	for _, w := range wires {
		near = near && (w.near.outer != "" || w.near.supply || w.near.pin != "" && w.near.name == "")
		far = far && (w.far.outer != "" || w.far.supply || w.far.pin != "" && w.far.name == "")
	}
	sure, odd := 0, false
	for i := range run {
		for k := range run[i].line.wires {
			w := &run[i].line.wires[k]
			if near && titled {
				w.near.turn()
			}
			if far && titled {
				w.far.turn()
			}
			if isPinned(*w) {
				sure++
			} else if !areNames(*w) {
				odd = true
			}
		}
	}
	if titled && (!odd || 2*sure >= len(wires)) {
		return true
	}
	if sure < least {
		return false
	}
	for i := range run {
		if l := &run[i].line; slices.ContainsFunc(l.wires, func(w wire) bool { return !isPinned(w) }) {
			*l = line{}
		}
	}
	return true
}

// turn takes the number outside of the name for the pin.
func (e *end) turn() {
	if e.outer != "" {
		e.pin, e.name, e.more = e.outer, e.outerName, nil
	}
}

// isPinned reports whether a wire says what it joins by itself: two pins, or a pin in brackets and a name, or a supply.
func isPinned(w wire) bool {
	if w.near.pin != "" && w.far.pin != "" {
		return true
	}
	one := w.near.pin != "" || w.far.pin != ""
	return one && w.label == "" && (w.near.in || w.far.in || w.near.supply || w.far.supply)
}

// areNames reports whether the ends of a wire without a pin are short names: no sentence, no picture of boxes.
func areNames(w wire) bool {
	const most, letters = 2, 14 // words of a name and their letters (no source)
	short := func(e end) bool {
		return e.supply || e.pin != "" || len(strings.Fields(e.name)) <= most && len(e.name) <= letters && len(e.more) == 0
	}
	return short(w.near) && short(w.far)
}

// eachOf is a wire for each pin where both of its ends are ranges of as many, "18-25 ---- 18-25"; else the wire itself.
func eachOf(w wire) []wire {
	near, far := rangeOf(w.near.pin), rangeOf(w.far.pin)
	if len(near) == 0 || len(near) != len(far) {
		return []wire{w}
	}
	all := make([]wire, len(near))
	for i := range all {
		all[i] = w
		all[i].near.pin, all[i].far.pin = near[i], far[i]
	}
	return all
}
