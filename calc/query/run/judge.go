package run

import (
	"math"

	"contralay/calc"
	"contralay/calc/phase/bundle"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
)

// Whether a reading is within what the wires of its layer may measure. That takes the whole sheet built twice
// more, with every wire at its smallest and at its largest; who asks of many layers builds it once.

// Judge says of readings of the layers of one serial whether they are within tolerance.
type Judge struct {
	s    *sheet.Sheet
	b    *model.Build
	laid *band // as the layers are laid; nil: not asked yet
	bare *band // with no tape round any centre; nil: not asked yet
}

// NewJudge is a judge of the readings of a serial against its sheet.
func NewJudge(s *sheet.Sheet, b *model.Build) *Judge { return &Judge{s: s, b: b} }

// Explain is Explain as far as the band of the layer goes: what the sheet has, the least, the most, the mean and
// what that comes to. What it would mean for all that follows is left out.
func (j *Judge) Explain(i int, r RunStep, read []unit.Millimetre) (Explained, bool) {
	if r.Kind == BuildUpStep {
		return explainBuiltUp(j.s, i, r.Layer, read)
	}
	of, make := &j.laid, func() *sheet.Sheet { return j.s }
	if r.Bare {
		of, make = &j.bare, func() *sheet.Sheet { return bareSheet(j.s) }
	}
	if *of == nil {
		*of = bandOf(make())
	}
	return (*of).judge(j.b, i, r.Layer, read)
}

// bareSheet is the sheet without the tape round any centre that is built up.
func bareSheet(s *sheet.Sheet) *sheet.Sheet {
	h := s.H
	for i := range s.Branches {
		if b := &s.Branches[i]; len(b.Layers) > 0 && len(b.As) > 0 && b.Layers[0].BuiltMM > 0 {
			as, made := model.CloneLayers(b.As), b.Make
			as[0].BindMM = model.Opt[unit.Millimetre]{}
			h = h.EditBranch(i, func(n *model.Branch) { n.Layers, n.Make = as, model.Some(made) })
		}
	}
	return calc.Build(h, s.Base, s)
}

// band is a sheet, and the same with every wire at its smallest and at its largest. A layer goes by the wires of
// its own and those beneath it, so that one such sheet serves all layers.
type band struct{ s, small, large *sheet.Sheet }

func bandOf(s *sheet.Sheet) *band {
	small, large := map[[2]string]unit.Millimetre{}, map[[2]string]unit.Millimetre{}
	for k := range s.Wires {
		if d := s.Wires[k].Dia; d.Max > d.Min {
			size := [2]string{s.H.Wires[k].Spec, s.H.Wires[k].Size}
			small[size], large[size] = d.Min, d.Max
		}
	}
	if len(small) == 0 {
		return &band{s, s, s}
	}
	return &band{s, withReels(s, small), withReels(s, large)}
}

// judge holds readings of a layer of branch i of a serial against the band. False without a reading that is a
// diameter, or for a layer that is not there.
func (x *band) judge(b *model.Build, i, layer int, read []unit.Millimetre) (Explained, bool) {
	if i < 0 || i >= len(x.s.Branches) || layer < 0 || layer >= len(x.s.Branches[i].Layers) || len(read) == 0 {
		return Explained{}, false
	}
	shift := bundle.LearnedBy(x.s, b, i, layer)
	e := Explained{SheetMM: x.s.Branches[i].Layers[layer].OverMM * shift}
	for _, v := range read {
		e.ReadMM += v / unit.Millimetre(len(read))
		e.HighMM = max(e.HighMM, v)
	}
	if !(e.ReadMM > 0) || math.IsInf(float64(e.ReadMM), 0) || !(e.SheetMM > 0) {
		return Explained{}, false
	}
	e.LeastMM, e.MostMM = e.SheetMM, e.SheetMM
	if l := x.small.Branches[i].Layers; layer < len(l) {
		e.LeastMM = min(e.LeastMM, l[layer].OverMM*shift)
	}
	if l := x.large.Branches[i].Layers; layer < len(l) {
		e.MostMM = max(e.MostMM, l[layer].OverMM*shift)
	}
	e.Told = tellOf(e)
	return e, true
}
