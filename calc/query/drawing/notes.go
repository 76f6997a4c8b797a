package drawing

import (
	"fmt"
	"math"

	"contralay/calc/formula/outline"
	"contralay/calc/sheet"
	"contralay/model/unit"
)

func mm(v unit.Millimetre) string { return unit.Fixed(v, 0) }

func (d *Drawing) note(where, says string) { d.Notes = append(d.Notes, Note{where, says}) }

// pegs puts pegs beside every branch, clear of its zones, its boots and its ends.
func (d *Drawing) pegs() {
	held := map[Point]unit.Millimetre{} // how far the part at a point reaches back along its branch
	for k := range d.Ends {
		held[d.Ends[k].At] = d.Ends[k].tail() + 10
	}
	for no, p := range outline.Pegs(d.lines, d.widths, d.PegMM, func(i int) (from, to unit.Millimetre) {
		b := &d.Branches[i]
		start, _ := b.Line.At(0)
		end, _ := b.Line.At(b.Line.Length())
		return max(b.Zones[0], held[start]), max(b.Zones[1], held[end])
	}) {
		d.Pegs = append(d.Pegs, Peg{no + 1, p.At, p.Run})
	}
}

// bounds finds what everything lies within.
func (d *Drawing) bounds() {
	first := true
	take := func(p Point, room unit.Millimetre) {
		if first {
			d.Low, d.High, first = p, p, false
		}
		d.Low = Point{X: min(d.Low.X, p.X-room), Y: min(d.Low.Y, p.Y-room)}
		d.High = Point{X: max(d.High.X, p.X+room), Y: max(d.High.Y, p.Y+room)}
	}
	for i := range d.Branches {
		for _, p := range d.Branches[i].Line.Points(0.1) {
			take(p, d.Branches[i].WidthMM/2)
		}
	}
	for k := range d.Ends {
		e := &d.Ends[k]
		for _, along := range []unit.Millimetre{e.FrontMM, -e.BackMM} {
			for _, side := range []unit.Millimetre{-1, 1} {
				take(e.At.Away(e.Heading, along).Away(e.Heading+90, side*e.WideMM/2), 0)
			}
		}
	}
	for _, p := range d.Pegs {
		take(p.At, d.PegMM/2)
	}
}

// notes says what a person has to know about the drawing.
func (d *Drawing) notes(s *sheet.Sheet, p outline.Plan) {
	for _, c := range p.Cross {
		a, b := d.Branches[c[0]].ID, d.Branches[c[1]].ID
		d.note(a, fmt.Sprintf("%s and %s cross on the drawing. Let one of them leave at another angle, or bend it", a, b))
	}
	for _, t := range p.Trouble {
		b := &d.Branches[t.Run]
		v := &s.H.Branches[t.Run].Vias[t.Bend]
		if t.Past {
			d.note(b.ID, fmt.Sprintf("Bend %d of %s lies %s mm from %s, and the branch is %s mm long: it is left out. "+
				"Give it a place on the branch",
				t.Bend+1, b.ID, mm(v.AtMM), s.H.Branches[t.Run].From, mm(b.LengthMM)))
			continue
		}
		d.note(b.ID, fmt.Sprintf("Bend %d of %s is drawn with a radius of %s mm, because there is no room for %s mm", t.Bend+1, b.ID,
			mm(t.Radius), mm(b.Bends[t.Bend].Radius)))
		b.Bends[t.Bend].Radius = t.Radius
	}
	for i := range d.Branches {
		b := &d.Branches[i]
		least := s.Branches[i].Bend.MinMM
		for k, v := range b.Bends {
			if inside := v.Radius - b.BundleMM/2; v.Turn != 0 && v.Station <= b.LengthMM &&
				math.Round(float64(inside)) < math.Floor(float64(least)) {
				d.note(b.ID, fmt.Sprintf("Bend %d of %s has a radius of %s mm inside. The bundle takes %s mm or more: "+
					"give the bend a larger radius",
					k+1, b.ID, mm(max(0, inside)), mm(least)))
			}
		}
		switch {
		case !b.Measured:
			d.note(b.ID, fmt.Sprintf("%s has no length yet: it is drawn %s mm long, dashed. Measure it", b.ID, mm(unmeasured)))
		case b.Break.Set:
			d.note(b.ID, fmt.Sprintf("%s is shown broken: it is %s mm long, and %s mm of it are left out. Do not scale it", b.ID,
				mm(b.LengthMM),
				mm(b.Break.V.Long())))
		}
		if b.Guess {
			d.note(b.ID, fmt.Sprintf("The OD of %s is not known: it is drawn %s mm wide", b.ID, mm(thin)))
		}
	}
}
