package over

import (
	"contralay/calc/sheet"
	"contralay/model"
)

// What the covers of a branch are worked out of beside its bundle: as long as these are the
// same they are taken over (CoverBranches).

// SamePlaces reports whether two harnesses are alike in what a cover must pass and where it
// may lie: connectors, breakouts and splices.
func SamePlaces(a, b *model.Harness) bool {
	return sheet.Shares(a.Terminations, b.Terminations) && sheet.Shares(a.Breakouts, b.Breakouts) && sheet.Shares(a.Splices, b.Splices)
}

// SameWire reports whether a wire's end is folded back in the way of a sheath as before.
func SameWire(a, b *model.Wire) bool {
	return a.CappedAt == b.CappedAt && a.FoldMM == b.FoldMM && a.Role == b.Role
}

// SameBranch reports whether a branch is covered alike, as long, in the same surroundings
// and as warm.
func SameBranch(a, b *model.Branch) bool {
	return sheet.Shares(a.Covers, b.Covers) && (a.Covers == nil) == (b.Covers == nil) && sheet.Shares(a.Environment, b.Environment) &&
		a.LengthMM == b.LengthMM && a.Supported == b.Supported && a.AmbientC == b.AmbientC
}
