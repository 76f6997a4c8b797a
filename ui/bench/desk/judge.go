package desk

import (
	"contralay/calc/phase/wires"
	"contralay/calc/sheet"
	"contralay/model/unit"
	"contralay/ui/bench/words"
)

// CarriesText is what a wire carries as heat sees it.
func CarriesText(s *sheet.Sheet, i int) string {
	if !wires.Carries(s, i) {
		return "-"
	}
	step := 0.01
	if s.Wires[i].Heats >= 10 {
		step = 0.1
	}
	return words.Trim(unit.RoundHalfUp(float64(s.Wires[i].Heats), step))
}
