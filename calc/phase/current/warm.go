package current

import (
	"math"
	"slices"

	"contralay/calc/formula/heat"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
)

// warm balances the heat of a branch, or takes the prior's where nothing changed.
func warm(s *sheet.Sheet, i int, prior *sheet.Sheet) {
	out := &s.Branches[i]
	out.Warm = sheet.Warm{}
	if len(out.Layers) == 0 || out.OverMM <= 0 || s.Unrated {
		return
	}
	sec, wires, ok := SectionOf(s, i)
	if !ok {
		return
	}
	shape, key := sectionKeys(s, sec)
	w := sheet.Warm{Known: true, Key: key, Shape: shape}
	if prior != nil && i < len(prior.Branches) && prior.Branches[i].Warm.Known {
		was := &prior.Branches[i].Warm
		if was.Key == key {
			out.Warm = *was
			if !slices.EqualFunc(was.Wires, wires, func(a sheet.WarmWire, b Conductor) bool { return a.Wire == b.Wire }) {
				out.Warm.Wires = slices.Clone(was.Wires) // the same wires, which stand elsewhere in the file now
				for n := range wires {
					out.Warm.Wires[n].Wire = wires[n].Wire
				}
			}
			nameHottest(&out.Warm, s.H)
			return
		}
		if was.Shape == shape {
			w.Rays = was.Rays
		}
	}
	if w.Rays == nil {
		if w.Rays, ok = heat.Trace(sec); !ok {
			return
		}
	}
	r, ok := w.Rays.Solve(sec)
	if !ok {
		s.Say(sheet.Warn, "heat.none", s.H.Branches[i].ID, "no steady temperature below 600 C at these currents")
		out.Warm.Endless = bounded(s, sec, wires, w.Rays.Limits(sec))
		return
	}
	w.SurfaceC, w.UnderC, w.WattPerM = r.Surface, r.Under, r.Heat
	for n, d := range sec.Discs {
		if d.CoreMM <= 0 && (!w.FillerC.Set || r.Discs[n] > w.FillerC.V) {
			w.FillerC = model.Some(r.Discs[n])
		}
	}
	w.Wires = bounded(s, sec, wires, r.Limits(sec))
	for n, c := range wires {
		w.Wires[n].C = r.Discs[c.Disc]
	}
	nameHottest(&w, s.H)
	out.Warm = w
}

// bounded are the conductors of a section with what each may carry there.
func bounded(s *sheet.Sheet, sec heat.Section, wires []Conductor, limits []unit.Ampere) []sheet.WarmWire {
	out := make([]sheet.WarmWire, len(wires))
	for n, c := range wires {
		out[n] = sheet.WarmWire{Wire: c.Wire, Layer: c.Layer}
		if sec.Discs[c.Disc].Rated > 0 {
			out[n].Limit = model.Some(limits[c.Disc] * unit.Ampere(s.Limits.BundleMargin))
		}
	}
	return out
}

// nameHottest finds the hottest conductor; the first of equals.
func nameHottest(w *sheet.Warm, h *model.Harness) {
	w.HottestC = -math.MaxFloat64
	for _, c := range w.Wires {
		if c.C > w.HottestC {
			w.HottestC, w.Hottest = c.C, h.Wires[c.Wire].ID
		}
	}
}

// ConductorC is how warm the hottest conductor of a component gets in a branch; false
// where it has none or the heat is not known.
func ConductorC(s *sheet.Sheet, branch int, id string) (t unit.Celsius, ok bool) {
	for _, c := range s.Branches[branch].Warm.Wires {
		w := s.H.Wires[c.Wire].ID
		if u, in := s.Index.UnitOf[w]; in {
			w = s.H.Units[u].ID
		}
		if w == id && (!ok || c.C > t) {
			t, ok = c.C, true
		}
	}
	return t, ok
}
