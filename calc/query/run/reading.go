package run

import (
	"math"

	"contralay/calc"
	"contralay/calc/phase/bundle"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
)

// A reading from the board is explained before it is obeyed.

// Told is what a reading of a layer comes to.
type Told int

// What a reading comes to.
const (
	AsSheet  Told = iota // as the sheet has it, as near as anybody reads
	AsWire               // the tolerance of its wire explains it
	TooThick             // no wire within its tolerance stands so thick: a crossed wire, tape
	TooThin              // nor so thin: something is missing, or the jaws pressed
)

// Explained is a reading, and what it would mean.
type Explained struct {
	Told            Told
	SheetMM         unit.Millimetre // over by the sheet,
	LeastMM, MostMM unit.Millimetre // with every wire so far at its smallest, at its largest
	ReadMM          unit.Millimetre // mean of the readings
	HighMM          unit.Millimetre // the highest
	Spec, Size      string          // the commonest wire of the layers so far; "" where there is none
	NominalMM       unit.Millimetre // as the sheet has it
	AsIfMM          unit.Millimetre // as the reading would have it, all else as it is
	Top, Bottom     bool            // that is an end of its tolerance
	NextHolds       int             // what the next layer holds; 0 for the last layer
	NextTakes       int             // and would take
	NextLift        unit.Ratio      // how tight it would be
	OverMM          unit.Millimetre // over of the branch, as if
	Sheath          string          // the sheath in use; "" for none
	SheathFits      bool            // as if
	OtherSheath     string          // one that does where it does not; "" for none
}

// ExplainReading explains readings of a layer of branch i of a serial: by the wire, whose tolerance
// they may be in, then by what else it could be. It says what it would mean for all that
// follows, and changes nothing. False without a reading that is a diameter, or for a layer
// that is not there.
func ExplainReading(s *sheet.Sheet, b *model.Build, i, layer int, read []unit.Millimetre) (Explained, bool) {
	if i < 0 || i >= len(s.Branches) || layer < 0 || layer >= len(s.Branches[i].Layers) || len(read) == 0 {
		return Explained{}, false
	}
	e, ok := bandOf(s).judge(b, i, layer, read)
	if !ok {
		return e, false
	}
	k := bundle.Commonest(s, i, layer)
	if k < 0 {
		return e, true
	}
	w := &s.H.Wires[k]
	d := s.Wires[k].Dia
	e.Spec, e.Size, e.NominalMM, e.AsIfMM = w.Spec, w.Size, d.Nominal, d.Nominal
	if e.Told != AsSheet {
		e.AsIfMM = asIf(s, b, i, layer, k, e)
		e.Top, e.Bottom = e.AsIfMM > d.Max-sameEnd && d.Max > d.Nominal, e.AsIfMM < d.Min+sameEnd && d.Min < d.Nominal
	}
	restate(s, i, layer, k, &e)
	return e, true
}

// sameEnd is how near the end of a tolerance is the end.
const sameEnd unit.Millimetre = 0.01

func tellOf(e Explained) Told {
	switch {
	case math.Abs(float64(e.ReadMM-e.SheetMM)) < float64(bundle.ReadSame):
		return AsSheet
	case e.ReadMM > e.MostMM+bundle.ReadSame:
		return TooThick
	case e.ReadMM < e.LeastMM-bundle.ReadSame:
		return TooThin
	}
	return AsWire
}

// withReels is the sheet as it would be with other diameters of some sizes. What a file
// lays stays as it lies: nothing is planned.
func withReels(s *sheet.Sheet, d map[[2]string]unit.Millimetre) *sheet.Sheet {
	h := s.H
	for size, v := range d {
		h = h.SetReel(size[0], size[1], v)
	}
	return calc.Build(h, s.Base, s)
}

// asIf is the diameter of a size of wire with which a layer would stand as it was read, all
// else as it is. Over runs all but straight with it, so that three steps of the secant come
// within a hundredth.
func asIf(s *sheet.Sheet, of *model.Build, i, layer, k int, e Explained) unit.Millimetre {
	w := &s.H.Wires[k]
	size := [2]string{w.Spec, w.Size}
	over := func(d unit.Millimetre) (unit.Millimetre, bool) {
		l := withReels(s, map[[2]string]unit.Millimetre{size: d}).Branches[i].Layers
		if layer >= len(l) {
			return 0, false
		}
		return l[layer].OverMM * bundle.LearnedBy(s, of, i, layer), true
	}
	a, fa := e.NominalMM, e.SheetMM
	b := a * e.ReadMM / e.SheetMM
	for range 3 {
		fb, ok := over(b)
		if !ok || math.Abs(float64(fb-e.ReadMM)) < 1e-3 || math.Abs(float64(fb-fa)) < 1e-9 {
			break
		}
		next := b + (e.ReadMM-fb)*(b-a)/(fb-fa)
		a, fa = b, fb
		b = min(max(next, e.NominalMM/3), e.NominalMM*3)
	}
	return b
}

// restate is what a reading would mean for the layer after it, for the branch and for its
// sheath.
func restate(s *sheet.Sheet, i, layer, k int, e *Explained) {
	w := &s.H.Wires[k]
	n := s
	if e.AsIfMM != e.NominalMM {
		n = withReels(s, map[[2]string]unit.Millimetre{{w.Spec, w.Size}: e.AsIfMM})
	}
	b := &n.Branches[i]
	e.OverMM = b.OverMM
	if layer+1 < len(b.Layers) {
		next := &b.Layers[layer+1]
		e.NextHolds, e.NextTakes, e.NextLift = len(next.Members), next.Takes, next.Lift
	}
	sh := &s.Branches[i].Sheath
	if !sh.Tube.Set {
		return
	}
	e.Sheath = sh.Part
	for _, c := range b.Sheath.Others {
		switch {
		case c.Tube.ID == sh.Part:
			e.SheathFits = !c.Verdict.Stops()
		case e.OtherSheath == "" && !c.Verdict.Stops():
			e.OtherSheath = c.Tube.ID
		}
	}
	if e.SheathFits {
		e.OtherSheath = ""
	}
}

// Written is the harness with everything that is only proposed written down: lay-ups, how
// each branch is made, sheaths. What is built from it stays as it was begun.
func Written(s *sheet.Sheet) *model.Harness {
	h := s.H
	for i := range s.Branches {
		b := &s.Branches[i]
		mb := &s.H.Branches[i]
		lay := b.Proposed && len(b.As) > 0
		sheath := b.Sheath.Proposed && b.Sheath.Tube.Set && len(mb.Covers) == 0
		if !lay && !sheath {
			continue
		}
		h = h.EditBranch(i, func(n *model.Branch) {
			if lay {
				n.Layers, n.Make = model.CloneLayers(b.As), model.Some(b.Make)
			}
			if sheath {
				n.Covers = []model.Cover{{What: model.CoverSheath, Part: model.Some(b.Sheath.Part)}}
			}
		})
	}
	return h
}
