package desk

import (
	"slices"

	"contralay/calc/sheet"
	"contralay/model"
)

// What a screen asks of the sheet in hand.

// WiresHere is the wires of the branch, units' wires too, in file order.
func (m *Model) WiresHere() []int {
	var out []int
	for i, w := range m.Sheet.Wires {
		if slices.Contains(w.Path, m.Branch) {
			out = append(out, i)
		}
	}
	return out
}

// MarkFor is the mark of the worst snag about a thing. A list asks for each of its rows, so
// the marks of a sheet are made once.
func (m *Model) MarkFor(id string) string {
	return m.marks.Get(m.Sheet, 0, "", func() map[string]string {
		all := map[string]string{}
		for _, s := range m.Sheet.Snags {
			switch {
			case s.Level == sheet.Stop:
				all[s.Where] = "!"
			case s.Level == sheet.Warn && all[s.Where] == "":
				all[s.Where] = "?"
			}
		}
		return all
	})[id]
}

// Waiting reports whether some branch still waits for its lay-up.
func Waiting(s *sheet.Sheet) bool {
	for i := range s.Branches {
		if s.Branches[i].Waiting {
			return true
		}
	}
	return false
}

// Worst is the worst snag that calls for someone; notes do not.
func Worst(s *sheet.Sheet) (sheet.Group, int, bool) {
	var first sheet.Group
	n := 0
	for _, g := range sheet.Grouped(s.Snags) {
		if g.Level == sheet.Note {
			break
		}
		if n == 0 {
			first = g
		}
		n++
	}
	return first, n, n > 0
}

// SheathOf is the sheath of a branch, made where it has none.
func SheathOf(b *model.Branch) *model.Cover {
	for i := range b.Covers {
		if b.Covers[i].What == model.CoverSheath {
			return &b.Covers[i]
		}
	}
	b.Covers = append(b.Covers, model.Cover{What: model.CoverSheath})
	return &b.Covers[len(b.Covers)-1]
}
