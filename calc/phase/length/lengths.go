package length

import (
	"fmt"

	"contralay/calc/formula/cut"
	"contralay/calc/formula/wire"
	"contralay/calc/phase/wires"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
)

// CutWires works out cut and finished length of each wire, and its drop.
func CutWires(s *sheet.Sheet) {
	losses := make([]map[string]unit.Ratio, len(s.H.Branches))
	for i := range s.H.Wires {
		if s.Wires[i].HasPath {
			cutWire(s, i, losses)
		}
	}
	isReturn := map[string]bool{}
	for i := range s.H.Wires {
		if w := &s.H.Wires[i]; w.Return.V != w.ID {
			isReturn[w.Return.V] = true
		}
	}
	for i := range s.H.Wires {
		w, out := &s.H.Wires[i], &s.Wires[i]
		out.Circuit = out.Drop.V
		k, has := s.Index.Wire[w.Return.V]
		if has = has && k != i; has {
			back := s.Wires[k].Drop.V
			if !s.H.Wires[k].Amps.Set {
				back = DropAt(s, k, wires.ComesBack(s, k)) // it carries what comes through all it serves
			}
			out.Circuit += back
		}
		wires.Measured(s, i)
		// A return is tested with the wires it serves, and of two that name each
		// other the first speaks.
		if isReturn[w.ID] && (!has || k < i) {
			continue
		}
		if most := wires.DropLimit(s, i); out.Drop.Set && out.Circuit > most {
			what := "this wire alone"
			if has {
				what = "with its return"
			}
			s.Say(sheet.Warn, "wire.drop", w.ID, fmt.Sprintf("It drops %s V at %s A (%s); the shop allows %s V",
				unit.Fixed(out.Circuit, 2), unit.Fixed(w.Amps.V, 2), what, unit.Fixed(most, 2)))
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
		if len(s.Branches[b].Layers) == 0 {
			return // the branch is not laid yet, so the length is not known
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
	setDrop(s, i)
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
	setDrop(s, i)
	return true
}

// setDrop works out what a wire drops along itself, once its length is known.
func setDrop(s *sheet.Sheet, i int) {
	w, out := &s.H.Wires[i], &s.Wires[i]
	out.Drop = model.Opt[unit.Volt]{V: DropAt(s, i, w.Amps.V), Set: out.Known && w.Amps.Set && wires.Rates(s, i)}
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

// DropAt is amps × R(T) × finished length, each branch at its own temperature;
// loops and splice offsets at that of the branch they hang on.
func DropAt(s *sheet.Sheet, i int, amps unit.Ampere) unit.Volt {
	out := &s.Wires[i]
	if !out.Known || out.Finished <= 0 {
		return 0
	}
	whole := unit.Millimetre(0)
	for _, b := range out.Path {
		whole += s.H.Branches[b].LengthMM
	}
	total := unit.Volt(0)
	for _, b := range out.Path {
		// Lay loss, loops and offsets spread over the branches by length: they
		// differ by a few per cent of a length, and temperature between branches
		// moves the resistance by less than that again.
		v, _ := wire.Drop(amps, out.Entry.OhmPerKm, s.Branches[b].Ambient, out.Finished*s.H.Branches[b].LengthMM/whole)
		total += v
	}
	if len(out.Path) == 0 {
		total, _ = wire.Drop(amps, out.Entry.OhmPerKm, s.Limits.AmbientC, out.Finished)
	}
	return total
}
