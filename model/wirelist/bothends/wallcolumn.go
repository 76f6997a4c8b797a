package bothends

import (
	"slices"
	"strings"

	"contralay/model/wirelist/column"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/titleline"
)

// WallColumn takes the cavities of a bulkhead between two ends for those that each wire passes: their column is headed by the bulkhead,
// or stands below its name in the row above the headings.
//
//	From | Pin | Bulkhead BH1 | To      | Pin
//	PDM  | 3   | 1            | Starter | 86
func WallColumn(cols []shape.Column, prof []column.Profile, titles []table.Row) {
	has := func(f name.Field) bool {
		return slices.ContainsFunc(cols, func(c shape.Column) bool { return c.Field == f })
	}
	if !has(name.FieldFrom) || !has(name.FieldTo) || has(name.FieldVia) {
		return
	}
	var above []string
	if len(titles) > 0 {
		if above = titles[len(titles)-1].Cells; len(above) < 2 {
			above = nil
		}
	}
	for i := range cols {
		c := &cols[i]
		if i >= len(prof) || c.Given || !prof[i].All(prof[i].Cavities) || !prof[i].Unique() ||
			!slices.Contains([]name.Field{name.FieldKeep, name.FieldWire, name.FieldNumber, name.FieldPin, name.FieldConnector}, c.Field) {
			continue
		}
		of := c.Head
		if i < len(above) && above[i] != "" {
			of = above[i]
		}
		if slices.ContainsFunc(name.Words(table.Fold(of)), titleline.IsWall) && strings.ContainsAny(of, "0123456789 ") {
			c.Field, c.Of = name.FieldVia, shape.DeviceOf(of)
			return
		}
	}
}
