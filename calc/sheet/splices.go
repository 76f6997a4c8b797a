package sheet

import (
	"contralay/model/catalogue"
)

// Splice is what is worked out of a splice: the wires in each of its barrels, by index, and the
// part that takes them; Part is "" where none does.
type Splice struct {
	Wires []int // that end on it, in file order
	Near  []int // those in its first barrel: from the breakout's side, or the thickest alone
	Far   []int // those in its second
	Part  string
	Known bool // the part is in the catalogue
	Fits  bool
	Given bool // the file names the part
	catalogue.Origin
}
