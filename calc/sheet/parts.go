package sheet

import "contralay/model"

// PartKind is what is put on a harness besides its wires: a kind of cover (model.CoverKind,
// in the same words), a moulded part, a label, or the contacts of an end.
type PartKind string

// The parts that are no covers.
const (
	PartTransition PartKind = "transition"
	PartBoot       PartKind = "boot"
	PartLabel      PartKind = "label"
	PartContacts   PartKind = "contacts"
)

// PartSheath is the cover that most branches have.
const PartSheath = PartKind(model.CoverSheath)

// IsCover reports whether a part is a cover of a branch.
func (k PartKind) IsCover() bool { return model.CoverKind(k).Trait().GoesOn != "" }

// GoesOn is how a part that is no cover comes to its place; of a cover ask the cover.
func (k PartKind) GoesOn() model.GoesOn {
	switch k {
	case PartTransition, PartBoot, PartLabel:
		return model.ShrunkOn
	}
	return ""
}

// GoesOn is how a cover comes to its place: a tube of the catalogue is shrunk on, whatever
// the file calls it; anything else as its kind does.
func (c *Covered) GoesOn() model.GoesOn {
	if c.Tube.Set {
		return model.ShrunkOn
	}
	return c.What.Trait().GoesOn
}

// AsCover is a sheath in the terms of the covers beside it.
func (s *Sheath) AsCover() *Covered {
	c := Covered{What: model.CoverSheath, Part: s.Part, FromMM: s.FromMM, ToMM: s.ToMM, Tube: s.Tube, Verdict: s.Verdict,
		PassMM: s.PassMM, PassAt: s.PassAt, CutMM: s.CutMM, Gram: s.Gram}
	if s.Tube.Set && s.Verdict.Wraps {
		c.OverMM, c.ThickMM = s.Verdict.OverMM, s.Verdict.WallMM
	}
	return &c
}
