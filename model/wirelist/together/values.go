package together

import (
	"slices"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/words"
)

// values gives the columns beside the places their meanings; ok is false where two say the same, or one holds what its heading does not
// say.
func (t *Table) values(cols []shape.Column, near, far place) (ok bool) {
	taken := map[name.Field]int{}
	for i := range cols {
		c := &cols[i]
		if !t.filled(i) || slices.Contains([]int{near.device, near.pins, far.device, far.pins}, i) {
			continue
		}
		p := &t.Prof[i]
		if c.Alias {
			c.Field = name.FieldKeep
			continue
		}
		switch c.Field {
		case name.FieldConnector, name.FieldFrom, name.FieldTo, name.FieldPin, name.FieldFromPin, name.FieldToPin,
			name.FieldStripe, name.FieldContact:
			return false // a place too many, or what other readings know more of
		case name.FieldCable, name.FieldSpec:
			if c.Field = name.FieldGauge; !p.Most(p.Sized) || t.heads(name.FieldGauge) {
				return false // "20 AWG red" below "Cable"; other readings know more of cables
			}
		case name.FieldColour:
			if !p.Most(p.Colours + p.Free) {
				return false
			}
		case name.FieldGauge:
			if !p.Most(max(p.Sizes, p.Sized, p.Specs, p.Numbers)) || p.Colours > 0 {
				return false
			}
		case name.FieldSignal:
			if words.HeadsLabel(c.Head) && p.All(p.Ids) && p.Distinct == p.Filled {
				return false // what stands on the label is the id of the wire, or its name
			}
		case name.FieldNumber:
			c.Field = name.FieldWire
			if p.Distinct != p.Filled {
				return false
			}
		case name.FieldWire:
			if !t.wire(cols, i) {
				return false
			}
		case name.FieldKeep:
			if p.Most(p.Colours) && p.Coloured() && !t.heads(name.FieldColour) && t.endsInWire(c.Head) {
				c.Field = name.FieldColour // "Signal wire"
			}
		}
		if taken[c.Field]++; taken[c.Field] > 1 && c.Field != name.FieldKeep && c.Field != name.FieldNote {
			return false
		}
	}
	if t.leavesNames(cols, taken, []int{near.device, near.pins, far.device, far.pins}) {
		return false
	}
	whole := near.pins >= 0 && far.pins >= 0 // two cavities are a wire, whatever else is said of it
	return whole || taken[name.FieldSignal]+taken[name.FieldColour]+taken[name.FieldGauge]+taken[name.FieldWire] > 0
}

// wire says what stands below a heading that is "Wire" or the like: the colours, the sizes or the ids of the wires.
func (t *Table) wire(cols []shape.Column, i int) bool {
	switch p := &t.Prof[i]; {
	case p.Coloured() && !t.heads(name.FieldColour):
		cols[i].Field = name.FieldColour
	case p.Most(p.Sized) && p.Colours == 0 && !t.heads(name.FieldGauge):
		cols[i].Field = name.FieldGauge
	case p.Distinct == p.Filled && p.All(p.Ids) && p.Colours == 0:
	case p.Most(p.Long) && 2*p.Ids < p.Filled && 4*p.Colours < p.Filled && !t.heads(name.FieldSignal):
		cols[i].Field = name.FieldSignal // "Circuit: oil pressure"
	default:
		return false
	}
	return true
}

// endsInWire reports whether the last word of a heading is one for wires.
func (t *Table) endsInWire(head string) bool {
	w := name.Words(table.Fold(head))
	return len(w) > 1 && t.Words[w[len(w)-1]].Field == name.FieldWire
}

// leavesNames reports whether a column that nobody knows could be the names or the ids of the wires, and no other is.
func (t *Table) leavesNames(cols []shape.Column, taken map[name.Field]int, places []int) bool {
	sure := slices.ContainsFunc(places, func(i int) bool { return i >= 0 && t.numbersHead(i) }) // its cells say what the heading is
	for i, c := range cols {
		if i >= len(t.Prof) {
			break
		}
		p := &t.Prof[i]
		if c.Field != name.FieldKeep || p.Filled == 0 || i == t.outputs || slices.Contains(places, i) {
			continue
		}
		names, ids := p.Most(p.Filled-p.Numbers), p.All(p.Ids) && p.Distinct == p.Filled
		if taken[name.FieldSignal] == 0 && names && !sure || taken[name.FieldWire] == 0 && ids {
			return true
		}
	}
	return false
}

// heads reports whether some heading is of a field.
func (t *Table) heads(f name.Field) bool {
	return slices.ContainsFunc(t.Cols, func(c shape.Column) bool { return c.Field == f })
}
