package runline

import (
	"strings"

	"contralay/model/wirelist/point"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// RemarksBehind takes what stands behind the values in a few of some lines for remarks: where most lines have no name, some words behind
// the values of one are none either. lines are the texts of the rows.
//
//	Desk plug pin 2 to Pump pin 2, 2.5 mm2 black
//	Desk plug pin 3 to Lamp pin 1, 1.5 mm2 white, leave 2 m for the arm
func RemarksBehind(rows []table.Row, lines []string) {
	named := 0
	for _, r := range rows {
		if len(r.Cells) > signalAt && r.Cells[signalAt] != "" {
			named++
		}
	}
	if 2*named >= len(rows) {
		return
	}
	for i, r := range rows {
		if len(r.Cells) <= signalAt {
			continue
		}
		called := r.Cells[signalAt]
		at := strings.LastIndex(lines[i], called)
		if !strings.Contains(called, " ") || point.IsNetLike(called) || at < 0 || r.Cells[signalAt-3]+r.Cells[signalAt-2] == "" {
			continue
		}
		behind := true
		for _, v := range r.Cells[signalAt-3 : signalAt-1] { // its colour and its size
			behind = behind && (v == "" || strings.Contains(lines[i][:at], v))
		}
		if behind {
			r.Cells[noteAt], r.Cells[signalAt] = value.JoinNonEmpty("; ", r.Cells[noteAt], called), ""
		}
	}
}
