package arrow

import (
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// DevicesAbove are the two devices that a line above some wires names, "(gauge) (hub)", "Gauge      Hub", "Gauge -> hub"; "" where it
// names none.
func DevicesAbove(r table.Row) (near, far string) {
	_, text := r.Filled()
	if near, far, ok := BothInBrackets(text); ok {
		return near, far
	}
	if r.Gap != nil {
		return BareDevice(r.Gap[0]), BareDevice(r.Gap[1])
	}
	return TwoDevices(text)
}

// IsDeviceName reports whether an end is words of small letters, as devices are called, and no pad: "Hub", "Rain gauge".
func IsDeviceName(end string) bool {
	first, _, _ := strings.Cut(end, " ")
	if len(first) < 3 || strings.ContainsAny(end, ":") {
		return false
	}
	small := 0
	for _, c := range first[1:] {
		if c >= 'a' && c <= 'z' {
			small++
		}
	}
	return small >= 2 && name.StateOf(end) == name.Used
}
