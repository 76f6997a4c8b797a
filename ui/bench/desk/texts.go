package desk

import (
	"fmt"

	"contralay/calc/phase/ends"
	"contralay/calc/phase/over"
	"contralay/model"
	"contralay/ui/bench/words"
)

// What more than one screen says of a branch, a cap, a splice or a shield.

// Long is a branch's length with its unit; words where it is not measured yet.
func Long(m *Model, b *model.Branch) string {
	if !b.Measured() {
		return "not measured yet"
	}
	return m.Sys.Length(b.LengthMM) + " " + m.Sys.Name()
}

// LengthText is a branch's length with where it is taken from, its tolerance, and who
// took it.
func LengthText(m *Model, b *model.Branch) string {
	end := func(id string) string {
		if t, ok := m.Sheet.Index.Termination[id]; ok {
			if d := m.H.Terminations[t].Datum.V; d != "" {
				return string(d) + " of " + id
			}
			return id
		}
		return "the centre of " + id
	}
	text := fmt.Sprintf("%s from %s to %s", Long(m, b), end(b.From), end(b.To))
	if t := b.ToleranceMM; len(t) == 2 {
		text += fmt.Sprintf(", -%s +%s", m.Sys.Length(t[0]), m.Sys.Length(t[1]))
	}
	if m.H.Head.MockUp.V != "" {
		text += "; mock-up: " + m.H.Head.MockUp.V
	}
	return text
}

// CapText is where a cap lies.
func CapText(m *Model, c ends.Cap) string {
	if c.Branch < 0 {
		return "at " + c.Place
	}
	b := &m.H.Branches[c.Branch]
	return fmt.Sprintf("%s %s from %s on %s", m.Sys.Length(c.AtMM), m.Sys.Name(), b.From, b.ID)
}

// JoinText is what goes into the two barrels.
func JoinText(m *Model, i int) string {
	side := func(all []int) string {
		var out []string
		for _, k := range all {
			out = append(out, m.H.Wires[k].ID)
		}
		return words.Few(out)
	}
	s := &m.Sheet.Splices[i]
	return side(s.Near) + " | " + side(s.Far)
}

// ShieldText is what is done at the ends of a unit's shield.
func ShieldText(m *Model, i int) string {
	u := &m.H.Units[i]
	back := "strip it back as its contacts need (the unit says how far)"
	if u.StripMM.Set {
		back = fmt.Sprintf("strip it back %s %s", m.Sys.Length(u.StripMM.V), m.Sys.Name())
	}
	n, size := 0, 0
	for _, e := range over.ShieldEnds(m.Sheet) {
		if e.Unit == i && e.To != "cut" && e.To != "" {
			n, size = n+1, e.Sleeve
		}
	}
	switch {
	case n == 0:
		return back + "; the shield is cut and covered at both ends"
	case size == 0:
		return back + "; no solder sleeve is known for its diameter"
	}
	text := fmt.Sprintf("%s; %s of size %d~ for its lead", back, words.Plural(n, "solder sleeve", "solder sleeves"), size)
	if u.DrainMM.Set {
		text += fmt.Sprintf(", %s %s long", m.Sys.Length(u.DrainMM.V), m.Sys.Name())
	}
	return text
}
