package farcolumn

import (
	"slices"
	"strings"

	"contralay/model/wirelist/column"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// ofHeaders reports whether each cell of a column is the header of a board and, behind one sign, its pin: most headers come again, none has
// a pin twice, and the pins of each are the first numbers there are.
//
//	Plug pin | Signal   | Board
//	1        | Heater + | HE0-1
//	2        | Heater - | HE0-2
//	3        | Probe    | PROBE-2
//	4        | Probe 5V | PROBE-1
func ofHeaders(rows []table.Row, i int) bool {
	const most = 12 // bytes of the name of a header (no source)
	pins := map[string]map[string]bool{}
	n := 0
	ok := cells(rows, i, func(cell string) bool {
		at := strings.LastIndexAny(cell, "-/.:")
		if at < 1 || at > most || strings.Contains(cell, " ") {
			return name.StateOf(cell) != name.Used
		}
		of, pin := table.Fold(cell[:at]), cell[at+1:]
		if strings.Trim(pin, "0123456789") != "" || pin == "" || len(pin) > 2 || pin[0] == '0' ||
			strings.Trim(of, "0123456789.,") == "" || pins[of][pin] {
			return false
		}
		if pins[of] == nil {
			pins[of] = map[string]bool{}
		}
		pins[of][pin] = true
		n++
		return true
	})
	again := 0
	for _, of := range pins {
		if len(of) > 1 {
			again += len(of)
		}
		for pin := range of {
			if len(pin) > 1 && len(of) < 5 {
				return false // "A-17", "A-42" count something else
			}
		}
	}
	return ok && n > least && len(pins) > 1 && 3*again >= 2*n
}

// AreEnds reports whether the cells of a column are far ends by what they are and the heading of a plug or a board above them.
func AreEnds(head string, rows []table.Row, i int) bool {
	return column.ArePlugEnds(head, rows, i) || namesBoard(head) && ofHeaders(rows, i)
}

// namesBoard reports whether a heading is what a unit or a board is called, alone or at the end of another word: "Mainboard", "ECU",
// "Hauptplatine".
func namesBoard(head string) bool {
	w := headWords(head)
	if len(w) == 0 {
		return false
	}
	last := w[len(w)-1]
	return name.IsUnit(last) || slices.ContainsFunc([]string{"board", "platine", "karte", "carte", "placa", "scheda", "printplaat", "kort",
		"plytka", "deska", "pcb"}, func(of string) bool { return strings.HasSuffix(last, of) })
}
