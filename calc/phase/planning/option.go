package planning

import (
	"cmp"
	"slices"

	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
)

// Laid is the harness with an option taken: its layers, and its spares wired.
func Laid(s *sheet.Sheet, h *model.Harness, i int, o sheet.Option) *model.Harness {
	h = h.EditBranch(i, func(b *model.Branch) {
		b.Layers = model.CloneLayers(o.Layers)
		b.Make = model.Some(model.MakeLaid)
	})
	for k, p := range o.Spares {
		h, _ = AddSpare(s, h, i, o.SpareIn[k], p)
	}
	return h
}

// tooDear is the share of the best cost from which a lay-up is not worth listing,
// though it may spare one lump or one filler.
const tooDear = 0.35

// worthHaving ranks options by cost and leaves out those that another beats or
// equals in all that counts: fillers, over, lumpy layers, spares, what is
// buried, and layers that part where one of the same diameter does not; and those that cost far more than the best.
func worthHaving(in []sheet.Option) []sheet.Option {
	in = slices.Clone(in)
	slices.SortStableFunc(in, func(a, b sheet.Option) int {
		return cmp.Or(cmp.Compare(a.Plan.Relaxed, b.Plan.Relaxed), cmp.Compare(a.Cost, b.Cost), cmp.Compare(len(a.Layers), len(b.Layers)))
	})
	var out []sheet.Option
	for _, o := range in {
		if len(out) > 0 && (o.Plan.Relaxed > out[0].Plan.Relaxed || o.Cost > out[0].Cost*(1+tooDear)) {
			continue
		}
		if !slices.ContainsFunc(out, func(p sheet.Option) bool { return beats(p, o) }) {
			out = append(out, o)
		}
	}
	return out
}

// beats reports whether o is at least as good as p in every figure. The dearer one
// stands later, so it need not be asked the other way.
func beats(o sheet.Option, p sheet.Option) bool {
	a, b := over(o), over(p)
	return o.Plan.Fillers <= p.Plan.Fillers && a <= b && o.Plan.Lumpy <= p.Plan.Lumpy && len(o.Spares) >= len(p.Spares) &&
		o.Buried <= p.Buried && (o.Parted <= p.Parted || a < b)
}

// over is the diameter of an option, as far as options are told apart by it.
func over(o sheet.Option) unit.Millimetre { return unit.Written(o.Plan.Over) }

func same(o sheet.Option, p sheet.Option) bool {
	return slices.EqualFunc(o.Layers, p.Layers, func(a, b model.Layer) bool {
		return slices.Equal(a.Of, b.Of) && a.Fillers == b.Fillers && a.BindMM == b.BindMM
	})
}
