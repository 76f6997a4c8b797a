package settle

import (
	"strings"

	"contralay/model/wirelist/column"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// numbersOfPlugs takes a column of numbers right behind connectors that come again for their cavities, where one end alone stands in
// columns of its own: no connector has one of them twice, and two connectors have the same.
//
//	Plug | Pos | Wire | Where to
//	P1   | 1   | red  | Deck
//	P2   | 1   | grey | Horn
func (l endColumns) numbersOfPlugs() {
	if l.AnotherPin(-1) || !l.Has(l.Cols, name.FieldTo) || l.Has(l.Cols, name.FieldFrom, name.FieldFromPin, name.FieldRun, name.FieldVia,
		name.FieldDevicePin) {
		return
	}
	for i := 1; i < len(l.Cols); i++ {
		c, p, of := &l.Cols[i], &l.Prof[i], &l.Prof[i-1]
		head := strings.Join(name.Words(table.Fold(c.Head)), " ")
		if c.Given || l.Cols[i-1].Field != name.FieldConnector || l.Heads.Words[head].Field != name.FieldNumber || p.Filled < 3 ||
			!p.All(p.Cavities) || p.Distinct == p.Filled || of.Distinct == of.Filled || of.Filled < p.Filled ||
			!column.PairsOnce(l.Src.Rows, i-1, i) {
			continue
		}
		c.Field = name.FieldPin
		return
	}
}
