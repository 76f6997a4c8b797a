package record

import (
	"cmp"
	"slices"

	"contralay/calc/query/run"
	"contralay/calc/sheet"
	"contralay/model"
)

// LongestStep is how many minutes may lie between two ticks of one person: what is longer is a pause,
// and in no figure. Common practice, no source: a connector of 55 contacts is ticked piece by piece
// or takes about as long.
const LongestStep = 45

// Spent is how long one step took: the time since the same person ticked the step before.
type Spent struct {
	Kind    run.StepKind
	Key     string
	By      string
	Pieces  int // what was done in it: wires, pieces, cavities; 1 of what is one act
	Minutes int // whole minutes, as the times of ticks are
}

// Minutes is how long the steps of a build took, in the order they were ticked, and how many pauses
// were left out. A tick has the minute it was made in; of two in one minute the later took 0. What was
// undone took its time too. The first tick of a person, and a tick without a time, has none.
func Minutes(s *sheet.Sheet, b *model.Build) (out []Spent, breaks int) {
	type of struct {
		kind   run.StepKind
		pieces int
	}
	known := map[string]of{}
	for _, step := range run.For(s, b) {
		n := max(1, len(run.Pieces(s, step)))
		for _, mark := range step.Marks() {
			if step.Kind == run.CutStep {
				n = 1
			}
			known[mark] = of{step.Kind, n}
		}
	}
	ticks := slices.Clone(b.Steps)
	slices.SortStableFunc(ticks, func(a, b model.Ticked) int { return cmp.Compare(a.At.V, b.At.V) })
	before := map[string]int{} // the last minute of each person
	for _, t := range ticks {
		at, ok := minuteOf(t.At.V)
		k, is := known[t.Key]
		if !ok {
			continue
		}
		was, begun := before[t.By.V]
		before[t.By.V] = at
		switch {
		case !begun || !is || t.Begun():
		case at-was > LongestStep:
			breaks++
		default:
			out = append(out, Spent{k.kind, t.Key, t.By.V, k.pieces, at - was})
		}
	}
	return out, breaks
}

// minuteOf counts the minutes to a time written "2026-05-11 16:44"; false of any other text. By the
// civil calendar, days counted from 0000-03-01 so that a leap day is the last of its year.
func minuteOf(text string) (int, bool) {
	digits := func(from, n int) (v int, ok bool) {
		for _, c := range text[from : from+n] {
			if c < '0' || c > '9' {
				return 0, false
			}
			v = 10*v + int(c-'0')
		}
		return v, true
	}
	if len(text) != 16 || text[4] != '-' || text[7] != '-' || text[10] != ' ' || text[13] != ':' {
		return 0, false
	}
	var f [5]int
	for k, at := range [][2]int{{0, 4}, {5, 2}, {8, 2}, {11, 2}, {14, 2}} {
		v, ok := digits(at[0], at[1])
		if !ok {
			return 0, false
		}
		f[k] = v
	}
	y, m, d := f[0], f[1], f[2]
	if m < 1 || m > 12 || d < 1 || d > 31 || f[3] > 23 || f[4] > 59 {
		return 0, false
	}
	if m < 3 {
		y, m = y-1, m+12
	}
	days := 365*y + y/4 - y/100 + y/400 + (153*(m-3)+2)/5 + d
	return (days*24+f[3])*60 + f[4], true
}
