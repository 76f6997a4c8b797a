package model

import (
	"slices"

	"contralay/model/unit"
)

// Build is one harness as it is or was built, of those that are built from one file.
type Build struct {
	Serial   string
	Revision Opt[string]    // of the sheet it is built from
	Begun    Opt[string]    // the day
	Note     Opt[string]    // from one hand to the next
	EachTest Opt[bool]      // its run asks for lots, pulled samples and each test; a record that was begun before runs did has it not
	MassG    Opt[unit.Gram] // on the scale, finished, as it is handed over
	GoesBy   []string       // corrections of the shop that its sheet was begun with; nil where that is not known
	Shelf    []Shelved      // what the catalogue had when it was begun; nil where that is not known. It is replaced, never changed
	Done     []string       // steps that are done, by key alone: as files had it before Steps
	Steps    []Ticked       // steps that are done, and what each made
	Signed   []Signature    // hold points
	Readings []Reading
	Used     []UsedWire
	Tubes    []Recovered
	Again    []Again
	Apart    []Deviation
	Tests    []Test
	Lots     []Lot
}

// Signature is a hold point that somebody has passed.
type Signature struct {
	Step string
	By   string
	At   Opt[string] // day and time
}

// Reading is what was measured of one layer.
type Reading struct {
	Branch string
	Layer  int
	BareMM []unit.Millimetre    // of a centre that is built up: every reading before it was
	OverMM []unit.Millimetre    // every reading, in the order they were taken
	LayMM  Opt[unit.Millimetre] // turn length as it was laid
}

// UsedWire is how much of a size was taken off the reel.
type UsedWire struct {
	Spec, Size string
	UsedMM     unit.Millimetre
}

// Recovered is a branch measured over its sheath once that was shrunk.
type Recovered struct {
	Branch string
	OverMM unit.Millimetre
}

// Again is how often contacts of an end were made anew.
type Again struct {
	End   string // TERMINATION:CAVITY
	Times int
}

// Deviation is what was built otherwise than the sheet has it.
type Deviation struct {
	At    string // wire, layer, part, branch, termination: whatever it is about
	Says  string
	Step  Opt[string] // the step it was written down at
	Steps []string    // those that are kept as they were built by it
	By    Opt[string]
	On    Opt[string] // day and time
}

// BuildOf finds a build by its serial; −1 where there is none.
func (h *Harness) BuildOf(serial string) int {
	return slices.IndexFunc(h.Builds, func(b Build) bool { return b.Serial == serial })
}

// EditBuild changes the build of a serial, and makes it where there is none. f gets a copy
// with lists of its own.
func (h *Harness) EditBuild(serial string, f func(*Build)) *Harness {
	n := *h
	n.Builds = slices.Clone(h.Builds)
	k := n.BuildOf(serial)
	if k < 0 {
		n.Builds, k = append(n.Builds, Build{Serial: serial}), len(n.Builds)
	}
	b := &n.Builds[k]
	b.Done, b.Signed, b.Used, b.Tubes, b.Again, b.Apart = slices.Clone(b.Done), slices.Clone(b.Signed), slices.Clone(b.Used),
		slices.Clone(b.Tubes), slices.Clone(b.Again), slices.Clone(b.Apart)
	b.Steps, b.Tests, b.Lots = slices.Clone(b.Steps), slices.Clone(b.Tests), slices.Clone(b.Lots)
	b.Readings = slices.Clone(b.Readings)
	for i := range b.Readings {
		b.Readings[i].BareMM, b.Readings[i].OverMM = slices.Clone(b.Readings[i].BareMM), slices.Clone(b.Readings[i].OverMM)
	}
	f(b)
	return &n
}

// ReadingOf is the reading of a layer in a build; nil where there is none.
func (b *Build) ReadingOf(branch string, layer int) *Reading {
	for i := range b.Readings {
		if r := &b.Readings[i]; r.Branch == branch && r.Layer == layer {
			return r
		}
	}
	return nil
}
