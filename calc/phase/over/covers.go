package over

import (
	"fmt"
	"slices"
	"strings"

	"contralay/calc/formula/cover"
	"contralay/calc/phase/wires"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// DefaultSheath is the kind of tube proposed where the file names none: the
// diesel- and oil-resistant elastomer. FuelSheath where fuel wets the branch or
// it is hotter than that allows.
const (
	DefaultSheath = "AS23053/16"
	FuelSheath    = "AS23053/13"
)

// thinKind is how the kinds of tube with a thin wall end.
const thinKind = " thin"

// CoverBranches judges or proposes the sheath of every branch.
func CoverBranches(s *sheet.Sheet) {
	through := Through(s)
	was := make([][2]model.Opt[int], len(s.Branches)) // of those taken over
	for i := range s.Branches {
		was[i] = s.Branches[i].Outlets
	}
	chooseOutlets(s)
	for i := range s.H.Branches {
		out := &s.Branches[i]
		if s.Reuse.Branch(i) && (s.Reuse.All || !spliceOn(s, i)) && out.Outlets == was[i] {
			s.Kept(out.SaidOver)
			continue
		}
		mark := len(s.Snags)
		out.Sheath, out.Covers = sheet.Sheath{}, nil
		fuel(s, i)
		if s.Branches[i].OverMM > 0 && s.H.Branches[i].Measured() {
			stack(s, i)
		}
		thinWall(s, i)
		sayRecovery(s, i)
		hot(s, i, through[i])
		sayMargins(s, i)
		boots(s, i)
		out.SaidOver = s.Since(mark)
	}
}

// spliceOn reports whether a splice lies on a branch: its bulge hangs on wires that need
// not run there.
func spliceOn(s *sheet.Sheet, i int) bool {
	return slices.ContainsFunc(s.H.Splices, func(sp model.Splice) bool { return sp.Toward.V == s.H.Branches[i].ID })
}

func coverBranch(s *sheet.Sheet, i int) {
	b, out := &s.H.Branches[i], &s.Branches[i]
	sh := &out.Sheath
	written, there := "", true
	sh.FromMM, sh.ToMM = SheathEnds(s, i)
	switch k := sheathAt(s, i); { // the first; what lies over it is no sheath of the branch
	case k < len(b.Covers):
		written = b.Covers[k].Part.V
		if b.Covers[k].FromMM.Set || b.Covers[k].ToMM.Set {
			sh.FromMM, sh.ToMM, there = placed(s, i, model.CoverSheath, &b.Covers[k], sh.FromMM, sh.ToMM)
		}
	case len(b.Covers) > 0: // a file that lists its covers and no sheath wants none
		*sh = sheet.Sheath{}
		return
	}
	sh.BeneathMM, sh.BeneathMinMM = beneath(s, i, sh.FromMM, sh.ToMM)
	kind := sheathKind(s, i)
	if written != "" {
		t, ok := s.Cat.Tube(written)
		if !ok {
			s.Say(sheet.Stop, "sheath.part", b.ID, fmt.Sprintf("Sheath %q is in no catalogue", written))
			sh.Part = written
			return
		}
		kind = t.Kind
	}
	pass := pass(s, i, sh.FromMM, sh.ToMM)
	sh.PassMM, sh.PassAt, sh.PassStationMM, sh.Pass = pass.NominalMM, pass.Over, pass.StationMM, pass
	length := sh.ToMM - sh.FromMM
	if length <= 0 {
		if !there {
			sh.Part, sh.Proposed = "", written == ""
			return // said already
		}
		s.Say(sheet.Note, "sheath.place", b.ID, "Boots and sorted zones leave no length for a sheath")
		sh.Part, sh.Proposed = "", written == ""
		return
	}
	lies := cover.Bundle{OverMM: out.OverMM + sh.BeneathMM, OverMaxMM: out.OverMaxMM + sh.BeneathMM,
		TapeMM: out.TapeMM + sh.BeneathMinMM, TapeMinMM: out.TapeMinMM + sh.BeneathMinMM}
	if written == "" {
		kind = kindThatSlides(s, i, kind, lies, pass.Pass, length)
	}
	tubes := s.Cat.TubesOf(kind)
	cs := cover.Candidates(coverTubes(tubes), lies, pass.Pass, length)
	vs := make([]cover.Verdict, len(cs))
	for k := range cs {
		vs[k] = cs[k].Verdict
	}
	sh.KindAll = cover.AnyKeepsAll(vs)
	use := -1
	for _, k := range cover.Rank(cs) {
		c := sheet.Choice{Tube: tubes[k], Verdict: vs[k], Level: vs[k].Level(sh.KindAll)}
		if cutMM, ok := cover.CutLength(length, tubes[k].LengthChange, s.Limits.CutStepMM); ok {
			c.CutMM = cutMM
			c.Gram = unit.Gram(float64(cs[k].GramPerM) * float64(cutMM) / 1000)
		}
		sh.Others = append(sh.Others, c)
		if tubes[k].ID == written || (written == "" && use < 0 && !vs[k].Stops()) {
			use = len(sh.Others) - 1
		}
	}
	sh.Proposed = written == ""
	if use < 0 {
		level := sheet.Warn
		if len(out.Components) == 1 {
			level = sheet.Note // one wire alone may well run bare
		}
		s.Say(level, "sheath.none", b.ID,
			fmt.Sprintf("No %s tube goes over %s mm (%s) and still grips a tape diameter of %s mm: take another kind, build the bundle "+
				"up, or leave it bare",
				kind, unit.Fixed(pass.MaxMM, 2), sh.PassAt, unit.Fixed(out.TapeMinMM+sh.BeneathMinMM, 2)))
		return
	}
	c := sh.Others[use]
	loose := notHeld(s, i, c.Tube, sh.FromMM, sh.ToMM)
	sh.Part, sh.Tube, sh.Verdict, sh.CutMM, sh.Gram = c.Tube.ID, model.Some(c.Tube), c.Verdict, c.CutMM, c.Gram
	if wants := sheathKind(s, i); sh.Proposed && kind != wants {
		s.Say(sheet.Note, "sheath.kind", b.ID, fmt.Sprintf("Nobody can slide a %s tube on over %s mm here: %s is proposed instead", wants,
			unit.Fixed(length, 0), sh.Part))
	}
	saySheath(s, i)
	if !sh.Verdict.Stops() && len(loose) > 0 {
		s.Say(sheet.Note, "cover.held", b.ID, "Its sheath "+heldSays(loose))
	}
}

// fuel says what this sheet does not rate.
func fuel(s *sheet.Sheet, i int) {
	if slices.Contains(s.H.Branches[i].Environment, model.Fuel) {
		s.Say(sheet.Stop, "fuel", s.H.Branches[i].ID,
			"Fuel wets it: this sheet does not rate that. Leave it to licensed people")
	}
}

// thinWall refuses a thin wall where it chafes through: in vibration, on a run that is not
// supported. Common practice, no source.
func thinWall(s *sheet.Sheet, i int) {
	b := &s.H.Branches[i]
	if !slices.Contains(b.Environment, model.Vibration) || b.Supported.V {
		return
	}
	for _, t := range Tubes(s, i) {
		if strings.HasSuffix(t.Kind, thinKind) {
			s.SayLike(sheet.Stop, "sheath.thin", b.ID, t.Kind,
				fmt.Sprintf("%s has a thin wall, and the run vibrates without support: it will chafe through. Take the standard wall, or "+
					"support the run", t.ID))
			return
		}
	}
}

// hot tests wire and sheath against the air they lie in, currents aside: what is
// over its rating before any current flows is a stop, a warning where the rating
// is only from memory.
func hot(s *sheet.Sheet, i int, through []int) {
	b, out := &s.H.Branches[i], &s.Branches[i]
	seen := map[string]bool{}
	for _, k := range through {
		e := s.Wires[k].Entry
		if e.RatedC <= 0 || out.Ambient <= e.RatedC || seen[e.Spec] {
			continue
		}
		seen[e.Spec] = true
		s.Say(sheet.AtMost(wires.RatedStanding(e), sheet.Stop), "hot.wire", b.ID,
			fmt.Sprintf("The air around it is %s C, and %s is rated %s C", unit.Fixed(out.Ambient, 0), e.Spec,
				unit.Fixed(e.RatedC, 0)))
	}
	for _, t := range Tubes(s, i) {
		if t.ServiceMaxC > 0 && out.Ambient > t.ServiceMaxC && !seen[t.Kind] {
			seen[t.Kind] = true
			s.Say(sheet.AtMost(t.Standing, sheet.Stop), "hot.sheath", b.ID,
				fmt.Sprintf("The air around it is %s C, and %s is for %s C at most", unit.Fixed(out.Ambient, 0), t.Kind,
					unit.Fixed(t.ServiceMaxC, 0)))
		}
	}
}

// WiresOf is the wires through a branch, those of units too.
func WiresOf(s *sheet.Sheet, i int) []int {
	var out []int
	for k := range s.Wires {
		if slices.Contains(s.Wires[k].Path, i) {
			out = append(out, k)
		}
	}
	return out
}

// Through is WiresOf for every branch, in one walk along the wires.
func Through(s *sheet.Sheet) [][]int {
	out := make([][]int, len(s.H.Branches))
	for k := range s.Wires {
		for _, i := range s.Wires[k].Path {
			out[i] = append(out[i], k)
		}
	}
	return out
}

func coverTubes(in []catalogue.Tube) []cover.Tube {
	out := make([]cover.Tube, len(in))
	for i, t := range in {
		out[i] = cover.Tube{SuppliedMM: t.SuppliedMM, RecoveredMM: t.RecoveredMM, WallMM: t.WallMM, LengthChange: t.LengthChange,
			Density: t.Density}
	}
	return out
}

// sheathKind is the kind of tube a branch calls for by where it runs.
func sheathKind(s *sheet.Sheet, i int) string {
	if slices.Contains(s.H.Branches[i].Environment, model.Fuel) {
		return FuelSheath
	}
	if ts := s.Cat.TubesOf(DefaultSheath); len(ts) > 0 && s.Branches[i].Ambient > ts[0].ServiceMaxC {
		return FuelSheath
	}
	return DefaultSheath
}

// ShortestPart is how much of its recovered length a moulded part surely has:
// lengths of moulded shapes are given ± 10 % (as quoted for one size).
const ShortestPart = 0.9

// SheathEnds is where the sheath starts and stops along the branch: under the
// shortest boot and inside the shortest transition with 15 mm of overlap;
// without boot at the datum, without transition where the zone begins.
func SheathEnds(s *sheet.Sheet, i int) (from, to unit.Millimetre) {
	b := &s.H.Branches[i]
	inset := func(place string) unit.Millimetre {
		if k, ok := s.Index.Termination[place]; ok {
			if boot, ok := s.Cat.Boot(s.H.Terminations[k].Boot.V); ok {
				return max(0, ShortestPart*boot.LengthMM-cover.OverlapMM)
			}
			return 0
		}
		k := s.Index.Breakout[place]
		br := &s.H.Breakouts[k]
		if o, ok := OutletAt(s, i, place); ok {
			return max(0, ShortestPart*o.PortMM-cover.OverlapMM)
		}
		return br.ZoneMM.Or(s.Limits.ZoneMM)
	}
	from, to = min(inset(b.From), b.LengthMM), b.LengthMM-min(inset(b.To), b.LengthMM)
	return from, max(from, to)
}

// kindThatSlides is the kind of tube that is proposed: the one the branch calls for, or,
// where every size of that sticks, another kind that can lie on a whole run there and has a
// size that does not.
func kindThatSlides(s *sheet.Sheet, i int, kind string, lies cover.Bundle, pass cover.Pass, length unit.Millimetre) string {
	slides := func(tubes []catalogue.Tube) (best int, sticks, holds bool) {
		cs := cover.Candidates(coverTubes(tubes), lies, pass, length)
		order := cover.Rank(cs)
		if len(order) == 0 || cs[order[0]].Verdict.Stops() {
			return
		}
		return order[0], cs[order[0]].Verdict.Sticks, true
	}
	if _, sticks, _ := slides(s.Cat.TubesOf(kind)); !sticks {
		return kind
	}
	var others []catalogue.Tube
	for _, k := range s.Cat.Kinds() {
		if ts := s.Cat.TubesOf(k); suitsRun(s, i, ts[0]) {
			others = append(others, ts...)
		}
	}
	if best, sticks, holds := slides(others); holds && !sticks {
		return others[best].Kind
	}
	return kind
}

// suitsRun reports whether tube of a kind can be proposed for a whole run: it bends, it does
// not melt onto the wires, it withstands the air and what wets it, and its wall does not
// chafe through.
func suitsRun(s *sheet.Sheet, i int, t catalogue.Tube) bool {
	b := &s.H.Branches[i]
	switch {
	case !t.Flexible, strings.Contains(t.Material, "meltable"), t.ServiceMaxC > 0 && s.Branches[i].Ambient > t.ServiceMaxC:
		return false
	case slices.Contains(b.Environment, model.Fuel) && t.Kind != FuelSheath:
		return false
	case slices.Contains(b.Environment, model.Oil) && t.Kind != DefaultSheath && t.Kind != FuelSheath:
		return false
	}
	return !strings.HasSuffix(t.Kind, thinKind) || b.Supported.V || !slices.Contains(b.Environment, model.Vibration)
}

// lack is what a bore is too small by, in words that never say nothing.
func lack(v unit.Millimetre) string {
	if v < 0.005 { // it would be printed as 0.00
		return "under 0.01"
	}
	return unit.Fixed(v, 2)
}

func saySheath(s *sheet.Sheet, i int) {
	b, out := &s.H.Branches[i], &s.Branches[i]
	sh, v := &out.Sheath, out.Sheath.Verdict
	fine := func(x unit.Millimetre) string { return unit.Fixed(x, 2) }
	if v.StopSlide {
		s.Say(sheet.Stop, "sheath.slide", b.ID, fmt.Sprintf("%s cannot slide on: its bore of %s mm is %s mm too small to pass %s",
			sh.Part, fine(sh.Tube.V.SuppliedMM), lack(-v.WorstSlideMM), sh.PassAt))
	}
	if v.StopLoose {
		s.Say(sheet.Stop, "sheath.loose", b.ID,
			fmt.Sprintf("%s stays loose: it recovers to %s mm, and the tape diameter of the bundle is %s mm with every wire at its "+
				"smallest",
				sh.Part, fine(sh.Tube.V.RecoveredMM), fine(out.TapeMinMM+sh.BeneathMinMM)))
	}
	if v.Stops() {
		return
	}
	advise(s, i, "sheath", sh.Part, v, sh.KindAll, "the bundle", sh.PassAt)
}
