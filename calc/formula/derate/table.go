package derate

import (
	"math"
	"slices"

	"contralay/calc/formula/wire"
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

// Size is a row of the table that stands for a conductor.
type Size struct {
	row int
	// Held: the tables have no such size. It is the next thinner one that they have, or
	// 24 AWG for what is thinner than all.
	Held bool
}

// String is the size as an AWG number.
func (s Size) String() string { return table[s.row].size }

// SizeOf is the row for a size as catalogues write it: an AWG number, or an area in mm²
// where that is given.
func SizeOf(text string, metric unit.SquareMM) (Size, bool) {
	if i := slices.IndexFunc(table[:], func(r row) bool { return r.size == text }); i >= 0 {
		return Size{row: i}, true
	}
	if !(metric > 0) {
		awg, err := wire.ParseAWG(text)
		if err != nil {
			return Size{}, false
		}
		metric, _ = awg.Area()
	}
	out := Size{Held: true}
	for i, r := range table {
		awg, _ := wire.ParseAWG(r.size)
		if area, _ := awg.Area(); area <= metric {
			out.row = i
		}
	}
	return out, true
}

// Table is what table 11-9 gives a size rated so warm, in air of a temperature, in a
// bundle of n wires. Between its columns the current goes with the square root of the
// rise over 70 °C; past the last column, and in air warmer than 70 °C, the last point is
// held. False for what it was not drawn up for: a rating below its first column, fewer
// wires (the method has values for those), air as warm as the rating.
func Table(size Size, rating unit.Celsius, n int, air unit.Celsius) (amps unit.Ampere, held, ok bool) {
	least := tableWires
	if size.row >= firstThick {
		least = tableThick
	}
	if n < least || !(rating >= rated[0]) || !(air < rating) {
		return 0, false, false
	}
	r := table[size.row].amps
	amps = r[len(r)-1]
	for k := 1; k < len(rated); k++ {
		if rating <= rated[k] {
			rise := func(t unit.Celsius) float64 { return math.Sqrt(float64(t - TableAmbient)) }
			w := (rise(rating) - rise(rated[k-1])) / (rise(rated[k]) - rise(rated[k-1]))
			amps = r[k-1] + unit.Ampere(w)*(r[k]-r[k-1])
			break
		}
	}
	return amps, size.Held || rating > rated[len(rated)-1] || air > TableAmbient, true
}

// FreeAir is the current of one wire in free air at sea level that warms it by a rise.
//
//	I = I_200 / (F · 0.79) · √(ΔT / 130)
//
// F is 0.53 for 24 to 10 AWG, the factor of 33 wires, and 0.775 for 8 AWG and thicker,
// that of 9. Where a point of figure 11-4a was read it stands in place of the first
// factor.
// Source: AC 43.13-1B table 11-9 turned round with the factors it rests on (20 % in use,
// 60,000 ft), and p. 11-27 for 14 AWG; 22 and 12 AWG MIL-W-5088L 6.7, quoted second hand; 20 AWG
// from the circular's example, from memory. A chart of figure 11-4 that was digitised elsewhere lies
// within 6.5 % of these up to 10 AWG and up to 11 % above from 8 AWG on: a hand reading, not used.
// The square root fits the table's own columns to a tenth. Nothing is given for no rise.
// Held: the size or a rise above 200 °C.
func FreeAir(size Size, rise unit.Celsius) (amps unit.Ampere, held bool) {
	if !(rise > 0) {
		return 0, size.Held
	}
	held, rise = size.Held || rise > 200, min(rise, 200)
	for _, p := range read {
		if p.size == size.String() {
			return p.amps * unit.Ampere(math.Sqrt(float64(rise/p.rise))), held
		}
	}
	wires := tableWires
	if size.row >= firstThick {
		wires = tableThick
	}
	f, _ := Bundle(wires, shares[0])
	return table[size.row].amps[2] / unit.Ampere(f*heights[len(heights)-1].f) * unit.Ampere(math.Sqrt(float64(rise)/130)), held
}

// Read reports whether what FreeAir and Bundle say of a size among n wires was read in the
// documents named or quoted from them, rather than recalled or worked back: 22, 14 and 12 AWG up
// to 19 wires.
func Read(size Size, n int) bool {
	s := size.String()
	return (s == "22" || s == "14" || s == "12") && !size.Held && n <= len(curves)
}

// read are points of figure 11-4a: see FreeAir.
var read = [...]struct {
	size string
	rise unit.Celsius
	amps unit.Ampere
}{{"22", 140, 16.2}, {"20", 140, 21.5}, {"14", 150, 47}, {"12", 175, 68}}
