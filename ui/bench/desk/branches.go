package desk

import (
	"contralay/calc/sheet"
	"contralay/model/unit"
)

// LongestBranch is more than any vehicle's loom has.
const LongestBranch unit.Millimetre = 50_000

// Waiting reports whether some branch still waits for its lay-up.
func (m *Model) Waiting() bool {
	for i := range m.Sheet.Branches {
		if m.Sheet.Branches[i].Waiting {
			return true
		}
	}
	return false
}

// Worst is the worst snag that calls for someone; notes do not.
func (m *Model) Worst() (sheet.Group, int, bool) {
	var first sheet.Group
	n := 0
	for _, g := range sheet.Grouped(m.Sheet.Snags) {
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
