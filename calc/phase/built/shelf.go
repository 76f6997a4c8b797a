package built

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"contralay/calc/phase/bundle"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// What a serial was begun with of the catalogue. An inspector expects the limits that a harness was begun by to
// stand until somebody with a name changes them: a figure that moves between the reading and the certificate
// makes a good layer bad. A builder who knows that the catalogue was wrong expects to build by the right figure.
// So a serial keeps what it was begun with, the sheet says once that the catalogue has another figure, and a
// person decides between the two; that is printed as a deviation.

// AboutCatalogue is a difference between the catalogue and what a serial was begun with.
const AboutCatalogue = "catalogue"

// Shelf is what the catalogue of a sheet has of every wire and every tube that the sheet is made of.
func Shelf(s *sheet.Sheet) []model.Shelved {
	var out []model.Shelved
	met := map[string]bool{}
	once := func(key string) bool {
		was := met[key]
		met[key] = true
		return !was
	}
	for k := range s.H.Wires {
		w := &s.H.Wires[k]
		c, known := s.Base.Wire(w.Spec, w.Size)
		if size := catalogue.CanonicalSize(w.Size); known && once(w.Spec+" "+size) {
			one := model.Shelved{Spec: model.Some(w.Spec), Size: model.Some(size), OverMM: thousandth(c.OverMM), TolMM: thousandth(c.TolMM)}
			if c.OhmPerKm > 0 {
				one.OhmPerKm = model.Some(unit.OhmPerKilometre(math.Round(float64(c.OhmPerKm)*1000) / 1000))
			}
			out = append(out, one)
		}
	}
	tube := func(id string) {
		if t, known := s.Base.Tube(id); known && once(t.ID) {
			out = append(out, model.Shelved{Part: model.Some(t.ID), RecoveredMM: thousandth(t.RecoveredMM), WallMM: thousandth(t.WallMM)})
		}
	}
	for i := range s.Branches {
		for _, c := range s.H.Branches[i].Covers {
			tube(c.Part.V)
		}
		tube(s.Branches[i].Sheath.Part)
	}
	slices.SortStableFunc(out, func(a, b model.Shelved) int { return strings.Compare(shelvedName(a), shelvedName(b)) })
	return out
}

func thousandth(v unit.Millimetre) model.Opt[unit.Millimetre] {
	return model.Some(unit.Millimetre(math.Round(float64(v)*1000) / 1000))
}

func shelvedName(v model.Shelved) string {
	if v.Part.Set {
		return v.Part.V
	}
	return v.Spec.V + " " + v.Size.V
}

// Begun is a catalogue with the figures that a serial was begun with in place of those that have changed since: of
// wires, of tubes, and of what the shop has learned. The same catalogue where none has. cat is not changed.
func Begun(cat *catalogue.Catalogue, b *model.Build) *catalogue.Catalogue {
	out := *cat
	moved := false
	for _, v := range b.Shelf {
		if v.Part.Set {
			moved = shelveTube(cat, &out, v) || moved
		} else {
			moved = shelveWire(cat, &out, v) || moved
		}
	}
	if learned := begunLessons(cat, b); len(learned) > 0 {
		out.Corrections, moved = slices.Concat(cat.Corrections, learned), true
	}
	if !moved {
		return cat
	}
	return &out
}

// begunLessons are the corrections of a serial where the shop has others by now, each withdrawn where it had none.
func begunLessons(cat *catalogue.Catalogue, b *model.Build) (out []catalogue.Correction) {
	if b.GoesBy == nil {
		return nil
	}
	var groups []string
	for _, c := range cat.Corrections {
		groups = append(groups, c.Of)
	}
	for _, says := range b.GoesBy {
		if k := strings.LastIndex(says, ": "); k > 0 {
			groups = append(groups, says[:k])
		}
	}
	slices.Sort(groups)
	for _, of := range slices.Compact(groups) {
		if !strings.HasPrefix(of, "over, ") && !strings.HasPrefix(of, "wall, ") {
			continue
		}
		was, had := bundle.Begun(cat, b, of)
		is, has := cat.Correction(of)
		if had == has && (!had || was.Bias == is.Bias) {
			continue
		}
		was.Of, was.Withdrawn = of, !had
		out = append(out, was)
	}
	return out
}

func shelveWire(cat, out *catalogue.Catalogue, v model.Shelved) bool {
	w, known := cat.Wire(v.Spec.V, v.Size.V)
	if !known || !wireMoved(v, w) {
		return false
	}
	w.OverMM, w.TolMM, w.OhmPerKm = v.OverMM.Or(w.OverMM), v.TolMM.Or(w.TolMM), v.OhmPerKm.Or(w.OhmPerKm)
	wires := map[catalogue.WireKey]catalogue.Wire{}
	for key, of := range out.Wires {
		wires[key] = of
	}
	wires[w.Key()] = w
	out.Wires = wires
	return true
}

