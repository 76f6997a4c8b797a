package cover

import "contralay/model/unit"

const (
	// MaxStretch is the share of the supplied bore that the covered thing may
	// fill: 0.80, so that the sleeve shrinks by a fifth at least. Source: a tubing
	// maker's size-selection guide.
	MaxStretch = 0.80

	// MinGrip is tape ÷ recovered bore at least: 1.10, so that some recovery is
	// left and the sleeve presses. Source: the same guide.
	MinGrip = 1.10
)

// Window is what the guide lets a sleeve cover, in mm: from MinGrip times the
// recovered bore to MaxStretch times the supplied bore. False where the bores
// are not those of a sleeve.
func Window(t Tube) (from, to unit.Millimetre, ok bool) {
	from, to = MinGrip*t.RecoveredMM, MaxStretch*t.SuppliedMM
	if !t.sound() || !finite(from, to) {
		return 0, 0, false
	}
	return from, to, true
}

// Bundle is what the sleeve covers, in mm.
type Bundle struct {
	OverMM    unit.Millimetre // nominal; > 0
	OverMaxMM unit.Millimetre // with every wire at its largest; less than OverMM counts as OverMM
	TapeMM    unit.Millimetre // nominal; > 0
	TapeMinMM unit.Millimetre // with every wire at its smallest; 0, or more than TapeMM, counts as TapeMM
}

// Pass is the largest thing the sleeve must pass between the end it comes on
// from and its place, in mm. A sleeve always passes what it covers: less than
// that counts as that.
type Pass struct {
	NominalMM unit.Millimetre
	MaxMM     unit.Millimetre // at its largest; less than NominalMM counts as NominalMM
}

// Verdict is what Judge says of one sleeve in one place.
type Verdict struct {
	StopSlide bool // the supplied bore is less than the largest thing to pass, at its largest
	StopLoose bool // the recovered bore is more than tape at its smallest

	Stretch Advice // over ≤ MaxStretch · supplied bore
	Grips   Advice // tape ≥ MinGrip · recovered bore
	Slides  Advice // supplied bore − largest thing to pass ≥ Room

	StretchRatio unit.Ratio // over ÷ supplied bore, nominal
	GripRatio    unit.Ratio // tape ÷ recovered bore, nominal

	SlideMM      unit.Millimetre // supplied bore − largest thing to pass, nominal; below 0: it does not pass
	WorstSlideMM unit.Millimetre // the same at its largest
	RoomMM       unit.Millimetre // what the length asks for

	// Sticks: it passes, with less than half the room that its length asks for. Nobody slides
	// such a sleeve on.
	Sticks bool

	// Wraps says whether the next two are known: the wall is published, and at
	// nominal diameters the sleeve goes on and does not hang loose.
	Wraps  bool
	OverMM unit.Millimetre // RecoveredOver on the bundle's nominal over
	WallMM unit.Millimetre // the wall there
}

// Advice is one piece of advice, at nominal diameters and at the worst ends of
// the tolerance. Kept at the extreme implies kept, and kept implies nearly kept.
type Advice struct{ Kept, KeptAtExtreme, Nearly bool }

// An advice is nearly kept where it is missed by 2 % of the bore or by 0.1 mm, whichever is
// more, but by no more than half of the way to where the sleeve is refused: between kept and
// refused there is always a step. Ours, no source: callipers read to 0.05 mm, and a tube's
// bore is held to no closer.
const (
	nearShare                 = 0.02
	nearLeast unit.Millimetre = 0.1
	nearMost                  = 0.5
)

// advice is what missing a mark by so many mm comes to, at nominal and at its worst: below 0
// it is kept. bore is the one that the mark is taken from, refused how far beyond the mark
// the sleeve does not go on, or hangs loose.
func advice(short, shortAtExtreme, bore, refused unit.Millimetre) Advice {
	near := min(max(nearShare*bore, nearLeast), nearMost*refused)
	return Advice{Kept: !below(0, short), KeptAtExtreme: !below(0, shortAtExtreme), Nearly: !below(near, short)}
}

// Stops reports whether the sleeve cannot be used.
func (v Verdict) Stops() bool { return v.StopSlide || v.StopLoose }

// Kept is how many of the three pieces of advice are kept at nominal: 0 … 3.
func (v Verdict) Kept() int {
	n := 0
	for _, a := range v.advices() {
		if a.Kept {
			n++
		}
	}
	return n
}

// KeepsAll reports whether the sleeve can be used and keeps all three.
func (v Verdict) KeepsAll() bool { return !v.Stops() && v.Kept() == adviceCount }

// adviceCount is how many pieces of advice there are.
const adviceCount = 3

func (v Verdict) advices() [adviceCount]Advice { return [3]Advice{v.Stretch, v.Grips, v.Slides} }

// Judge judges a sleeve over a bundle, having passed what it must pass, over a
// covered length in mm. False for bores that cannot be a sleeve's, a bundle
// without a diameter, and anything that is not a number.
func Judge(t Tube, b Bundle, p Pass, length unit.Millimetre) (Verdict, bool) {
	if !t.sound() || !(b.OverMM > 0) || !(b.TapeMM > 0) ||
		!finite(b.OverMM, b.OverMaxMM, b.TapeMM, b.TapeMinMM, p.NominalMM, p.MaxMM, length) {
		return Verdict{}, false
	}
	overMax := max(b.OverMM, b.OverMaxMM)
	tapeMin := b.TapeMM
	if b.TapeMinMM > 0 {
		tapeMin = min(tapeMin, b.TapeMinMM)
	}
	pass := max(p.NominalMM, b.OverMM)
	passMax := max(p.MaxMM, pass, overMax)

	v := Verdict{
		StopSlide:    below(t.SuppliedMM, passMax),
		StopLoose:    below(tapeMin, t.RecoveredMM),
		StretchRatio: unit.Ratio(b.OverMM / t.SuppliedMM),
		GripRatio:    unit.Ratio(b.TapeMM / t.RecoveredMM),
		SlideMM:      t.SuppliedMM - pass,
		WorstSlideMM: t.SuppliedMM - passMax,
		RoomMM:       Room(length),
	}
	full, grip := MaxStretch*t.SuppliedMM, MinGrip*t.RecoveredMM
	v.Stretch = advice(b.OverMM-full, overMax-full, t.SuppliedMM, t.SuppliedMM-full)
	v.Grips = advice(grip-b.TapeMM, grip-tapeMin, t.RecoveredMM, grip-t.RecoveredMM)
	v.Slides = advice(v.RoomMM-v.SlideMM, v.RoomMM-v.WorstSlideMM, t.SuppliedMM, v.RoomMM)
	v.Sticks = below(v.SlideMM, v.RoomMM/2)
	if !below(b.TapeMM, t.RecoveredMM) && !below(t.SuppliedMM, pass) {
		if v.OverMM, v.Wraps = RecoveredOver(t, b.OverMM); v.Wraps {
			v.WallMM = (v.OverMM - b.OverMM) / 2
		}
	}
	if !unit.Finite(float64(v.StretchRatio)) || !unit.Finite(float64(v.GripRatio)) || !finite(v.SlideMM, v.WorstSlideMM) {
		return Verdict{}, false
	}
	return v, true
}
