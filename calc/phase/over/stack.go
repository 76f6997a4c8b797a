package over

import (
	"cmp"
	"fmt"
	"math"
	"slices"
	"strings"

	"contralay/calc/formula/cover"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// Covers lie on one another, and each has a start and a stop: a separator tape, a braid
// over it, the sheath, a second sheath or a sleeve where something rubs or passes heat.
// What lies beneath one adds to what it must pass and to what it grips.

// stack lays the covers of a branch on one another, inside out, its sheath among them.
func stack(s *sheet.Sheet, i int) {
	b, out := &s.H.Branches[i], &s.Branches[i]
	out.Covers = nil
	sheathIndex := sheathAt(s, i)
	for k := range b.Covers[:sheathIndex] {
		coverOn(s, i, k)
	}
	coverBranch(s, i)
	for k := min(sheathIndex+1, len(b.Covers)); k < len(b.Covers); k++ {
		coverOn(s, i, k)
	}
}

// sheathAt is where the sheath stands in a branch's list of covers: the first that is
// called so; after all of them where none is.
func sheathAt(s *sheet.Sheet, i int) int {
	for k, c := range s.H.Branches[i].Covers {
		if c.What == model.CoverSheath {
			return k
		}
	}
	return len(s.H.Branches[i].Covers)
}

// stretch is a part of a branch and what lies on it adds to its diameter.
type stretch struct {
	from, to, add unit.Millimetre
	covers        int // how many lie there
}

// profile is what the covers laid so far add between two stations: stretch by stretch,
// without a gap, in order.
func profile(s *sheet.Sheet, i int, from, to unit.Millimetre) []stretch {
	out := &s.Branches[i]
	var pieces []stretch
	for _, c := range out.Covers {
		pieces = append(pieces, stretch{from: c.FromMM, to: c.ToMM, add: c.OverMM - c.UnderMM})
	}
	if sh := &out.Sheath; sh.Tube.Set && sh.Verdict.Wraps {
		pieces = append(pieces, stretch{from: sh.FromMM, to: sh.ToMM, add: sh.Verdict.OverMM - out.OverMM - sh.BeneathMM})
	}
	if len(pieces) == 0 {
		return []stretch{{from: from, to: to}}
	}
	stations := []unit.Millimetre{from, to}
	for _, p := range pieces {
		for _, end := range []unit.Millimetre{p.from, p.to} {
			if end > from && end < to {
				stations = append(stations, end)
			}
		}
	}
	slices.Sort(stations)
	var all []stretch
	for k := 1; k < len(stations); k++ {
		if stations[k] == stations[k-1] {
			continue
		}
		n := stretch{from: stations[k-1], to: stations[k]}
		for _, p := range pieces {
			if mid := (n.from + n.to) / 2; mid > p.from && mid < p.to {
				n.add += p.add
				n.covers++
			}
		}
		all = append(all, n)
	}
	return all
}

// beneath is what the covers laid so far add to the diameter between two stations: where
// they add most, and what they add over half of the length at least, which is what holds
// what lies over them (half is ours, no source). A tube that overhangs the end of another is held by the rest of it.
func beneath(s *sheet.Sheet, i int, from, to unit.Millimetre) (most, held unit.Millimetre) {
	all := profile(s, i, from, to)
	for _, p := range all {
		most = max(most, p.add)
	}
	slices.SortFunc(all, func(a, b stretch) int { return cmp.Compare(b.add, a.add) })
	reach := unit.Millimetre(0)
	for _, p := range all {
		if held, reach = p.add, reach+p.to-p.from; reach >= (to-from)/2 {
			break
		}
	}
	return most, held
}

// OverFrom is the diameter of branch i over all that covers it, between two distances from
// a place it meets: where it is most, and what half of that length is at least.
func OverFrom(s *sheet.Sheet, i int, place string, near, far unit.Millimetre) (most, held unit.Millimetre) {
	b := &s.H.Branches[i]
	far = min(max(far, 1), b.LengthMM)
	near = min(max(near, 0), far-min(1, far)) // a millimetre at least: a short branch ends before what is asked
	if b.To == place {
		near, far = b.LengthMM-far, b.LengthMM-near
	}
	most, held = beneath(s, i, near, far)
	return s.Branches[i].OverMM + most, s.Branches[i].OverMM + held
}

// laidTube is a tube that lies on a branch.
type laidTube struct {
	What model.CoverKind
	catalogue.Tube
}

// Tubes is every tube on a branch that the catalogue knows: its sheath, and what else is
// shrunk on it.
func Tubes(s *sheet.Sheet, i int) []laidTube {
	var out []laidTube
	if sh := &s.Branches[i].Sheath; sh.Tube.Set {
		out = append(out, laidTube{model.CoverSheath, sh.Tube.V})
	}
	for _, c := range s.Branches[i].Covers {
		if c.Tube.Set {
			out = append(out, laidTube{c.What, c.Tube.V})
		}
	}
	return out
}

// coverEnds is where a cover that says nothing starts and stops: what is wound or braided
// runs through; over the sheath it lies as that does; another tube as a sheath would.
func coverEnds(s *sheet.Sheet, i, k int) (from, to unit.Millimetre) {
	b := &s.H.Branches[i]
	if sh := &s.Branches[i].Sheath; sh.Tube.Set && k > sheathAt(s, i) {
		return sh.FromMM, sh.ToMM
	}
	if _, tube := s.Cat.Tube(b.Covers[k].Part.V); !tube {
		return 0, b.LengthMM
	}
	if from, to = SheathEnds(s, i); to > from {
		return from, to
	}
	return 0, b.LengthMM
}

// station is a station in words, to the tenth where it does not lie on a millimetre.
func station(v unit.Millimetre) string {
	if r := math.Round(float64(v)); math.Abs(float64(v)-r) >= 0.05 {
		return unit.Fixed(v, 1)
	}
	return unit.Fixed(v, 0)
}

// placed holds the stations a file gives to the branch, and tells what it cuts off; ok is
// false where nothing is left.
func placed(s *sheet.Sheet, i int, what model.CoverKind, c *model.Cover, from, to unit.Millimetre) (unit.Millimetre, unit.Millimetre,
	bool) {
	b := &s.H.Branches[i]
	from, to = c.FromMM.Or(from), c.ToMM.Or(to)
	switch { // a station that the file leaves open gives way to the one it sets
	case from >= to && c.FromMM.Set && !c.ToMM.Set:
		if _, to = SheathEnds(s, i); from >= to {
			to = max(b.LengthMM, to)
		}
	case from >= to && c.ToMM.Set && !c.FromMM.Set:
		if from, _ = SheathEnds(s, i); from >= to {
			from = 0
		}
	}
	switch {
	case from >= b.LengthMM:
		s.Say(sheet.Warn, "cover.place", b.ID, fmt.Sprintf("Its %s would start at %s mm, but the branch is %s mm long", what, station(from),
			station(b.LengthMM)))
		return b.LengthMM, b.LengthMM, false
	case from >= to:
		s.Say(sheet.Warn, "cover.place", b.ID,
			fmt.Sprintf("Its %s would start at %s mm and stop at %s mm: the start must come before the stop",
				what, station(from), station(to)))
		return from, from, false
	case to > b.LengthMM:
		s.Say(sheet.Warn, "cover.place", b.ID,
			fmt.Sprintf("Its %s would stop at %s mm, but the branch is %s mm long: it stops at the end of the branch", what, station(to),
				station(b.LengthMM)))
		to = b.LengthMM
	}
	return from, to, true
}

// coverOn lays cover k of a branch on what is there.
func coverOn(s *sheet.Sheet, i, k int) {
	b, out := &s.H.Branches[i], &s.Branches[i]
	mc := &b.Covers[k]
	c := sheet.Covered{Index: k, Under: k < sheathAt(s, i), What: mc.What, Part: mc.Part.V}
	from, to := coverEnds(s, i, k)
	there := false
	c.FromMM, c.ToMM, there = placed(s, i, c.What, mc, from, to)
	most, held := beneath(s, i, c.FromMM, c.ToMM)
	c.UnderMM, c.UnderOverMost = out.OverMM+most, max(out.OverMaxMM, out.OverMM)+most
	c.UnderTapeMin = out.TapeMinMM + held
	c.OverMM = c.UnderMM
	if t, ok := s.Cat.Tube(c.Part); ok {
		c.Tube = model.Some(t)
		if there {
			coverTube(s, i, &c, held)
		}
	} else {
		coverWound(s, i, &c, mc.ThickMM.V, mc.ThickMM.Set)
	}
	out.Covers = append(out.Covers, c)
}

// coverWound is a cover that is wound, braided or cut to fit: it has a thickness alone.
func coverWound(s *sheet.Sheet, i int, c *sheet.Covered, thick unit.Millimetre, given bool) {
	id := s.H.Branches[i].ID
	switch {
	case given:
		c.ThickMM = thick
	case c.What.Trait().ThickMM > 0:
		c.ThickMM, c.ThickGuess = c.What.Trait().ThickMM, true
	case c.Part != "":
		s.Say(sheet.Warn, "cover.part", id, fmt.Sprintf("The %s %q is in no catalogue: give its thickness (thick_mm)", c.What, c.Part))
	default:
		s.Say(sheet.Warn, "cover.part", id, fmt.Sprintf("Its %s has no part: give its part, or its thickness (thick_mm)", c.What))
	}
	c.OverMM = c.UnderMM + 2*c.ThickMM
	if c.What == model.CoverBraid && onWires(s, i, c.FromMM, c.ToMM) {
		// NASA-STD-8739.4 § 9.7, p. 47
		s.Say(sheet.Note, "cover.tape", id, "Its braid lies directly on the wires: put a separator tape under it")
	}
}

// onWires reports whether something between two stations lies on the wires themselves for
// longer than an overlap is: neither tape nor tube nor another braid lies beneath it there.
func onWires(s *sheet.Sheet, i int, from, to unit.Millimetre) bool {
	for _, p := range profile(s, i, from, to) {
		if p.covers == 0 && p.to-p.from > cover.OverlapMM {
			return true
		}
	}
	return false
}

// coverTube is a tube that shrinks onto what lies beneath it; it comes on over whatever
// stands between an end and its place.
func coverTube(s *sheet.Sheet, i int, c *sheet.Covered, held unit.Millimetre) {
	b, out := &s.H.Branches[i], &s.Branches[i]
	pass := pass(s, i, c.FromMM, c.ToMM)
	c.PassMM, c.PassAt, c.Ends = pass.NominalMM, pass.Over, pass.Ends
	lies := cover.Bundle{OverMM: c.UnderMM, OverMaxMM: c.UnderOverMost, TapeMM: out.TapeMM + held, TapeMinMM: c.UnderTapeMin}
	length := c.ToMM - c.FromMM
	v, ok := cover.Judge(coverTubes([]catalogue.Tube{c.Tube.V})[0], lies, pass.Pass, length)
	if !ok {
		return
	}
	loose := notHeld(s, i, c.Tube.V, c.FromMM, c.ToMM)
	c.Verdict = v
	if v.Wraps {
		c.OverMM, c.ThickMM = v.OverMM, v.WallMM
	}
	if cutMM, ok := cover.CutLength(length, c.Tube.V.LengthChange, s.Limits.CutStepMM); ok {
		c.CutMM = cutMM
		if m, ok := cover.Mass(coverTubes([]catalogue.Tube{c.Tube.V})[0]); ok {
			c.Gram = unit.Gram(float64(m) * float64(cutMM) / 1000)
		}
	}
	name := fmt.Sprintf("Its %s %s, from %s to %s mm,", c.What, c.Part, station(c.FromMM), station(c.ToMM))
	switch {
	case v.StopSlide:
		s.Say(sheet.Stop, "cover.slide", b.ID, fmt.Sprintf("%s cannot slide on: its bore of %s mm is %s mm too small to pass %s", name,
			unit.Fixed(c.Tube.V.SuppliedMM, 2), lack(-v.WorstSlideMM), c.PassAt))
	case v.StopLoose:
		s.Say(sheet.Stop, "cover.loose", b.ID,
			fmt.Sprintf("%s stays loose: it recovers to %s mm, and the tape diameter beneath is %s mm with every wire at its smallest",
				name, unit.Fixed(c.Tube.V.RecoveredMM, 2), unit.Fixed(c.UnderTapeMin, 2)))
	default:
		advise(s, i, "cover", name, v, keepsAll(s, c.Tube.V.Kind, lies, pass.Pass, length), "what it lies on", c.PassAt)
		if len(loose) > 0 {
			s.Say(sheet.Note, "cover.held", b.ID, fmt.Sprintf("%s %s", name, heldSays(loose)))
		}
	}
}

// keepsAll reports whether some tube of a kind keeps all advice in a place.
func keepsAll(s *sheet.Sheet, kind string, lies cover.Bundle, pass cover.Pass, length unit.Millimetre) bool {
	var all []cover.Verdict
	for _, c := range cover.Candidates(coverTubes(s.Cat.TubesOf(kind)), lies, pass, length) {
		all = append(all, c.Verdict)
	}
	return cover.AnyKeepsAll(all)
}

// notHeld is where a tube between two stations would lie loose on what is there now, with
// every wire at its smallest, for longer than an overlap is.
func notHeld(s *sheet.Sheet, i int, t catalogue.Tube, from, to unit.Millimetre) []stretch {
	tape := s.Branches[i].TapeMinMM
	return slices.DeleteFunc(profile(s, i, from, to), func(p stretch) bool {
		return tape+p.add >= t.RecoveredMM || p.to-p.from <= cover.OverlapMM
	})
}

func heldSays(loose []stretch) string {
	var places []string
	for _, p := range loose {
		places = append(places, fmt.Sprintf("%s to %s mm", station(p.from), station(p.to)))
	}
	return "is not held from " + strings.Join(places, " and ") + ", because less lies beneath it there: build it up, or stop it short"
}

// FloorMM is the circle that the areas of a branch's components come to: a floor, which no
// lay-up of round things reaches.
func FloorMM(s *sheet.Sheet, i int) unit.Millimetre {
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
func Outermost(b *sheet.Branch) unit.Millimetre {
	d := max(b.OverMM, b.Sheath.Verdict.OverMM) // 0 where there is no sheath, or its wall is not known
	for _, c := range b.Covers {
		d = max(d, c.OverMM)
	}
	return d
}
