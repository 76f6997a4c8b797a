package bothends

import (
	"contralay/model/wirelist/column"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

// Finish looks at the two ends of the wires once more, when the columns of a reading have their sides. titles are the rows above its
// headings.
func Finish(cols []shape.Column, prof []column.Profile, rows, titles []table.Row) {
	OwnPins(cols, prof)
	WholeEnds(cols, rows)
	FullSide(cols, prof, rows)
	WallColumn(cols, prof, titles)
	FarPlaces(cols, prof, rows)
	CarriedThings(cols, prof, rows)
	OfTitle(cols, titles)
}
