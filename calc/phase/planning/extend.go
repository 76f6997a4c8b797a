package planning

import (
	"slices"

	"contralay/calc/sheet"
)

// mostLetters is how many options can have a letter.
const mostLetters = 26

// Extend is a proposal that somebody has before them, with what a longer search has found besides: whatever
// was there stays where it is, under its letter, and what is better only comes behind. news says that
// anything did.
func Extend(shown, found sheet.Proposal) (out sheet.Proposal, news bool) {
	out = shown
	out.Options = slices.Clone(shown.Options)
	for k, o := range found.Options {
		if slices.ContainsFunc(out.Options, func(p sheet.Option) bool { return same(p, o) && len(p.Spares) == len(o.Spares) }) ||
			out.AtOnce()+len(out.Options)-out.Shown == mostLetters {
			continue
		}
		best := k == 0 && !slices.ContainsFunc(out.Options, func(p sheet.Option) bool {
			return p.Plan.Relaxed < o.Plan.Relaxed || p.Plan.Relaxed == o.Plan.Relaxed && p.Cost <= o.Cost
		})
		if best || !slices.ContainsFunc(out.Options, func(p sheet.Option) bool { return beats(p, o) }) {
			out.Options, news = append(out.Options, o), true
		}
	}
	out.UnitsMM, out.UnitsWith, out.UnitsFree = found.UnitsMM, found.UnitsWith, found.UnitsFree
	out.LeaversMM, out.LeaversWith, out.LeaversFree = found.LeaversMM, found.LeaversWith, found.LeaversFree
	out.Reach = found.Reach
	return out, news
}
