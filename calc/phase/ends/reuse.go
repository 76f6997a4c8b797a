package ends

import (
	"slices"

	"contralay/calc/sheet"
	"contralay/model"
)

// What cavities and splices are worked out of: as long as these are the same for all wires,
// those of the prior sheet are taken over (FillCavities, JoinWires, Listed).

// SamePlaces reports whether two harnesses are alike in their ends: what each termination
// is, the splices, the shields' drains, and what the whole is used in.
func SamePlaces(a, b *model.Harness) bool {
	return a.Head.Use == b.Head.Use && sheet.Shares(a.Terminations, b.Terminations) && sheet.Shares(a.Splices, b.Splices) &&
		sheet.Shares(a.Units, b.Units)
}

// SameWire reports whether a wire ends in the same places, is as thick, and is a spare or
// not as before.
func SameWire(a, b *model.Wire) bool {
	return a.From == b.From && a.To == b.To && a.CappedAt == b.CappedAt && a.Spec == b.Spec && a.Size == b.Size && a.Role == b.Role
}

// sameListed reports whether two harnesses have the same independent list, and call their
// wires' signals the same: what is said of the list names them.
func sameListed(a, b *model.Harness) bool {
	return sheet.Shares(a.Listed, b.Listed) &&
		slices.EqualFunc(a.Wires, b.Wires, func(x, y model.Wire) bool { return x.Signal == y.Signal })
}
