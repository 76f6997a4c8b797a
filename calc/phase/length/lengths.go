package length

import (
	"contralay/calc/formula/cut"
	"contralay/calc/phase/wires"
	"contralay/calc/sheet"
	"contralay/model/unit"
)

// CutWires works out cut and finished length of each wire.
func CutWires(s *sheet.Sheet) {
	for i := range s.H.Branches {
		if b := &s.H.Branches[i]; !b.Measured() {
			s.Say(sheet.Stop, "branch.length", b.ID, "Its length is not known yet: measure it before you cut a wire that runs through it")
		}
	}
	losses := make([]map[string]unit.Ratio, len(s.H.Branches))
	for i := range s.H.Wires {
		if s.Wires[i].HasPath {
			cutWire(s, i, losses)
		}
	}
}

func cutWire(s *sheet.Sheet, i int, losses []map[string]unit.Ratio) {
	w, out := &s.H.Wires[i], &s.Wires[i]
	if keepLength(s, i) {
		return
	}
	in := cut.Wire{StepMM: s.Limits.CutStepMM}
	unitAt, inUnit := s.Index.UnitOf[w.ID]
	id := w.ID
	if inUnit {
		in.InUnit, in.UnitLoss, id = true, s.Units[unitAt].Loss, s.H.Units[unitAt].ID
	}
	for _, b := range out.Path {
		if len(s.Branches[b].Layers) == 0 || !s.H.Branches[b].Measured() {
			return // the branch is not laid or not measured yet, so the length is not known
		}
		if losses[b] == nil {
			losses[b] = lossesIn(s, b)
		}
		loss, ok := losses[b][id]
		if !ok {
			loss = 1
		}
		in.Pieces = append(in.Pieces, cut.Piece{LengthMM: s.H.Branches[b].LengthMM, LaidMM: s.Branches[b].LaidMM, Loss: loss})
	}
	in.From = cut.End{LoopMM: Loop(s, w.From.V), TailMM: s.Limits.TailFirstMM}
	in.To = cut.End{LoopMM: Loop(s, w.To.V), TailMM: s.Limits.TailSecondMM}
	if wires.Capped(w) { // a capped end is folded back and has nothing cut off
		folded := cut.End{LoopMM: w.FoldMM.Or(wires.FoldMM)}
		if w.From.V == "" {
			in.From = folded
		} else {
			in.To = folded
		}
	}
	in.OffsetMM = SpliceOffset(s, w.From.V, out.Path) + SpliceOffset(s, w.To.V, out.Path)
	l, ok := cut.Of(in)
	if !ok {
		s.Say(sheet.Stop, "wire.length", w.ID, "Its splice is further away than the wire is long")
		return
	}
	out.Cut, out.Finished = l.CutMM, l.FinishedMM
}

// keepLength takes the length of a wire over from the prior sheet where every branch on
// its way is kept.
func keepLength(s *sheet.Sheet, i int) bool {
	if !s.Reuse.Wire(i) || s.Reuse.Prior.Wires[i].Finished <= 0 {
		return false
	}
	out, old := &s.Wires[i], &s.Reuse.Prior.Wires[i]
	for _, b := range out.Path {
		if !s.Reuse.Branch(b) {
			return false
		}
	}
	out.Cut, out.Finished = old.Cut, old.Finished
	return true
}

// lossesIn is the lay loss of each component of a branch.
func lossesIn(s *sheet.Sheet, b int) map[string]unit.Ratio {
	out := make(map[string]unit.Ratio, len(s.Branches[b].Components))
	for _, l := range s.Branches[b].Layers {
		for _, m := range l.Members {
			if _, met := out[m.ID]; !met {
				out[m.ID] = m.Loss
			}
		}
	}
	return out
}

// Loop is the service loop at an end: the termination's own, else the shop's;
// none on a splice.
func Loop(s *sheet.Sheet, text string) unit.Millimetre {
	e, ok := s.Index.End(text)
	t, known := s.Index.Termination[e.Termination]
	switch {
	case !ok || e.Splice != "" || !known:
		return 0
	case s.H.Terminations[t].LoopMM.Set:
		return s.H.Terminations[t].LoopMM.V
	case s.H.Terminations[t].Insert.V != "":
		return s.Limits.LoopMM
	}
	return s.Limits.LoopPlainMM
}

// SpliceOffset is what a splice off its breakout's centre adds to a wire, or takes
// off where the wire comes along the branch it was moved into.
func SpliceOffset(s *sheet.Sheet, text string, path []int) unit.Millimetre {
	e, ok := s.Index.End(text)
	k, known := s.Index.Splice[e.Splice]
	if !ok || !known {
		return 0
	}
	sp := &s.H.Splices[k]
	for _, b := range path {
		if s.H.Branches[b].ID == sp.Toward.V {
			return -sp.OffsetMM.V
		}
	}
	return sp.OffsetMM.V
}
