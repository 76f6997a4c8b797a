package offer

import (
	"slices"

	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
)

// Data is where the length of a branch may start on a termination, from the front back.
var Data = []model.Datum{model.DatumMatingFace, model.DatumGrommet, model.DatumShellRear, model.DatumBootLip}

// DatumAt is how far behind the mating face a datum of a termination lies: the grommet
// and the rear of the shell by the part's own length (part_mm), the lip of the boot by
// the boot's length more. False where that length is not known.
func DatumAt(s *sheet.Sheet, t int, datum model.Datum) (unit.Millimetre, bool) {
	term := &s.H.Terminations[t]
	switch datum {
	case model.DatumMatingFace:
		return 0, true
	case model.DatumGrommet, model.DatumShellRear: // the grommet stands flush with the shell's rear
		return term.PartMM.V, term.PartMM.Set
	case model.DatumBootLip:
		b, ok := s.Cat.Boot(term.Boot.V)
		return term.PartMM.V + b.LengthMM, ok && term.PartMM.Set && b.LengthMM > 0
	}
	return 0, false
}

// Redatum gives a termination another datum and its branches the length that leaves
// them as they are; converted is false where a part's length is not known, and then the
// lengths stay as they stand.
func Redatum(s *sheet.Sheet, t int, datum model.Datum) (h *model.Harness, converted bool) {
	term := &s.H.Terminations[t]
	h = s.H.EditTermination(t, func(t *model.Termination) { t.Datum = model.Some(datum) })
	was, ok1 := DatumAt(s, t, term.Datum.V)
	now, ok2 := DatumAt(s, t, datum)
	if !ok1 || !ok2 || !slices.Contains(Data, term.Datum.V) {
		return h, false
	}
	for _, b := range s.Index.Meeting(term.ID) {
		long := unit.Written(s.H.Branches[b].LengthMM + was - now)
		if long <= 0 {
			return s.H.EditTermination(t, func(t *model.Termination) { t.Datum = model.Some(datum) }), false
		}
		h = h.EditBranch(b, func(b *model.Branch) {
			b.LengthMM = long
			if b.From != term.ID {
				return
			}
			for k := range b.Covers { // stations are counted from this end
				for _, station := range []*model.Opt[unit.Millimetre]{&b.Covers[k].FromMM, &b.Covers[k].ToMM} {
					if station.Set {
						station.V = max(0, unit.Written(station.V+was-now))
					}
				}
			}
		})
	}
	return h, true
}
