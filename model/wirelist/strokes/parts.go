package strokes

import (
	"regexp"
	"strings"
)

// A stroke may have a resistor drawn in it, which the note of the wire has; and a pin may have a stroke that ends right behind its name: it
// is free.
//
//	LOCK                       GATE
//	5  - BEAT  ---/\330 Ohm/\--- PULSE
//	7  - RUN   -
//	9  - HALT  ------------------ STOP
var (
	ohms     = regexp.MustCompile(`^\d{1,3}(?:[.,]\d)?(?:-\d{1,3})? ?(?:[kKM] ?)?(?:[Oo]hms?|Ω|Ω|R)$`)
	cutShort = regexp.MustCompile(`^ *(\d{1,3}) +- +([^\s-]\S{0,15}) +-$`)
)

// resistor is what a drawing in a stroke says of a resistor, "330 Ohm" of `/\330 Ohm/\`; "" where it says none.
func resistor(label string) string {
	if bare := strings.Trim(label, `/\[]^ `); ohms.MatchString(bare) {
		return bare
	}
	return ""
}

// cutOff is the pin of a line whose stroke ends right behind its name.
func cutOff(text string) (pins []end, ok bool) {
	m := cutShort.FindStringSubmatchIndex(text)
	if m == nil {
		return nil, false
	}
	return []end{{pin: text[m[2]:m[3]], name: text[m[4]:m[5]], at: m[2]}}, true
}

// namesOfPins reports whether the names beside the near pins are what these are called, and none of what the wires carry: the far ends are
// names alone, and two wires with different ones go to one of them.
func namesOfPins(wires []wire) bool {
	at, twice := map[string]string{}, false
	for _, w := range wires {
		if w.near.pin == "" || w.near.name == "" || w.far.pin != "" || w.far.name == "" {
			return false
		}
		if name, met := at[w.far.name]; met && !strings.EqualFold(name, w.near.name) {
			twice = true
		}
		at[w.far.name] = w.near.name
	}
	return twice
}

// namesAside puts the names of near pins among what else stands there.
func namesAside(wires []wire) {
	for k := range wires {
		n := &wires[k].near
		n.more, n.name = append([]string{n.name}, n.more...), ""
	}
}
