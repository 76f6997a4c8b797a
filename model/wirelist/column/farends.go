package column

import (
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/signoff"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// AreFarEnds reports whether each cell of a column is a designator with its cavity, "J4-1", "J4:1", or a designator alone, and most have
// their cavity: the far ends of wires, of which some are studs.
//
//	1 | MIC HI | white | J4-1
//	2 | GND    | black | GB2
func AreFarEnds(rows []table.Row, i int) bool {
	ends, alone := 0, 0
	for _, r := range rows[:min(len(rows), MostLooked)] {
		if i >= len(r.Cells) || value.IsNothing(r.Cells[i]) || value.IsDots(r.Cells[i]) || shape.IsText(r) || signoff.IsTotal(r.Cells[i]) {
			continue
		}
		connector, pin, ok := name.SplitEnd(r.Cells[i])
		switch {
		case ok && name.IsDesignator(connector) && name.IsCavity(pin):
			ends++
		case name.IsDesignator(r.Cells[i]):
			alone++
		default:
			return false
		}
	}
	return ends > 1 && ends > alone
}

// AreFarEndsAsElsewhere reports whether the cells of a column of a whole sheet are far ends of wires: most name a designator and its
// cavity, and the others, "CLT / 1" below "INJ1 / 2", capitals and a cavity. A sheet of several connectors has the same columns for each.
func AreFarEndsAsElsewhere(rows []table.Row, i int) bool {
	sure, alike := 0, 0
	for _, r := range rows[:min(len(rows), MostLooked)] {
		if i >= len(r.Cells) || value.IsNothing(r.Cells[i]) || value.IsDots(r.Cells[i]) || shape.IsText(r) || signoff.IsTotal(r.Cells[i]) {
			continue
		}
		connector, pin, ok := name.SplitEnd(r.Cells[i])
		switch {
		case !ok || !name.IsCavity(pin) || connector != strings.ToUpper(connector) || strings.Contains(connector, " "):
			return false
		case name.IsDesignator(connector):
			sure++
		default:
			alike++
		}
	}
	return sure > 1 && sure > alike
}
