package over

import (
	"fmt"

	"contralay/calc/formula/shield"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
)

// ShieldEnd is one end of a unit's shield.
type ShieldEnd struct {
	Unit   int
	To     string // a cavity, a splice, "shell" or "cut"; "" is not said
	Sleeve int    // size of the solder sleeve that takes its lead; 0: none, or none that is known
}

// ShieldEnds are the ends of every shield, in file order, from before to.
func ShieldEnds(s *sheet.Sheet) []ShieldEnd {
	var out []ShieldEnd
	for i := range s.H.Units {
		u := &s.H.Units[i]
		if !u.Shield.V {
			continue
		}
		for _, to := range []string{u.DrainFrom.V, u.DrainTo.V} {
			e := ShieldEnd{Unit: i, To: to}
			if to != "cut" && to != "" {
				e.Sleeve, _ = shield.Sleeve(s.Units[i].Dia.Nominal)
			}
			out = append(out, e)
		}
	}
	return out
}

// sensitive reports whether a unit carries what noise spoils: data, or a trigger.
func sensitive(s *sheet.Sheet, i int) bool {
	u := &s.H.Units[i]
	if u.Kbit.Set {
		return true
	}
	for _, id := range u.Wires {
		if k, ok := s.Index.Wire[id]; ok && s.H.Wires[k].Role.V == model.RoleData {
			return true
		}
	}
	return false
}

// Shields tells where too many drains are commoned, and where shield and lead stop too
// far from the contacts.
func Shields(s *sheet.Sheet) {
	n := map[model.End]int{}
	for i := range s.H.Units {
		u := &s.H.Units[i]
		for _, text := range []string{u.DrainFrom.V, u.DrainTo.V} {
			if text == "shell" || text == "cut" {
				continue
			}
			if e, ok := s.Index.End(text); ok && (e.Splice != "" || e.Cavity != "") {
				n[e]++
				if n[e] == shield.MostShared+1 {
					s.Say(sheet.Warn, "shield.many", text,
						fmt.Sprintf("It takes the drains of more than %d shields: one ground lead takes at most %d shields and one drain",
							shield.MostShared,
							shield.MostShared))
				}
			}
		}
		if !u.Shield.V {
			continue
		}
		sensitive := sensitive(s, i)
		shieldLength(s, u.ID, "Its shield ends %s mm before the contacts", u.StripMM.V, shield.MostStrip, shield.MostStripSensitive,
			sensitive)
		shieldLength(s, u.ID, "The drain lead of its shield is %s mm long", u.DrainMM.V, shield.MostLead, shield.MostLeadSensitive,
			sensitive)
		if u.DrainFrom.V != "" && u.DrainTo.V != "" && u.DrainFrom.V != "cut" && u.DrainTo.V != "cut" {
			s.Say(sheet.Note, "shield.both", u.ID,
				fmt.Sprintf("Its shield is grounded at both ends, %s and %s: that is right only if you want the ground loop", u.DrainFrom.V,
					u.DrainTo.V))
		}
	}
}

// shieldLength judges one length by NASA-STD-8739.4 § 11.6.
func shieldLength(s *sheet.Sheet, id, says string, v, most, mostSensitive unit.Millimetre, sensitive bool) {
	text := fmt.Sprintf(says, unit.Fixed(v, 0))
	switch {
	case v > most:
		s.Say(sheet.Warn, "shield.length", id, fmt.Sprintf("%s; %s mm at most", text, unit.Fixed(most, 0)))
	case sensitive && v > mostSensitive:
		s.Say(sheet.Note, "shield.length", id,
			fmt.Sprintf("%s; %s mm at most if noise matters", text, unit.Fixed(mostSensitive, 0)))
	}
}
