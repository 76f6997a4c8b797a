package sheet

import (
	"contralay/calc/formula/cover"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// Covered is one cover of a branch that is not its sheath: where it lies, in mm from the datum of
// the from end, and what it does to the diameter there.
type Covered struct {
	Index         int  // in the branch's list of covers
	Under         bool // it lies beneath the sheath
	What          model.CoverKind
	Part          string
	FromMM, ToMM  unit.Millimetre
	UnderMM       unit.Millimetre           // over of what it lies on, where that is thickest
	OverMM        unit.Millimetre           // over of it there; UnderMM where it is not known
	ThickMM       unit.Millimetre           // what it adds to the radius of what it lies on
	ThickGuess    bool                      // from memory
	Tube          model.Opt[catalogue.Tube] // unset where it is no tube of the catalogue
	Verdict       cover.Verdict
	PassMM        unit.Millimetre // the largest thing it gets over on its way from the easier end
	PassAt        string          // what that is
	CutMM         unit.Millimetre
	Gram          unit.Gram
	UnderTapeMin  unit.Millimetre
	UnderOverMost unit.Millimetre
	Ends          [2]bool // it may come on from the branch's from end, from its to end
}
