package reading

import (
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/settle"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/words"
)

// What the cells of a pin table say of its connectors.

// inCells finds a column of cavities whose cells name the connector too.
//
//	Pin    | Label
//	X9:B04 | Coil 1
func (l *look) inCells(b *shape.Block) {
	if !b.IsPinTable() {
		return
	}
	i := l.Holds(b.Cols, name.FieldPin)
	if i < 0 || b.Cols[i].InCell {
		return
	}
	if b.Cols[i].Of != "" {
		b.Cols[i].InCell = !b.Has(name.FieldConnector) && l.AllParted(i) && l.FewConnectors(i)
		return
	}
	p := &l.Prof[i]
	b.Cols[i].InCell = !b.Has(name.FieldConnector) && (p.Most(p.Ends) || l.AllParted(i) && (l.Titled() == "" || l.FewConnectors(i)))
}

// groups finds the column that parts the cavities of a table which come again: what has one number
// in two groups of a board is two places.
//
//	Use       | Type    | Pin | Board
//	Arm angle | Analog  | 0   | Controller
//	Arm motor | PWM     | 0   | Controller
func (l *look) groups(b *shape.Block) {
	if !b.IsPinTable() {
		return
	}
	pin := l.Holds(b.Cols, name.FieldPin)
	if pin < 0 || b.Cols[pin].InCell || !l.comesAgain(b, pin, -1) {
		return
	}
	for i, c := range b.Cols {
		if i >= len(l.Prof) || i == pin || c.Field != name.FieldKeep || c.Given {
			continue
		}
		if p := &l.Prof[i]; p.Filled == l.Prof[pin].Filled && p.Distinct < p.Filled && p.Prose == 0 && !p.Most(p.Numbers) &&
			!l.comesAgain(b, pin, i) {
			alone := !b.Has(name.FieldConnector)
			b.Cols[i].Field, b.Cols[i].Group = name.FieldConnector, true
			if alone && l.Titled() != "" && 2*l.Designators(i) < p.Filled && !words.HeadsThings(name.Words(table.Fold(c.Head))) {
				b.Prefix = l.Titled() // "Analog" of which board
			}
			return
		}
	}
}

// comesAgain reports whether a cavity of one connector, and of one group, stands in two rows that are not
// the same. Below a text between the rows the cavities may be those of another connector.
func (l *look) comesAgain(b *shape.Block, pin, group int) bool {
	signal := map[string]string{}
	for _, r := range l.Src.Rows {
		if shape.IsText(r) {
			clear(signal)
		}
		if pin >= len(r.Cells) || r.Cells[pin] == "" || shape.IsText(r) {
			continue
		}
		key := b.Cell(r.Cells, name.FieldConnector) + "\x00" + r.Cells[pin]
		if group >= 0 && group < len(r.Cells) {
			key += "\x00" + r.Cells[group]
		}
		called := settle.Rest(r.Cells, pin, group)
		if was, ok := signal[key]; ok && was != called {
			return true
		}
		signal[key] = called
	}
	return false
}
