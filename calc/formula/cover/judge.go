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

	// Wraps says whether the next two are known: the wall is published, and at
	// nominal diameters the sleeve goes on and does not hang loose.
	Wraps  bool
	OverMM unit.Millimetre // RecoveredOver on the bundle's nominal over
	WallMM unit.Millimetre // the wall there
}

// Advice is one piece of advice, at nominal diameters and at the worst ends of
// the tolerance. Kept at the extreme implies kept.
type Advice struct{ Kept, KeptAtExtreme bool }

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
	v.Stretch = Advice{!below(MaxStretch*t.SuppliedMM, b.OverMM), !below(MaxStretch*t.SuppliedMM, overMax)}
	v.Grips = Advice{!below(b.TapeMM, MinGrip*t.RecoveredMM), !below(tapeMin, MinGrip*t.RecoveredMM)}
	v.Slides = Advice{!below(v.SlideMM, v.RoomMM), !below(v.WorstSlideMM, v.RoomMM)}
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
