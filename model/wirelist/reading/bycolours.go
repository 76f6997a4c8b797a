package reading

import (
	"slices"
	"strings"

	"contralay/model/wirelist/block"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

// byColours reads a table of the wires of a plug that has no names of cavities: each has a colour of its own and a name, or a place
// that it goes to, and a heading names the plug. The lamps of a panel have a table like it: package block tells the two apart.
//
//	## Hand wheel
//	Wire  | What
//	red   | 5 V
//	black | 0 V
func byColours(l *look) []shape.Column {
	if len(l.src.Head) == 0 || l.plug() == "" || l.kindByWords() != "" || l.has(l.cols, name.FieldFrom, name.FieldFromPin, name.FieldRun,
		name.FieldPin, name.FieldWire, name.FieldNumber, name.FieldConnector, name.FieldVia, name.FieldDevicePin, name.FieldFuse) {
		return nil
	}
	colour, signal, to := l.holds(l.cols, name.FieldColour), l.holds(l.cols, name.FieldSignal), l.holds(l.cols, name.FieldTo)
	if colour < 0 || signal < 0 && to < 0 || l.cols[colour].Given {
		return nil
	}
	p := &l.prof[colour]
	if p.Filled < 2 || !p.All(p.Colours) || 2*p.Distinct <= p.Filled {
		return nil
	}
	for i, c := range l.cols {
		if q := &l.prof[i]; c.Field == name.FieldKeep && q.Filled > 0 && (l.endsInPin(c.Head) || l.headsDevice(i) ||
			q.Unique() && (q.Most(l.shortNames(i)) || q.Most(q.Ends))) {
			return nil // it could be the cavities
		}
	}
	if n := block.CountedWires(l.plug()); n > 0 && n != p.Filled {
		return nil // some of them are told elsewhere
	}
	of := block.ColoursOf(l.src, signal, to)
	of.Plug, of.Said = l.plug(), of.Said || block.SaysWires(l.cols[colour].Head)
	if i := l.holds(l.cols, name.FieldGauge); i >= 0 {
		of.Sized = l.prof[i].Sizes > 0
	}
	if !of.Wires() {
		return nil
	}
	cols := slices.Clone(l.cols)
	cols[colour].Alone = true
	return cols
}

// plug is the heading that could name the plug of a table of colours: the nearest one, else a short text above it.
func (l *look) plug() string {
	for _, r := range slices.Backward(slices.Concat(l.src.Titles, l.src.Path)) {
		if _, text := r.Filled(); (r.Level > 1 || r.Level == 1 && block.SaysWires(text)) && !name.IsGeneric(text) {
			return text
		}
	}
	for _, r := range slices.Backward(l.src.Titles) {
		if _, text := r.Filled(); r.Level == 0 && len(name.Words(table.Fold(text))) <= mostPlug && !name.IsGeneric(text) &&
			!strings.HasSuffix(text, ".") {
			return strings.TrimRight(text, ": ")
		}
	}
	return ""
}

// mostPlug is how many words a text has that names a plug and is no heading (no source).
const mostPlug = 6
