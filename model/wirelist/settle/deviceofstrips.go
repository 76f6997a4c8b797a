package settle

import (
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// slips takes back what a slip of the hand in a heading made of it where the cells are no colours: "Strip" is no stripe over "X1".
func (l endColumns) slips() {
	for i := range l.Cols {
		if c, p := &l.Cols[i], &l.Prof[i]; c.Misspelt && !c.Given && (c.Field == name.FieldStripe || c.Field == name.FieldColour) &&
			p.Filled > 0 && 2*(p.Colours+p.Free) < p.Filled {
			c.Field, c.Misspelt = name.FieldKeep, false
		}
	}
}

// deviceOfStrips takes a column that is headed as devices of some kind for where the wires go, behind connectors, their cavities and the
// names of the nets.
//
//	Strip | Terminal | Function  | Field device
//	X1    | 1        | Pump live | Pump
func (l endColumns) deviceOfStrips() {
	of, pin := l.Holds(l.Cols, name.FieldConnector), l.Holds(l.Cols, name.FieldPin)
	if of < 0 || pin < of || !l.Has(l.Cols, name.FieldSignal) || l.Has(l.Cols, name.FieldFrom, name.FieldTo, name.FieldFromPin,
		name.FieldToPin, name.FieldRun, name.FieldVia, name.FieldDevicePin) {
		return
	}
	for i := pin + 1; i < len(l.Cols); i++ {
		c, p := &l.Cols[i], &l.Prof[i]
		w := name.Words(table.Fold(c.Head))
		if c.Given || c.Field != name.FieldKeep || len(w) == 0 || p.Filled < 2 || p.Prose > 0 || p.Colours > 0 || p.Most(p.Numbers) {
			continue
		}
		if last := w[len(w)-1]; name.IsDeviceWord(last) || strings.HasSuffix(last, "gerat") {
			c.Field = name.FieldTo
			return
		}
	}
}
