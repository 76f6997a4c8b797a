package row

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/pads"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/value"
)

// partNumbered parts the cells that say the number and the name of a cavity. called is the name of the first of them, notes are
// the others.
func partNumbered(b *shape.Block, cells []string) (out []string, called string, notes []string) {
	out = cells
	for i, c := range b.Cols {
		if i >= len(cells) || c.Field != name.FieldPin && c.Field != name.FieldFromPin && c.Field != name.FieldToPin {
			continue
		}
		pin, text, more := pads.NumberedPin(cells[i])
		if pin == "" || !c.Numbered && !(c.Of != "" && strings.HasPrefix(strings.TrimLeft(cells[i][len(pin):], " "), "(")) {
			continue
		}
		if &out[0] == &cells[0] {
			out = slices.Clone(cells)
		}
		out[i] = pin
		if called == "" && !b.Has(name.FieldSignal) {
			called = text
		} else {
			notes = append(notes, value.JoinNonEmpty(" ", c.Of, pin)+": "+text)
		}
		if more != "" {
			notes = append(notes, more)
		}
	}
	return out, called, notes
}
