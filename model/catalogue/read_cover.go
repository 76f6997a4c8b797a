package catalogue

import (
	"fmt"

	"contralay/model/unit"
)

// What the figures of tubes, boots and transitions may be, in mm and °C.
var (
	boreSpan    = span{0.1, 500}
	wallSpan    = span{0.01, 50}
	lengthSpan  = span{0.1, 10000}
	celsiusSpan = span{-273, 1500}
	heatSpan    = span{1, 1500} // a rating, a recovery: never in the cold
	shareSpan   = span{0, 0.9}  // at 1 nothing would be left of the length
	densitySpan = span{0.1, 25}
)

func (b *builder) tube(e *entry) {
	t := Tube{
		ID:          e.text("id", true),
		Kind:        e.text("kind", true),
		ShelfLabel:  e.text("shelf_label", false),
		SuppliedMM:  unit.Millimetre(e.number("supplied_mm", true, boreSpan)),
		RecoveredMM: unit.Millimetre(e.number("recovered_mm", true, boreSpan)),
		WallMM:      unit.Millimetre(e.number("wall_mm", true, wallSpan)),
		WallMinMM:   unit.Millimetre(e.number("wall_min_mm", false, wallSpan)),
		WallMaxMM:   unit.Millimetre(e.number("wall_max_mm", false, wallSpan)),
		RecoveryC:   unit.Celsius(e.number("recovery_c", true, heatSpan)),
		ServiceMinC: unit.Celsius(e.number("service_min_c", true, celsiusSpan)),
		ServiceMaxC: unit.Celsius(e.number("service_max_c", true, heatSpan)),

		LengthChange: unit.Ratio(e.number("length_change", true, shareSpan)),
		Density:      unit.GramPerCC(e.number("density", false, densitySpan)),
		Fluids:       e.text("fluids", false),
		Material:     e.text("material", false),
		Flexible:     e.flag("flexible"),
		Origin:       e.origin(),
	}
	t.WallStanding = e.standing("wall_standing", false, t.Standing)
	t.LengthStanding = e.standing("length_standing", false, t.Standing)
	if t.ShelfLabel == "" {
		t.ShelfLabel = t.ID
	}
	b.claim(e, "tube", "id", t.ID)
	shrinks(e, "recovered_mm", t.RecoveredMM, "supplied_mm", t.SuppliedMM)
	if t.WallMinMM > t.WallMM {
		e.wrong("wall_min_mm", "it is above the nominal wall", "at most wall_mm")
	}
	if t.WallMaxMM != 0 && t.WallMaxMM < t.WallMM {
		e.wrong("wall_max_mm", "it is below the nominal wall", "at least wall_mm")
	}
	if t.ServiceMinC > t.ServiceMaxC {
		e.wrong("service_min_c", "it is above the highest service temperature", "at most service_max_c")
	}
	b.c.Tubes = append(b.c.Tubes, t)
}

// shrinks refuses a sleeve that does not get smaller. A bore that is 0 was
// refused before.
func shrinks(e *entry, key string, recovered unit.Millimetre, from string, supplied unit.Millimetre) {
	if recovered != 0 && supplied != 0 && recovered >= supplied {
		e.wrong(key, fmt.Sprintf("%s is not less than %s", shown(float64(recovered)), from), "a bore below "+shown(float64(supplied)))
	}
}

func (b *builder) boot(e *entry) {
	t := Boot{
		ID:               e.text("id", true),
		Shape:            e.word("shape", "straight", "45", "90"),
		Shell:            e.whole("shell", true, 8, 24),
		LipSuppliedMM:    unit.Millimetre(e.number("lip_supplied_mm", true, boreSpan)),
		LipRecoveredMM:   unit.Millimetre(e.number("lip_recovered_mm", true, boreSpan)),
		CableSuppliedMM:  unit.Millimetre(e.number("cable_supplied_mm", true, boreSpan)),
		CableRecoveredMM: unit.Millimetre(e.number("cable_recovered_mm", true, boreSpan)),
		LengthMM:         unit.Millimetre(e.number("length_mm", true, lengthSpan)),
		Origin:           e.origin(),
	}
	b.claim(e, "boot", "id", t.ID)
	shrinks(e, "lip_recovered_mm", t.LipRecoveredMM, "lip_supplied_mm", t.LipSuppliedMM)
	shrinks(e, "cable_recovered_mm", t.CableRecoveredMM, "cable_supplied_mm", t.CableSuppliedMM)
	b.c.Boots[t.ID] = t
}

func (b *builder) transition(e *entry) {
	t := Transition{ID: e.text("id", true), Outlets: outlets(e), Origin: e.origin()}
	b.claim(e, "transition", "id", t.ID)
	b.c.Transitions[t.ID] = t
}

func outlets(e *entry) []Outlet {
	const key, allowed = "outlets", "[[expanded, recovered, port_mm], …], the trunk first, at least two"
	v, ok := e.get(key, true, allowed)
	if !ok {
		return nil
	}
	rows, isList := v.([]any)
	if !isList || len(rows) < 2 {
		e.wrong(key, shown(v)+" is not a list of that kind", allowed)
		return nil
	}
	out := make([]Outlet, 0, len(rows))
	for i, row := range rows {
		at := fmt.Sprintf("%s %d", key, i+1)
		three, isList := row.([]any)
		if !isList || len(three) != 3 {
			e.wrong(at, "it is not a list of three numbers", allowed)
			continue
		}
		o := Outlet{
			ExpandedMM:  unit.Millimetre(e.inSpan(at, three[0], boreSpan, false)),
			RecoveredMM: unit.Millimetre(e.inSpan(at, three[1], boreSpan, false)),
			PortMM:      unit.Millimetre(e.inSpan(at, three[2], lengthSpan, false)),
		}
		shrinks(e, at, o.RecoveredMM, "the expanded bore", o.ExpandedMM)
		out = append(out, o)
	}
	return out
}
