package catalogue

import (
	"math"
	"strconv"
	"strings"

	"contralay/model/typedtest"
)

const inch = 25.4 // mm, exact

// kilofoot turns ohm/1000 ft into ohm/km: 304.8 m, exact.
const kilofoot = 1 / 0.3048

// wireCells is a wire of AS22759 or of a car by the rule of its specification.
func wireCells(w Wire) []cell {
	slash, isAir := strings.CutPrefix(w.Spec, "AS22759/")
	if !isAir {
		return carCells(w)
	}
	s := w.Size
	lo, hi := at("wire_conductor", s, "min_in"), at("wire_conductor", s, "max_in")
	strand := at("wire_strand", s, "strand_in")
	bare := lo.middle(hi).or(strand.times(3).recalled(typedtest.Computed)).times(inch).rounded(3)
	n := at("wire_strand", s, "strands")
	area := n.and(strand, func(n, d float64) float64 { return n * math.Pi / 4 * d * d * inch * inch }).figures(4).atLeast(4)
	over, tol := airOver(slash, s)
	density := at("material", "ETFE", "density_g_cm3")
	if w.Insulation == "PTFE" {
		density = at("wire_remembered", "PTFE g_cm3", "value")
	}
	cells := []cell{
		{"over_mm", float64(w.OverMM), w.OverStanding, over},
		{"tol_mm", float64(w.TolMM), w.OverStanding, tol},
		{"conductor_mm", float64(w.ConductorMM), w.Standing, bare},
		{"strands", float64(w.Strands), w.Standing, n},
		{"area_mm2", float64(w.AreaMM2), w.Standing, area},
		{"ohm_per_km", float64(w.OhmPerKm), w.OhmStanding, airOhm(slash, s)},
		{"gram_per_m", float64(w.GramPerM), w.OverStanding, airMass(slash, s)},
		{"rated_c", float64(w.RatedC), w.RatedStanding, at("wire_slash", slash, "rated_c")},
		{"rated_v", float64(w.RatedV), w.RatedStanding, at("wire_slash", slash, "volt")},
		{"insulation_density", float64(w.InsulationDensity), Memory, density},
	}
	// Second opinions: what another document says of the same figure.
	switch slash {
	case "11":
		cells = append(cells, cell{"conductor_mm, as a crimp report has it", float64(w.ConductorMM), Memory,
			at("wire_as22759_11", s, "conductor_mm").rounded(2)})
	case "43":
		if other := at("wire_as22759_43", s, "ohm_km"); other.how != 0 {
			cells = append(cells, cell{"ohm_per_km, as a script has it", float64(w.OhmPerKm), Memory, other.figures(3)})
		}
	case "34":
		tin := at("wire_resistance", s, "tin_ohm_1000ft").or(at("wire_resistance_tin_large", s, "ohm_1000ft"))
		cells = append(cells, cell{"ohm_per_km, as AC 43.13-1B and another drawing have it", float64(w.OhmPerKm), Memory,
			tin.times(kilofoot).figures(4)})
	}
	return cells
}

// airOver is finished diameter and tolerance.
func airOver(slash, s string) (over, tol typed) {
	table, how := "", typedtest.Memory
	switch slash {
	case "34":
		lo, hi := at("wire_as22759_34", s, "over_min_mm"), at("wire_as22759_34", s, "over_max_mm")
		return lo.middle(hi).rounded(3), hi.minus(lo).times(0.5).rounded(3)
	case "11":
		tol = at("wire_remembered", "as22759_11 tol_in", "value")
		return at("wire_as22759_11", s, "over_mm"), tol.times(inch).rounded(3)
	case "41":
		table, how = "wire_normal_41", typedtest.Read
	case "43":
		table = "wire_normal_41"
	case "32", "44":
		table = "wire_light_32"
	case "16":
		table = "wire_as22759_16"
	}
	return at(table, s, "over_in").times(inch).rounded(2).recalled(how), at(table, s, "tol_in").times(inch).rounded(3).recalled(how)
}

// airOhm is the largest resistance by the plating of a slash sheet.
func airOhm(slash, s string) typed {
	tin := at("wire_resistance", s, "tin_ohm_1000ft").or(at("wire_resistance_tin_large", s, "ohm_1000ft"))
	switch slash {
	case "34":
		return at("wire_as22759_34", s, "ohm_km").rounded(4)
	case "41":
		return at("wire_resistance", s, "nickel_ohm_1000ft").or(at("wire_normal_41", s, "ohm_1000ft")).times(kilofoot).figures(4)
	case "16", "32":
		return tin.times(kilofoot).figures(4)
	}
	silver := at("wire_resistance", s, "silver_ohm_1000ft")
	if silver.how.Published() {
		return silver.times(kilofoot).figures(4)
	}
	by := at("wire_remembered", "silver below tin", "value")
	return tin.and(by, func(tin, by float64) float64 { return tin / by }).kept(3).times(kilofoot).figures(4)
}

