package wires

import (
	"fmt"

	"contralay/calc/query/offer"
	"contralay/ui/bench/desk"
)

// damagedRow says which spare stands in for a wire.
func damagedRow(m *desk.Model, id string) (desk.Row, bool) {
	all := offer.Substitutes(m.Sheet, m.Sheet.Index.Wire[id])
	if len(all) == 0 {
		return desk.Row{}, false
	}
	a := all[0]
	spare := m.H.Wires[a.Wire].ID
	return desk.Row{Key: "damaged", Id: spare, Text: "if damaged   " + spare + " can replace it",
		Detail: fmt.Sprintf("Re-pin %s from %s to %s and from %s to %s. Seal what it leaves", spare, a.ToA, a.FromA, a.ToB, a.FromB),
		Enter:  func(m *desk.Model) { m.Show(desk.KindWire, spare) }}, true
}
