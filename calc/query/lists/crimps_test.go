package lists_test

import (
	"slices"
	"strings"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/query/lists"
)

// Two wires in one contact are one crimp, of the size their circular mils come to: two 22
// AWG, 1508, go by 18 AWG (1900), two 20 AWG, 2432, by 16 AWG (2426, within 1 %).
func TestCrimpOfTwo(t *testing.T) {
	for wires, want := range map[string]string{"22 22": "18", "20 20": "16", "22 20": "16"} {
		a, b, _ := strings.Cut(wires, " ")
		s := calctest.InCavities(t, "cavities = [\"1\"]\ncontacts = { \"16\" = [\"1\"] }", a+" 1", b+" 1")
		rows := lists.CrimpList(s)
		if len(rows) != 1 || rows[0].Together != want || rows[0].Count != 1 || !strings.Contains(rows[0].Size, " + ") ||
			rows[0].PullN <= 0 {
			t.Errorf("%s: %+v, want one crimp as %s", wires, rows, want)
		}
	}
}

// Wires of which one has no known conductor come to no size: to count it as nothing would
// ask for a setting too small.
func TestCrimpOfAnUnknown(t *testing.T) {
	s := calctest.InCavities(t, "cavities = [\"1\"]\ncontacts = { \"16\" = [\"1\"] }", "22 1", "22 1")
	h := *s.H
	h.Wires = slices.Clone(h.Wires)
	h.Wires[1].Spec = "nobody's"
	if rows := lists.CrimpList(calc.Build(&h, s.Cat, nil)); len(rows) != 1 || rows[0].Together != "" {
		t.Errorf("%+v", rows)
	}
}
