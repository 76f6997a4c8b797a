package draw

import (
	"math"

	"contralay/model/unit"
)

// Kind is what a disc is made of.
type Kind uint8

// The kinds of disc. The zero value is a wire.
const (
	Wire Kind = iota
	Unit
	Spare
	Filler // drawn as o, whatever its label
)

// Classes is the number of colour classes; Disc.Class runs from 0 to Classes−1.
const Classes = 8

// Disc is one component in cross-section.
type Disc struct {
	ID    string
	Label string          // what the map shows, one to three characters; longer ones are shortened
	X, Y  unit.Millimetre // centre; X to the right, Y upward, as seen from the end that Section.Seen names
	D     unit.Millimetre // diameter, above zero
	Layer int             // 0 is the centre
	Kind  Kind
	Class int // colour class, its meaning chosen by the caller; taken modulo Classes

	// What the drawing shows and the map does not: package shape.
	Code     string // colour code of the insulation, base first: "96"; "" is not known
	Cores    []Core // of a unit
	Shielded bool   // a unit with a shield
	Dim      bool   // of a layer that is not in hand
	Numbered bool   // carries its number

	Selected, Neighbour, Tracer, Flagged bool
}

// Core is one wire of a unit: its middle from the unit's own in mm, its diameter and colour code.
type Core struct {
	X, Y, D unit.Millimetre
	Code    string
}

// Turn is which way wires pass over the top of a bundle that goes away from whoever looks.
type Turn int8

// The turns. The zero value is straight.
const (
	ToLeft  Turn = -1
	ToRight Turn = 1
)

// Section is a cross-section to be drawn.
type Section struct {
	Discs  []Disc
	OverMM unit.Millimetre // over the high spots: where the boundary is drawn
	// TapeMM is for captions and larger drawings: in cells it cannot be told
	// from OverMM, so it is drawn only where OverMM is not given.
	TapeMM   unit.Millimetre
	BuiltMM  unit.Millimetre // what the centre is built up to with tape; 0 is none; not drawn in cells
	SheathMM unit.Millimetre // outside diameter of the sheath; 0 is none
	WallMM   unit.Millimetre // of the sheath; 0 is not known
	Turn     Turn            // of the layer in hand
	ByClass  bool            // discs are told apart by their class; else by their insulation
	Says     string          // a line under the drawing
	Seen     string          // the caption: "seen from P1"
	Number   string          // drawing number, for larger drawings; not drawn in cells

	View      View     // which part is drawn; the zero value is the whole
	OutOfView []string // ids that Zoomed left out
}

// View is a round window on a section.
type View struct{ X, Y, D unit.Millimetre }

// Whole reports whether the window is not set, so that everything is drawn.
func (v View) Whole() bool { return v.whole() }

// whole reports whether the window is not set, so that everything is drawn.
func (v View) whole() bool { return !(v.D > 0) }

// Usable reports whether a disc can be drawn at all.
func (d Disc) Usable() bool { return d.usable() }

// Reach is the radius about the axis that holds all that is to be drawn, in mm.
func (s Section) Reach() float64 { return s.reach() }

// usable reports whether a disc can be drawn at all.
func (d Disc) usable() bool {
	return unit.Finite(float64(d.X)) && unit.Finite(float64(d.Y)) && unit.Finite(float64(d.D)) && d.D > 0
}

// class is the colour class within range.
func (d Disc) class() int { return ((d.Class % Classes) + Classes) % Classes }

// reach is the radius about the axis that holds all that is to be drawn, in mm.
func (s Section) reach() float64 {
	r := 0.0
	for _, d := range [3]unit.Millimetre{s.OverMM, s.TapeMM, s.SheathMM} {
		if unit.Finite(float64(d)) {
			r = max(r, float64(d)/2)
		}
	}
	for _, d := range s.Discs {
		if d.usable() {
			r = max(r, math.Hypot(float64(d.X), float64(d.Y))+float64(d.D)/2)
		}
	}
	return r
}

// boundary is the radius of the dotted line, in mm; 0 where none is known.
func (s Section) boundary() float64 {
	for _, d := range [2]unit.Millimetre{s.OverMM, s.TapeMM} {
		if unit.Finite(float64(d)) && d > 0 {
			return float64(d) / 2
		}
	}
	return 0
}

// sheath is the radius of the sheath's outside, in mm; 0 where there is none.
func (s Section) sheath() float64 {
	if unit.Finite(float64(s.SheathMM)) && s.SheathMM > 0 {
		return float64(s.SheathMM) / 2
	}
	return 0
}
