package wire_test

import (
	"testing"

	"contralay/calc/formula/wire"
	"contralay/model/unit"
)

func TestAerospaceStrandings(t *testing.T) {
	// Strand counts and sizes 26 … 4/0: a maker's drawing of cross-linked ETFE wire,
	// table I; 28 and 30: from memory of AS22759/32. mils: AC 43.13-1B table 11-9
	// for 24 … 4/0, else worked out by hand as n·(d in mil)². mm², Ω/1000 ft: worked
	// out apart from this code.
	rows := []struct {
		size       string
		n          int
		strand     wire.AWG
		strandInch float64
		mils, tol  float64
		mm2, mmTol float64
		ohmPer1000 float64
		ohmTol     float64
	}{
		{"30", 7, 38, 0.0040, 112, 0.5, 0.0568, 5e-5, 92.60, 0.02},
		{"28", 7, 36, 0.0050, 175, 0.5, 0.0887, 5e-5, 59.26, 0.01},
		{"26", 19, 38, 0.0040, 304, 0.5, 0.1540, 5e-5, 34.12, 0.006},
		{"24", 19, 36, 0.0050, 475, 0.5, 0.2407, 5e-5, 21.83, 0.006},
		{"22", 19, 34, 0.0063, 755, 1, 0.3821, 5e-5, 13.75, 0.006}, // 19·6.3² = 754.1; the table prints 755
		{"20", 19, 32, 0.0080, 1216, 0.5, 0.6162, 6e-5, 8.529, 6e-4},
		{"18", 19, 30, 0.0100, 1900, 0.5, 0.9627, 6e-5, 5.458, 6e-4},
		{"16", 19, 29, 0.0113, 2426, 0.5, 1.2293, 6e-5, 4.275, 6e-4},
		{"14", 19, 27, 0.0142, 3831, 0.5, 1.9413, 6e-5, 2.707, 6e-4},
		{"12", 37, 28, 0.0126, 5874, 0.5, 2.9765, 1e-4, 1.766, 6e-4},
		{"10", 37, 26, 0.0159, 9354, 0.5, 4.740, 6e-4, 1.109, 6e-4},
		{"8", 133, 29, 0.0113, 16983, 0.5, 8.605, 6e-4, 0.6107, 6e-5},
		{"6", 133, 27, 0.0142, 26818, 0.5, 13.59, 6e-3, 0.3867, 6e-5},
		{"4", 133, 25, 0.0179, 42615, 1, 21.59, 6e-3, 0.2434, 6e-5}, // 42 614.5 by hand: a half
		{"2", 665, 30, 0.0100, 66500, 0.5, 33.70, 6e-3, 0.1560, 6e-5},
		{"1", 817, 30, 0.0100, 81700, 0.5, 41.40, 6e-3, 0.1269, 6e-5},
		{"0", 1045, 30, 0.0100, 104500, 0.5, 52.95, 6e-3, 0.0992, 6e-5},
		{"00", 1330, 30, 0.0100, 133000, 0.5, 67.39, 6e-3, 0.0780, 6e-5},
		{"000", 1665, 30, 0.0100, 166500, 0.5, 84.37, 6e-3, 0.0623, 6e-5},
		{"0000", 2109, 30, 0.0100, 210900, 0.5, 106.9, 6e-2, 0.0492, 6e-5},
	}
	for _, r := range rows {
		t.Run(r.size, func(t *testing.T) {
			near(t, "strand, in", must[unit.Millimetre](t, "Rounded")(r.strand.Rounded())/25.4, r.strandInch, 1e-9)
			area := unit.SquareMM(must[unit.SquareMM](t, "StrandedAreaAWG")(wire.StrandedAreaAWG(r.n, r.strand)))
			near(t, "circular mils", float64(area.CircularMils()), r.mils, r.tol)
			near(t, "mm²", float64(area), r.mm2, r.mmTol)
			ohm := must[unit.OhmPerKilometre](t, "IdealResistance")(wire.IdealResistance(area))
			near(t, "Ω/1000 ft", ohm/unit.KilometrePerKilofoot, r.ohmPer1000, r.ohmTol)
		})
	}
}

func TestStrandedIsNotSolidOfTheSameNumber(t *testing.T) {
	// Worked out apart from this code: the reason why solid areas must not be used.
	rows := []struct {
		size      wire.AWG
		n         int
		strand    wire.AWG
		more, tol float64 // printed to whole per cent
	}{
		{26, 19, 38, 0.20, 0.006}, {22, 19, 34, 0.174, 0.001}, {16, 19, 29, -0.06, 0.006}, {12, 37, 28, -0.10, 0.006},
	}
	for _, r := range rows {
		stranded, _ := wire.StrandedAreaAWG(r.n, r.strand)
		solid, _ := r.size.Area()
		near(t, r.size.String(), float64(stranded/solid)-1, r.more, r.tol)
	}
}

func TestMetricStranding(t *testing.T) {
	// ISO 6722 thin-wall wire by strand list (a maker's page); the nominal size is a
	// name, the copper lies a few per cent under or over it.
	rows := []struct {
		n      int
		d      unit.Millimetre
		byHand float64
		tol    float64
	}{
		{12, 0.20, 0.37699, 1e-5}, // 12·π·0.01, sold as 0.35 mm²
		{50, 0.25, 2.45437, 1e-5}, // 50·π/64, sold as 2.5 mm²
	}
	for _, r := range rows {
		near(t, "mm²", must[unit.SquareMM](t, "StrandedArea")(wire.StrandedArea(r.n, r.d)), r.byHand, r.tol)
	}
	if _, ok := wire.StrandedArea(0, 0.2); ok {
		t.Error("no strands have an area")
	}
	if _, ok := wire.StrandedArea(19, 0); ok {
		t.Error("strands of no diameter have an area")
	}
}