func shelveTube(cat, out *catalogue.Catalogue, v model.Shelved) bool {
	t, known := cat.Tube(v.Part.V)
	if !known || !tubeMoved(v, t) {
		return false
	}
	t.RecoveredMM, t.WallMM = v.RecoveredMM.Or(t.RecoveredMM), v.WallMM.Or(t.WallMM)
	out.Tubes = slices.Clone(out.Tubes)
	for k := range out.Tubes {
		if out.Tubes[k].ID == t.ID {
			out.Tubes[k] = t
		}
	}
	return true
}

// shelvedSame is how near two figures are the same: those of a record are rounded. 0.005 mm is under what
// callipers read; the share is for ohms.
const (
	shelvedSame      unit.Millimetre = 0.005
	shelvedSameShare float64         = 0.001
)

func lengthMoved(was model.Opt[unit.Millimetre], is unit.Millimetre) bool {
	return was.Set && math.Abs(float64(was.V-is)) > float64(shelvedSame)
}

func wireMoved(v model.Shelved, w catalogue.Wire) bool {
	return lengthMoved(v.OverMM, w.OverMM) || lengthMoved(v.TolMM, w.TolMM) || ohmMoved(v, w)
}

func ohmMoved(v model.Shelved, w catalogue.Wire) bool {
	return v.OhmPerKm.Set && math.Abs(float64(v.OhmPerKm.V-w.OhmPerKm)) > shelvedSameShare*float64(v.OhmPerKm.V)
}

func tubeMoved(v model.Shelved, t catalogue.Tube) bool {
	return lengthMoved(v.RecoveredMM, t.RecoveredMM) || lengthMoved(v.WallMM, t.WallMM)
}

// catalogue is what the catalogue has otherwise than when the serial was begun. What is finished keeps its figures
// and asks nothing.
func (c *comparison) catalogue() {
	if c.b.Did(HoldLoaded) {
		return
	}
	var all []string
	for _, v := range c.b.Shelf {
		all = append(all, moved(c.s, v)...)
	}
	if len(all) == 0 {
		return
	}
	d := Difference{At: AboutCatalogue, Says: "the catalogue has changed: " + strings.Join(all, "; "),
		Built: "what it was begun with"}
	if !slices.ContainsFunc(c.b.Apart, func(a model.Deviation) bool { return a.At == d.At && a.Says == d.keeps() }) {
		c.out = append(c.out, d)
	}
}

// moved is what of one entry is another figure now: "AS22759/32 22 is 1.20 mm ± 0.05, was 1.09 mm ± 0.05". A
// diameter or a wall that the file has measured for itself is none of the catalogue.
func moved(s *sheet.Sheet, v model.Shelved) (out []string) {
	if v.Part.Set {
		t, known := s.Base.Tube(v.Part.V)
		given := slices.ContainsFunc(s.H.Parts, func(p model.Part) bool { return p.ID == t.ID && p.WallMM.Set })
		if known && !given && lengthMoved(v.WallMM, t.WallMM) {
			out = append(out, fmt.Sprintf("the wall of %s is %s mm, was %s", t.ID, unit.Fixed(t.WallMM, 2), unit.Fixed(v.WallMM.V, 2)))
		}
		if known && lengthMoved(v.RecoveredMM, t.RecoveredMM) {
			out = append(out, fmt.Sprintf("%s recovers to %s mm, was %s", t.ID, unit.Fixed(t.RecoveredMM, 2),
				unit.Fixed(v.RecoveredMM.V, 2)))
		}
		return out
	}
	w, known := s.Base.Wire(v.Spec.V, v.Size.V)
	given := slices.ContainsFunc(s.H.Reels, func(r model.Reel) bool {
		return r.Spec == v.Spec.V && catalogue.CanonicalSize(r.Size) == v.Size.V
	})
	if known && !given && (lengthMoved(v.OverMM, w.OverMM) || lengthMoved(v.TolMM, w.TolMM)) {
		band := func(over, tol unit.Millimetre) string {
			return fmt.Sprintf("%s mm (%s to %s)", unit.Fixed(over, 2), unit.Fixed(over-tol, 2), unit.Fixed(over+tol, 2))
		}
		out = append(out, fmt.Sprintf("wire %s is %s, was %s", wireName(v), band(w.OverMM, w.TolMM),
			band(v.OverMM.V, v.TolMM.Or(w.TolMM))))
	}
	if known && ohmMoved(v, w) {
		out = append(out, fmt.Sprintf("wire %s is %s ohm a km, was %s", wireName(v), unit.Fixed(w.OhmPerKm, 1),
			unit.Fixed(v.OhmPerKm.V, 1)))
	}
	return out
}

// Take builds on by the catalogue as it is now, decided by somebody with a name.
func (d Difference) Take(s *sheet.Sheet, b *model.Build, by, on string) {
	b.Shelf = Shelf(s)
	dev := model.Deviation{At: d.At, Says: "it goes by the catalogue of today from here on: " + d.Says, By: model.Some(by)}
	if on != "" {
		dev.On = model.Some(on)
	}
	b.Apart = append(b.Apart, dev)
}

// wireName is a wire as it is asked for: "AS22759/32, 22 AWG".
func wireName(v model.Shelved) string { return v.Spec.V + ", " + model.SizeWords(v.Size.V) + "," }
