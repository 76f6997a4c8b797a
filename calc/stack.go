package calc

import (
	"fmt"
	"math"
	"slices"

	"contralay/calc/cover"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// Covers lie on one another, and each has a start and a stop: a separator tape, a braid
// over it, the sheath, a second sheath or a sleeve where something rubs or passes heat.
// What lies beneath one adds to what it must pass and to what it grips.

// Covered is one cover of a branch that is not its sheath.
type Covered struct {
	At            int // in the branch's list of covers
	What, Part    string
	FromMM, ToMM  unit.Millimetre
	UnderMM       unit.Millimetre // over of what it lies on, where that is thickest
	OverMM        unit.Millimetre // over of it there; UnderMM where it is not known
	ThickMM       unit.Millimetre // what it adds to the radius of what it lies on
	ThickGuess    bool            // from memory
	Tube          catalogue.Tube
	Known         bool // it is a tube of the catalogue
	Verdict       cover.Verdict
	PassMM        unit.Millimetre
	CutMM         unit.Millimetre
	Gram          unit.Gram
	underTapeMin  unit.Millimetre
	underOverMost unit.Millimetre
}

// Thickness of what has no table, where the file gives none (thick_mm): a lapped tape, and
// a braid of thin tinned wire. Both from memory: measure them.
const (
	tapeThickMM  unit.Millimetre = 0.1
	braidThickMM unit.Millimetre = 0.3
)

// stack lays the covers of a branch on one another, inside out, its sheath among them.
func (s *Sheet) stack(i int) {
	b, out := &s.H.Branches[i], &s.Branches[i]
	out.Covers = nil
	at := s.sheathAt(i)
	for k := range b.Covers[:at] {
		s.coverOn(i, k)
	}
	s.cover(i)
	for k := min(at+1, len(b.Covers)); k < len(b.Covers); k++ {
		s.coverOn(i, k)
	}
}

// sheathAt is where the sheath stands in a branch's list of covers: the first that is
// called so; after all of them where none is.
func (s *Sheet) sheathAt(i int) int {
	for k, c := range s.H.Branches[i].Covers {
		if c.What == "sheath" {
			return k
		}
	}
	return len(s.H.Branches[i].Covers)
}

// beneath is what the covers laid so far add to the diameter between two stations, where
// they add most and where they add least.
func (s *Sheet) beneath(i int, from, to unit.Millimetre) (most, least unit.Millimetre) {
	out := &s.Branches[i]
	type piece struct{ from, to, add unit.Millimetre }
	var pieces []piece
	for _, c := range out.Covers {
		pieces = append(pieces, piece{c.FromMM, c.ToMM, c.OverMM - c.UnderMM})
	}
	if sh := &out.Sheath; sh.Known && sh.Verdict.Wraps {
		pieces = append(pieces, piece{sh.FromMM, sh.ToMM, sh.Verdict.OverMM - out.OverMM - sh.BeneathMM})
	}
	stations := []unit.Millimetre{from, to}
	for _, p := range pieces {
		stations = append(stations, p.from, p.to)
	}
	slices.Sort(stations)
	first := true
	for k := 1; k < len(stations); k++ {
		mid := (stations[k-1] + stations[k]) / 2
		if mid <= from || mid >= to || stations[k] == stations[k-1] {
			continue
		}
		sum := unit.Millimetre(0)
		for _, p := range pieces {
			if mid > p.from && mid < p.to {
				sum += p.add
			}
		}
		if most = max(most, sum); first || sum < least {
			least, first = sum, false
		}
	}
	return most, least
}

// coverOn lays cover k of a branch on what is there.
func (s *Sheet) coverOn(i, k int) {
	b, out := &s.H.Branches[i], &s.Branches[i]
	mc := &b.Covers[k]
	c := Covered{At: k, What: mc.What, Part: mc.Part.V, FromMM: mc.FromMM.Or(0), ToMM: mc.ToMM.Or(b.LengthMM)}
	c.FromMM = min(c.FromMM, b.LengthMM)
	c.ToMM = min(max(c.ToMM, c.FromMM), b.LengthMM)
	if c.ToMM <= c.FromMM {
		s.say(Warn, "cover.place", b.ID, fmt.Sprintf("its %s from %s to %s mm has no length", c.What, unit.Fixed(float64(c.FromMM), 0), unit.Fixed(float64(c.ToMM), 0)))
	}
	most, least := s.beneath(i, c.FromMM, c.ToMM)
	c.UnderMM, c.underOverMost = out.OverMM+most, max(out.OverMaxMM, out.OverMM)+most
	c.underTapeMin = out.TapeMinMM + least
	c.OverMM = c.UnderMM
	if t, ok := s.Cat.Tube(c.Part); ok {
		c.Tube, c.Known = t, true
		s.coverTube(i, &c, least)
	} else {
		s.coverWound(i, &c, mc.ThickMM.V, mc.ThickMM.Set)
	}
	out.Covers = append(out.Covers, c)
}

// coverWound is a cover that is wound, braided or cut to fit: it has a thickness alone.
func (s *Sheet) coverWound(i int, c *Covered, thick unit.Millimetre, given bool) {
	id := s.H.Branches[i].ID
	switch {
	case given:
		c.ThickMM = thick
	case c.What == "tape":
		c.ThickMM, c.ThickGuess = tapeThickMM, true
	case c.What == "braid":
		c.ThickMM, c.ThickGuess = braidThickMM, true
	case c.Part != "":
		s.say(Warn, "cover.part", id, fmt.Sprintf("%s %q is in no catalogue: thick_mm says what it adds", c.What, c.Part))
	default:
		s.say(Warn, "cover.part", id, fmt.Sprintf("its %s names no part: part, or thick_mm, says what it adds", c.What))
	}
	c.OverMM = c.UnderMM + 2*c.ThickMM
	if c.What == "braid" && !slices.ContainsFunc(s.Branches[i].Covers, func(o Covered) bool {
		return o.What == "tape" && o.FromMM <= c.FromMM && o.ToMM >= c.ToMM
	}) {
		s.say(Note, "cover.tape", id, "its braid lies on the wires: a separator tape goes under it") // NASA-STD-8739.4 § 9.7, p. 47
	}
}

// coverTube is a tube that shrinks onto what lies beneath it; it comes on over whatever
// stands between an end and its place.
func (s *Sheet) coverTube(i int, c *Covered, least unit.Millimetre) {
	b, out := &s.H.Branches[i], &s.Branches[i]
	pass := func(from, to unit.Millimetre) unit.Millimetre {
		most, _ := s.beneath(i, from, to)
		return most
	}
	extra := min(pass(0, c.ToMM), pass(c.FromMM, b.LengthMM)) // from the easier end
	c.PassMM = out.OverMM + extra
	bundle := cover.Bundle{OverMM: c.UnderMM, OverMaxMM: c.underOverMost, TapeMM: out.TapeMM + least, TapeMinMM: c.underTapeMin}
	length := c.ToMM - c.FromMM
	v, ok := cover.Judge(coverTubes([]catalogue.Tube{c.Tube})[0], bundle, cover.Pass{NominalMM: c.PassMM, MaxMM: out.OverMaxMM + extra}, length)
	if !ok {
		return
	}
	c.Verdict = v
	if v.Wraps {
		c.OverMM, c.ThickMM = v.OverMM, v.WallMM
	}
	if cutMM, ok := cover.CutLength(length, c.Tube.LengthChange, s.Limits.CutStepMM); ok {
		c.CutMM = cutMM
		if m, ok := cover.Mass(coverTubes([]catalogue.Tube{c.Tube})[0]); ok {
			c.Gram = unit.Gram(float64(m) * float64(cutMM) / 1000)
		}
	}
	name := fmt.Sprintf("its %s %s, from %s to %s mm,", c.What, c.Part, unit.Fixed(float64(c.FromMM), 0), unit.Fixed(float64(c.ToMM), 0))
	switch {
	case v.StopSlide:
		s.say(Stop, "cover.slide", b.ID, fmt.Sprintf("%s cannot slide on: its bore of %s mm is %s too small over what lies beneath", name, unit.Fixed(float64(c.Tube.SuppliedMM), 2), unit.Fixed(float64(-v.WorstSlideMM), 2)))
	case v.StopLoose:
		s.say(Stop, "cover.loose", b.ID, fmt.Sprintf("%s stays loose: it recovers to %s mm and lies on %s", name, unit.Fixed(float64(c.Tube.RecoveredMM), 2), unit.Fixed(float64(c.underTapeMin), 2)))
	case !v.Stretch.Kept:
		s.say(Note, "cover.stretch", b.ID, fmt.Sprintf("%s is filled to %s %% of its bore; 80 at most is advised", name, unit.Fixed(100*float64(v.StretchRatio), 1)))
	case !v.Grips.Kept:
		s.say(Note, "cover.grip", b.ID, fmt.Sprintf("%s grips little: %s times its recovered bore; 1.10 is wanted", name, unit.Fixed(float64(v.GripRatio), 2)))
	case !v.Slides.Kept:
		s.say(Note, "cover.room", b.ID, fmt.Sprintf("%s has %s mm to slide; %s is wanted", name, unit.Fixed(float64(v.SlideMM), 2), unit.Fixed(float64(v.RoomMM), 2)))
	}
}

// FloorMM is the circle that the areas of a branch's components come to: a floor, which no
// lay-up of round things reaches.
func (s *Sheet) FloorMM(i int) unit.Millimetre {
	sum := 0.0
	for _, l := range s.Branches[i].Layers {
		for _, m := range l.Members {
			sum += float64(m.D) * float64(m.D)
		}
	}
	return unit.Millimetre(math.Sqrt(sum))
}

// Outermost is the diameter of a branch over everything that covers it, where that is
// thickest.
func (b *Branch) Outermost() unit.Millimetre {
	d := b.OverMM
	if b.Sheath.Known && b.Sheath.Verdict.Wraps {
		d = max(d, b.Sheath.Verdict.OverMM)
	}
	for _, c := range b.Covers {
		d = max(d, c.OverMM)
	}
	return d
}
