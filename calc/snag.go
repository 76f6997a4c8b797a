package calc

import (
	"cmp"
	"slices"
)

// Level says how bad a snag is.
type Level int

// The levels, mildest first. Stop: cannot be built, or would burn, leak or come
// apart. Warn: a limit is passed. Note: advice, standing, gap, tracer.
const (
	Note Level = iota
	Warn
	Stop
)

// String is the word a person reads.
func (l Level) String() string {
	switch l {
	case Stop:
		return "stop"
	case Warn:
		return "warn"
	}
	return "note"
}

// Snag is something the sheet says about itself.
type Snag struct {
	Level Level
	Rule  string // rule id, e.g. "sheath.slide"
	Where string // id of the thing it is about
	Says  string // a plain sentence
}

// Worst sorts snags: worst first, else in the order they were found.
func Worst(s []Snag) []Snag {
	out := slices.Clone(s)
	slices.SortStableFunc(out, func(a, b Snag) int { return -cmp.Compare(a.Level, b.Level) })
	return out
}

// Group is one cause that shows once, with every place it is met.
type Group struct {
	Snag
	Count int
}

// Grouped folds snags of one level and rule that say the same into one line
// with a count, worst first.
func Grouped(s []Snag) []Group {
	var out []Group
	for _, g := range Worst(s) {
		i := slices.IndexFunc(out, func(o Group) bool {
			return o.Level == g.Level && o.Rule == g.Rule && o.Says == g.Says
		})
		if i >= 0 {
			out[i].Count++
			continue
		}
		out = append(out, Group{g, 1})
	}
	return out
}
