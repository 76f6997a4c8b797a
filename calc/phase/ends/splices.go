package ends

import (
	"cmp"
	"fmt"
	"math"
	"slices"
	"strings"

	"contralay/calc/formula/join"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// JoinWires finds what ends on each splice, which barrel it goes into and which part
// takes it, and says what fits none.
func JoinWires(s *sheet.Sheet) {
	if len(s.H.Splices) == 0 {
		return
	}
	if s.Reuse.All && !slices.Contains(s.Reuse.Branches, false) {
		s.Splices, s.SaidJoin = s.Reuse.Prior.Splices, s.Reuse.Prior.SaidJoin
		s.Kept(s.SaidJoin)
		return
	}
	mark := len(s.Snags)
	defer func() { s.SaidJoin = s.Since(mark) }()
	s.Splices = make([]sheet.Splice, len(s.H.Splices))
	for k := range s.H.Wires {
		for _, text := range []string{s.H.Wires[k].From.V, s.H.Wires[k].To.V} {
			if e, ok := s.Index.End(text); ok && e.Splice != "" {
				if i, known := s.Index.Splice[e.Splice]; known && !slices.Contains(s.Splices[i].Wires, k) {
					s.Splices[i].Wires = append(s.Splices[i].Wires, k)
				}
			}
		}
	}
	parts := SpliceParts(s)
	for i := range s.Splices {
		joinAt(s, i, parts)
	}
	staggered(s)
	inSeries(s)
}

// inSeries tells of a wire that is spliced at both ends where one of the splices only
// lengthens it. Source: AC 43.13-1B ¶ 11-167 c: one splice in a wire between connectors,
// but for several into one, a change of size, and repair.
func inSeries(s *sheet.Sheet) {
	only := func(text string) string { // the splice joins two wires of one size and nothing else
		e, ok := s.Index.End(text)
		i, known := s.Index.Splice[e.Splice]
		if !ok || !known || len(s.Splices[i].Wires) != 2 {
			return ""
		}
		a, b := &s.H.Wires[s.Splices[i].Wires[0]], &s.H.Wires[s.Splices[i].Wires[1]]
		if catalogue.CanonicalSize(a.Size) != catalogue.CanonicalSize(b.Size) {
			return ""
		}
		return e.Splice
	}
	for k := range s.H.Wires {
		w := &s.H.Wires[k]
		a, okA := s.Index.End(w.From.V)
		b, okB := s.Index.End(w.To.V)
		if !okA || !okB || a.Splice == "" || b.Splice == "" {
			continue
		}
		if plain := cmp.Or(only(w.From.V), only(w.To.V)); plain != "" {
			s.Say(sheet.Warn, "splice.series", w.ID,
				fmt.Sprintf("It is spliced at both ends, and %s only lengthens it. A wire between connectors takes one splice: run it "+
					"through",
					plain))
		}
	}
}

// SpliceParts are the splices of the catalogue, the smallest first, butt before parallel.
func SpliceParts(s *sheet.Sheet) []join.Part {
	var out []join.Part
	for _, id := range s.Cat.SpliceIDs() {
		p, _ := s.Cat.Splice(id)
		out = append(out, join.Part{ID: id, Parallel: p.Build == "parallel", Least: unit.CircularMil(p.CMAMin),
			Most: unit.CircularMil(p.CMAMax)})
	}
	slices.SortStableFunc(out, func(a, b join.Part) int {
		if a.Parallel != b.Parallel {
			if a.Parallel {
				return 1
			}
			return -1
		}
		return int(a.Most - b.Most)
	})
	return out
}

func joinAt(s *sheet.Sheet, i int, parts []join.Part) {
	sp, out := &s.H.Splices[i], &s.Splices[i]
	if len(out.Wires) < 2 {
		says := "It joins nothing yet: no wire ends on it"
		if len(out.Wires) == 1 {
			says = fmt.Sprintf("It joins nothing: only wire %s ends on it", s.H.Wires[out.Wires[0]].ID)
		}
		s.Say(sheet.Warn, "splice.one", sp.ID, says)
		return
	}
	sides(s, i)
	near, far, known := side(s, out.Near), side(s, out.Far), true
	for _, k := range out.Wires {
		known = known && s.Wires[k].Entry.AreaMM2 > 0
	}
	out.Part, out.Given = sp.Part.V, sp.Part.V != ""
	p, is := s.Cat.Splice(out.Part)
	if out.Given && !is {
		s.Say(sheet.Warn, "splice.part", sp.ID, fmt.Sprintf("Part %q is in no catalogue: its barrel and its bulge are not known", out.Part))
		return
	}
	if !known {
		return
	}
	fitting := slices.IndexFunc(parts, func(p join.Part) bool { return p.Fits(near, far) })
	if !out.Given {
		if fitting < 0 {
			sayNoSplice(s, i, near, far, parts)
			return
		}
		out.Part = parts[fitting].ID
		p, is = s.Cat.Splice(out.Part)
	}
	out.Known, out.Origin = is, p.Origin
	mine := join.Part{ID: p.ID, Parallel: p.Build == "parallel", Least: unit.CircularMil(p.CMAMin), Most: unit.CircularMil(p.CMAMax)}
	out.Fits = mine.Fits(near, far)
	if out.Fits {
		return
	}
	text := fmt.Sprintf("%s takes %d to %d circular mils at each end, and gets %s and %s", p.ID, p.CMAMin, p.CMAMax, mils(near.Sum()),
		mils(far.Sum()))
	if mine.Parallel {
		text = fmt.Sprintf("%s takes %d to %d circular mils, and gets %s", p.ID, p.CMAMin, p.CMAMax, mils(near.Sum()+far.Sum()))
	}
	if like := slices.IndexFunc(parts, func(p join.Part) bool { return p.Parallel == mine.Parallel && p.Fits(near, far) }); like >= 0 {
		text += "; " + parts[like].ID + " takes them"
	} else {
		text += curesText(s, i, near, far, parts)
	}
	s.Say(sheet.AtMost(p.Standing, sheet.Stop), "splice.barrel", sp.ID, text)
}

func sayNoSplice(s *sheet.Sheet, i int, near, far join.Side, parts []join.Part) {
	st := catalogue.House
	for _, id := range s.Cat.SpliceIDs() {
		p, _ := s.Cat.Splice(id)
		st = catalogue.Weakest(st, p.Standing)
	}
	s.Say(sheet.AtMost(st, sheet.Stop), "splice.barrel", s.H.Splices[i].ID,
		fmt.Sprintf("No splice of the catalogue takes %s circular mils on one side and %s on the other", mils(near.Sum()), mils(far.Sum()))+
			curesText(s, i, near, far, parts))
}

// curesText is the ways out, in words.
func curesText(s *sheet.Sheet, i int, near, far join.Side, parts []join.Part) string {
	out := &s.Splices[i]
	feed, branch, ends := near, far, out.Near
	if len(far) == 1 && len(near) > 1 {
		feed, branch, ends = far, near, out.Far
	}
	var feeds []unit.CircularMil
	sizes := map[unit.CircularMil]string{}
	if len(ends) == 1 {
		spec := s.H.Wires[ends[0]].Spec
		for _, size := range s.Cat.Sizes(spec) {
			if e, ok := s.Cat.Wire(spec, size); ok && e.AreaMM2 > 0 {
				c := milsOf(e)
				feeds, sizes[c] = append(feeds, c), size
			}
		}
	}
	var ways []string
	for _, c := range join.Cures(feed, branch, feeds, parts) {
		switch {
		case c.Feed > 0:
			ways = append(ways, fmt.Sprintf("a feed of %s with %s", sizes[c.Feed], c.Parts[0]))
		case c.Split > 0:
			ways = append(ways, fmt.Sprintf("two splices, %s for %d and %s for %d", c.Parts[0], c.Split, c.Parts[1], len(branch)-c.Split))
		default:
			ways = append(ways, "parallel, "+c.Parts[0])
		}
	}
	if len(ways) == 0 {
		return ""
	}
	return "; ways out: " + strings.Join(ways, "; or ")
}

// milsOf is a conductor's circular mils.
func milsOf(e catalogue.Wire) unit.CircularMil {
	return unit.CircularMil(math.Round(float64(e.AreaMM2.CircularMils())))
}

func mils(v unit.CircularMil) string { return unit.Fixed(v, 0) }

func side(s *sheet.Sheet, wires []int) join.Side {
	var out join.Side
	for _, k := range wires {
		out = append(out, milsOf(s.Wires[k].Entry))
	}
	return out
}

// sides puts wires into two barrels: those that go on along the branch that the sleeve
// lies on into one, the rest into the other; where that leaves one empty, the thickest
// wire stands alone.
func sides(s *sheet.Sheet, i int) {
	sp, out := &s.H.Splices[i], &s.Splices[i]
	if b, ok := s.Index.Branch[sp.Toward.V]; ok {
		for _, k := range out.Wires {
			if slices.Contains(s.Wires[k].Path, b) {
				out.Far = append(out.Far, k)
			} else {
				out.Near = append(out.Near, k)
			}
		}
	}
	if len(out.Near) > 0 && len(out.Far) > 0 {
		return
	}
	thick := out.Wires[0]
	for _, k := range out.Wires {
		if s.Wires[k].Entry.AreaMM2 > s.Wires[thick].Entry.AreaMM2 {
			thick = k
		}
	}
	out.Near, out.Far = []int{thick}, nil
	for _, k := range out.Wires {
		if k != thick {
			out.Far = append(out.Far, k)
		}
	}
}

// Staggering and keeping clear. betweenMM is what is left between two sleeves of one
// run so that the bundle does not swell (derived: a sleeve of 28 mm every 38 mm);
// endMM how near a termination a splice is not wanted (from memory of AS50881).
const (
	betweenMM unit.Millimetre = 10
	endMM     unit.Millimetre = 305
)

// StationOf is where along a branch a splice's sleeve has its middle, from the branch's
// from end; false where it does not lie on one.
func StationOf(s *sheet.Sheet, i int) (branch int, station unit.Millimetre, ok bool) {
	sp := &s.H.Splices[i]
	b, ok := s.Index.Branch[sp.Toward.V]
	if !ok {
		return 0, 0, false
	}
	br := &s.H.Branches[b]
	switch sp.At {
	case br.From:
		return b, sp.OffsetMM.V, true
	case br.To:
		return b, br.LengthMM - sp.OffsetMM.V, true
	}
	return 0, 0, false
}

// staggered tells which splices stand where they should not: beside one another, in a
// boot, in a run that flexes, off their branch, near a termination.
func staggered(s *sheet.Sheet) {
	for i := range s.H.Splices {
		sp := &s.H.Splices[i]
		if sp.Toward.V == "" {
			continue
		}
		b, station, ok := StationOf(s, i)
		if !ok {
			s.Say(sheet.Warn, "splice.place", sp.ID, fmt.Sprintf("It lies toward %s, which does not begin at %s", sp.Toward.V, sp.At))
			continue
		}
		br := &s.H.Branches[b]
		if !br.Measured() {
			continue // where on it that is is not known, and that is said already
		}
		if station < 0 || station > br.LengthMM {
			s.Say(sheet.Stop, "splice.place", sp.ID,
				fmt.Sprintf("It lies %s mm along %s, which is only %s mm long", unit.Fixed(sp.OffsetMM.V, 0), br.ID,
					unit.Fixed(br.LengthMM, 0)))
			continue
		}
		if slices.Contains(br.Environment, model.Flexing) {
			s.Say(sheet.Warn, "splice.flex", sp.ID, fmt.Sprintf("It lies in %s, which flexes", br.ID))
		}
		long := sleeve(s, i)
		for _, end := range []string{br.From, br.To} {
			t, is := s.Index.Termination[end]
			off := station
			if end == br.To {
				off = br.LengthMM - station
			}
			switch boot, has := s.Cat.Boot(s.H.Terminations[max(t, 0)].Boot.V); {
			case !is:
			case has && off-long/2 < boot.LengthMM:
				s.Say(sheet.Warn, "splice.boot", sp.ID,
					fmt.Sprintf("It lies in the boot of %s, %s mm from its end", end, unit.Fixed(off, 0)))
			case off < endMM:
				s.Say(sheet.Note, "splice.end", sp.ID, fmt.Sprintf("It lies within %s mm of a termination", unit.Fixed(endMM, 0)))
			}
		}
		for j := range i {
			c, other, ok := StationOf(s, j)
			if !ok || c != b {
				continue
			}
			if want := (long+sleeve(s, j))/2 + betweenMM; max(station-other, other-station) < want {
				s.Say(sheet.Note, "splice.stack", sp.ID,
					fmt.Sprintf("It lies %s mm from %s on %s: put them %s mm apart, so that the bundle does not swell",
						unit.Fixed(max(station-other, other-station), 0), s.H.Splices[j].ID, br.ID, unit.Fixed(want, 0)))
			}
		}
	}
}

// sleeve is how long a splice is; 28 mm, the commonest, where its part is not known.
func sleeve(s *sheet.Sheet, i int) unit.Millimetre {
	if p, ok := s.Cat.Splice(s.Splices[i].Part); ok {
		return p.LengthMM
	}
	return 28
}
