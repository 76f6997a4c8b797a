package derate

import (
	"math"
	"slices"

	"contralay/model/unit"
)

// row is one size of table 11-9: continuous current in bundles at 105, 150 and 200 °C.
type row struct {
	size string
	amps [3]unit.Ampere
}

// rated are the temperatures of the columns.
var rated = [3]unit.Celsius{105, 150, 200}

// table is AC 43.13-1B CHG 1 table 11-9, p. 11-23. Its conditions (note 1): 70 °C
// ambient; 33 wires or more for sizes 24 to 10, 9 wires for 8 and thicker; not more
// than 20 % of the harness's capacity in use; 60,000 ft.
var table = [...]row{
	{"24", [3]unit.Ampere{2.5, 4, 5}}, {"22", [3]unit.Ampere{3, 5, 6}}, {"20", [3]unit.Ampere{4, 7, 9}}, {"18", [3]unit.Ampere{6, 9, 12}},
	{"16", [3]unit.Ampere{7, 11, 14}}, {"14", [3]unit.Ampere{10, 14, 18}}, {"12", [3]unit.Ampere{13, 19, 25}},
	{"10", [3]unit.Ampere{17, 26, 32}},
	{"8", [3]unit.Ampere{38, 57, 71}}, {"6", [3]unit.Ampere{50, 76, 97}}, {"4", [3]unit.Ampere{68, 103, 133}},
	{"2", [3]unit.Ampere{95, 141, 179}},
	{"1", [3]unit.Ampere{113, 166, 210}}, {"1/0", [3]unit.Ampere{128, 192, 243}}, {"2/0", [3]unit.Ampere{147, 222, 285}},
	{"3/0", [3]unit.Ampere{172, 262, 335}}, {"4/0", [3]unit.Ampere{204, 310, 395}},
}

// TableAmbient is the air that the table was drawn up for.
const TableAmbient unit.Celsius = 70

// tableWires is how many wires it was drawn up for, 24 to 10 AWG; tableThick for 8 AWG
// and thicker, which begin at firstThick.
const (
	tableWires = 33
	tableThick = 9
	firstThick = 8
)

// Table is what table 11-9 gives a size, as an AWG number, rated so warm, in a bundle
// of n wires in air of a temperature. False for a size or rating it does not have,
// for air warmer than its 70 °C, and for fewer wires than it was drawn up for: the
// method has values for those.
func Table(size string, rating unit.Celsius, n int, ambient unit.Celsius) (unit.Ampere, bool) {
	i := slices.IndexFunc(table[:], func(r row) bool { return r.size == size })
	c := slices.Index(rated[:], rating)
	least := tableWires
	if i >= firstThick {
		least = tableThick
	}
	if i < 0 || c < 0 || n < least || !(ambient <= TableAmbient) {
		return 0, false
	}
	return table[i].amps[c], true
}

// FreeAir is the current of one wire in free air at sea level that warms it by a
// rise, for sizes 24 to 10 AWG.
//
//	I = I_200 / (0.53 · 0.79) · √(ΔT / 130)
//
// Where a point of figure 11-4a was read it stands in place of the first factor.
// Source: AC 43.13-1B table 11-9 turned round with the factors it rests on (33 wires
// at 20 %, 60,000 ft), and p. 11-27 for 14 AWG; 22, 20 and 12 AWG from its examples,
// from memory. The square root fits the table's own columns to a tenth.
func FreeAir(size string, rise unit.Celsius) (unit.Ampere, bool) {
	if !(rise > 0) || rise > 200 {
		return 0, false
	}
	for _, p := range read {
		if p.size == size {
			return p.amps * unit.Ampere(math.Sqrt(float64(rise/p.rise))), true
		}
	}
	i := slices.IndexFunc(table[:firstThick], func(r row) bool { return r.size == size })
	if i < 0 {
		return 0, false
	}
	return table[i].amps[2] / (0.53 * 0.79) * unit.Ampere(math.Sqrt(float64(rise)/130)), true
}

// Read reports whether what FreeAir and Bundle say of a size among n wires was read in
// the documents named, rather than recalled or worked back: 14 AWG up to 19 wires.
func Read(size string, n int) bool { return size == "14" && n <= len(curves) }

// read are points of figure 11-4a: see FreeAir.
var read = [...]struct {
	size string
	rise unit.Celsius
	amps unit.Ampere
}{{"22", 140, 16.2}, {"20", 140, 21.5}, {"14", 150, 47}, {"12", 140, 61}}
