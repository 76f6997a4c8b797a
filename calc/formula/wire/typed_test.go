package wire_test

import (
	"math"
	"testing"

	"contralay/calc/formula/wire"
	"contralay/model/typedtest"
	"contralay/model/unit"
)

// typedNumber is a cell that must be there.
func typedNumber(t *testing.T, table typedtest.Table, row, column string) float64 {
	t.Helper()
	v, ok := table.Number(row, column)
	if !ok {
		t.Fatalf("%s: no %s of %s", table.Name, column, row)
	}
	return v
}

// TestSolidTypedTwice compares diameters, circular mils and areas of solid wire with the tables
// typed by another hand. 22 AWG is printed 0.0254 in, a slip of the sheet: 0.0253 is 642.4
// circular mils, as it prints beside.
func TestSolidTypedTwice(t *testing.T) {
	typed := typedtest.Must(t, "wire_solid")
	for _, row := range typed.Rows {
		a, err := wire.ParseAWG(row)
		if err != nil {
			t.Fatal(err)
		}
		d, _ := a.Rounded()
		if want := typedNumber(t, typed, row, "d_in"); row != "22" && math.Abs(float64(d)/25.4-want) > 1e-9 {
			t.Errorf("%s AWG: %.4f in, typed %v", row, float64(d)/25.4, want)
		}
		area, _ := a.Area()
		mils, _ := a.CircularMils()
		want := typedNumber(t, typed, row, "cmil")
		if off := math.Min(math.Abs(float64(mils)/want-1), math.Abs(float64(area.CircularMils())/want-1)); off > 0.003 {
			t.Errorf("%s AWG: %.2f circular mils, typed %v", row, float64(mils), want)
		}
		if want, ok := typed.Number(row, "mm2"); ok && math.Abs(float64(mils.SquareMM())-want) > 5.1e-5 {
			t.Errorf("%s AWG: %.4f mm², typed %v", row, float64(mils.SquareMM()), want)
		}
	}
}

// TestStrandedTypedTwice compares the circular mils of stranded wire; 22 AWG is printed 755, and
// 19 strands of 0.0063 in are 754. A component catalogue, and table 11-9, print the same.
func TestStrandedTypedTwice(t *testing.T) {
	typed, circular, catalogue := typedtest.Must(t, "wire_strand"), typedtest.Must(t, "table_11_9"), typedtest.Must(t, "cmil_crimp")
	for _, row := range typed.Rows {
		n, strand := typedNumber(t, typed, row, "strands"), typedNumber(t, typed, row, "strand_awg")
		area, ok := wire.StrandedAreaAWG(int(n), wire.AWG(strand))
		for _, c := range []struct {
			of     typedtest.Table
			column string
		}{{typed, "cmil"}, {circular, "cmil"}, {catalogue, "cmil"}} {
			want, printed := c.of.Number(row, c.column)
			if printed && (!ok || math.Abs(float64(area.CircularMils())-want) > 1) && row != "28" {
				t.Errorf("%s AWG: %.1f circular mils, %s has %v", row, float64(area.CircularMils()), c.of.Name, want)
			}
		}
		solid, _ := wire.AWG(strand).Rounded()
		if in := typedNumber(t, typed, row, "strand_in"); math.Abs(float64(solid)/25.4-in) > 1e-9 {
			t.Errorf("%s AWG: a strand of %.4f in, typed %v", row, float64(solid)/25.4, in)
		}
	}
}

// TestCopperTypedTwice compares the constants of copper, and the tinned one of ASTM B33 with
// itself: what it prints by mass is what it prints by length, at 8.89 g/cm³.
func TestCopperTypedTwice(t *testing.T) {
	typed := typedtest.Must(t, "copper")
	if want := typedNumber(t, typed, "resistivity_20_ohm_mm2_m", "value"); wire.Resistivity != want {
		t.Errorf("resistivity %v, typed %v", wire.Resistivity, want)
	}
	zero := typedNumber(t, typed, "zero_resistance_below_0_c", "value")
	r, _ := wire.ResistanceAt(100, 100)
	if want := 100 * (zero + 100) / (zero + 20); math.Abs(float64(r)-want) > 1e-9 {
		t.Errorf("at 100 °C %v, typed %v", r, want)
	}
	alpha := typedNumber(t, typed, "alpha_20_per_k", "value")
	r, _ = wire.ResistanceAt(100, 21)
	if math.Abs(float64(r)-100-100*alpha) > 0.0005 { // three figures are printed
		t.Errorf("a degree adds %v, typed %v", float64(r)/100-1, alpha)
	}
	tinned := typedtest.Must(t, "wire_tin_resistivity")
	for _, row := range tinned.Rows {
		mass, volume := typedNumber(t, tinned, row, "ohm_g_m2"), typedNumber(t, tinned, row, "ohm_mm2_m")
		iacs := typedNumber(t, tinned, row, "iacs_percent")
		if math.Abs(mass/8.89-volume) > 6e-7 || math.Abs(100*wire.Resistivity/volume-iacs) > 0.011 {
			t.Errorf("%s in: %v by mass, %v by length, %v %%", row, mass/8.89, volume, iacs)
		}
	}
}

// TestLimitsOverIdeal: what a specification allows lies over ideal copper of the same strands, by
// as much as is said of the plating: silver 6 to 13 %, nickel 11 to 24 %, tin 13 to 21 %, high-strength
// alloy 25 to 31 %.
func TestLimitsOverIdeal(t *testing.T) {
	typed, strands := typedtest.Must(t, "wire_resistance"), typedtest.Must(t, "wire_strand")
	n := 0
	for column, within := range map[string][2]float64{"tin_ohm_1000ft": {1.125, 1.215}, "silver_ohm_1000ft": {1.055, 1.13},
		"nickel_ohm_1000ft": {1.10, 1.245}, "alloy_ohm_1000ft": {1.25, 1.315}} {
		for _, row := range typed.Rows {
			limit, ok := typed.Number(row, column)
			if cell, _ := typed.Cell(row, column); !ok || !cell.How.Published() {
				continue
			}
			count, _ := strands.Number(row, "strands")
			of, _ := strands.Number(row, "strand_awg")
			area, _ := wire.StrandedAreaAWG(int(count), wire.AWG(of))
			ideal, _ := wire.IdealResistance(area)
			n++
			if over := limit * unit.KilometrePerKilofoot / float64(ideal); over < within[0] || over > within[1] {
				t.Errorf("%s, %s AWG: %.3f of ideal copper", column, row, over)
			}
		}
	}
	if n < 41 {
		t.Errorf("%d limits", n)
	}
}
