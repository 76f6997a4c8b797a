package model

import "contralay/model/unit"

// Rules are the limits and habits of one shop. Each may be left out; Resolve
// gives the default.
type Rules struct {
	LayRatio     Opt[unit.Ratio]
	LiftMax      Opt[unit.Ratio]
	LiftTight    Opt[unit.Ratio]
	LiftStop     Opt[unit.Ratio]
	GapInner     Opt[unit.Ratio]
	GapOuter     Opt[unit.Ratio]
	LumpyAt      Opt[unit.Ratio]
	FillerWeight Opt[unit.Ratio]
	SpareGain    Opt[unit.Ratio]
	SparesWanted Opt[int]
	LaidFrom     Opt[int]
	LeaverWeight Opt[unit.Millimetre]
	ZoneMM       Opt[unit.Millimetre]
	ZoneLump     Opt[unit.Ratio]
	CutStepMM    Opt[unit.Millimetre]
	TailFirstMM  Opt[unit.Millimetre]
	TailSecondMM Opt[unit.Millimetre]
	LoopMM       Opt[unit.Millimetre]
	BundleMargin Opt[unit.Ratio]
	AmbientC     Opt[unit.Celsius]
	AltitudeM    Opt[unit.Metre]
	DropMaxV     Opt[unit.Volt]
	DropShortV   Opt[unit.Volt]
	FeedLoadMax  Opt[unit.Ratio]
	BeforeMaxMM  Opt[unit.Millimetre]
	SizeMin      Opt[string]
	Outer        Opt[Hand]
	Spec         Opt[string]
	FillerStock  []unit.Millimetre    // filler_stock_mm
	FillerC      Opt[unit.Celsius]    // what the stock filler stands
	FillerOf     Opt[string]          // what the stock filler is made of
	TapeMM       Opt[unit.Millimetre] // tape_mm: how thick the tape is that binds and builds up
	TapeWideMM   Opt[unit.Millimetre] // tape_width_mm
	AdhesiveC    Opt[unit.Celsius]    // what the adhesive stands
	Adhesive     Opt[string]          // epoxy | hot melt
	PotLifeMin   Opt[int]             // minutes from mixing to setting
	PackJoints   Opt[int]             // joints one pack does
	ColourStock  []string             // colour_stock: the codes of the colours that the shop stocks wire in
}

// Limits are Rules with every default filled in.
type Limits struct {
	LayRatio     unit.Ratio      // lay length ÷ over
	LiftMax      unit.Ratio      // up to here a layer closes easily
	LiftTight    unit.Ratio      // up to here it is tight
	LiftStop     unit.Ratio      // above this most of a component is too many
	GapInner     unit.Ratio      // open share of an inner layer
	GapOuter     unit.Ratio      // open share of the outermost layer
	LumpyAt      unit.Ratio      // largest ÷ smallest in one layer
	FillerWeight unit.Ratio      // cost of a filler, per mm of its diameter
	SpareGain    unit.Ratio      // worth of a spare, per mm of its diameter
	SparesWanted int             // spares a branch should carry
	LaidFrom     int             // components from which a branch is laid
	LeaverWeight unit.Millimetre // cost of one buried early leaver, or of one layer that parts where it need not
	ZoneMM       unit.Millimetre // sorted length at a breakout
	ZoneLump     unit.Ratio      // how the bundle swells there
	CutStepMM    unit.Millimetre // lengths are cut to multiples of this
	TailFirstMM  unit.Millimetre // cut off at the start end after pinning
	TailSecondMM unit.Millimetre // cut off at the other end
	LoopMM       unit.Millimetre // service loop at a connector with an insert
	LoopPlainMM  unit.Millimetre // service loop where no insert is given
	BundleMargin unit.Ratio      // share of the computed current that is allowed
	AmbientC     unit.Celsius
	AltitudeM    unit.Metre      // above the sea
	DropMaxV     unit.Volt       // of a circuit that is always on
	DropShortV   unit.Volt       // of one that comes and goes
	FeedLoadMax  unit.Ratio      // share of a device's rating that may be used
	BeforeMaxMM  unit.Millimetre // unprotected run before a device
	SizeMin      string          // thinnest conductor that is handled, AWG
	Outer        Hand
	Spec         string
	FillerStock  []unit.Millimetre
	FillerOf     string            // "" is not said
	TapeMM       unit.Millimetre   // how thick the tape is that binds and builds up
	TapeWideMM   unit.Millimetre   // and how wide
	Adhesive     string            // "" is none said
	PotLifeMin   int               // 0: its sheet says
	PackJoints   int               // joints one pack of adhesive does
	FillerC      Opt[unit.Celsius] // no default: it is read off the filler's sheet
	AdhesiveC    Opt[unit.Celsius] // no default: it is read off the adhesive's sheet
	ColourStock  []string          // the codes of the colours that wires are proposed in, the first one first
}

