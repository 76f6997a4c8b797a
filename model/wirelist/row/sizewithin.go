package row

import (
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/value"
)

// sizeWithin is the size within a cell that says more than one: with its unit anywhere, or as the column has it before brackets,
// "1,5 (short piece)". "" where there is none.
func sizeWithin(cell string, c *shape.Column, mark value.Mark) string {
	if size := value.SizeWithin(cell, mark); size != "" {
		return size
	}
	bare := name.WithoutBrackets(cell)
	if g, ok := value.ParseGauge(bare, c.Bare, mark); ok && bare != cell && !g.IsCable() && g.Spec == "" {
		return g.Size
	}
	return ""
}
