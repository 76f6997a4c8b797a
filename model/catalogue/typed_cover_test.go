package catalogue

import (
	"fmt"
	"strings"

	"contralay/model/typedtest"
)

// tubeCells is a tube by the size in inches that its shelf label begins with.
func tubeCells(t Tube) []cell {
	size, _, _ := strings.Cut(t.ShelfLabel, " ")
	sheet, _, _ := strings.Cut(strings.TrimPrefix(t.Kind, "AS23053/"), " ")
	table := "tube_" + fmt.Sprintf("%02s", sheet)
	wall, lo, hi := "wall_mm", at(table, size, "wall_min_mm"), at(table, size, "wall_max_mm")
	props, length := sheet, sheet
	switch t.Kind {
	case "AS23053/1", "AS23053/13":
		table = "tube_13_01"
	case "AS23053/4", "AS23053/4 class 2", "AS23053/4 class 3":
		class := "1"
		if _, n, ok := strings.Cut(t.Kind, " class "); ok {
			class = n
		}
		table, props = "tube_04_class"+class, "4 class "+class
		lo, hi = at(table, size, "wall_min_mm"), at(table, size, "wall_max_mm")
	}
	exp, rec, w := at(table, size, "exp_mm"), at(table, size, "rec_mm"), at(table, size, wall)
	switch {
	case t.Kind == "AS23053/5": // the walls are maker A's, the limits another maker's
		w = at(table, size, "wall_second_maker_mm")
	case t.Kind == "AS23053/13": // from 1/2 in on the specification of fluoroelastomer, whose limits it is held to
		lo, hi = at(table, size, "rt1148_wall_min_mm"), at(table, size, "rt1148_wall_max_mm")
		w = at(table, size, "rt1148_wall_mm").or(w) // maker A's differ by 0.01 at the most: rounded inches
	case t.Kind == "AS23053/8":
		exp, rec = at("tube_05", size, "exp_mm"), at("tube_05", size, "rec_mm") // the 2:1 inch series
		w = at("tube_08_18", size, "wall_08_mm").or(at("tube_08_18", "3/64-3/16", "wall_08_mm"))
	case sheet == "16":
		exp = exp.or(at("tube_05", size, "exp_mm")).or(at("tube_13_01", size, "exp_mm"))
		rec = rec.or(at("tube_13_01", size, "rec_mm")).or(at("tube_05", size, "rec_mm"))
		w = w.or(at("tube_16_memory", size, "wall_mm"))
		if strings.HasSuffix(t.Kind, "thin") {
			share := at("tube_remembered", "AS23053/16 thin, share of the wall", "value")
			w = w.and(share, func(a, b float64) float64 { return a * b }).rounded(2)
			exp, rec = exp.recalled(typedtest.Memory), rec.recalled(typedtest.Memory)
		}
	}
	temperature := func(column string) typed {
		return at("tube_temperature", props, column).or(at("tube_temperature", "4 class 1", column))
	}
	recovery := temperature("shrinks_c")
	if sheet == "16" {
		recovery = at("tube_16_props", "full recovery_c", "value")
	}
	density := at("tube_density", sheet, "specific_gravity").or(at("tube_remembered", "AS23053/"+sheet+" density", "value"))
	shorter := at("tube_longitudinal", length, "minus_percent").times(0.01)
	return []cell{
		{"supplied_mm", float64(t.SuppliedMM), t.Standing, exp},
		{"recovered_mm", float64(t.RecoveredMM), t.Standing, rec},
		{"wall_mm", float64(t.WallMM), t.WallStanding, w},
		{"wall_min_mm", float64(t.WallMinMM), t.WallStanding, lo},
		{"wall_max_mm", float64(t.WallMaxMM), t.WallStanding, hi},
		{"recovery_c", float64(t.RecoveryC), t.Standing, recovery},
		{"service_min_c", float64(t.ServiceMinC), t.Standing, temperature("least_c")},
		{"service_max_c", float64(t.ServiceMaxC), t.Standing, temperature("most_c")},
		{"length_change", float64(t.LengthChange), t.LengthStanding, shorter},
		{"density", float64(t.Density), Memory, density},
	}
}

// bootCells is a boot by the size code that its shell is remembered to take.
func bootCells(b Boot) []cell {
	code := text("boot_shell", fmt.Sprint(b.Shell), "code")
	lip, rec, cable := at("boot", code, "h_exp_mm"), at("boot", code, "h_rec_mm"), at("boot", code, "j_rec_mm")
	if cable.how == 0 { // a range: its upper end
		_, upper, _ := strings.Cut(text("boot", code, "j_rec_mm"), "–")
		fmt.Sscan(upper, &cable.value)
		cable.how, cable.tol = typedtest.Memory, 1e-9
	}
	long := at("boot", code, "p_mm").recalled(typedtest.Memory)
	if b.Shape != "straight" {
		share := at("tube_remembered", "boot "+b.Shape+", share of the length", "value")
		long = long.and(share, func(a, b float64) float64 { return a * b })
	}
	return []cell{
		{"shell", float64(b.Shell), b.Standing, shellOf(b.ID)},
		{"lip_supplied_mm", float64(b.LipSuppliedMM), b.Standing, lip},
		{"lip_recovered_mm", float64(b.LipRecoveredMM), b.Standing, rec},
		{"cable_supplied_mm", float64(b.CableSuppliedMM), b.Standing, lip},
		{"cable_recovered_mm", float64(b.CableRecoveredMM), b.Standing, cable},
		{"length_mm", float64(b.LengthMM), b.Standing, long.rounded(1)},
	}
}

// shellOf is the shell size that the id of a boot or an arrangement tells: "boot-90-18", "18-32".
func shellOf(id string) typed {
	var n int
	if _, rest, ok := strings.Cut(strings.TrimPrefix(id, "boot-"), "-"); ok && strings.HasPrefix(id, "boot-") {
		fmt.Sscan(rest, &n)
	} else {
		before, _, _ := strings.Cut(id, "-")
		fmt.Sscan(before, &n)
		switch { // series I and III are odd, a size more than series II; 7 is the tiny shell, which has none
		case n == 7:
			n = 0
		case n%2 == 1:
			n--
		}
	}
	return typed{float64(n), 1e-9, typedtest.Read, "the name"}
}
