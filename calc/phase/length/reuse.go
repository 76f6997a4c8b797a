package length

import (
	"contralay/calc/sheet"
	"contralay/model"
)

// What the length of a wire is worked out of beside its branches: as long as these are the
// same it is taken over (CutWires). The drop is worked out anew.

// SamePlaces reports whether two harnesses are alike in what adds to a length: loops at
// their terminations, splices off their breakouts, twist in units.
func SamePlaces(a, b *model.Harness) bool {
	return sheet.Shares(a.Terminations, b.Terminations) && sheet.Shares(a.Splices, b.Splices) && sheet.Shares(a.Units, b.Units)
}

// SameWire reports whether a wire has the same ends, and as much of it is folded back.
func SameWire(a, b *model.Wire) bool {
	return a.From == b.From && a.To == b.To && a.CappedAt == b.CappedAt && a.FoldMM == b.FoldMM
}

// SameBranch reports whether a branch is as long.
func SameBranch(a, b *model.Branch) bool { return a.LengthMM == b.LengthMM }
