package cut

import "contralay/model/unit"

// UnitTailMM is what each end of a wire of a unit gets beyond an ordinary tail:
// 50 mm, for the twist that is opened at the end. Common practice, no source.
const UnitTailMM unit.Millimetre = 50

// Piece is a wire's way through one branch.
type Piece struct {
	LengthMM unit.Millimetre // of the branch, along its centre line; ≥ 0
	LaidMM   unit.Millimetre // how much of it is laid; more than LengthMM counts as LengthMM
	Loss     unit.Ratio      // lay loss of the wire's layer; ≥ 1; 1 where the branch is straight
}

// End is one end of a wire.
type End struct {
	LoopMM unit.Millimetre // stays in the boot; 0 on a splice
	TailMM unit.Millimetre // cut off after pinning, without what a unit adds
}

// Wire is what decides a wire's length.
type Wire struct {
	Pieces   []Piece
	InUnit   bool
	UnitLoss unit.Ratio      // the unit's own lay loss, ≥ 1; read only where InUnit
	From, To End             //
	OffsetMM unit.Millimetre // what splices off their breakout's centre add, or take off (below 0)
	StepMM   unit.Millimetre // cut lengths are multiples of it; 0: not rounded
}

// Length is what comes out.
type Length struct {
	PathMM     unit.Millimetre // through the branches, with lay loss and offset
	FinishedMM unit.Millimetre // loops in, tails out
	CutMM      unit.Millimetre // loops and tails in, up to the next step
}

// Of is the length of a wire, in mm:
//
//	path     = Σ (laid·k + (length − laid)) · u + offset
//	finished = path + loops
//	cut      = finished + tails (+ 50 at each end in a unit), up to the next step
//
// k the lay loss of the piece, u the unit's own loss (1 outside a unit). The
// offset of a splice runs along a branch beside the bundle and is taken plain.
// False for a loss below 1, a negative length, loop or tail, and where offsets
// take off more than there is.
func Of(w Wire) (Length, bool) {
	path := 0.0
	for _, p := range w.Pieces {
		if !(p.LengthMM >= 0) || !(p.LaidMM >= 0) || !(p.Loss >= 1) {
			return Length{}, false
		}
		laid := min(p.LaidMM, p.LengthMM)
		path += float64(laid)*float64(p.Loss) + float64(p.LengthMM-laid)
	}
	extra := unit.Millimetre(0)
	if w.InUnit {
		if !(w.UnitLoss >= 1) {
			return Length{}, false
		}
		path *= float64(w.UnitLoss)
		extra = UnitTailMM
	}
	path += float64(w.OffsetMM)
	tails, loops := 0.0, 0.0
	for _, e := range []End{w.From, w.To} {
		if !(e.LoopMM >= 0) || !(e.TailMM >= 0) {
			return Length{}, false
		}
		loops += float64(e.LoopMM)
		tails += float64(e.TailMM + extra)
	}
	cut := max(unit.UpTo(path+loops+tails, float64(w.StepMM)), 0) // never −0
	if !(path >= 0) || !finite(path, path+loops, cut) {
		return Length{}, false
	}
	return Length{
		PathMM:     unit.Millimetre(path),
		FinishedMM: unit.Millimetre(path + loops),
		CutMM:      unit.Millimetre(cut),
	}, true
}
