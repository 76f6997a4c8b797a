package settle

import (
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
)

// numbersCircuits reports whether a column of numbers of wires stands beside one that is headed as circuits and names them in words; that
// one then has the names of the nets.
//
//	No  | Circuit     | From   | To
//	T01 | Ign feed    | PDM-14 | SP1
//	T02 | Coil 1 feed | SP1    | COIL1-3
func (l *Look) numbersCircuits(i int) bool {
	if f := l.Cols[i].Field; f != name.FieldKeep && f != name.FieldNumber || !l.another(i, name.FieldFrom) || !l.another(i, name.FieldTo) {
		return false
	}
	at := -1
	for k, c := range l.Cols {
		switch {
		case k == i || c.Field != name.FieldWire && c.Field != name.FieldSignal || l.Prof[k].Filled == 0:
		case at >= 0 || c.Given || c.Field != name.FieldWire || !shape.IsCircuit(c.Head):
			return false
		default:
			at = k
		}
	}
	if at < 0 || 2*l.Prof[at].Ids > l.Prof[at].Filled {
		return false
	}
	l.Cols[at].Field = name.FieldSignal
	return true
}
