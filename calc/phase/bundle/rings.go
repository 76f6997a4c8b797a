package bundle

import (
	"math"
	"slices"

	"contralay/calc/formula/lay"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
)

// layRings lays centre and layers from the inside out. Three bundles run side by
// side: nominal, all wires small, all large; they keep the nominal order.
func layRings(s *sheet.Sheet, i int, layers []model.Layer, r Ranks) {
	out := &s.Branches[i]
	out.Layers = make([]sheet.Layer, 0, len(layers))
	var bed, bedLo, bedHi lay.Bed
	for k, ml := range layers {
		hand := outer(s, i)
		if (len(layers)-1-k)%2 == 1 {
			hand = hand.Other()
		}
		l := sheet.Layer{Hand: hand, BedMM: bed.Tape, Closes: true, Gap: 1, Loss: 1}
		if k == 0 {
			layCentre(s, &l, ml, &bed, &bedLo, &bedHi)
			if len(layers) > 1 && ml.BindMM.V > 0 { // with nothing round it, tape is only a binder
				l.BuiltMM, l.BuiltOf = ml.BindMM.V, ml.BindPart.V
			}
		} else {
			layRing(s, &l, ml, r, &bed, &bedLo, &bedHi)
		}
		for m := range l.Members {
			l.Members[m].Leaves = r.Depth[l.Members[m].ID]
		}
		out.Layers = append(out.Layers, l)
	}
	out.OverMM, out.TapeMM = bed.Crown, bed.Tape
	out.OverMinMM, out.OverMaxMM, out.TapeMinMM = bedLo.Crown, bedHi.Crown, bedLo.Tape
}

func layCentre(s *sheet.Sheet, l *sheet.Layer, ml model.Layer, bed, bedLo, bedHi *lay.Bed) {
	ids := slices.Clone(ml.Of)
	l.FillerMM = fillerMM(s, ml, ids)
	extra := ml.Fillers.V
	if extra == 1 && isRod(s, ml) {
		extra = 0 // the rod in the middle of five, not a sixth component
	}
	nom, lo, hi := diameters(s, ids, extra, l.FillerMM)
	g := lay.Centre(nom)
	l.OverMM, l.TapeMM = g.Over+ml.BindMM.V, g.Tape+ml.BindMM.V
	if len(nom) == 1 {
		l.Hand = model.HandStraight
	} else if l.LayMM = ml.LayMM.V; l.LayMM <= 0 {
		l.LayMM = unit.Millimetre(s.Limits.LayRatio) * l.OverMM
	}
	members(s, l, ids, extra, nom, g.X, g.Y)
	if g.Rod > 0 {
		l.Fillers, l.FillerMM = l.Fillers+1, g.Rod
		l.Members = append(l.Members, sheet.Member{ID: "filler", Kind: sheet.OfFiller, D: g.Rod, Loss: 1})
	}
	small, large := lay.Centre(lo), lay.Centre(hi)
	b := ml.BindMM.V
	*bed = lay.Bed{Crown: l.OverMM, Tape: l.TapeMM}
	*bedLo, *bedHi = lay.Bed{Crown: small.Over + b, Tape: small.Tape + b}, lay.Bed{Crown: large.Over + b, Tape: large.Tape + b}
}

// isRod reports whether a centre's one filler is the rod in the middle of five
// equal ones, rather than a sixth component.
func isRod(s *sheet.Sheet, ml model.Layer) bool {
	if len(ml.Of) != 5 {
		return false
	}
	d := s.Dia(ml.Of[0]).Nominal
	for _, id := range ml.Of {
		if s.Dia(id).Nominal != d {
			return false
		}
	}
	const off = 0.05 // mm: a rod is bought to a tenth
	return !ml.FillerMM.Set || math.Abs(float64(ml.FillerMM.V-d*unit.Millimetre(lay.RodOfFive))) <= off
}

// fillerMM is the filler's diameter: as given, else the layer's smallest size.
func fillerMM(s *sheet.Sheet, ml model.Layer, ids []string) unit.Millimetre {
	if ml.FillerMM.V > 0 {
		return ml.FillerMM.V
	}
	least := unit.Millimetre(0)
	for _, id := range ids {
		if d := s.Dia(id).Nominal; least == 0 || d < least {
			least = d
		}
	}
	if ml.Fillers.V == 0 {
		return 0
	}
	return least
}

