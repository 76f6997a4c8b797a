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

// Proposal is every option worked out for a set of components: those of the answer at once, best first,
// then those that a longer search found, in the order it did.
type Proposal struct {
	Options []Option
	Plain   int // the one a branch is proposed as: the best of the answer at once without new spares
	Shown   int // how many there were at once
	Reach   Reach

	// What the wishes cost in over; unset where one changes nothing.
	UnitsMM, LeaversMM model.Opt[unit.Millimetre]

	// Over of the best lay-up with each wish, and without it.
	LeaversWith, LeaversFree unit.Millimetre
	UnitsWith, UnitsFree     unit.Millimetre
}

// Reach is how far the search for a proposal has come.
type Reach struct {
	Ended    bool       // a longer search finds nothing more
	Proven   bool       // no lay-up costs less than the best option
	Thinnest bool       // nor is any thinner than the thinnest option
	Least    unit.Ratio // no lay-up costs less, as far as is known; 0: nothing is known
}

// mostListed is how many options of the answer at once have a letter.
const mostListed = 8

// AtOnce is how many options of the answer at once have a letter. Those that were found later all have one.
func (p Proposal) AtOnce() int { return min(p.Shown, mostListed) }

// Letter is what an option is called.
func (p Proposal) Letter(k int) rune {
	if k >= p.Shown {
		k += p.AtOnce() - p.Shown
	}
	return 'A' + rune(k)
}

// Cheapest is the option that costs least of those that leave the fewest limits, and whether there is any.
func (p Proposal) Cheapest() (k int, ok bool) {
	for j, o := range p.Options {
		if b := p.Options[k].Plan.Relaxed; o.Plan.Relaxed < b || o.Plan.Relaxed == b && o.Cost < p.Options[k].Cost {
			k = j
		}
	}
	return k, len(p.Options) > 0
}

// Best is the option a branch is proposed as.
func (p Proposal) Best() (Option, bool) {
	if p.Plain < 0 || p.Plain >= len(p.Options) {
		return Option{}, false
	}
	return p.Options[p.Plain], true
}
