package calc

import (
	"math"
	"slices"

	"contralay/calc/lay"
	"contralay/model"
	"contralay/model/unit"
)

// layRings lays centre and layers from the inside out. Three bundles run side by
// side: nominal, all wires small, all large; they keep the nominal order.
func (s *Sheet) layRings(i int, layers []model.Layer, r ranks) {
	out := &s.Branches[i]
	out.Layers = make([]Layer, 0, len(layers))
	var bed, bedLo, bedHi lay.Bed
	for k, ml := range layers {
		hand := s.outer(i)
		if (len(layers)-1-k)%2 == 1 {
			hand = OtherHand(hand)
		}
		l := Layer{Hand: hand, BedMM: bed.Tape, Closes: true, Gap: 1, Loss: 1}
		if k == 0 {
			s.layCentre(&l, ml, &bed, &bedLo, &bedHi)
		} else {
			s.layRing(&l, ml, r, &bed, &bedLo, &bedHi)
		}
		for m := range l.Members {
			l.Members[m].Leaves = r.depth[l.Members[m].ID]
		}
		out.Layers = append(out.Layers, l)
	}
	out.OverMM, out.TapeMM = bed.Crown, bed.Tape
	out.OverMinMM, out.OverMaxMM, out.TapeMinMM = bedLo.Crown, bedHi.Crown, bedLo.Tape
}

func (s *Sheet) layCentre(l *Layer, ml model.Layer, bed, bedLo, bedHi *lay.Bed) {
	ids := slices.Clone(ml.Of)
	l.FillerMM = s.fillerMM(ml, ids)
	extra := ml.Fillers.V
	if extra == 1 && s.isRod(ml) {
		extra = 0 // the rod in the middle of five, not a sixth component
	}
	nom, lo, hi := s.diameters(ids, extra, l.FillerMM)
	g := lay.Centre(nom)
	l.OverMM, l.TapeMM = g.Over+ml.BindMM.V, g.Tape+ml.BindMM.V
	if len(nom) == 1 {
		l.Hand = "straight"
	} else if l.LayMM = ml.LayMM.V; l.LayMM <= 0 {
		l.LayMM = unit.Millimetre(s.Limits.LayRatio) * l.OverMM
	}
	s.members(l, ids, extra, nom, g.X, g.Y)
	if g.Rod > 0 {
		l.Fillers, l.FillerMM = l.Fillers+1, g.Rod
		l.Members = append(l.Members, Member{ID: "filler", Kind: OfFiller, D: g.Rod, Loss: 1})
	}
	small, large := lay.Centre(lo), lay.Centre(hi)
	b := ml.BindMM.V
	*bed = lay.Bed{Crown: l.OverMM, Tape: l.TapeMM}
	*bedLo, *bedHi = lay.Bed{Crown: small.Over + b, Tape: small.Tape + b}, lay.Bed{Crown: large.Over + b, Tape: large.Tape + b}
}

// isRod reports whether a centre's one filler is the rod in the middle of five
// equal ones, rather than a sixth component.
func (s *Sheet) isRod(ml model.Layer) bool {
	if len(ml.Of) != 5 {
		return false
	}
	d := s.dia(ml.Of[0]).Nominal
	for _, id := range ml.Of {
		if s.dia(id).Nominal != d {
			return false
		}
	}
	const off = 0.05 // mm: a rod is bought to a tenth
	return !ml.FillerMM.Set || math.Abs(float64(ml.FillerMM.V-d*unit.Millimetre(lay.RodOfFive))) <= off
}

// fillerMM is the filler's diameter: as given, else the layer's smallest size.
func (s *Sheet) fillerMM(ml model.Layer, ids []string) unit.Millimetre {
	if ml.FillerMM.V > 0 {
		return ml.FillerMM.V
	}
	least := unit.Millimetre(0)
	for _, id := range ids {
		if d := s.dia(id).Nominal; least == 0 || d < least {
			least = d
		}
	}
	if ml.Fillers.V == 0 {
		return 0
	}
	return least
}