func layRing(s *sheet.Sheet, l *sheet.Layer, ml model.Layer, r Ranks, bed, bedLo, bedHi *lay.Bed) {
	how := lay.Laying{Ratio: s.Limits.LayRatio, Lay: ml.LayMM.V, Bind: ml.BindMM.V}
	l.FillerMM = fillerMM(s, ml, ml.Of)
	ids, fillerAt := order(s, ml, r, r.apart)
	nom, lo, hi := laidDiameters(s, ids, fillerAt, l.FillerMM)
	ring := lay.Lay(nom, *bed, how)
	if ring.Lift > s.Limits.LiftMax {
		if zz := lay.ZigZag(nom); lay.Closes(nom, *bed, how, s.Limits.LiftMax) {
			l.ZigZag = true
			ids, nom, lo, hi = permute(ids, zz), permute(nom, zz), permute(lo, zz), permute(hi, zz)
			ring = lay.Lay(nom, *bed, how)
		}
	}
	if t := tracer(s, ids); t > 0 {
		ids, nom, lo, hi = rotate(ids, t), rotate(nom, t), rotate(lo, t), rotate(hi, t)
		ring = lay.Lay(nom, *bed, how)
		l.Tracer = ids[0]
	} else if t == 0 {
		l.Tracer = ids[0]
	}
	place(s, l, ids, nom, ring)
	l.OverMM, l.TapeMM, l.LayMM, l.Lift, l.ProudMM, l.Gap, l.Closes = ring.Over, ring.Tape, ring.Lay, ring.Lift, ring.Proud, ring.Gap,
		ring.Closes
	room(s, l, nom, *bed, how)
	small, large := lay.Lay(lo, *bedLo, how), lay.Lay(hi, *bedHi, how)
	*bed = lay.Bed{Crown: ring.Over, Tape: ring.Tape}
	*bedLo, *bedHi = lay.Bed{Crown: small.Over, Tape: small.Tape}, lay.Bed{Crown: large.Over, Tape: large.Tape}
}

// place writes members where they lie: the first at the top, then clockwise as
// seen from the from end.
func place(s *sheet.Sheet, l *sheet.Layer, ids []string, d []unit.Millimetre, ring lay.Ring) {
	l.Members = make([]sheet.Member, len(ids))
	for k, id := range ids {
		sin, cos := math.Sincos(float64(ring.Angles[k]))
		stand := ring.Radii[k]
		m := sheet.Member{ID: id, Kind: sheet.OfFiller, D: d[k], X: stand * unit.Millimetre(sin), Y: stand * unit.Millimetre(cos),
			Loss: lay.TakeUp(stand, ring.Lay)}
		if id == "filler" {
			l.Fillers++
		} else if m.Kind = kindOf(s, id); m.Kind == sheet.OfSpare {
			l.Spares++
		}
		l.Members[k] = m
	}
	l.Loss, l.LayDeg = ring.Loss, ring.Angle
	l.Beside = besides(s, ids)
}

// room counts places of the layer's smallest size, fillers not counted as a size.
func room(s *sheet.Sheet, l *sheet.Layer, d []unit.Millimetre, bed lay.Bed, how lay.Laying) {
	size := unit.Millimetre(0)
	for k, m := range l.Members {
		if m.Kind != sheet.OfFiller && (size == 0 || d[k] < size) {
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

func laidDiameters(s *sheet.Sheet, ids []string, filler []bool, fillerMM unit.Millimetre) (nom, lo, hi []unit.Millimetre) {
	var real []string
	n := 0
	for k, id := range ids {
		if filler[k] {
			n++
		} else {
			real = append(real, id)
		}
	}
	a, b, c := diameters(s, real, n, fillerMM)
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
func buried(layers []sheet.Layer) int {
	n, deepest := 0, -1
	for k := len(layers) - 1; k >= 0; k-- {
		for _, m := range layers[k].Members {
			if m.Kind != sheet.OfFiller && m.Leaves < deepest {
				n++
			}
		}
		for _, m := range layers[k].Members {
			if m.Kind != sheet.OfFiller {
				deepest = max(deepest, m.Leaves)
			}
		}
	}
	return n
}
