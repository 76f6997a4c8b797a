package settle

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
func (l *Look) deviceOfPins() {
	pin, device := l.Holds(l.Cols, name.FieldPin), l.Holds(l.Cols, name.FieldConnector)
	if pin < 0 || device < pin || l.Titled() == "" || l.Cols[device].Given || l.Prof[device].Distinct == l.Prof[device].Filled ||
		l.Has(l.Cols, name.FieldFrom, name.FieldTo, name.FieldFromPin, name.FieldToPin, name.FieldRun) {
		return
	}
	w := name.Words(table.Fold(l.Cols[device].Head))
	if len(w) == 0 || !name.IsDeviceWord(w[len(w)-1]) || !l.Prof[pin].Unique() || l.Prof[pin].Filled < 3 {
		return
	}
	last := ""
	seen := map[string]bool{}
	again := 0 // devices that begin with the first cavity once more
	for _, r := range l.Src.Rows[:min(len(l.Src.Rows), column.MostLooked)] {
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
		l.Cols[device].Field = name.FieldTo
	}
}
