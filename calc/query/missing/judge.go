package missing

import (
	wiresphase "contralay/calc/phase/wires"
	"contralay/calc/sheet"
	"contralay/model"
)

// What the sheet cannot judge.

// ends is terminations that no wire ends at, and connectors that are not known well enough: what
// the sheet says of them is taken from its open points.
func ends(s *sheet.Sheet) []Need {
	var unwired []string
	for i := range s.H.Terminations {
		t := &s.H.Terminations[i]
		if out := &s.Terms[i]; out.Used+out.Spare == 0 && len(s.Index.Meeting(t.ID)) > 0 && !capped(s, t.ID) {
			unwired = append(unwired, t.ID)
		}
	}
	unknown := func(like string) []string {
		var ids []string
		for _, g := range s.Snags {
			if g.Rule == "connector.unknown" && g.Like == like {
				ids = append(ids, g.Where)
			}
		}
		return ids
	}
	out := one(Need{Kind: Unwired, Rank: Judges, Of: Termination, IDs: unwired}, "no wire ends at %s",
		"no wire ends at %d terminations: %s")
	rules := []string{"connector.unknown"}
	out = append(out, one(Need{Kind: Contacts, Rank: Judges, Of: Termination, IDs: append(unknown("sizes"), unknown("sizes and seal")...),
		Rules: rules},
		"the contact size of %s is not known", "the contact sizes of %d connectors are not known: %s")...)
	return append(out, one(Need{Kind: Gender, Rank: Judges, Of: Termination, IDs: unknown("gender"), Rules: rules},
		"the gender of %s is not known: pin or socket", "the genders of %d connectors are not known: %s")...)
}

// capped reports whether a wire is capped at a termination: it ends there without a cavity.
func capped(s *sheet.Sheet, place string) bool {
	for i := range s.H.Wires {
		if s.H.Wires[i].CappedAt.V == place {
			return true
		}
	}
	return false
}

// currents is the wires of which nobody has said what they carry. A spare carries nothing, a bus
// next to nothing, and a return what comes through the wires it serves.
func currents(s *sheet.Sheet) []Need {
	var ids []string
	for i := range s.H.Wires {
		w := &s.H.Wires[i]
		if w.Role.V == model.RoleSpare || w.Role.V == model.RoleData || wiresphase.Carries(s, i) || !wiresphase.Rates(s, i) {
			continue
		}
		ids = append(ids, w.ID)
	}
	return one(Need{Kind: Current, Rank: Judges, Of: Wire, IDs: ids}, "the current of wire %s is not known",
		"the currents of %d wires are not known: %s")
}

// feeds is what protection is judged by.
func feeds(s *sheet.Sheet) []Need {
	at := func(rule string) []string {
		var ids []string
		for _, g := range s.Snags {
			if g.Rule == rule {
				ids = append(ids, g.Where)
			}
		}
		return ids
	}
	var out []Need
	if len(at("feed.supply")) > 0 {
		out = append(out, Need{Kind: Supply, Rank: Judges, Says: "the supply voltage is not known", Of: Harness,
			Rules: []string{"feed.supply"}})
	}
	out = append(out, one(Need{Kind: Device, Rank: Judges, Of: Feed, IDs: at("feed.device"), Rules: []string{"feed.device"}},
		"feed %s has no device or no rating", "%d feeds have no device or no rating: %s")...)
	out = append(out, one(Need{Kind: Trip, Rank: Judges, Of: Feed, IDs: at("feed.trip"), Rules: []string{"feed.trip"}},
		"how fast feed %s opens a short is not known", "how fast %d feeds open a short is not known: %s")...)
	if len(at("feed.near")) > 0 {
		out = append(out, Need{Kind: Short, Rank: Judges, Says: "the current of the supply in a dead short is not known", Of: Harness,
			Rules: []string{"feed.near"}})
	}
	return out
}

// covers is the branches with a cover of which neither part nor thickness is given.
func covers(s *sheet.Sheet) []Need {
	var ids []string
	for i := range s.H.Branches {
		if _, bare := BareCover(s, i); bare {
			ids = append(ids, s.H.Branches[i].ID)
		}
	}
	return one(Need{Kind: Cover, Rank: Judges, Of: Branch, IDs: ids, Rules: []string{"cover.part"}},
		"a cover on %s has no part and no thickness", "covers on %d branches have no part and no thickness: %s")
}

// BareCover is the first cover of a branch of which neither part nor thickness is known, by its
// place in the file.
func BareCover(s *sheet.Sheet, branch int) (cover int, ok bool) {
	for _, c := range s.Branches[branch].Covers {
		if c.Part == "" && c.ThickMM <= 0 && !c.Tube.Set {
			return c.Index, true
		}
	}
	return 0, false
}

// What only the printed sheet lacks.

// printed is what the paper cannot name.
func printed(s *sheet.Sheet) []Need {
	var out []Need
	switch head := &s.H.Head; {
	case head.Number.V == "" && head.Revision.V == "":
		out = append(out, Need{Kind: Number, Rank: Prints, Says: "the harness has no number and no revision", Of: Harness})
	case head.Number.V == "":
		out = append(out, Need{Kind: Number, Rank: Prints, Says: "the harness has no number", Of: Harness})
	case head.Revision.V == "":
		out = append(out, Need{Kind: Number, Rank: Prints, Says: "the harness has no revision", Of: Harness})
	}
	var ids []string
	for i := range s.H.Wires {
		if w := &s.H.Wires[i]; w.Colour.V == "" {
			ids = append(ids, w.ID)
		}
	}
	return append(out, one(Need{Kind: Colour, Rank: Prints, Of: Wire, IDs: ids}, "wire %s has no colour",
		"%d wires have no colour: %s")...)
}
