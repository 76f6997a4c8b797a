package bothends

import (
	"slices"

	"contralay/model/wirelist/arrow"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

// PinsOfHeading takes the two devices that the heading names for those of the cavities on both sides: the columns are headed by the
// sides, or by the devices themselves.
//
//	CN1 – CN5                        ## PL2 -> Fan
//	From pin | Signal | To pin       Wire | PL2 | Fan | Colour
func PinsOfHeading(cols []shape.Column, heading string) {
	near, far := arrow.HeadingDevices(heading)
	if near == "" || slices.ContainsFunc(cols, func(c shape.Column) bool { return isEndField(c.Field) }) {
		return
	}
	of := func(f name.Field) int {
		return slices.IndexFunc(cols, func(c shape.Column) bool { return c.Field == f })
	}
	headed := func(device string) int {
		return slices.IndexFunc(cols, func(c shape.Column) bool { return table.Fold(c.Head) == table.Fold(device) })
	}
	from, to := of(name.FieldFromPin), of(name.FieldToPin)
	if from < 0 && to < 0 {
		from, to = headed(near), headed(far)
	}
	if from < 0 || to < 0 || from == to || cols[from].Given || cols[to].Given || cols[from].Of != "" && cols[from].Of != near ||
		cols[to].Of != "" && cols[to].Of != far {
		return
	}
	cols[from].Field, cols[from].Of, cols[from].Headed = name.FieldFromPin, near, true
	cols[to].Field, cols[to].Of, cols[to].Headed = name.FieldToPin, far, true
}

// isEndField reports whether a column says where a wire runs by itself.
func isEndField(f name.Field) bool {
	switch f {
	case name.FieldFrom, name.FieldTo, name.FieldRun, name.FieldConnector, name.FieldVia, name.FieldDevicePin:
		return true
	}
	return false
}
