package threading

import (
	"fmt"
	"strings"

	"contralay/calc/sheet"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// Adhesive is a process and not a part: it comes after everything has been rung out, a
// pack does so many joints, and what is mixed sets while it is used.

// Glued is one moulded part and the joints it is glued at.
type Glued struct {
	place  string   // termination or breakout
	part   string   // boot or transition
	Joints []string // "lip", "cable", or the branch of an outlet
}

// Glue is every moulded part that takes adhesive, breakouts first, as they are shrunk from
// the trunk outward; nil where the shop names no adhesive.
func Glue(s *sheet.Sheet) []Glued {
	if s.Limits.Adhesive == "" {
		return nil
	}
	var out []Glued
	for _, t := range Threading(s) {
		switch t.What {
		case sheet.PartTransition:
			g := Glued{place: t.Of, part: t.Part}
			for _, b := range s.Index.Meeting(t.Of) {
				g.Joints = append(g.Joints, s.H.Branches[b].ID)
			}
			out = append(out, g)
		case sheet.PartBoot:
			out = append(out, Glued{place: t.Of, part: t.Part, Joints: []string{"lip", "cable"}})
		}
	}
	return out
}

// Mix is what is glued out of one pack, within its pot life.
type Mix struct{ Joints []string }

// Mixes parts the joints into packs; a moulded part stays in one where it fits.
func Mixes(s *sheet.Sheet) []Mix { return packed(Glue(s), s.Limits.PackJoints) }

// packed is what is glued in packs of so many joints.
func packed(glued []Glued, most int) []Mix {
	var out []Mix
	var room int
	for _, g := range glued {
		rest := g.Joints
		for first := true; len(rest) > 0; first = false {
			if room <= 0 || first && len(rest) > room && len(rest) <= most {
				out, room = append(out, Mix{}), most
			}
			n := min(room, len(rest))
			out[len(out)-1].Joints = append(out[len(out)-1].Joints, fmt.Sprintf("%s %s", g.place, strings.Join(rest[:n], ", ")))
			rest, room = rest[n:], room-n
		}
	}
	return out
}

// SayAdhesive tells of an adhesive that is not for what it is to hold: hot melt bonds
// polyolefin, and elastomer shapes and tubes take epoxy. Source: the makers'
// specifications of both.
func SayAdhesive(s *sheet.Sheet) {
	if s.Limits.Adhesive != "hot melt" {
		return
	}
	for _, g := range Glue(s) {
		for _, b := range s.Index.Meeting(g.place) {
			if t, ok := outermostAt(s, b, g.place); ok && strings.Contains(t.Material, "elastomer") {
				s.SayLike(sheet.Note, "adhesive.pair", g.place, t.Kind,
					fmt.Sprintf("It would be glued with hot melt on %s, which needs epoxy", t.Kind))
				break
			}
		}
	}
}

// outermostAt is the tube that a moulded part at a place of branch b lies on: the last put
// over the branch that reaches within a hand's breadth of it.
func outermostAt(s *sheet.Sheet, b int, place string) (catalogue.Tube, bool) {
	out, mb := &s.Branches[b], &s.H.Branches[b]
	best, found := catalogue.Tube{}, false
	near := func(from, to unit.Millimetre) bool {
		if mb.From == place {
			return from < handMM
		}
		return to > mb.LengthMM-handMM
	}
	if sh := &out.Sheath; sh.Tube.Set && near(sh.FromMM, sh.ToMM) {
		best, found = sh.Tube.V, true
	}
	for _, c := range out.Covers {
		if c.Tube.Set && near(c.FromMM, c.ToMM) && (!found || !c.Under) {
			best, found = c.Tube.V, true
		}
	}
	return best, found
}

// handMM is a hand's breadth: no moulded part here reaches further over a branch.
const handMM unit.Millimetre = 100
