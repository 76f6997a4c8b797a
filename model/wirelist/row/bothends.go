package row

import (
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/value"
)

// joinsTwo reports whether a row names something at either end: it is a wire, whatever its name is.
func joinsTwo(b *shape.Block, cells []string) bool {
	says := func(fields ...name.Field) bool {
		for _, f := range fields {
			if cell := b.Cell(cells, f); !value.IsNothing(cell) && name.StateOf(cell) == name.Used {
				return true
			}
		}
		return false
	}
	return says(name.FieldFrom, name.FieldFromPin) && says(name.FieldTo, name.FieldToPin)
}
