package sheet

import "slices"

// Frozen is the sheet as it may be read beside a bench that goes on with it: what a bench still
// fills in, the keys of planning questions, goes into the other.
func (s *Sheet) Frozen() *Sheet {
	out := *s
	out.Branches = slices.Clone(s.Branches)
	return &out
}

// About is the sheet with what it says of one thing alone: for a lay-up that is only looked at, where
// the rest of the harness is as nobody means it.
func (s *Sheet) About(where string) *Sheet {
	out := *s
	out.Snags = slices.DeleteFunc(slices.Clone(s.Snags), func(g Snag) bool { return g.Where != where })
	return &out
}
