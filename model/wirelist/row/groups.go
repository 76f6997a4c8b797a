package row

import (
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
)

// groupEnd is the near end of the rows below a heading, in a table that says the far ends alone: what stands above a group of
// them is where they all begin. "" where the heading names no such thing.
//
//	SPL2 - sensor ground
//	Wire | To         | Pin
//	S201 | Controller | 13
func groupEnd(b *shape.Block, heading string) string {
	if !b.Has(name.FieldTo) || b.Has(name.FieldFrom, name.FieldFromPin, name.FieldRun, name.FieldPin, name.FieldConnector, name.FieldVia,
		name.FieldDevicePin) {
		return ""
	}
	first, _, _ := strings.Cut(heading, " ")
	switch first = strings.TrimRight(first, ":,;-"); {
	case name.IsDesignator(first) || name.IsSpliceName(first):
		return first
	case name.IsSpliceName(heading) || name.SaysConnector(heading) && !name.IsGeneric(heading):
		return name.ConnectorName(heading)
	}
	return ""
}

// leftOutBut says what is done with a text, which may name the near end of the rows below it.
func leftOutBut(end string) string {
	if end == "" {
		return "left out"
	}
	return "taken as the near end of the rows below it, " + end
}
