package catalogue

import (
	"math"

	"contralay/model/unit"
)

// What the figures of a wire may be: mm, mm², Ω/km, g/m, °C, V. They hold every
// wire from a single 40 AWG strand to a battery cable, with room on both sides.
var (
	overSpan = span{0.05, 100}
	tolSpan  = span{0, 10}
	areaSpan = span{0.001, 2000}
	ohmSpan  = span{0.001, 100000}
	massSpan = span{0.001, 50000}
	voltSpan = span{1, 100000}
)

func (b *builder) wire(e *entry) {
	w := Wire{
		Spec:        e.text("spec", true),
		Size:        e.text("size", true),
		OverMM:      unit.Millimetre(e.number("over_mm", true, overSpan)),
		TolMM:       unit.Millimetre(e.number("tol_mm", false, tolSpan)),
		ConductorMM: unit.Millimetre(e.number("conductor_mm", false, overSpan)),
		Strands:     e.whole("strands", false, 1, 100000),
		AreaMM2:     unit.SquareMM(e.number("area_mm2", true, areaSpan)),
		OhmPerKm:    unit.OhmPerKilometre(e.number("ohm_per_km", true, ohmSpan)),
		GramPerM:    unit.GramPerMetre(e.number("gram_per_m", false, massSpan)),
		RatedC:      unit.Celsius(e.number("rated_c", true, heatSpan)),
		RatedV:      unit.Volt(e.number("rated_v", false, voltSpan)),
		Insulation:  e.text("insulation", false),
		Plating:     e.text("plating", false),

		InsulationDensity: unit.GramPerCC(e.number("insulation_density", false, densitySpan)),
		Origin:            e.origin(),
	}
	w.OverStanding = e.standing("over_standing", false, w.Standing)
	w.OhmStanding = e.standing("ohm_standing", false, w.Standing)
	w.RatedStanding = e.standing("rated_standing", false, w.Standing)
	if w.Size != "" && !isWireSize(w.Size) {
		e.wrong("size", shown(w.Size)+" is not a size", `AWG "22", "1/0"; metric "0.35mm2"`)
	}
	if w.Spec != "" && w.Size != "" {
		b.claim(e, "wire", "size", w.Spec+" "+CanonicalSize(w.Size))
	}
	if w.OverMM != 0 {
		fitsInside(e, w)
	}
	b.c.Wires[w.Key()] = w
}

// fitsInside refuses a wire whose parts do not fit into it.
func fitsInside(e *entry, w Wire) {
	if w.TolMM >= w.OverMM {
		e.wrong("tol_mm", shown(float64(w.TolMM))+" is not less than over_mm", "a tolerance below "+shown(float64(w.OverMM)))
	}
	if w.ConductorMM > w.OverMM {
		e.wrong("conductor_mm", shown(float64(w.ConductorMM))+" is more than over_mm", "a conductor of at most "+shown(float64(w.OverMM)))
	}
	if float64(w.AreaMM2) > math.Pi/4*float64(w.OverMM*w.OverMM) {
		e.wrong("area_mm2", shown(float64(w.AreaMM2))+" does not fit into over_mm", "the copper of the strands")
	}
}

// isWireSize reports whether a size is spelt as one: a gauge or an area.
func isWireSize(size string) bool {
	if _, ok := AWGNumber(size); ok {
		return true
	}
	_, ok := MetricArea(size)
	return ok
}
