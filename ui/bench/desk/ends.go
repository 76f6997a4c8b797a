package desk

import (
	"contralay/ui/bench/words"
)

// JoinText is what goes into the two barrels.
func (m *Model) JoinText(i int) string {
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
