package bench_test

import (
	"regexp"
	"strings"
	"sync"
	"testing"

	"contralay/calc/query/why"
	"contralay/calc/sheet"
	"contralay/model/file"
	"contralay/model/shorttest"
	"contralay/model/unit"
	"contralay/ui/bench"
	"contralay/ui/bench/benchtest"
	"contralay/ui/bench/desk"
	"contralay/ui/paper"
)

var (
	decimal  = regexp.MustCompile(`\d+\.\d+`)
	withUnit = regexp.MustCompile(`(\d+(?:\.\d+)?|\d+ \d+/\d+|\d+/\d+) (?:mm|in|g|V|A2s|s|ohm|mohm|m|turns|%)(?:\W|$)`)
)

// numbers is every number of a text that measures something: it has a decimal
// point, or a unit stands behind it. What it finds in a line is only read.
func numbers(text string) map[string]bool {
	out := map[string]bool{}
	for line := range strings.Lines(text) {
		found, known := numbersOf.Load(line)
		if !known {
			var all []string
			all = append(all, decimal.FindAllString(line, -1)...)
			for _, n := range withUnit.FindAllStringSubmatch(line, -1) {
				all = append(all, n[1])
			}
			found, _ = numbersOf.LoadOrStore(line, all)
		}
		for _, n := range found.([]string) {
			out[n] = true
		}
	}
	return out
}

// numbersOf holds the numbers of each line that was met: most of a screen stands there again for the next row.
var numbersOf sync.Map

// written is every way a screen may write a value.
func written(v float64) []string {
	var out []string
	for n := range 4 {
		out = append(out, unit.Fixed(v, n), unit.Fixed(-v, n), unit.Fixed(100*v, n), unit.Fixed(v/1000, n),
			unit.Fixed(v/unit.MillimetrePerInch, n), unit.Fixed(-v/unit.MillimetrePerInch, n))
	}
	for _, s := range []unit.System{unit.MM, unit.Inch} {
		out = append(out, s.Length(unit.Millimetre(v)), s.AtLeast(unit.Millimetre(v)))
	}
	for n := range 3 { // a sentence has it as fine in inches as it was written in mm
		for _, words := range []string{"", " at least"} {
			said, _, _ := strings.Cut(unit.Inch.Says(unit.Fixed(v, n)+" mm"+words), " in")
			out = append(out, said)
		}
	}
	return out
}

// Every number on every screen that measures something is one of the figures that W
// explains there, an input of one, or stands in the harness or the catalogue.
func TestEveryNumberOnEveryScreenHasItsWhy(t *testing.T) {
	names := []string{"demo.toml", "example.toml", "trunk.toml", "feeds.toml"}
	if testing.Short() {
		names = names[1:2] // the race detector makes it ten times as long and finds nothing more in the rest
	}
	benchtest.EachOrSome(t, func(t *testing.T, screen string) {
		switch screen {
		case "why", "figures", "unsaved work", "file changed", "help", "quit", "menu", "field":
			return // explanations themselves, or nothing is worked out there
		}
		for k, name := range names {
			if name != "example.toml" && !benchtest.Turn(screen, k, 12) {
				continue
			}
			for at, sys := range []unit.System{unit.MM, unit.Inch} {
				if sys == unit.Inch && name == "demo.toml" || name != "demo.toml" && !benchtest.Turn(screen, at+k/2, 2) {
					continue // the large one once, the others in mm on one screen and in inches on the next
				}
				m, lacks := benchtest.Reach(t, name, screen)
				if lacks != "" {
					if name == "example.toml" {
						t.Fatalf("no row says %q: the screen meant is not reached", lacks)
					}
					continue // this harness has no such row
				}
				m.Sys = sys
				benchtest.Size(m, 200, 60)
				text := string(file.Encode(m.Doc()))
				given := numbers(text)
				for _, b := range m.Sheet.Branches {
					for _, c := range b.Sheath.Others {
						for n := range numbers(c.Tube.ShelfLabel + " " + c.Tube.ID) {
							given[n] = true
						}
					}
				}
				for _, w := range m.H.Wires {
					for n := range numbers(paper.Size(&w)) {
						given[n] = true
					}
				}
				for _, v := range []float64{0.8, 1.1, 1.2, 80, 20} { // limits that are named as such
					given[unit.Fixed(v, 2)], given[unit.Fixed(v, 1)], given[unit.Fixed(v, 0)] = true, true, true
				}
				for _, p := range numbersGiven(m) {
					given[p] = true
				}
				for n := range numbers(text) {
					if v, err := unit.ParseNumber(n); err == nil {
						given[unit.Fixed(v, 0)], given[unit.Fixed(v, 1)], given[unit.Fixed(v, 2)] = true, true, true
					}
				}
				figures := figuresOf{}
				p := m.Page(m.ListWidth())
				for at := range p.Rows {
					m.Put(at, "")
					q := m.Page(m.ListWidth())
					if at >= len(q.Rows) {
						continue
					}
					r := &q.Rows[at]
					ok := map[string]bool{}
					for _, re := range bench.Reasons(m, q, r) {
						for _, n := range figures.written(m, re) {
							ok[n] = true
						}
					}
					seen := m
					if r.Show != nil {
						seen = r.Show(m)
					}
					detail := r.Detail
					if r.More != nil {
						detail = r.More()
						if _, said, is := strings.Cut(detail, "takes it"); is {
							detail, _ = "", said // differences of two lay-ups, each of which is explained
						}
					}
					text := strings.Join(append(append([]string{}, q.Lines...), r.Line(), detail,
						bench.Figures(seen, desk.Arrange(200, 60, false)), bench.SnagLine(seen), bench.Head(m)), "\n")
					for n := range numbers(text) {
						if !ok[n] && !given[n] {
							t.Errorf("%s, %s, row %q: nothing explains %s in\n%s", name, screen, r.Line(), n, text)
						}
					}
				}
				if t.Failed() {
					return
				}
			}
		}
	})
}