// airMass is the largest mass, where one is stated.
func airMass(slash, s string) typed {
	switch slash {
	case "34":
		return at("wire_as22759_34", s, "kg_km")
	case "43":
		return at("wire_as22759_43", s, "kg_km")
	case "41":
		return at("wire_normal_41", s, "lb_1000ft").times(0.45359237 / 0.3048).figures(3)
	case "32":
		return at("wire_light_32", s, "kg_km")
	}
	return typed{}
}

// carCells is a wire of SAE J1128 or ISO 6722.
func carCells(w Wire) []cell {
	table, standard, row := "wire_j1128", "SAE J1128", strings.TrimPrefix(w.Spec, "SAE J1128 ")+" "+w.Size
	if mm2, isArea := strings.CutSuffix(w.Size, "mm2"); isArea {
		f, _ := strconv.ParseFloat(mm2, 64)
		table, standard, row = "wire_iso6722", "ISO 6722 thin", strconv.FormatFloat(f, 'f', 2, 64)
	}
	sxl := strings.HasSuffix(w.Spec, "SXL")
	if sxl {
		row = "GXL " + w.Size
	}
	strands, strand := strandsOf(table, row, w.Strands)
	area := strands.and(strand, func(n, d float64) float64 { return n * math.Pi / 4 * d * d }).kept(4)
	wall := at(table, row, "wall_mm")
	over, most, bare := at(table, row, "over_mm"), at(table, row, "over_max_mm"), at(table, row, "conductor_mm")
	if bare.how == 0 {
		bare = over.minus(wall.times(2)).recalled(typedtest.Computed)
	}
	if over.how == 0 {
		over = bare.plus(wall.times(2)).recalled(typedtest.Computed)
	}
	var seller typed
	if table == "wire_iso6722" {
		seller = at("wire_iso6722_seller", strings.TrimSuffix(w.Size, "mm2"), "over_max_mm")
	}
	if w.Size == "2.5mm2" { // the page prints 3.40, a copy of its next row; the seller's PDF 3.00, as is remembered
		most = seller
	}
	tol := most.minus(over)
	if sxl {
		over = bare.plus(at("wire_sxl", w.Size, "wall_mm").times(2))
		tol = tol.recalled(typedtest.Memory)
	}
	ohm := at("wire_iso6722", row, "ohm_km")
	if table == "wire_j1128" {
		rho := at("copper", "resistivity_20_ohm_mm2_m", "value").times(1000)
		more := at("wire_remembered", "automotive over ideal copper", "value")
		ohm = rho.and(more, func(a, b float64) float64 { return a * b }).and(area, func(a, b float64) float64 { return a / b }).figures(4)
	}
	return []cell{
		{"over_mm", float64(w.OverMM), w.OverStanding, over.rounded(2)},
		{"tol_mm", float64(w.TolMM), w.OverStanding, tol.rounded(3)},
		{"conductor_mm", float64(w.ConductorMM), w.Standing, bare.rounded(2)},
		{"strands", float64(w.Strands), w.Standing, strands},
		{"area_mm2", float64(w.AreaMM2), w.Standing, area},
		{"ohm_per_km", float64(w.OhmPerKm), w.OhmStanding, ohm},
		{"rated_c", float64(w.RatedC), w.RatedStanding, at("wire_automotive", standard, "rated_c")},
		{"largest diameter, as a seller prints it", float64(w.OverMM + w.TolMM), Memory, seller.rounded(2)},
		{"rated_v", float64(w.RatedV), Memory, at("wire_automotive", standard, "volt")},
		{"insulation_density", float64(w.InsulationDensity), Memory, at("wire_automotive", standard, "insulation_g_cm3")},
	}
}

// strandsOf is the strands of a car's wire and the diameter of one: "7/0.20", or the one of "7/0.32
// or 19/0.19" that has so many.
func strandsOf(table, row string, n int) (count, d typed) {
	for _, one := range strings.Split(text(table, row, "strand"), " or ") {
		a, b, _ := strings.Cut(one, "/")
		number, _ := strconv.ParseFloat(a, 64)
		dia, _ := strconv.ParseFloat(b, 64)
		if count.how == 0 || int(number) == n {
			count = typed{number, 1e-9, typedtest.Read, table}
			d = typed{dia, 1e-9, typedtest.Read, table}
		}
	}
	return count, d
}
