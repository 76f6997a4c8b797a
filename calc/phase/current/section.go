package current

import (
	"encoding/binary"
	"math"

	"contralay/calc/formula/heat"
	"contralay/calc/sheet"
	"contralay/model/unit"
)

// A branch as a section of heat: the circles as they are laid.

// Conductor is one wire in a section: where it stands in the harness and its layer, and
// which disc it is.
type Conductor struct{ Wire, Layer, Disc int }

// SectionOf is a branch as discs inside its sheath, and its conductors; false where a
// wire's resistance or the layers are not known. A spare of no wire yet and a filler are
// solid; a unit in a jacket is a disc that holds its wires.
func SectionOf(s *sheet.Sheet, i int) (heat.Section, []Conductor, bool) {
	out := &s.Branches[i]
	sec := heat.Section{Ambient: out.Ambient, Pressure: heat.Pressure(unit.Millimetre(s.Limits.AltitudeM * 1000)), InsideMM: out.OverMM}
	if v := out.Sheath.Verdict; out.Sheath.Tube.Set && v.Wraps {
		sec.OutsideMM = v.OverMM
	}
	var wires []Conductor
	for layer := range out.Layers {
		for _, m := range out.Layers[layer].Members {
			c, ok := s.Index.Component(m.ID)
			switch {
			case !ok || m.D <= 0:
				sec.Discs = append(sec.Discs, heat.Disc{X: m.X, Y: m.Y, OverMM: m.D})
			case c.Unit:
				if !addUnit(s, &sec, &wires, m, layer, c.At) {
					return sec, nil, false
				}
			default:
				d, known := discOf(s, c.At, m.Loss)
				if !known {
					return sec, nil, false
				}
				d.X, d.Y = m.X, m.Y
				wires = append(wires, Conductor{c.At, layer, len(sec.Discs)})
				sec.Discs = append(sec.Discs, d)
			}
		}
	}
	return sec, wires, len(wires) > 0
}

// discOf is a wire as a disc that is loss times as long as the branch.
func discOf(s *sheet.Sheet, k int, loss unit.Ratio) (heat.Disc, bool) {
	w := &s.Wires[k]
	d := w.Dia.Nominal
	return heat.Disc{OverMM: d, CoreMM: min(sheet.ConductorOf(w.Entry), d*0.95), Ohm: w.Entry.OhmPerKm * unit.OhmPerKilometre(loss),
		Amps: w.Heats, Rated: w.Entry.RatedC}, w.Known && w.Entry.OhmPerKm > 0 && d > 0
}

// addUnit adds a unit: its jacket, where it is thicker than its wires made up, and its
// wires on a circle inside, the first away from the axis of the bundle.
func addUnit(s *sheet.Sheet, sec *heat.Section, wires *[]Conductor, m sheet.Member, layer, u int) bool {
	var ids []int
	thickest := unit.Millimetre(0)
	for _, id := range s.H.Units[u].Wires {
		if k, ok := s.Index.Wire[id]; ok {
			ids, thickest = append(ids, k), max(thickest, s.Wires[k].Dia.Nominal)
		}
	}
	if len(ids) == 0 {
		sec.Discs = append(sec.Discs, heat.Disc{X: m.X, Y: m.Y, OverMM: m.D})
		return true
	}
	radius := unit.Millimetre(0) // of the circle of their axes
	if len(ids) > 1 {
		radius = thickest / 2 / unit.Millimetre(math.Sin(math.Pi/float64(len(ids))))
	}
	bare, in := 2*radius+thickest, 0
	if m.D > bare*1.02 {
		sec.Discs = append(sec.Discs, heat.Disc{X: m.X, Y: m.Y, OverMM: m.D, CoreMM: bare})
		in = len(sec.Discs)
	}
	outward := math.Atan2(float64(m.Y), float64(m.X))
	for n, k := range ids {
		d, known := discOf(s, k, m.Loss*s.Units[u].Loss)
		if !known {
			return false
		}
		turn := outward + 2*math.Pi*float64(n)/float64(len(ids))
		d.In = in
		d.X, d.Y = m.X+radius*unit.Millimetre(math.Cos(turn)), m.Y+radius*unit.Millimetre(math.Sin(turn))
		*wires = append(*wires, Conductor{k, layer, len(sec.Discs)})
		sec.Discs = append(sec.Discs, d)
	}
	return true
}

// sectionKeys are everything that a section's rays rest on, and everything that its heat
// does, as bytes.
func sectionKeys(s *sheet.Sheet, sec heat.Section) (shape, all string) {
	buf := make([]byte, 0, 80*len(sec.Discs)+64)
	num := func(v float64) { buf = binary.LittleEndian.AppendUint64(buf, math.Float64bits(v)) }
	num(float64(sec.InsideMM))
	num(float64(sec.OutsideMM))
	for _, d := range sec.Discs {
		num(float64(d.X))
		num(float64(d.Y))
		num(float64(d.OverMM))
		num(float64(d.CoreMM))
		num(float64(d.In))
	}
	shape = string(buf)
	num(float64(sec.Ambient))
	num(sec.Pressure)
	num(float64(s.Limits.BundleMargin))
	for _, d := range sec.Discs {
		num(float64(d.Ohm))
		num(float64(d.Amps))
		num(float64(d.Rated))
	}
	return shape, string(buf)
}

// lone keeps what a wire may carry alone in still air: many are alike.
type lone map[loneWire]unit.Ampere

type loneWire struct {
	d, conductor   unit.Millimetre
	ohm            unit.OhmPerKilometre
	ambient, rated unit.Celsius
}

// HeatIn is how a limit is called that the heat of a branch sets.
func HeatIn(branch string) string { return "heat in " + branch }

// AloneIn is how a limit is called that a wire has alone in the air of a branch.
func AloneIn(branch string) string { return "the wire alone in the air of " + branch }

// limit is the current that brings a wire to its rating when it runs alone, bare, in the
// air of a branch, by the shop's margin: no bundle of it may carry more.
func (l lone) limit(s *sheet.Sheet, k, b int) unit.Ampere {
	d, _ := discOf(s, k, 1)
	key := loneWire{d.OverMM, d.CoreMM, d.Ohm, s.Branches[b].Ambient, d.Rated}
	a, met := l[key]
	if !met {
		a = AloneAmps(s, k, b)
		l[key] = a
	}
	return a
}

// AloneAmps is that limit worked out.
func AloneAmps(s *sheet.Sheet, k, b int) unit.Ampere {
	d, known := discOf(s, k, 1)
	if !known {
		return 0
	}
	return unit.Ampere(s.Limits.BundleMargin) * heat.Alone(d.OverMM, d.CoreMM, d.Ohm, s.Branches[b].Ambient, d.Rated,
		heat.Pressure(unit.Millimetre(s.Limits.AltitudeM*1000)))
}
