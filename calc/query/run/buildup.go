package run

import (
	"contralay/calc"
	"contralay/calc/phase/bundle"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
)

// A centre that is built up is measured twice: as it is laid, and once the tape is on. What
// it measures before explains the wire; what it measures after says how much tape is missing.

// Readings are the readings that a step takes of its layer.
func (r RunStep) Readings(of *model.Reading) *[]unit.Millimetre {
	if r.Bare {
		return &of.BareMM
	}
	return &of.OverMM
}

// SheetOver is what the sheet of a serial has for what a step measures; false where it has no such layer.
func SheetOver(s *sheet.Sheet, b *model.Build, r RunStep) (unit.Millimetre, bool) {
	s = AsBegun(s, b)
	i, ok := s.Index.Branch[r.Of]
	if !ok || r.Layer >= len(s.Branches[i].Layers) {
		return 0, false
	}
	if l := &s.Branches[i].Layers[r.Layer]; r.Bare {
		return l.BareMM(), true
	} else {
		return l.OverMM * bundle.LearnedBy(s, b, i, r.Layer), true
	}
}

// Explain explains the readings of a step that lays a layer of branch i or builds a centre up.
func Explain(s *sheet.Sheet, b *model.Build, i int, r RunStep, read []unit.Millimetre) (Explained, bool) {
	s = AsBegun(s, b)
	switch {
	case r.Kind == BuildUpStep:
		return explainBuiltUp(s, i, r.Layer, read)
	case r.Bare:
		return explainBare(s, b, i, r.Layer, read)
	}
	return ExplainReading(s, b, i, r.Layer, read)
}

// explainBare explains a centre before it is built up, by the sheet as it would be without the
// tape. Nothing follows for what comes after: the tape makes up for it.
func explainBare(s *sheet.Sheet, of *model.Build, i, layer int, read []unit.Millimetre) (Explained, bool) {
	if i < 0 || i >= len(s.Branches) || layer < 0 || layer >= len(s.Branches[i].As) {
		return Explained{}, false
	}
	as, made := model.CloneLayers(s.Branches[i].As), s.Branches[i].Make
	as[layer].BindMM = model.Opt[unit.Millimetre]{}
	h := s.H.EditBranch(i, func(b *model.Branch) { b.Layers, b.Make = as, model.Some(made) })
	e, ok := ExplainReading(calc.Build(h, s.Base, s), of, i, layer, read)
	e.NextHolds, e.NextTakes, e.NextLift, e.OverMM, e.Sheath, e.OtherSheath = 0, 0, 0, s.Branches[i].OverMM, "", ""
	return e, ok
}

// explainBuiltUp is how far a centre is from what it is built up to: it is wound until it is
// there, so that no wire explains it.
func explainBuiltUp(s *sheet.Sheet, i, layer int, read []unit.Millimetre) (Explained, bool) {
	if i < 0 || i >= len(s.Branches) || layer < 0 || layer >= len(s.Branches[i].Layers) || len(read) == 0 {
		return Explained{}, false
	}
	e := Explained{SheetMM: s.Branches[i].Layers[layer].OverMM}
	for _, v := range read {
		e.ReadMM += v / unit.Millimetre(len(read))
		e.HighMM = max(e.HighMM, v)
	}
	if !(e.ReadMM > 0) || !unit.Finite(float64(e.ReadMM)) || !(e.SheetMM > 0) {
		return Explained{}, false
	}
	within := bundle.BuiltWithin(s)
	e.LeastMM, e.MostMM = e.SheetMM-within, e.SheetMM+within
	switch {
	case e.ReadMM < e.LeastMM:
		e.Told = TooThin
	case e.ReadMM > e.MostMM:
		e.Told = TooThick
	}
	return e, true
}
