package calc

import (
	"cmp"
	"slices"

	"contralay/calc/plan"
	"contralay/model"
	"contralay/model/unit"
)

// Option is one lay-up of a branch with its components named.
type Option struct {
	Plan    plan.Plan
	Layers  []model.Layer
	Buried  int
	Cost    unit.Ratio   // with the weight of buried early leavers
	Spares  []SparePlace // spares it lays in that the file does not have
	SpareIn []int        // the layer of each
}

// Proposal is every option worked out for a set of components, best first.
type Proposal struct {
	Options []Option
	Plain   int // the one a branch is proposed as: the best without new spares

	// What the wishes cost in over; unknown where one changes nothing.
	UnitsMM, LeaversMM       unit.Millimetre
	UnitsKnown, LeaversKnown bool

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

// Laid is the harness with an option taken: its layers, and its spares wired.
func (s *Sheet) Laid(h *model.Harness, i int, o Option) *model.Harness {
	h = h.EditBranch(i, func(b *model.Branch) {
		b.Layers = model.CloneLayers(o.Layers)
		b.Make = model.Some("laid")
	})
	for k, p := range o.Spares {
		h, _ = s.AddSpare(h, i, o.SpareIn[k], p)
	}
	return h
}

// tooDear is the share of the best cost from which a lay-up is not worth listing,
// though it may spare one lump or one filler.
const tooDear = 0.35

// worthHaving ranks options by cost and leaves out those that another beats or
// equals in all that counts: fillers, over, lumpy layers, spares and what is
// buried; and those that cost far more than the best.
func worthHaving(in []Option) []Option {
	in = slices.Clone(in)
	slices.SortStableFunc(in, func(a, b Option) int {
		return cmp.Or(cmp.Compare(a.Plan.Relaxed, b.Plan.Relaxed), cmp.Compare(a.Cost, b.Cost), cmp.Compare(len(a.Layers), len(b.Layers)))
	})
	var out []Option
	for _, o := range in {
		if len(out) > 0 && (o.Plan.Relaxed > out[0].Plan.Relaxed || o.Cost > out[0].Cost*(1+tooDear)) {
			continue
		}
		if !slices.ContainsFunc(out, func(p Option) bool { return p.beats(o) }) {
			out = append(out, o)
		}
	}
	return out
}

// beats reports whether o is at least as good as p in every figure. The dearer one
// stands later, so it need not be asked the other way.
func (o Option) beats(p Option) bool {
	return o.Plan.Fillers <= p.Plan.Fillers && unit.RoundHalfUp(float64(o.Plan.Over), 0.01) <= unit.RoundHalfUp(float64(p.Plan.Over), 0.01) &&
		o.Plan.Lumpy <= p.Plan.Lumpy && len(o.Spares) >= len(p.Spares) && o.Buried <= p.Buried
}

func (o Option) same(p Option) bool {
	return slices.EqualFunc(o.Layers, p.Layers, func(a, b model.Layer) bool {
		return slices.Equal(a.Of, b.Of) && a.Fillers == b.Fillers && a.BindMM == b.BindMM
	})
}
