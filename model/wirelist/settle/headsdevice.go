package settle

import (
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// HeadsDevice reports whether the heading of a column is a device.
func (l *Look) HeadsDevice(i int) bool {
	for _, w := range name.Words(table.Fold(l.Cols[i].Head)) {
		if name.IsDeviceWord(w) || name.IsUnit(w) || l.Heads.Words[w].Field == name.FieldConnector {
			return true
		}
	}
	return false
}
