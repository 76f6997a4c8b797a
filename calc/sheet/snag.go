package sheet

import (
	"cmp"
	"fmt"
	"slices"
	"strings"
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

// Snag is an open point: something the sheet says about itself that a person must act on, or
// should know.
type Snag struct {
	Level Level
	Rule  string // rule id, e.g. "sheath.slide"
	Where string // id of the thing it is about
	Says  string // a plain sentence
	Like  string // what it has in common with others of one cause; "": of a note its rule, else what it says
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
	Count  int
	Places []string // the others, in the order they were found
}

// More is how many more places a group has and which, as far as a line has room for
// them: " (and 3 more: L7, L9, L11)"; "" where there is one.
func (g Group) More() string {
	if g.Count < 2 {
		return ""
	}
	const room = 4
	names := strings.Join(g.Places[:min(room, len(g.Places))], ", ")
	if len(g.Places) > room {
		names += " ..."
	}
	return fmt.Sprintf(" (and %d more: %s)", g.Count-1, names)
}

// Grouped folds snags of one level and rule into one line, worst first: notes of a
// rule whatever their figures, stops and warnings where their cause is one.
func Grouped(s []Snag) []Group {
	type cause struct {
		level      Level
		rule, like string
	}
	var out []Group
	at := map[cause]int{} // where each stands in out
	for _, g := range Worst(s) {
		c := cause{g.Level, g.Rule, g.Like}
		if g.Level > Note {
			c.like = cmp.Or(g.Like, g.Says)
		}
		if i, met := at[c]; met {
			out[i].Count++
			out[i].Places = append(out[i].Places, g.Where)
			continue
		}
		at[c] = len(out)
		out = append(out, Group{Snag: g, Count: 1})
	}
	return out
}

// Capital is a text with a capital, as a sentence begins; "" stays "".
func Capital(s string) string {
	if s == "" {
		return ""
	}
	return strings.ToUpper(s[:1]) + s[1:]
}
