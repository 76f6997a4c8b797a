package reading

import (
	"contralay/model/wirelist/column"
	"contralay/model/wirelist/shape"
)

// cableDevices reads a list of cables from a device each to the cavities of connectors that the rows name.
func cableDevices(l *look) []shape.Column {
	if len(l.Src.Head) != 1 {
		return nil
	}
	return column.CableDevices(l.Cols, l.Prof, l.Src.Rows)
}