// figuresOf keeps what figures and their inputs are written as: the strip has the same ones in
// every row.
type figuresOf map[figureIn][]string

// figureIn is a figure of a sheet.
type figureIn struct {
	of     *sheet.Sheet
	figure why.Figure
}

// written is every way the figure of a reason, and each of its inputs, may be written.
func (f figuresOf) written(m *desk.Model, r desk.Reason) []string {
	key := figureIn{m.Sheet, r.Figure}
	if r.Of != nil {
		key.of = r.Of(m)
	}
	if out, known := f[key]; known && r.Made == nil {
		return out
	}
	y, is := r.FigureOnly(m)
	var out []string
	if is {
		out = written(y.Value)
		for _, in := range y.In {
			out = append(out, written(in.Value)...)
		}
	}
	if r.Made == nil {
		f[key] = out
	}
	return out
}

// numbersGiven is what a person set that stands on screens in the other system.
func numbersGiven(m *desk.Model) []string {
	var out []string
	put := func(v unit.Millimetre) { out = append(out, written(float64(v))...) }
	for _, b := range m.H.Branches {
		put(b.LengthMM)
		put(b.BendMM.V)
		for _, l := range b.Layers {
			put(l.BindMM.V)
			put(l.LayMM.V)
		}
	}
	for _, s := range m.H.Splices {
		put(s.OffsetMM.V)
	}
	for _, f := range m.H.Feeds {
		put(f.BeforeMM.V)
	}
	for _, d := range m.Sheet.Limits.FillerStock {
		put(d)
	}
	put(0)
	return out
}

// W opens the why on every row of every step, and Esc goes back to the same row.
func TestWhyFromEveryRow(t *testing.T) {
	shorttest.Turn(t)
	for _, screen := range []string{"wires", "layers", "fill", "sheath", "build", "wire", "layer", "branches"} {
		m := benchtest.OpenAt(t, "example.toml", screen)
		for at := range m.Page(m.ListWidth()).Rows {
			if !benchtest.Turn(screen, at, 3) {
				continue // a why takes a sheet for each thing that could change it
			}
			m.Put(at, "")
			before := benchtest.View(m)
			benchtest.Press(m, "w")
			if m.Top() != "why" {
				t.Fatalf("%s row %d: W opens %s: %s", screen, at, m.Top(), m.Says)
			}
			if v := benchtest.View(m); !strings.Contains(v, " = ") {
				t.Errorf("%s row %d:\n%s", screen, at, v)
			}
			benchtest.Press(m, "esc")
			if m.Says = ""; stripAnswer(benchtest.View(m)) != stripAnswer(before) {
				t.Fatalf("%s row %d: Esc goes elsewhere\n%s", screen, at, benchtest.View(m))
			}
		}
	}
}

func stripAnswer(v string) string {
	l := strings.Split(v, "\n")
	return strings.Join(l[:len(l)-2], "\n")
}

// Down to what is given: Enter on inputs ends, for every figure of the strip, at
// inputs that nobody works out.
func TestWhyGoesDownToWhatIsGiven(t *testing.T) {
	shorttest.Turn(t)
	m := benchtest.OpenAt(t, "demo.toml", "layers")
	benchtest.Press(m, "w")
	for depth := 0; ; depth++ {
		if depth > 40 {
			t.Fatal("it goes round in circles")
		}
		p := m.Page(m.ListWidth())
		next := -1
		for k, r := range p.Rows {
			if r.Detail == "Enter: how that was made" {
				next = k
				break
			}
		}
		if next < 0 {
			break
		}
		for range next {
			benchtest.Press(m, "down")
		}
		benchtest.Press(m, "enter")
	}
	if m.Top() != "why" || len(m.Stack) < 2 {
		t.Errorf("it went nowhere: %s", m.Top())
	}
}
