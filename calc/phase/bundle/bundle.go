package bundle

import (
	"cmp"
	"encoding/binary"
	"math"
	"slices"
	"strconv"

	"contralay/calc/formula/cut"
	"contralay/calc/formula/lay"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// LayBranches lays every branch: what runs through it, how it is made, and how
// thick that becomes at nominal and at both ends of the wire tolerance.
func LayBranches(s *sheet.Sheet, prior *sheet.Sheet) {
	s.Branches = make([]sheet.Branch, len(s.H.Branches))
	var comps [][]string
	if s.Reuse.Branches == nil || slices.Contains(s.Reuse.Branches, false) {
		comps = components(s)
	}
	known := packs{}
	for i := range s.H.Branches {
		if s.Reuse.Branch(i) {
			keepBranch(s, i)
			continue
		}
		b := &s.H.Branches[i]
		out := &s.Branches[i]
		mark := len(s.Snags)
		out.Components = comps[i]
		out.Ambient = b.AmbientC.Or(s.Limits.AmbientC)
		out.Standing = catalogue.House
		sized := true
		for _, id := range out.Components {
			d := s.Dia(id)
			sized = sized && d.Known()
			out.Standing = catalogue.Weakest(out.Standing, d.Standing)
		}
		sayMissing(s, i)
		out.Said = s.Since(mark)
		if len(out.Components) == 0 && len(b.Layers) == 0 {
			out.Make = model.MakeStraight
			s.Say(sheet.Warn, "branch.empty", b.ID, "No wire runs through it")
			out.Said = s.Since(mark)
			continue
		}
		plan := LayersOf(s, i)
		out.Make = makeOf(s, i, plan, known)
		if plan == nil {
			out.Proposed = true
			if out.Make == model.MakeLaid {
				if o, ok := s.Proposals[PlanKey(s, i)].Best(); ok {
					plan = o.Layers
					sayRelaxed(s, i, o)
				} else {
					out.Waiting = sized
				}
			} else {
				plan = []model.Layer{{Of: out.Components}}
			}
		}
		if !sized || out.Waiting || !allKnown(s, plan) || !layable(s, i, plan) {
			out.Said = s.Since(mark)
			continue
		}
		out.As = plan
		layBranch(s, i, plan, prior, known)
		bend(s, i)
		sayLayers(s, i)
		sayFiller(s, i)
		out.Said = s.Since(mark)
	}
}

// keepBranch takes a branch over from the prior sheet as it lies.
func keepBranch(s *sheet.Sheet, i int) {
	s.Branches[i] = s.Reuse.Prior.Branches[i]
	if !s.Reuse.All {
		s.Branches[i].PlanKey = "" // it hangs on what is free and coloured elsewhere, too
	}
	s.Kept(s.Branches[i].Said)
}

// components lists what runs through each branch: units first, then single
// wires, in file order.
func components(s *sheet.Sheet) [][]string {
	out := make([][]string, len(s.H.Branches))
	for i, u := range s.Units {
		if u.HasPath {
			for _, b := range u.Path {
				out[b] = append(out[b], s.H.Units[i].ID)
			}
		}
	}
	for i, w := range s.Wires {
		if _, in := s.Index.UnitOf[s.H.Wires[i].ID]; in || !w.HasPath {
			continue
		}
		for _, b := range w.Path {
			out[b] = append(out[b], s.H.Wires[i].ID)
		}
	}
	return out
}

func allKnown(s *sheet.Sheet, layers []model.Layer) bool {
	for _, l := range layers {
		for _, id := range l.Of {
			if !s.Dia(id).Known() {
				return false
			}
		}
	}
	return true
}

// layable says what keeps a lay-up from being drawn at all: a centre of nothing,
// or a layer of nothing but filler whose size is not given.
func layable(s *sheet.Sheet, i int, layers []model.Layer) bool {
	id := s.H.Branches[i].ID
	for k, l := range layers {
		switch {
		case len(l.Of) == 0 && l.Fillers.V > 0 && l.FillerMM.V <= 0:
			s.Say(sheet.Stop, "layer.filler", id, sheet.Capital(model.LayerName(k))+" is all filler: give its filler_mm")
			return false
		case len(l.Of) == 0 && l.Fillers.V == 0:
			s.Say(sheet.Stop, "layer.empty", id,
				sheet.Capital(model.LayerName(k))+" is empty: move a piece into it, or take it out of the file")
			return false
		}
	}
	return true
}

// LayersOf is the lay-up the file gives, or nil.
func LayersOf(s *sheet.Sheet, i int) []model.Layer {
	for _, l := range s.H.Branches[i].Layers {
		if len(l.Of) > 0 || l.Fillers.V > 0 {
			return s.H.Branches[i].Layers
		}
	}
	return nil
}

// shortRun is the length below which five or six components need no twist.
const shortRun unit.Millimetre = 75

// makeOf is how a branch is made: as given; several layers are laid; one
// component runs straight, up to four are twisted, five or six twisted or on a
// short run straight, from laid_from on they are laid.
func makeOf(s *sheet.Sheet, i int, layers []model.Layer, known packs) model.Make {
	b := &s.H.Branches[i]
	n := len(s.Branches[i].Components)
	switch {
	case len(layers) > 1:
		return model.MakeLaid
	case b.Make.V != "":
		return b.Make.V
	case n <= 1:
		return model.MakeStraight
	case n >= s.Limits.LaidFrom:
		return model.MakeLaid
	case n < 5:
		return model.MakeTwisted
	}
	var d []unit.Millimetre
	for _, id := range s.Branches[i].Components {
		d = append(d, s.Dia(id).Nominal)
	}
	if !b.Measured() {
		return model.MakeTwisted // as most are: it may turn out to be short
	}
	if b.LengthMM < shortRun || b.LengthMM < 2*unit.Millimetre(s.Limits.LayRatio)*known.of(d).Over {
		return model.MakeStraight
	}
	return model.MakeTwisted
}

// layBranch works a lay-up out, or takes the prior's where nothing it rests on changed.
func layBranch(s *sheet.Sheet, i int, layers []model.Layer, prior *sheet.Sheet, known packs) {
	out := &s.Branches[i]
	ranks := RanksOf(s, i)
	out.Key = key(s, i, layers, ranks)
	if prior != nil && i < len(prior.Branches) && prior.Branches[i].Key == out.Key {
		old := prior.Branches[i]
		out.Layers, out.OverMM, out.OverMinMM, out.OverMaxMM = old.Layers, old.Predicted.Over, old.Predicted.Least, old.Predicted.Most
		out.TapeMM, out.TapeMinMM, out.LaidMM, out.Buried, out.Rank = old.Predicted.Tape, old.Predicted.TapeLeast, old.LaidMM, old.Buried,
			ranks.Depth
		learn(s, i)
		return
	}
	out.Rank = ranks.Depth
	if out.Make != model.MakeLaid {
		layGroup(s, i, layers, known)
	} else {
		layRings(s, i, layers, ranks)
	}
	turns(s, i)
	out.Buried = buried(out.Layers)
	learn(s, i)
}

// turns fills in laid length and turns: lay stops at the zone of a breakout and
// one diameter before it.
func turns(s *sheet.Sheet, i int) {
	b, out := &s.H.Branches[i], &s.Branches[i]
	out.LaidMM, _ = cut.LaidLength(b.LengthMM, Zones(s, i), out.OverMM)
	for k := range out.Layers {
		if l := &out.Layers[k]; l.LayMM > 0 {
			l.Turns = unit.Ratio(out.LaidMM / l.LayMM)
		}
	}
}

// Zones are the zone lengths at those ends of a branch that are breakouts.
func Zones(s *sheet.Sheet, i int) []unit.Millimetre {
	var z []unit.Millimetre
	for _, end := range []string{s.H.Branches[i].From, s.H.Branches[i].To} {
		if k, ok := s.Index.Breakout[end]; ok {
			z = append(z, s.H.Breakouts[k].ZoneMM.Or(s.Limits.ZoneMM))
		}
	}
	return z
}

// layGroup twists or runs straight what has no core.
func layGroup(s *sheet.Sheet, i int, layers []model.Layer, known packs) {
	out := &s.Branches[i]
	ids := slices.Clone(layers[0].Of)
	l := sheet.Layer{Hand: model.HandStraight, Loss: 1, Closes: true, Gap: 1}
	nom, lo, hi := diameters(s, ids, 0, 0)
	g := known.of(nom)
	l.OverMM, l.TapeMM = g.Over+layers[0].BindMM.V, g.Tape+layers[0].BindMM.V
	if out.Make == model.MakeTwisted && len(ids) > 1 {
		l.Hand = outer(s, i)
		if l.LayMM = layers[0].LayMM.V; l.LayMM <= 0 {
			l.LayMM = unit.Millimetre(s.Limits.LayRatio) * l.OverMM
		}
	}
	members(s, &l, ids, 0, nom, g.X, g.Y)
	out.Layers = []sheet.Layer{l}
	out.OverMM, out.TapeMM = l.OverMM, l.TapeMM
	small, large := known.of(lo), known.of(hi)
	out.OverMinMM, out.TapeMinMM = small.Over+layers[0].BindMM.V, small.Tape+layers[0].BindMM.V
	out.OverMaxMM = large.Over + layers[0].BindMM.V
}

// diameters of components and fillers, nominal, small and large. A filler with
// the diameter of a component of its layer is white wire off the same reel and
// shares its band; another size is taken as given.
func diameters(s *sheet.Sheet, ids []string, fillers int, fillerMM unit.Millimetre) (nom, lo, hi []unit.Millimetre) {
	f := sheet.Dia{Nominal: fillerMM, Min: fillerMM, Max: fillerMM}
	for _, id := range ids {
		d := s.Dia(id)
		nom, lo, hi = append(nom, d.Nominal), append(lo, d.Min), append(hi, d.Max)
		if math.Abs(float64(d.Nominal-fillerMM)) < float64(sheet.SameSize) {
			f = d
		}
	}
	for range fillers {
		nom, lo, hi = append(nom, f.Nominal), append(lo, f.Min), append(hi, f.Max)
	}
	return nom, lo, hi
}

// members fills a layer's members in; fillers come after ids in d.
func members(s *sheet.Sheet, l *sheet.Layer, ids []string, fillers int, d []unit.Millimetre, x, y []unit.Millimetre) {
	all := make([]sheet.Member, len(d))
	top := 0.0
	for k := range d {
		m := sheet.Member{ID: "filler", Kind: sheet.OfFiller, D: d[k], X: x[k], Y: y[k], Loss: 1}
		if k < len(ids) {
			m.ID = ids[k]
			m.Kind = kindOf(s, m.ID)
		}
		if m.Kind == sheet.OfSpare {
			l.Spares++
		}
		R := math.Hypot(float64(x[k]), float64(y[k]))
		top = math.Max(top, R)
		m.Loss = lay.TakeUp(unit.Millimetre(R), l.LayMM)
		all[k] = m
	}
	l.Loss = lay.TakeUp(unit.Millimetre(top), l.LayMM)
	l.LayDeg = lay.LayAngle(unit.Millimetre(top), l.LayMM)
	l.Fillers = fillers
	l.Members = clockwise(all)
}

// clockwise is the members of a centre in the order in which they lie, seen from the from end: the first at its place, then
// clockwise; one in the very middle before them.
func clockwise(members []sheet.Member) []sheet.Member {
	turn := func(m sheet.Member) float64 { return math.Mod(math.Atan2(float64(m.X), float64(m.Y))/(2*math.Pi)+1, 1) }
	middle := func(m sheet.Member) bool { return math.Hypot(float64(m.X), float64(m.Y)) < 1e-6 }
	first := slices.IndexFunc(members, func(m sheet.Member) bool { return !middle(m) })
	if first < 0 {
		return members
	}
	from := turn(members[first])
	after := func(m sheet.Member) float64 {
		if middle(m) {
			return -1
		}
		t := math.Mod(turn(m)-from+1, 1)
		if t > 1-1e-6 {
			t = 0
		}
		return t
	}
	slices.SortStableFunc(members, func(a, b sheet.Member) int { return cmp.Compare(after(a), after(b)) })
	return members
}

func kindOf(s *sheet.Sheet, id string) sheet.Kind {
	kind := sheet.OfWire
	switch c, ok := s.Index.Component(id); {
	case ok && c.Unit:
		kind = sheet.OfUnit
	case ok && s.H.Wires[c.At].Role.V == model.RoleSpare:
		kind = sheet.OfSpare
	}
	return kind
}

func outer(s *sheet.Sheet, i int) model.Hand { return s.H.Branches[i].Outer.Or(s.Limits.Outer) }

// key is everything a bundle is computed from, as bytes.
func key(s *sheet.Sheet, i int, layers []model.Layer, r Ranks) string {
	b, out := &s.H.Branches[i], &s.Branches[i]
	var buf []byte
	num := func(v float64) { buf = binary.LittleEndian.AppendUint64(buf, math.Float64bits(v)) }
	text := func(t string) { buf = append(append(buf, t...), 0) }
	text(string(out.Make))
	text(string(outer(s, i)))
	num(float64(b.LengthMM))
	num(float64(s.Limits.LayRatio))
	num(float64(s.Limits.LiftMax))
	for _, z := range Zones(s, i) {
		num(float64(z))
	}
	for _, l := range layers {
		text("|")
		num(float64(l.Fillers.V))
		num(float64(l.FillerMM.V))
		num(float64(l.BindMM.V))
		text(l.BindPart.V)
		num(float64(l.LayMM.V))
		for _, id := range l.Of {
			text(id)
			d := s.Dia(id)
			num(float64(d.Nominal))
			num(float64(d.Min))
			num(float64(d.Max))
			buf = append(buf, byte(kindOf(s, id)))
			num(float64(r.Way[id].Tail))
			num(float64(r.Way[id].Cavity))
			text(Looks(s, id))
			buf = strconv.AppendBool(append(buf, byte(kinOf(s, id))), r.apart)
			num(float64(r.Depth[id]))
		}
	}
	return string(buf)
}
