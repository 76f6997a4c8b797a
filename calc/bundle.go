package calc

import (
	"encoding/binary"
	"math"
	"slices"
	"strings"

	"contralay/calc/cut"
	"contralay/calc/lay"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// layBranches lays every branch: what runs through it, how it is made, and how
// thick that becomes at nominal and at both ends of the wire tolerance.
func (s *Sheet) layBranches(prior *Sheet) {
	s.Branches = make([]Branch, len(s.H.Branches))
	var comps [][]string
	if s.same.branches == nil || slices.Contains(s.same.branches, false) {
		comps = s.components()
	}
	for i := range s.H.Branches {
		if s.same.branch(i) {
			s.keepBranch(i)
			continue
		}
		b := &s.H.Branches[i]
		out := &s.Branches[i]
		mark := len(s.Snags)
		out.Components = comps[i]
		out.Ambient = b.AmbientC.Or(s.Limits.AmbientC)
		out.Standing = catalogue.House
		known := true
		for _, id := range out.Components {
			d := s.dia(id)
			known = known && d.Known()
			out.Standing = catalogue.Weakest(out.Standing, d.Standing)
		}
		s.sayMissing(i)
		out.said = s.since(mark)
		if len(out.Components) == 0 && len(b.Layers) == 0 {
			out.Make = "straight"
			s.say(Warn, "branch.empty", b.ID, "no wire runs through it")
			out.said = s.since(mark)
			continue
		}
		plan := s.layersOf(i)
		out.Make = s.makeOf(i, plan)
		if plan == nil {
			out.Proposed = true
			if out.Make == "laid" {
				if o, ok := s.Proposals[s.PlanKey(i)].Best(); ok {
					plan = o.Layers
					s.sayRelaxed(i, o)
				} else {
					out.Waiting = known
				}
			} else {
				plan = []model.Layer{{Of: out.Components}}
			}
		}
		if !known || out.Waiting || !s.allKnown(plan) || !s.layable(i, plan) {
			out.said = s.since(mark)
			continue
		}
		out.As = plan
		s.lay(i, plan, prior)
		s.bend(i)
		s.sayLayers(i)
		s.sayFiller(i)
		out.said = s.since(mark)
	}
}

// keepBranch takes a branch over from the prior sheet as it lies.
func (s *Sheet) keepBranch(i int) {
	s.Branches[i] = s.same.prior.Branches[i]
	if !s.same.all {
		s.Branches[i].planKey = "" // it hangs on what is free and coloured elsewhere, too
	}
	s.kept(s.Branches[i].said)
}

// components lists what runs through each branch: units first, then single
// wires, in file order.
func (s *Sheet) components() [][]string {
	out := make([][]string, len(s.H.Branches))
	for i, u := range s.Units {
		if u.HasPath {
			for _, b := range u.Path {
				out[b] = append(out[b], s.H.Units[i].ID)
			}
		}
	}
	for i, w := range s.Wires {
		if _, in := s.X.UnitOf[s.H.Wires[i].ID]; in || !w.HasPath {
			continue
		}
		for _, b := range w.Path {
			out[b] = append(out[b], s.H.Wires[i].ID)
		}
	}
	return out
}

// dia is the diameter of a component by id.
func (s *Sheet) dia(id string) Dia {
	c, ok := s.X.Component(id)
	switch {
	case !ok:
		return Dia{}
	case c.Unit:
		return s.Units[c.At].Dia
	}
	return s.Wires[c.At].Dia
}

func (s *Sheet) allKnown(layers []model.Layer) bool {
	for _, l := range layers {
		for _, id := range l.Of {
			if !s.dia(id).Known() {
				return false
			}
		}
	}
	return true
}

// layable says what keeps a lay-up from being drawn at all: a centre of nothing,
// or a layer of nothing but filler whose size is not given.
func (s *Sheet) layable(i int, layers []model.Layer) bool {
	id := s.H.Branches[i].ID
	for k, l := range layers {
		switch {
		case len(l.Of) == 0 && l.Fillers.V > 0 && l.FillerMM.V <= 0:
			s.say(Stop, "layer.filler", id, capital(model.LayerName(k))+" is all filler: give its filler_mm")
			return false
		case len(l.Of) == 0 && l.Fillers.V == 0:
			s.say(Stop, "layer.empty", id, model.LayerName(k)+" holds nothing: move something into it, or take it out of the file")
			return false
		}
	}
	return true
}

func capital(s string) string { return strings.ToUpper(s[:1]) + s[1:] }

// layersOf is the lay-up the file gives, or nil.
func (s *Sheet) layersOf(i int) []model.Layer {
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
func (s *Sheet) makeOf(i int, layers []model.Layer) string {
	b := &s.H.Branches[i]
	n := len(s.Branches[i].Components)
	switch {
	case len(layers) > 1:
		return "laid"
	case b.Make.V != "":
		return b.Make.V
	case n <= 1:
		return "straight"
	case n >= s.Limits.LaidFrom:
		return "laid"
	case n < 5:
		return "twisted"
	}
	var d []unit.Millimetre
	for _, id := range s.Branches[i].Components {
		d = append(d, s.dia(id).Nominal)
	}
	if b.LengthMM < shortRun || b.LengthMM < 2*unit.Millimetre(s.Limits.LayRatio)*lay.Pack(d).Over {
		return "straight"
	}
	return "twisted"
}

// lay works a lay-up out, or takes the prior's where nothing it rests on changed.
func (s *Sheet) lay(i int, layers []model.Layer, prior *Sheet) {
	out := &s.Branches[i]
	ranks := s.ranks(i)
	out.key = s.key(i, layers, ranks)
	if prior != nil && i < len(prior.Branches) && prior.Branches[i].key == out.key {
		old := prior.Branches[i]
		out.Layers, out.OverMM, out.OverMinMM, out.OverMaxMM = old.Layers, old.raw.over, old.raw.least, old.raw.most
		out.TapeMM, out.TapeMinMM, out.LaidMM, out.Buried, out.rank = old.raw.tape, old.raw.tapeLeast, old.LaidMM, old.Buried, ranks.depth
		s.learn(i)
		return
	}
	out.rank = ranks.depth
	if out.Make != "laid" {
		s.layGroup(i, layers)
	} else {
		s.layRings(i, layers, ranks)
	}
	s.turns(i)
	out.Buried = buried(out.Layers)
	s.learn(i)
}

// turns fills in laid length and turns: lay stops at the zone of a breakout and
// one diameter before it.
func (s *Sheet) turns(i int) {
	b, out := &s.H.Branches[i], &s.Branches[i]
	out.LaidMM, _ = cut.LaidLength(b.LengthMM, s.zones(i), out.OverMM)
	for k := range out.Layers {
		if l := &out.Layers[k]; l.LayMM > 0 {
			l.Turns = unit.Ratio(out.LaidMM / l.LayMM)
		}
	}
}

// zones are the zone lengths at those ends of a branch that are breakouts.
func (s *Sheet) zones(i int) []unit.Millimetre {
	var z []unit.Millimetre
	for _, end := range []string{s.H.Branches[i].From, s.H.Branches[i].To} {
		if k, ok := s.X.Breakout[end]; ok {
			z = append(z, s.H.Breakouts[k].ZoneMM.Or(s.Limits.ZoneMM))
		}
	}
	return z
}

// layGroup twists or runs straight what has no core.
func (s *Sheet) layGroup(i int, layers []model.Layer) {
	out := &s.Branches[i]
	ids := slices.Clone(layers[0].Of)
	l := Layer{Hand: "straight", Loss: 1, Closes: true, Gap: 1}
	nom, lo, hi := s.diameters(ids, 0, 0)
	g := lay.Pack(nom)
	l.OverMM, l.TapeMM = g.Over+layers[0].BindMM.V, g.Tape+layers[0].BindMM.V
	if out.Make == "twisted" && len(ids) > 1 {
		l.Hand = s.outer(i)
		if l.LayMM = layers[0].LayMM.V; l.LayMM <= 0 {
			l.LayMM = unit.Millimetre(s.Limits.LayRatio) * l.OverMM
		}
	}
	s.members(&l, ids, 0, nom, g.X, g.Y)
	out.Layers = []Layer{l}
	out.OverMM, out.TapeMM = l.OverMM, l.TapeMM
	small, large := lay.Pack(lo), lay.Pack(hi)
	out.OverMinMM, out.TapeMinMM = small.Over+layers[0].BindMM.V, small.Tape+layers[0].BindMM.V
	out.OverMaxMM = large.Over + layers[0].BindMM.V
}

// diameters of components and fillers, nominal, small and large. A filler with
// the diameter of a component of its layer is white wire off the same reel and
// shares its band; another size is taken as given.
func (s *Sheet) diameters(ids []string, fillers int, fillerMM unit.Millimetre) (nom, lo, hi []unit.Millimetre) {
	f := Dia{Nominal: fillerMM, Min: fillerMM, Max: fillerMM}
	for _, id := range ids {
		d := s.dia(id)
		nom, lo, hi = append(nom, d.Nominal), append(lo, d.Min), append(hi, d.Max)
		if math.Abs(float64(d.Nominal-fillerMM)) < float64(SameSize) {
			f = d
		}
	}
	for range fillers {
		nom, lo, hi = append(nom, f.Nominal), append(lo, f.Min), append(hi, f.Max)
	}
	return nom, lo, hi
}

// members fills a layer's members in; fillers come after ids in d.
func (s *Sheet) members(l *Layer, ids []string, fillers int, d []unit.Millimetre, x, y []unit.Millimetre) {
	l.Members = make([]Member, 0, len(ids)+fillers)
	top := 0.0
	for k := range d {
		m := Member{ID: "filler", Kind: OfFiller, D: d[k], X: x[k], Y: y[k], Loss: 1}
		if k < len(ids) {
			m.ID = ids[k]
			m.Kind = s.kindOf(m.ID)
		}
		if m.Kind == OfSpare {
			l.Spares++
		}
		R := math.Hypot(float64(x[k]), float64(y[k]))
		top = math.Max(top, R)
		m.Loss = lay.TakeUp(unit.Millimetre(R), l.LayMM)
		l.Members = append(l.Members, m)
	}
	l.Loss = lay.TakeUp(unit.Millimetre(top), l.LayMM)
	l.LayDeg = lay.LayAngle(unit.Millimetre(top), l.LayMM)
	l.Fillers = fillers
}

func (s *Sheet) kindOf(id string) Kind {
	c, ok := s.X.Component(id)
	switch {
	case ok && c.Unit:
		return OfUnit
	case ok && s.H.Wires[c.At].Role.V == "spare":
		return OfSpare
	}
	return OfWire
}

func (s *Sheet) outer(i int) string { return s.H.Branches[i].Outer.Or(s.Limits.Outer) }

// OtherHand is the opposite hand of lay.
func OtherHand(h string) string {
	if h == "RH" {
		return "LH"
	}
	return "RH"
}

// key is everything a bundle is computed from, as bytes.
func (s *Sheet) key(i int, layers []model.Layer, r ranks) string {
	b, out := &s.H.Branches[i], &s.Branches[i]
	buf := make([]byte, 0, 64*len(out.Components)+256)
	num := func(v float64) { buf = binary.LittleEndian.AppendUint64(buf, math.Float64bits(v)) }
	text := func(t string) { buf = append(append(buf, t...), 0) }
	text(out.Make)
	text(s.outer(i))
	num(float64(b.LengthMM))
	num(float64(s.Limits.LayRatio))
	num(float64(s.Limits.LiftMax))
	for _, z := range s.zones(i) {
		num(float64(z))
	}
	for _, l := range layers {
		text("|")
		num(float64(l.Fillers.V))
		num(float64(l.FillerMM.V))
		num(float64(l.BindMM.V))
		num(float64(l.LayMM.V))
		for _, id := range l.Of {
			text(id)
			d := s.dia(id)
			num(float64(d.Nominal))
			num(float64(d.Min))
			num(float64(d.Max))
			buf = append(buf, byte(s.kindOf(id)))
			text(r.way[id])
			text(s.colour(id))
			buf = append(buf, byte(s.kin(id)), map[bool]byte{true: 1}[r.apart])
			num(float64(r.depth[id]))
		}
	}
	return string(buf)
}
