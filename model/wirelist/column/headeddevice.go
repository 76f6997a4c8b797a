package column

import (
	"slices"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

// OfDevices is the column of the devices beside cavities: the one of connectors, else one that is headed by a word for a device alone,
// "Magnet", and nobody knows more of; −1 where there is none.
func OfDevices(cols []shape.Column) int {
	if i := slices.IndexFunc(cols, func(c shape.Column) bool { return c.Field == name.FieldConnector }); i >= 0 {
		return i
	}
	return slices.IndexFunc(cols, func(c shape.Column) bool {
		w := name.Words(table.Fold(c.Head))
		return c.Field == name.FieldKeep && len(w) == 1 && name.IsDeviceWord(w[0])
	})
}
