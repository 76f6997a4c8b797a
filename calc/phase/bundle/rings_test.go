package bundle_test

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/formula/lay"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
)

// relaid lays every layer of a branch once more, of what lies in it in its order, and holds the figures of the sheet against that:
// nominal, with
// all wires at their thinnest and with all at their thickest.
func relaid(t *testing.T, name string, s *sheet.Sheet, i int) {
	t.Helper()
	b := &s.Branches[i]
	near := func(what string, got, want float64) {
		t.Helper()
		if math.Abs(got-want) > 1e-9*(1+math.Abs(want)) {
			t.Errorf("%s, %s: %v, laid again %v", name, what, got, want)
		}
	}
	var bed, small, large lay.Bed
	for k := range b.Layers {
		l, as := &b.Layers[k], b.As[k]
		var nom, lo, hi []unit.Millimetre
		fillers, spares, rod := 0, 0, unit.Millimetre(0)
		most, least := 0.0, unit.Millimetre(0)
		for _, m := range l.Members {
			d := s.Dia(m.ID)
			switch m.Kind {
			case sheet.OfFiller:
				fillers++
				of := as.FillerMM.V // as given, else the smallest of its layer
				for _, o := range as.Of {
					if d := s.Dia(o).Nominal; !as.FillerMM.Set && (of == 0 || d < of) {
						of = d
					}
				}
				d = sheet.Dia{Nominal: of, Min: of, Max: of}
				for _, o := range as.Of { // of a wire's diameter it is a wire
					if math.Abs(float64(s.Dia(o).Nominal-of)) < float64(sheet.SameSize) {
						d = s.Dia(o)
					}
				}
				if k == 0 && b.Make == model.MakeLaid && m.X == 0 && m.Y == 0 && len(l.Members) == 6 {
					rod = m.D
					continue
				}
			case sheet.OfSpare:
				spares++
			}
			if m.Kind != sheet.OfFiller && (least == 0 || d.Nominal < least) {
				least = d.Nominal
			}
			if m.D != d.Nominal {
				t.Errorf("%s: %s is %v thick, want %v", name, m.ID, m.D, d.Nominal)
			}
			nom, lo, hi = append(nom, d.Nominal), append(lo, d.Min), append(hi, d.Max)
			far := math.Hypot(float64(m.X), float64(m.Y))
			most = max(most, far)
			near("what "+m.ID+" takes up", float64(m.Loss), float64(lay.TakeUp(unit.Millimetre(far), l.LayMM)))
		}
		if l.Fillers != fillers || l.Spares != spares {
			t.Errorf("%s, layer %d: %d fillers of %d, %d spares of %d", name, k, l.Fillers, fillers, l.Spares, spares)
		}
		near("the most it takes up", float64(l.Loss), float64(lay.TakeUp(unit.Millimetre(most), l.LayMM)))
		bind := as.BindMM.V
		if k == 0 {
			group := func(d []unit.Millimetre) lay.Group {
				if b.Make == model.MakeLaid {
					return lay.Centre(d)
				}
				return lay.Pack(d)
			}
			g, gl, gh := group(nom), group(lo), group(hi)
			near("the centre", float64(l.OverMM), float64(g.Over+bind))
			near("its tape", float64(l.TapeMM), float64(g.Tape+bind))
			if rod != g.Rod && b.Make == model.MakeLaid {
				t.Errorf("%s: a rod of %v, want %v", name, rod, g.Rod)
			}
			lays := unit.Millimetre(0)
			switch {
			case len(nom) < 2 || b.Make == model.MakeStraight:
			case as.LayMM.V > 0:
				lays = as.LayMM.V
			default:
				lays = unit.Millimetre(s.Limits.LayRatio) * (g.Over + bind)
			}
			near("its lay", float64(l.LayMM), float64(lays))
			bed = lay.Bed{Crown: g.Over + bind, Tape: g.Tape + bind}
			small, large = lay.Bed{Crown: gl.Over + bind, Tape: gl.Tape + bind}, lay.Bed{Crown: gh.Over + bind, Tape: gh.Tape + bind}
		} else {
			how := lay.Laying{Ratio: s.Limits.LayRatio, Lay: as.LayMM.V, Bind: bind}
			r := lay.Lay(nom, bed, how)
			for what, v := range map[string][2]float64{
				"over": {float64(l.OverMM), float64(r.Over)}, "tape": {float64(l.TapeMM), float64(r.Tape)}, "lay": {float64(l.LayMM),
					float64(r.Lay)},
				"lift": {float64(l.Lift), float64(r.Lift)}, "proud": {float64(l.ProudMM), float64(r.Proud)}, "gap": {float64(l.Gap),
					float64(r.Gap)},
				"bed": {float64(l.BedMM), float64(bed.Tape)}, "lay angle": {float64(l.LayDeg), float64(r.Angle)},
			} {
				near(fmt.Sprintf("%s of layer %d", what, k), v[0], v[1])
			}
			for n, m := range l.Members {
				sin, cos := math.Sincos(float64(r.Angles[n]))
				near("x of "+m.ID, float64(m.X), float64(r.Radii[n])*sin)
				near("y of "+m.ID, float64(m.Y), float64(r.Radii[n])*cos)
			}
			if least == 0 {
				least = l.FillerMM
			}
			room := 0
			for more := append(nom[:len(nom):len(nom)], least); lay.Closes(more, bed, how, s.Limits.LiftMax); more = append(more, least) {
				room++
			}
			if l.Closes != r.Closes || l.Room != room || room > 0 && l.Takes != len(nom)+room {
				t.Errorf("%s, layer %d: closes %v, room for %d, takes %d; laid again %v, room for %d", name, k, l.Closes, l.Room, l.Takes,
					r.Closes, room)
			}
			rl, rh := lay.Lay(lo, small, how), lay.Lay(hi, large, how)
			bed = lay.Bed{Crown: r.Over, Tape: r.Tape}
			small, large = lay.Bed{Crown: rl.Over, Tape: rl.Tape}, lay.Bed{Crown: rh.Over, Tape: rh.Tape}
		}
		if built := l.BuiltMM; k > 0 && built != 0 || k == 0 && (len(b.Layers) > 1) != (built == bind && built > 0) && bind > 0 {
			t.Errorf("%s, layer %d: built up by %v, tape of %v", name, k, built, bind)
		}
		want := s.H.Branches[i].Outer.Or(s.Limits.Outer)
		if (len(b.Layers)-1-k)%2 == 1 {
			want = want.Other()
		}
		if len(l.Members) == 1 && k == 0 || b.Make == model.MakeStraight {
			want = model.HandStraight
		}
		if l.Hand != want {
			t.Errorf("%s, layer %d turns %s, want %s", name, k, l.Hand, want)
		}
	}
	if len(b.Layers) == 0 || b.Learned.Correction.Of != "" {
		return
	}
	near("OD", float64(b.OverMM), float64(bed.Crown))
	near("tape", float64(b.TapeMM), float64(bed.Tape))
	near("least OD", float64(b.OverMinMM), float64(small.Crown))
	near("most OD", float64(b.OverMaxMM), float64(large.Crown))
	near("least tape", float64(b.TapeMinMM), float64(small.Tape))
}

