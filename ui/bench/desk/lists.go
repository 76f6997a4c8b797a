package desk

import (
	"fmt"

	"contralay/calc/phase/over"
	"contralay/ui/bench/words"
)

// ShieldText is what is done at the ends of a unit's shield.
func (m *Model) ShieldText(i int) string {
	u := &m.H.Units[i]
	back := "strip it back as its contacts ask (strip_mm says how far)"
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
