package wires

import (
	"fmt"

	"contralay/calc/formula/wire"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// MaxVolts is the highest supply this program rates; above it stands the work of
// licensed people under their own codes.
const MaxVolts unit.Volt = 60

// SizeWires finds what each wire is: the reel measured on this job, else the
// catalogue. All wires of a reel share its error, so the band is the tolerance
// of the specification, all small or all large.
func SizeWires(s *sheet.Sheet) {
	if s.H.Head.SupplyV.V > MaxVolts {
		s.Say(sheet.Stop, "supply", "harness", fmt.Sprintf("The supply is %s V: this sheet rates nothing above %s V DC",
			unit.Fixed(s.H.Head.SupplyV.V, 0), unit.Fixed(MaxVolts, 0)))
	}
	if s.Limits.LayRatio <= 0 {
		s.Say(sheet.Stop, "lay.ratio", "rules", "lay_ratio must be more than 0; 8 to 16 is usual")
	}
	s.Wires = make([]sheet.Wire, len(s.H.Wires))
	for i := range s.H.Wires {
		w, out := &s.H.Wires[i], &s.Wires[i]
		if s.Reuse.Wire(i) {
			if old := &s.Reuse.Prior.Wires[i]; old.Known && old.Dia.Known() {
				out.Entry, out.Known, out.Dia, out.GramPerM = old.Entry, true, old.Dia, old.GramPerM
				continue
			}
		}
		out.Entry, out.Known = s.Cat.Wire(w.Spec, w.Size)
		if out.Known {
			e := out.Entry
			out.Dia = sheet.Dia{Nominal: e.OverMM, Min: e.OverMM - e.TolMM, Max: e.OverMM + e.TolMM,
				Origin: catalogue.Origin{Source: e.Source, Standing: overStanding(e)}}
			out.GramPerM = e.GramPerM
			if out.GramPerM == 0 {
				out.GramPerM, _ = wire.EstimateMass(e.AreaMM2, e.ConductorMM, e.OverMM, e.InsulationDensity)
			}
		}
		if r, ok := Reel(s, w.Spec, w.Size); ok {
			out.Dia = sheet.Dia{Nominal: r.OverMM, Min: r.OverMM, Max: r.OverMM,
				Origin: catalogue.Origin{Source: "measured on this job", Standing: catalogue.House}}
		}
		if out.Dia.Known() && !out.Known {
			s.Say(sheet.Warn, "wire.spec", w.ID, fmt.Sprintf("%s size %s is in no catalogue, so its mass and voltage drop are not known",
				w.Spec,
				w.Size))
		}
		switch {
		case out.Dia.Known():
		case w.Size == "":
			s.Say(sheet.Stop, "wire.size", w.ID, "It has no size: give it one")
		default:
			s.Say(sheet.Stop, "wire.size", w.ID,
				fmt.Sprintf("%s size %s is in no catalogue: put it into the shop's catalogue, or measure the reel", w.Spec, w.Size))
		}
	}
}

func overStanding(e catalogue.Wire) catalogue.Standing {
	if e.OverStanding != "" {
		return e.OverStanding
	}
	return e.Standing
}

// Reel is what was measured of the wire on a reel; false where nothing was.
func Reel(s *sheet.Sheet, spec, size string) (model.Reel, bool) {
	for _, r := range s.H.Reels {
		if r.Spec == spec && catalogue.CanonicalSize(r.Size) == catalogue.CanonicalSize(size) {
			return r, true
		}
	}
	return model.Reel{}, false
}

// SizeUnits finds what each unit is: as given, else made up from its wires.
func SizeUnits(s *sheet.Sheet) {
	s.Units = make([]sheet.Unit, len(s.H.Units))
	for i := range s.H.Units {
		u, out := &s.H.Units[i], &s.Units[i]
		out.Loss = 1
		if len(u.Wires) == 0 {
			s.Say(sheet.Stop, "unit.build", u.ID, "It has no wires: name them")
			continue
		}
		var nom, lo, hi []unit.Millimetre
		standing := catalogue.Memory // braid and jacket, and the 2·D forms, are from memory
		for _, id := range u.Wires {
			if k, ok := s.Index.Wire[id]; ok && s.Wires[k].Dia.Known() {
				d := s.Wires[k].Dia
				nom, lo, hi = append(nom, d.Nominal), append(lo, d.Min), append(hi, d.Max)
			}
		}
		m, ok := wire.MakeUp(nom, u.Shield.V)
		if ok {
			small, _ := wire.MakeUp(lo, u.Shield.V)
			large, _ := wire.MakeUp(hi, u.Shield.V)
			out.Loss, out.LayMM, out.BareMM = m.LayLoss, m.LayMM, m.BareMM
			out.Dia = sheet.Dia{Nominal: m.OverMM, Min: small.OverMM, Max: large.OverMM,
				Origin: catalogue.Origin{Source: "computed from its wires", Standing: standing}}
		}
		if u.OverMM.V > 0 {
			out.Dia = sheet.Dia{Nominal: u.OverMM.V, Min: u.OverMM.V, Max: u.OverMM.V,
				Origin: catalogue.Origin{Source: "given in the file", Standing: catalogue.House}}
		}
		if want := unitCount(u.Build.V); want > 0 && len(u.Wires) != want {
			s.Say(sheet.Stop, "unit.build", u.ID, fmt.Sprintf("A %s has %d wires; this one has %d", u.Build.V, want, len(u.Wires)))
		}
		if !out.Dia.Known() {
			s.Say(sheet.Stop, "unit.size", u.ID,
				"Its diameter is not known: measure it and give over_mm, or make it of two to four known wires")
		}
	}
}

func unitCount(build model.UnitBuild) int {
	switch build {
	case model.BuildPair:
		return 2
	case model.BuildTriple:
		return 3
	case model.BuildQuad:
		return 4
	}
	return 0
}
