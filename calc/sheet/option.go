package sheet

import (
	"contralay/calc/formula/plan"
	"contralay/model"
	"contralay/model/unit"
)

// Option is one lay-up of a branch with its components named, its diameters in mm in Plan.
type Option struct {
	Plan    plan.Plan
	Layers  []model.Layer
	Buried  int
	Parted  int          // layers that part at the branch's far end
	Cost    unit.Ratio   // with the weight of buried early leavers, and of layers that part where they need not
	Spares  []SparePlace // spares it lays in that the file does not have
	SpareIn []int        // the layer of each
}

// Proposal is every option worked out for a set of components, best first.
type Proposal struct {
	Options []Option
	Plain   int // the one a branch is proposed as: the best without new spares

	// What the wishes cost in over; unset where one changes nothing.
	UnitsMM, LeaversMM model.Opt[unit.Millimetre]

	// Over of the best lay-up with each wish, and without it.
	LeaversWith, LeaversFree unit.Millimetre
	UnitsWith, UnitsFree     unit.Millimetre
}

// Best is the option a branch is proposed as.
func (p Proposal) Best() (Option, bool) {
	if p.Plain < 0 || p.Plain >= len(p.Options) {
		return Option{}, false
	}
	return p.Options[p.Plain], true
}
