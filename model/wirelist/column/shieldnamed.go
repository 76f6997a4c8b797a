package column

import (
	"slices"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

// NamesShieldedDevice reports whether the word for a shield in the name of a net is of a device that the row names: the wire is no
// drain.
//
//	Signal            | Sensor     | Sensor pin
//	Screen box supply | Screen box | 3
func NamesShieldedDevice(b *shape.Block, cells []string, signal string) bool {
	of := name.Words(table.Fold(signal))
	for i, c := range cells {
		if i >= len(b.Cols) || c == signal {
			continue
		}
		switch b.Cols[i].Field {
		case name.FieldFrom, name.FieldTo, name.FieldConnector:
		default:
			continue
		}
		all := name.Words(table.Fold(c))
		if len(all) < 2 || len(of) < len(all) || !slices.ContainsFunc(all, name.IsDrainWord) {
			continue
		}
		if slices.Equal(of[:len(all)], all) {
			return true
		}
	}
	return false
}
