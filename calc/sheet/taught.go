package sheet

import (
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// Learned is a correction that is in use on a figure. The zero value is none: the figure is what
// geometry says.
type Learned struct {
	catalogue.Correction
	PredictedMM unit.Millimetre // what geometry says
}

// Predicted is what geometry alone says of a bundle, in mm, before what the shop has learned.
type Predicted struct{ Over, Least, Most, Tape, TapeLeast unit.Millimetre }
