package prose

import "contralay/model/wirelist/table"

// LastPoint leaves out the points of a list before the last text, where that is a point as well, no deeper one, and names a connector: they
// are of other connectors, and so is what is set in below them.
//
//   - CN2 pedal, 2-way
//   - both wires come from CN1, see above
//   - CN3 ram sensor
func LastPoint(rows []table.Row, names func(text string) bool) (kept, others []table.Row) {
	if len(rows) == 0 || !rows[len(rows)-1].Point || !names(rows[len(rows)-1].Cells[0]) {
		return rows, nil
	}
	last := rows[len(rows)-1]
	for i, r := range rows {
		if r.Point && r.Deep >= last.Deep && i+1 < len(rows) {
			others = append(others, r)
		} else {
			kept = append(kept, r)
		}
	}
	return kept, others
}
