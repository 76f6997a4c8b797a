package reading

import (
	"slices"

	"contralay/model/wirelist/block"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/plugwires"
	"contralay/model/wirelist/shape"
)

// byColours reads a table of the wires of a plug that has no names of cavities: each has a colour of its own and a name, or a place
// that it goes to, and a heading names the plug. The lamps of a panel have a table like it: package block tells the two apart.
//
//	## Hand wheel
//	Wire  | What
//	red   | 5 V
//	black | 0 V
func byColours(l *look) []shape.Column {
	if len(l.Src.Head) == 0 || l.Plug() == "" || l.kindByWords() != "" || l.Has(l.Cols, name.FieldFrom, name.FieldFromPin, name.FieldRun,
		name.FieldPin, name.FieldWire, name.FieldNumber, name.FieldConnector, name.FieldVia, name.FieldDevicePin, name.FieldFuse) {
		return nil
	}
	colour, signal, to := l.Holds(l.Cols, name.FieldColour), l.Holds(l.Cols, name.FieldSignal), l.Holds(l.Cols, name.FieldTo)
	if colour < 0 || signal < 0 && to < 0 || l.Cols[colour].Given {
		return nil
	}
	p := &l.Prof[colour]
	if p.Filled < 2 || !p.All(p.Colours) || 2*p.Distinct <= p.Filled {
		return nil
	}
	for i, c := range l.Cols {
		if q := &l.Prof[i]; c.Field == name.FieldKeep && q.Filled > 0 && (l.EndsInPin(c.Head) || l.HeadsDevice(i) ||
			q.Unique() && (q.Most(l.ShortNames(i)) || q.Most(q.Ends))) {
			return nil // it could be the cavities
		}
	}
	if n := plugwires.CountedWires(l.Plug()); n > 0 && n != p.Filled {
		return nil // some of them are told elsewhere
	}
	of := block.ColoursOf(l.Src, signal, to)
	of.Plug, of.Said = l.Plug(), of.Said || plugwires.SaysWires(l.Cols[colour].Head)
	of.Striped = plugwires.Striped(l.Src.Rows, colour)
	if i := l.Holds(l.Cols, name.FieldGauge); i >= 0 {
		of.Sized = l.Prof[i].Sizes > 0
	}
	if !of.Wires() {
		return nil
	}
	cols := slices.Clone(l.Cols)
	cols[colour].Alone = true
	return cols
}