// Resolve fills in the defaults. Each is the default of the shop rules; the
// drops are AC 43.13-1B table 11-6 at 14 V, continuous and, quoted second hand, intermittent;
// the least size is that of NASA's application notes for AS22759 (24 AWG and larger
// preferred). A device loaded to 80 % and 180 mm before it are common practice.
func (r Rules) Resolve() Limits {
	l := Limits{
		LayRatio:     r.LayRatio.Or(12),
		LiftMax:      r.LiftMax.Or(0.05),
		LiftTight:    r.LiftTight.Or(0.08),
		LiftStop:     r.LiftStop.Or(0.12),
		GapInner:     r.GapInner.Or(0.10),
		GapOuter:     r.GapOuter.Or(0.15),
		LumpyAt:      r.LumpyAt.Or(1.3),
		FillerWeight: r.FillerWeight.Or(0.1),
		SpareGain:    r.SpareGain.Or(0.15),
		SparesWanted: r.SparesWanted.Or(0),
		LaidFrom:     r.LaidFrom.Or(7),
		LeaverWeight: r.LeaverWeight.Or(0.2),
		ZoneMM:       r.ZoneMM.Or(25),
		ZoneLump:     r.ZoneLump.Or(1.2),
		CutStepMM:    r.CutStepMM.Or(10),
		TailFirstMM:  r.TailFirstMM.Or(100),
		TailSecondMM: r.TailSecondMM.Or(75),
		LoopMM:       r.LoopMM.Or(16),
		LoopPlainMM:  r.LoopMM.Or(8),
		BundleMargin: r.BundleMargin.Or(0.85),
		AmbientC:     r.AmbientC.Or(40),
		AltitudeM:    r.AltitudeM.Or(0),
		DropMaxV:     r.DropMaxV.Or(0.5),
		DropShortV:   r.DropShortV.Or(1),
		FeedLoadMax:  r.FeedLoadMax.Or(0.8),
		BeforeMaxMM:  r.BeforeMaxMM.Or(180),
		SizeMin:      r.SizeMin.Or("24"),
		Outer:        r.Outer.Or(HandLeft),
		Spec:         r.Spec.Or("AS22759/32"),
		FillerStock:  r.FillerStock,
		FillerC:      r.FillerC,
		FillerOf:     r.FillerOf.V,
		TapeMM:       r.TapeMM.Or(0.1),    // from memory
		TapeWideMM:   r.TapeWideMM.Or(19), // from memory
		Adhesive:     r.Adhesive.V,
		PotLifeMin:   r.PotLifeMin.V,
		PackJoints:   r.PackJoints.Or(4), // common practice, no source: a small pack, both ends of two boots
		AdhesiveC:    r.AdhesiveC,
		ColourStock:  r.ColourStock,
	}
	if len(l.ColourStock) == 0 {
		l.ColourStock = everyColour
	}
	return l
}
