package record

import (
	"cmp"
	"fmt"
	"math"
	"slices"
	"strings"

	"contralay/calc/formula/learn"
	"contralay/calc/query/run"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
)

// LongestStep is how many minutes may lie between two ticks of one person, and PieceMinutes how many for
// each piece of a step that has many: what is longer is a pause, and in no figure. Common practice, no
// source: nobody crimps a contact for two minutes, nor does anything else for half an hour at a stretch.
const (
	LongestStep  = 30
	PieceMinutes = 2
)

// Spent is how long a stretch of work took: the time since the same person ticked something before.
type Spent struct {
	Work    string   // what its kind is called: "cut", "lay"; a test is "tests"
	Key     string   // of the step or the wire
	Serials []string // it was done for, several where they were cut together
	By      string
	Pieces  int // what was done in it: wires, pieces, cavities, of every serial; 1 of what is one act
	Minutes int // whole minutes, as the times of ticks are
	At      int // the minute it ended, counted from a fixed one
}

// Tests is what tests are called as a kind of work: a hold is signed by another.
const Tests = "tests"

// Minutes is how long what is built of a harness took, in the order in which it was done, and how many
// pauses were left out. Whoever goes from one serial to another is followed. A tick has the minute it was
// made in; of two in one minute the later took 0. What was undone took its time too. The first tick of a
// person, and one without a time, has none; nor have signatures: who inspects has not worked since.
func Minutes(s *sheet.Sheet) (out []Spent, breaks int) {
	var all []Spent
	for k := range s.H.Builds {
		all = append(all, moments(s, &s.H.Builds[k])...)
	}
	slices.SortStableFunc(all, func(a, b Spent) int { return cmp.Compare(a.At, b.At) })
	before := map[string]int{} // the last minute of each person
	for k := 0; k < len(all); k++ {
		m := all[k]
		for n := k + 1; n < len(all) && all[n].At == m.At; n++ { // the same for another serial: one stretch of work
			if o := all[n]; o.Key == m.Key && o.By == m.By && m.Work == run.CutStep.Work() && !slices.Contains(m.Serials, o.Serials[0]) {
				m.Serials, m.Pieces = append(slices.Clone(m.Serials), o.Serials...), m.Pieces+o.Pieces
				all = slices.Delete(all, n, n+1)
				n--
			}
		}
		was, begun := before[m.By]
		before[m.By] = m.At
		switch m.Minutes = m.At - was; {
		case !begun || m.Pieces == 0:
		case m.Minutes > max(LongestStep, PieceMinutes*m.Pieces):
			breaks++
		default:
			out = append(out, m)
		}
	}
	return out, breaks
}

// moments are what was done of one serial. What is in no figure has no pieces: it parts what comes after
// it from what was before.
func moments(s *sheet.Sheet, b *model.Build) []Spent {
	known := map[string]Spent{}
	for _, step := range run.For(s, b) {
		n := max(1, len(run.Pieces(s, step)))
		for _, mark := range step.Marks() {
			switch step.Kind {
			case run.CutStep:
				n = 1
			case run.HoldStep, run.PullStep: // their tests are counted
				n = 0
			}
			known[mark] = Spent{Work: step.Kind.Work(), Pieces: n}
		}
	}
	var out []Spent
	put := func(key, at, by, work string, pieces int) {
		if minute, ok := minuteOf(at); ok {
			out = append(out, Spent{Work: work, Key: key, Serials: []string{b.Serial}, By: by, Pieces: pieces, At: minute})
		}
	}
	for _, t := range b.Steps {
		k := known[t.Key]
		if t.Begun() {
			k.Pieces = 0 // it is told with its last piece
		}
		put(t.Key, t.At.V, t.By.V, k.Work, k.Pieces)
	}
	for _, t := range b.Tests {
		work := Tests
		if t.Pull.Set {
			work = run.PullStep.Work()
		}
		put(t.Step.V, t.At.V, t.By.V, work, 1)
	}
	return out
}

// group is what a kind of work is judged and accepted under.
func group(work string) string { return catalogue.MinutesOf + work }

// Spell is a stretch of work as what teaches how long its kind takes; file names the harness in words.
func (m Spent) Spell(file string) learn.Spell {
	return learn.Spell{Group: group(m.Work), Of: fmt.Sprintf("%s serial %s %s", file, strings.Join(m.Serials, ", "), m.Key),
		Minutes: float64(m.Minutes), Pieces: float64(m.Pieces)}
}

// Hours is how long a harness is expected to take by what the shop has accepted.
type Hours struct {
	Minutes float64
	Spread  float64  // of that, in minutes
	Kinds   int      // of work, that it is of
	Lacks   []string // kinds of work that it needs and that nothing is accepted of
}

// Expect is how long one more of a harness is expected to take, work alone, without pauses and without
// what is done twice; false where no minutes are accepted. Each kind of work scatters by itself.
func Expect(s *sheet.Sheet) (Hours, bool) {
	var works []string
	pieces := map[string]int{}
	add := func(work string, n int) {
		if n > 0 && !slices.Contains(works, work) {
			works = append(works, work)
		}
		pieces[work] += n
	}
	fresh := model.Build{EachTest: model.Some(true)}
	for _, step := range run.For(s, &fresh) {
		n := len(run.Pieces(s, step))
		switch step.Kind {
		case run.HoldStep:
			add(Tests, n)
		case run.CutStep:
			add(step.Kind.Work(), len(step.Marks()))
		default:
			add(step.Kind.Work(), max(1, n))
		}
	}
	var out Hours
	var square float64
	for _, work := range works {
		c, ok := s.Cat.Correction(group(work))
		if !ok || !(c.Each > 0) {
			out.Lacks = append(out.Lacks, work)
			continue
		}
		m, off := learn.Ahead(float64(pieces[work]), c.Each, c.EachSpread, float64(c.Pieces))
		out.Minutes, square, out.Kinds = out.Minutes+m, square+off*off, out.Kinds+1
	}
	out.Spread = math.Sqrt(square)
	return out, out.Kinds > 0
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
