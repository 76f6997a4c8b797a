package bothends

import (
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
)

// OneUse reports whether two readings take a column for cavities of one device, which its heading names, be it as an end or as one of
// several devices in a row.
func OneUse(a, b shape.Column) bool {
	return a.Of != "" && isOfDevice(a) && isOfDevice(b) && (a.Of == b.Of || a.Head == b.Head && (a.Of == a.Head || b.Of == b.Head))
}

func isOfDevice(c shape.Column) bool {
	return c.Field == name.FieldDevicePin || c.Field == name.FieldFromPin || c.Field == name.FieldToPin || c.Field == name.FieldPin
}
