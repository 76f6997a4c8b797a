package endtext

import (
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// IsStud reports whether a name is one for a bolt or a point that several wires are taken to,
// which has no cavities:
// a ground, "G1", "GND STAR", "chassis", a pole of the battery. A battery alone has two poles,
// and "Battery current sensor" is a sensor: neither is one.
func IsStud(called string) bool { return IsGroundStud(called) || IsOtherStud(called) }

// IsGroundStud reports whether a name is one for a ground, whatever the nets are called that
// meet there.
func IsGroundStud(called string) bool {
	f := table.Fold(called)
	if g := strings.TrimRight(f, "0123456789"); g == "g" && g != f {
		return true
	}
	return studOf(called, func(w string) bool {
		switch w {
		case "gnd", "grd", "ground", "earth", "chassis", "masse", "massepunkt", "erde", "tierra", "masa", "massa", "terra":
			return true
		}
		return false
	})
}

// IsOtherStud reports whether a name is one for a bolt, a bar, or one pole of the battery.
func IsOtherStud(called string) bool {
	pole := len(name.PlusMinus(called)) > 0
	for _, w := range name.Words(table.Fold(called)) {
		switch w {
		case "pos", "neg", "positive", "negative", "plus", "minus":
			pole = true
		}
	}
	return studOf(called, func(w string) bool {
		switch w {
		case "battery", "batt", "bat", "batterie", "bateria", "batteria":
			return pole
		case "stud", "eyelet", "busbar", "bolzen":
			return true
		}
		return false
	})
}

// studOf reports whether one word of a name is of the kind, and every other one only says which
// or where.
func studOf(called string, kind func(w string) bool) bool {
	is := false
	for _, w := range name.Words(table.Fold(called)) {
		switch w = strings.TrimRight(w, "0123456789"); {
		case kind(w):
			is = true
		case len(w) < 2: // a number, "M" of M6, a side
		default:
			switch w {
			case "pos", "neg", "positive", "negative", "plus", "minus", "star", "stud", "point", "post", "terminal", "lug", "ring", "bolt",
				"block", "bar",
				"main", "engine", "body", "frame", "left", "right", "front", "rear", "lh", "rh", "punkt", "motor":
			default:
				return false
			}
		}
	}
	return is
}