func (s *Sheet) layRing(l *Layer, ml model.Layer, r ranks, bed, bedLo, bedHi *lay.Bed) {
	how := lay.Laying{Ratio: s.Limits.LayRatio, Lay: ml.LayMM.V, Bind: ml.BindMM.V}
	l.FillerMM = s.fillerMM(ml, ml.Of)
	ids, fillerAt := s.order(ml, r, r.apart)
	nom, lo, hi := s.laidDiameters(ids, fillerAt, l.FillerMM)
	ring := lay.Lay(nom, *bed, how)
	if ring.Lift > s.Limits.LiftMax {
		if zz := lay.ZigZag(nom); lay.Closes(nom, *bed, how, s.Limits.LiftMax) {
			l.ZigZag = true
			ids, nom, lo, hi = permute(ids, zz), permute(nom, zz), permute(lo, zz), permute(hi, zz)
			ring = lay.Lay(nom, *bed, how)
		}
	}
	if t := s.tracer(ids); t > 0 {
		ids, nom, lo, hi = rotate(ids, t), rotate(nom, t), rotate(lo, t), rotate(hi, t)
		ring = lay.Lay(nom, *bed, how)
		l.Tracer = ids[0]
	} else if t == 0 {
		l.Tracer = ids[0]
	}
	s.place(l, ids, nom, ring)
	l.OverMM, l.TapeMM, l.LayMM, l.Lift, l.ProudMM, l.Gap, l.Closes = ring.Over, ring.Tape, ring.Lay, ring.Lift, ring.Proud, ring.Gap, ring.Closes
	s.room(l, nom, *bed, how)
	small, large := lay.Lay(lo, *bedLo, how), lay.Lay(hi, *bedHi, how)
	*bed = lay.Bed{Crown: ring.Over, Tape: ring.Tape}
	*bedLo, *bedHi = lay.Bed{Crown: small.Over, Tape: small.Tape}, lay.Bed{Crown: large.Over, Tape: large.Tape}
}

// place writes members where they lie: the first at the top, then clockwise as
// seen from the from end.
func (s *Sheet) place(l *Layer, ids []string, d []unit.Millimetre, ring lay.Ring) {
	l.Members = make([]Member, len(ids))
	for k, id := range ids {
		sin, cos := math.Sincos(float64(ring.Angles[k]))
		stand := ring.Radii[k]
		m := Member{ID: id, Kind: OfFiller, D: d[k], X: stand * unit.Millimetre(sin), Y: stand * unit.Millimetre(cos), Loss: lay.TakeUp(stand, ring.Lay)}
		if id == "filler" {
			l.Fillers++
		} else if m.Kind = s.kindOf(id); m.Kind == OfSpare {
			l.Spares++
		}
		l.Members[k] = m
	}
	l.Loss, l.LayDeg = ring.Loss, ring.Angle
	l.Beside = s.besides(ids)
}

// room counts places of the layer's smallest size, fillers not counted as a size.
func (s *Sheet) room(l *Layer, d []unit.Millimetre, bed lay.Bed, how lay.Laying) {
	size := unit.Millimetre(0)
	for k, m := range l.Members {
		if m.Kind != OfFiller && (size == 0 || d[k] < size) {
			size = d[k]
		}
	}
	if size == 0 {
		size = l.FillerMM
	}
	l.Room = lay.Room(d, size, bed, how, s.Limits.LiftMax)
	l.Takes = len(d) + l.Room
	if l.Room <= 0 {
		l.Room = 0
		l.Takes = lay.Takes(d, bed, how, s.Limits.LiftMax)
	}
}

func (s *Sheet) laidDiameters(ids []string, filler []bool, fillerMM unit.Millimetre) (nom, lo, hi []unit.Millimetre) {
	var real []string
	n := 0
	for k, id := range ids {
		if filler[k] {
			n++
		} else {
			real = append(real, id)
		}
	}
	a, b, c := s.diameters(real, n, fillerMM)
	r, f := 0, len(real)
	for k := range ids {
		j := r
		if filler[k] {
			j = f
			f++
		} else {
			r++
		}
		nom, lo, hi = append(nom, a[j]), append(lo, b[j]), append(hi, c[j])
	}
	return nom, lo, hi
}

// buried counts components with one further out that leaves later.
func buried(layers []Layer) int {
	n, deepest := 0, -1
	for k := len(layers) - 1; k >= 0; k-- {
		for _, m := range layers[k].Members {
			if m.Kind != OfFiller && m.Leaves < deepest {
				n++
			}
		}
		for _, m := range layers[k].Members {
			if m.Kind != OfFiller {
				deepest = max(deepest, m.Leaves)
			}
		}
	}
	return n
}
