package settle

import (
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/words"
)

// channelsWithGaps takes the meaning of cavities off a column of channels that stands in the first row of each channel alone: a
// channel is no cavity where other rows say wires and no channel.
//
//	Ch | Connector | Pin | Signal
//	1  | LC1       | 1   | Exc+
//	   | LC1       | 2   | Exc-
func (l *Look) channelsWithGaps() {
	for i := range l.Cols {
		c := &l.Cols[i]
		w := name.Words(table.Fold(c.Head))
		if c.Given || c.Field != name.FieldPin && c.Field != name.FieldFromPin || len(w) == 0 || !words.IsOutput(w[0]) {
			continue
		}
		without := 0
		for _, r := range l.Src.Rows {
			if n, _ := r.Filled(); n > 2 && (i >= len(r.Cells) || r.Cells[i] == "") {
				without++
			}
		}
		if 3*without >= len(l.Src.Rows) {
			c.Field, c.Of = name.FieldKeep, ""
		}
	}
}
