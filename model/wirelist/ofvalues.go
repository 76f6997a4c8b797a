package wirelist

import (
	"slices"

	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/words"
)

// leaveValues takes the table for none of wires where the column that would hold the cavities is of values by its heading: a table of
// registers has addresses there.
//
//	NAME | REV | ADDR | TYPE
//	CTRL |     | 00A  | R
func (f *Found) leaveValues() {
	for i := range f.Readings {
		r := &f.Readings[i]
		if r.Wires && r.Block != nil && slices.ContainsFunc(r.Block.Cols, func(c shape.Column) bool {
			return c.Of != "" && c.Of == c.Head && !c.Given && words.IsOfValues(table.Fold(c.Head))
		}) {
			r.Wires, r.Kind = false, "a table of values"
		}
	}
}
