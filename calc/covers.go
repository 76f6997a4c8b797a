package calc

import (
	"fmt"
	"slices"
	"strings"

	"contralay/calc/cover"
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

// coverBranches judges or proposes the sheath of every branch.
func (s *Sheet) coverBranches() {
	for i := range s.H.Branches {
		out := &s.Branches[i]
		if s.same.branch(i) && (s.same.all || !s.spliceOn(i)) {
			s.kept(out.saidOver)
			continue
		}
		mark := len(s.Snags)
		out.Sheath, out.Covers = Sheath{}, nil
		s.fuel(i)
		if s.Branches[i].OverMM > 0 {
			s.stack(i)
		}
		s.thinWall(i)
		s.sayRecovery(i)
		s.hot(i)
		s.sayMargins(i)
		s.boots(i)
		out.saidOver = s.since(mark)
	}
}

// spliceOn reports whether a splice lies on a branch: its bulge hangs on wires that need
// not run there.
func (s *Sheet) spliceOn(i int) bool {
	return slices.ContainsFunc(s.H.Splices, func(sp model.Splice) bool { return sp.Toward.V == s.H.Branches[i].ID })
}

func (s *Sheet) cover(i int) {
	b, out := &s.H.Branches[i], &s.Branches[i]
	sh := &out.Sheath
	written, from, to := "", unit.Millimetre(-1), unit.Millimetre(-1)
	bare := len(b.Covers) > 0                  // a file that lists its covers and no sheath wants none
	if k := s.sheathAt(i); k < len(b.Covers) { // the first; what lies over it is no sheath of the branch
		c := &b.Covers[k]
		bare, written = false, c.Part.V
		if c.FromMM.Set {
			from = c.FromMM.V
		}
		if c.ToMM.Set {
			to = c.ToMM.V
		}
	}
	if bare {
		return
	}
	sh.FromMM, sh.ToMM = s.sheathEnds(i)
	if from >= 0 {
		sh.FromMM = min(from, b.LengthMM)
	}
	if to >= 0 {
		sh.ToMM = min(to, b.LengthMM)
	}
	sh.ToMM = max(sh.ToMM, sh.FromMM)
	sh.BeneathMM, sh.BeneathMinMM = s.beneath(i, sh.FromMM, sh.ToMM)
	kind := s.sheathKind(i)
	if written != "" {
		t, ok := s.Cat.Tube(written)
		if !ok {
			s.say(Stop, "sheath.part", b.ID, fmt.Sprintf("sheath %q is in no catalogue", written))
			sh.Part = written
			return
		}
		kind = t.Kind
	}
	pass, at, station := s.pass(i)
	sh.PassMM, sh.PassAt, sh.PassStationMM = pass.NominalMM, at, station
	tubes := s.Cat.TubesOf(kind)
	length := sh.ToMM - sh.FromMM
	if length <= 0 {
		s.say(Note, "sheath.place", b.ID, "no length is left for a sheath: boots and sorted zones take it all")
		sh.Part, sh.Proposed = "", written == ""
		return
	}
	cs := cover.Candidates(coverTubes(tubes), cover.Bundle{OverMM: out.OverMM + sh.BeneathMM, OverMaxMM: out.OverMaxMM + sh.BeneathMM, TapeMM: out.TapeMM + sh.BeneathMinMM, TapeMinMM: out.TapeMinMM + sh.BeneathMinMM}, pass, length)
	vs := make([]cover.Verdict, len(cs))
	for k := range cs {
		vs[k] = cs[k].Verdict
	}
	sh.KindAll = cover.AnyKeepsAll(vs)
	use := -1
	for _, k := range cover.Rank(cs) {
		c := Choice{Tube: tubes[k], Verdict: vs[k], Level: vs[k].Level(sh.KindAll)}
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
		level := Warn
		if len(out.Components) == 1 {
			level = Note // one wire alone may well run bare
		}
		s.say(level, "sheath.none", b.ID, fmt.Sprintf("no %s tube goes over %s mm (%s) and still grips %s mm by tape: take another kind, build it up, or leave it bare", kind, unit.Fixed(float64(pass.MaxMM), 1), sh.PassAt, unit.Fixed(float64(out.TapeMinMM+sh.BeneathMinMM), 1)))
		return
	}
	c := sh.Others[use]
	sh.Part, sh.Tube, sh.Known, sh.Verdict, sh.CutMM, sh.Gram = c.Tube.ID, c.Tube, true, c.Verdict, c.CutMM, c.Gram
	s.saySheath(i)
}

// fuel says what this sheet does not rate.
func (s *Sheet) fuel(i int) {
	if slices.Contains(s.H.Branches[i].Environment, "fuel") {
		s.say(Stop, "fuel", s.H.Branches[i].ID, "fuel wets it: outside what this sheet rates; leave it to those who are licensed for it")
	}
}

// thinWall refuses a thin wall where it chafes through: in vibration, on a run that is not
// supported. Common practice, no source.
func (s *Sheet) thinWall(i int) {
	b, out := &s.H.Branches[i], &s.Branches[i]
	if !slices.Contains(b.Environment, "vibration") || b.Supported.V {
		return
	}
	tubes := []catalogue.Tube{out.Sheath.Tube}
	for _, c := range out.Covers {
		tubes = append(tubes, c.Tube)
	}
	for _, t := range tubes {
		if strings.HasSuffix(t.Kind, " thin") {
			s.sayLike(Stop, "sheath.thin", b.ID, t.Kind, fmt.Sprintf("%s is thin, and the run vibrates and is not supported: it chafes through; take the standard wall, or support the run", t.ID))
			return
		}
	}
}

// hot tests wire and sheath against the air they lie in, currents aside: what is
// over its rating before any current flows is a stop, a warning where the rating
// is only from memory.
func (s *Sheet) hot(i int) {
	b, out := &s.H.Branches[i], &s.Branches[i]
	seen := map[string]bool{}
	for _, k := range s.wiresOf(i) {
		e := s.Wires[k].Entry
		if e.RatedC <= 0 || out.Ambient <= e.RatedC || seen[e.Spec] {
			continue
		}
		seen[e.Spec] = true
		s.say(atMost(ratedStanding(e), Stop), "hot.wire", b.ID, fmt.Sprintf("is %s degrees C around and %s is rated %s", unit.Fixed(float64(out.Ambient), 0), e.Spec, unit.Fixed(float64(e.RatedC), 0)))
	}
	if t := out.Sheath.Tube; out.Sheath.Known && out.Ambient > t.ServiceMaxC {
		s.say(atMost(t.Standing, Stop), "hot.sheath", b.ID, fmt.Sprintf("is %s degrees C around and %s is for %s at most", unit.Fixed(float64(out.Ambient), 0), t.Kind, unit.Fixed(float64(t.ServiceMaxC), 0)))
	}
}

// wiresOf is the wires through a branch, those of units too.
func (s *Sheet) wiresOf(i int) []int {
	var out []int
	for k := range s.Wires {
		if slices.Contains(s.Wires[k].Path, i) {
			out = append(out, k)
		}
	}
	return out
}

func coverTubes(in []catalogue.Tube) []cover.Tube {
	out := make([]cover.Tube, len(in))
	for i, t := range in {
		out[i] = cover.Tube{SuppliedMM: t.SuppliedMM, RecoveredMM: t.RecoveredMM, WallMM: t.WallMM, LengthChange: t.LengthChange, Density: t.Density}
	}
	return out
}

// sheathKind is the kind of tube a branch calls for by where it runs.
func (s *Sheet) sheathKind(i int) string {
	if slices.Contains(s.H.Branches[i].Environment, "fuel") {
		return FuelSheath
	}
	if ts := s.Cat.TubesOf(DefaultSheath); len(ts) > 0 && s.Branches[i].Ambient > ts[0].ServiceMaxC {
		return FuelSheath
	}
	return DefaultSheath
}

// shortestPart is how much of its recovered length a moulded part surely has:
// lengths of moulded shapes are given ± 10 % (as quoted for one size).
const shortestPart = 0.9

// sheathEnds is where the sheath starts and stops along the branch: under the
// shortest boot and inside the shortest transition with 15 mm of overlap;
// without boot at the datum, without transition where the zone begins.
func (s *Sheet) sheathEnds(i int) (from, to unit.Millimetre) {
	b := &s.H.Branches[i]
	inset := func(place string) unit.Millimetre {
		if k, ok := s.X.Termination[place]; ok {
			if boot, ok := s.Cat.Boot(s.H.Terminations[k].Boot.V); ok {
				return max(0, shortestPart*boot.LengthMM-cover.OverlapMM)
			}
			return 0
		}
		k := s.X.Breakout[place]
		br := &s.H.Breakouts[k]
		if t, ok := s.Cat.Transition(br.Transition.V); ok && len(t.Outlets) > 0 {
			return max(0, shortestPart*t.Outlets[0].PortMM-cover.OverlapMM)
		}
		return br.ZoneMM.Or(s.Limits.ZoneMM)
	}
	from, to = min(inset(b.From), b.LengthMM), b.LengthMM-min(inset(b.To), b.LengthMM)
	return from, max(from, to)
}

// pass is the largest thing a sheath must get over on its way to its place. It
// comes on from a termination before that is fitted and then passes the bundle
// and its splices; between two breakouts it comes over the zone of one of them,
// where the bundle stands thicker.
func (s *Sheet) pass(i int) (p cover.Pass, where string, station unit.Millimetre) {
	b, out := &s.H.Branches[i], &s.Branches[i]
	over, most := out.OverMM+out.Sheath.BeneathMM, out.OverMaxMM+out.Sheath.BeneathMM
	p = cover.Pass{NominalMM: over, MaxMM: most}
	where = fmt.Sprintf("the bundle, from %s to %s mm of %s", unit.Fixed(float64(out.Sheath.FromMM), 0), unit.Fixed(float64(out.Sheath.ToMM), 0), b.ID)
	_, a := s.X.Termination[b.From]
	_, z := s.X.Termination[b.To]
	if !a && !z {
		lump := unit.Millimetre(s.Limits.ZoneLump)
		p.NominalMM, p.MaxMM = p.NominalMM*lump, p.MaxMM*lump
		where = fmt.Sprintf("the sorted zone at %s", b.To)
	}
	for k := range s.H.Splices {
		sp := &s.H.Splices[k]
		part, ok := s.Cat.Splice(s.Splices[k].Part)
		if sp.Toward.V != b.ID || !ok || sp.OffsetMM.V <= 0 {
			continue
		}
		at := sp.OffsetMM.V
		if b.To == sp.At {
			at = b.LengthMM - at
		}
		if at < out.Sheath.FromMM || at > out.Sheath.ToMM {
			continue
		}
		bulge := part.OverMM - s.spliceWire(sp.ID)
		if bulge > 0 && over+bulge > p.NominalMM {
			p = cover.Pass{NominalMM: over + bulge, MaxMM: most + bulge}
			station = at
			where = fmt.Sprintf("splice %s, at %s mm of %s", sp.ID, unit.Fixed(float64(at), 0), b.ID)
		}
	}
	return p, where, station
}

// spliceWire is the thickest wire on a splice: what the splice stands in place of.
func (s *Sheet) spliceWire(id string) unit.Millimetre {
	d := unit.Millimetre(0)
	for k := range s.H.Wires {
		if s.H.Wires[k].From.V == id || s.H.Wires[k].To.V == id {
			d = max(d, s.Wires[k].Dia.Nominal)
		}
	}
	return d
}

func (s *Sheet) saySheath(i int) {
	b, out := &s.H.Branches[i], &s.Branches[i]
	sh, v := &out.Sheath, out.Sheath.Verdict
	fine := func(x unit.Millimetre) string { return unit.Fixed(float64(x), 2) }
	if v.StopSlide {
		s.say(Stop, "sheath.slide", b.ID, fmt.Sprintf("%s cannot slide on: its bore of %s mm is %s mm too small over %s",
			sh.Part, fine(sh.Tube.SuppliedMM), fine(-v.WorstSlideMM), sh.PassAt))
	}
	if v.StopLoose {
		s.say(Stop, "sheath.loose", b.ID, fmt.Sprintf("%s stays loose: it recovers to %s mm at most and the bundle is %s mm by tape at its smallest",
			sh.Part, fine(sh.Tube.RecoveredMM), fine(out.TapeMinMM+sh.BeneathMinMM)))
	}
	if v.Stops() {
		return
	}
	s.advise(i, v.Stretch, "sheath.stretch",
		fmt.Sprintf("%s is filled to %s %% of its bore; 80 at most is advised", sh.Part, unit.Fixed(100*float64(v.StretchRatio), 1)),
		fmt.Sprintf("%s is filled past 80 %% of its bore where every wire is at its largest", sh.Part))
	s.advise(i, v.Grips, "sheath.grip",
		fmt.Sprintf("%s grips little: the bundle is %s times its recovered bore by tape; 1.10 is wanted", sh.Part, unit.Fixed(float64(v.GripRatio), 2)),
		fmt.Sprintf("%s grips little where every wire is at its smallest", sh.Part))
	s.advise(i, v.Slides, "sheath.room",
		fmt.Sprintf("%s has %s mm to slide over %s; %s is wanted", sh.Part, fine(v.SlideMM), sh.PassAt, fine(v.RoomMM)),
		fmt.Sprintf("%s slides with little room where every wire is at its largest", sh.Part))
}

// advise says what one piece of advice comes to: missed, or missed only at an end
// of the wire tolerance.
func (s *Sheet) advise(i int, a cover.Advice, rule, missed, atExtreme string) {
	says := missed
	if a.Kept {
		says = atExtreme
	}
	switch a.Level(s.Branches[i].Sheath.KindAll) {
	case cover.Warn:
		s.say(Warn, rule, s.H.Branches[i].ID, says)
	case cover.Note:
		s.say(Note, rule, s.H.Branches[i].ID, says)
	}
}

// boots tests the cable end of the boots at a branch's terminations. Their sizes
// stand in the catalogue from memory, so no more than a warning comes of them
// unless the shop's own catalogue has them.
func (s *Sheet) boots(i int) {
	b, out := &s.H.Branches[i], &s.Branches[i]
	for _, place := range []string{b.From, b.To} {
		k, ok := s.X.Termination[place]
		if !ok || s.H.Terminations[k].Boot.V == "" {
			continue
		}
		t := &s.H.Terminations[k]
		boot, known := s.Cat.Boot(t.Boot.V)
		if !known {
			s.say(Warn, "boot.part", t.ID, fmt.Sprintf("boot %q is in no catalogue", t.Boot.V))
			continue
		}
		s.bootShell(t, boot)
		if out.Sheath.Known && out.Sheath.Verdict.Stops() {
			continue // what the boot lies on is not settled, and that is said already
		}
		d := out.OverMM
		if out.Sheath.Verdict.Wraps {
			d = out.Sheath.Verdict.OverMM
		}
		if d <= 0 {
			continue
		}
		switch {
		case d < boot.CableRecoveredMM:
			s.say(atMost(boot.From(boot.Read.CableRecovered).Standing, Stop), "boot.grip", t.ID, fmt.Sprintf("%s stays loose: it recovers to %s mm and lies on %s mm; build it up, and check the part's sheet", boot.ID, unit.Fixed(float64(boot.CableRecoveredMM), 1), unit.Fixed(float64(d), 1)))
		case boot.CableSuppliedMM > 0 && d > boot.CableSuppliedMM:
			s.say(atMost(boot.From(boot.Read.CableSupplied).Standing, Stop), "boot.slide", t.ID, fmt.Sprintf("%s will not pass: it opens to %s mm and the branch is %s mm; check the part's sheet", boot.ID, unit.Fixed(float64(boot.CableSuppliedMM), 1), unit.Fixed(float64(d), 1)))
		}
	}
}

func (s *Sheet) bootShell(t *model.Termination, boot catalogue.Boot) {
	if ins, ok := s.Cat.Insert(t.Insert.V); ok && ins.Shell > 0 && ins.Shell != boot.Shell {
		s.say(Warn, "boot.shell", t.ID, fmt.Sprintf("%s is for shell %d and the insert has shell %d", boot.ID, boot.Shell, ins.Shell))
	}
}
