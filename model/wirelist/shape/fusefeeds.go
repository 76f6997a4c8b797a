package shape

import (
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// fuseFeeds takes the fuses of a box for the cavities, where their ratings have a column of their own, and a device and its terminal
// stand beside them: that is where the wire of each goes.
//
//	Fuse | Amps | Load  | Terminal | Colour
//	F1   | 20   | Relay | 30       | red
func fuseFeeds(cols []Column) {
	fuse, rated, load := -1, false, -1
	for i, c := range cols {
		w := name.Words(table.Fold(c.Head))
		device := len(w) == 1 && name.IsDeviceWord(w[0])
		switch {
		case c.Given || c.Field == name.FieldFrom || c.Field == name.FieldTo || c.Field == name.FieldRun:
			return
		case c.Field == name.FieldFuse && fuse < 0:
			fuse = i
		case device && i+1 < len(cols) && cols[i+1].Field == name.FieldPin && load < 0:
			load = i
		case c.Field == name.FieldPin && load != i-1:
			return
		case c.Field == name.FieldCurrent && !device:
			rated = true
		}
	}
	if fuse >= 0 && rated && load > fuse {
		cols[fuse].Field = name.FieldPin
		cols[load].Field, cols[load+1].Field = name.FieldTo, name.FieldToPin
	}
}
