package reading

import (
	"strings"

	"contralay/model/wirelist/column"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

// deviceOfPins takes the devices to the right of the cavities for where the wires go, where a title names the connector, its
// cavities go on from one device to the next, and some device has several of them.
//
//	# Dome drive, socket SK2
//	Pins | Signal | Device
//	3    | Home   | Switch
//	4    | Return | Switch
//	5    | Enable | Drive
func (l *look) deviceOfPins() {
	pin, device := l.holds(l.cols, name.FieldPin), l.holds(l.cols, name.FieldConnector)
	if pin < 0 || device < pin || l.titled() == "" || l.cols[device].Given || l.prof[device].Distinct == l.prof[device].Filled ||
		l.has(l.cols, name.FieldFrom, name.FieldTo, name.FieldFromPin, name.FieldToPin, name.FieldRun) {
		return
	}
	w := name.Words(table.Fold(l.cols[device].Head))
	if len(w) == 0 || !name.IsDeviceWord(w[len(w)-1]) || !l.prof[pin].Unique() || l.prof[pin].Filled < 3 {
		return
	}
	last := ""
	seen := map[string]bool{}
	again := 0 // devices that begin with the first cavity once more
	for _, r := range l.src.Rows[:min(len(l.src.Rows), column.MostLooked)] {
		if device >= len(r.Cells) || pin >= len(r.Cells) || r.Cells[device] == "" || shape.IsText(r) {
			continue
		}
		if f := table.Fold(r.Cells[device]); f != last {
			if first := strings.TrimSpace(r.Cells[pin]); !seen[f] && (first == "1" || first == "A") {
				again++
			}
			seen[f], last = true, f
		}
	}
	if again < 2 {
		l.cols[device].Field = name.FieldTo
	}
}
