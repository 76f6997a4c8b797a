package toget_test

import (
	"testing"

	"contralay/model/wirelist/column"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/toget"
)

// Columns with a count and one place are things to get; with a cavity, both ends, or a value of a wire and no thing, they are not.
func TestIs(t *testing.T) {
	col := func(head string, f name.Field) shape.Column { return shape.Column{Head: head, Field: f} }
	qty, from, to := col("Qty", name.FieldKeep), col("From", name.FieldFrom), col("To", name.FieldTo)
	item, colour := col("Item", name.FieldNumber), col("Colour", name.FieldColour)
	for _, c := range []struct {
		cols []shape.Column
		want bool
	}{
		{[]shape.Column{item, qty, from}, true},
		{[]shape.Column{item, col("No. off", name.FieldKeep), to}, true},
		{[]shape.Column{item, colour, qty, from}, true},
		{[]shape.Column{colour, qty, from}, false},
		{[]shape.Column{item, qty, from, to}, false},
		{[]shape.Column{item, from}, false},
		{[]shape.Column{item, qty}, false},
		{[]shape.Column{item, qty, from, col("Pin", name.FieldPin)}, false},
	} {
		prof := make([]column.Profile, len(c.cols))
		for i := range prof {
			prof[i] = column.Profile{Filled: 3, Words: 3}
		}
		if got := toget.Is(c.cols, prof); got != c.want {
			t.Errorf("%v: %v", c.cols, got)
		}
	}
}