// Layers as they are written, of one to five in the centre, with fillers, tape, lay lengths, spares and two sizes; twisted and straight
// ones.
func TestLayersRelaid(t *testing.T) {
	laid := 0
	try := func(name string, h *model.Harness) {
		s := calc.Build(h, calctest.Catalogue(t), nil)
		for i := range s.Branches {
			if len(s.Branches[i].Layers) > 0 {
				laid++
				relaid(t, name, s, i)
			}
		}
	}
	for centre := 1; centre <= 5; centre++ {
		for variant := range 7 {
			n := centre + 6 + centre
			h := calctest.Parse(t, calctest.OneSize(n, "22", "length_mm = 500.0\n"))
			var ids []string
			for k := range h.Wires {
				ids = append(ids, h.Wires[k].ID)
			}
			b := &h.Branches[0]
			b.Make = model.Some(model.MakeLaid)
			b.Layers = []model.Layer{{Of: ids[:centre]}, {Of: ids[centre:]}}
			switch variant {
			case 1:
				b.Layers[1].Fillers = model.Some(1)
			case 2:
				b.Layers[1].Fillers, b.Layers[1].FillerMM = model.Some(2), model.Some[unit.Millimetre](0.9)
			case 3:
				b.Layers[1].LayMM, b.Layers[1].BindMM, b.Layers[0].BindMM = model.Some[unit.Millimetre](70),
					model.Some[unit.Millimetre](0.1),
					model.Some[unit.Millimetre](0.2)
				b.Layers[0].LayMM = model.Some[unit.Millimetre](33)
			case 4:
				for k := range 3 {
					h.Wires[n-1-k].Size, h.Wires[k].Role = "20", model.Some(model.RoleSpare)
				}
				h.Wires[n-1].Role = model.Some(model.RoleSpare)
			case 5:
				b.Layers = []model.Layer{{Of: ids[:centre]}, {Of: ids[centre : centre+5]}, {Of: ids[centre+5:], Fillers: model.Some(3)}}
				b.Outer = model.Some(model.HandLeft)
			case 6:
				b.Layers[0].Fillers, b.Outer = model.Some(1), model.Some(model.HandRight)
			}
			try(fmt.Sprintf("%d in the centre, variant %d", centre, variant), h)
		}
	}
	for n := 1; n <= 7; n++ {
		for _, m := range []model.Make{model.MakeTwisted, model.MakeStraight} {
			h := calctest.Parse(t, calctest.OneSize(n, "22", "length_mm = 500.0\n"))
			h.Branches[0].Make = model.Some(m)
			h.Wires[0].Role = model.Some(model.RoleSpare)
			try(strings.Join([]string{fmt.Sprint(n), string(m)}, " "), h)
		}
	}
	for _, name := range []string{"demo.toml", "trunk.toml", "built-up.toml"} {
		try(name, calctest.Load(t, name))
	}
	if laid < 40 {
		t.Errorf("only %d are laid", laid)
	}
}
