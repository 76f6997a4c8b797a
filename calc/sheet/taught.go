package sheet

import (
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// Learned is a correction that is in use on a figure.
type Learned struct {
	catalogue.Correction
	PredictedMM unit.Millimetre // what geometry says
}

// Raw is what geometry alone says of a bundle.
type Raw struct{ Over, Least, Most, Tape, TapeLeast unit.Millimetre }
