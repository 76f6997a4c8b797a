package layers

import (
	"fmt"
	"slices"
	"strings"

	"contralay/calc/formula/plan"
	"contralay/calc/query/cliff"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/kit"
	"contralay/ui/bench/words"
	"contralay/ui/strip"
)

// CliffsKind is the screen of what one wire more or fewer costs; it is about what is counted.
const CliffsKind desk.Kind = "one more, one fewer"

// What the screen counts.
const (
	countWires  = "wires"
	countSpares = "spares"
)

// cliffRows is the row of the step: how many more wires still fit, and what comes then.
func cliffRows(m *desk.Model, w int) []desk.Row {
	s, why := stripOf(m, countWires)
	if why != "" {
		return nil
	}
	const head = "one more wire   "
	r := desk.Row{Key: "cliffs", Text: head + "working out", Detail: "How many more wires still fit, and what the next one costs",
		Enter: func(m *desk.Model) { m.Show(CliffsKind, countWires) }}
	if short := s.Short(m.Sys); len(short) > 0 {
		says := strings.Join(s.Says(m.Sys), " ")
		r.Text = head + longest(short, w-kit.GutterW-len(head)) // the detail and the page say the rest
		r.Detail = "Size " + s.Size + ": " + says
		r.WhyOf = func() []desk.Reason { return saidReasons(m, s, countWires, r.Text+" "+says) }
	}
	return []desk.Row{r}
}

// CliffsPage is the strip: a bar of the OD for each count, the present one marked, and where a
// layer or another sheath begins.
func CliffsPage(m *desk.Model, w int, of string) desk.Page {
	s, why := stripOf(m, of)
	other := countSpares
	if of == countSpares {
		other = countWires
	}
	change := desk.Row{Key: "other", Text: "count " + other + " instead", Detail: "The same bars over the number of " + other,
		Does: "count " + other, Enter: func(m *desk.Model) { m.Back(); m.Show(CliffsKind, other) }}
	if why != "" {
		return desk.Page{Lines: []string{m.Sys.Says(why)}, Rows: []desk.Row{change}}
	}
	says := strings.Join(s.OfProposed(m.Sys), " ")
	p := desk.Page{Lines: []string{counted(s) + words.Either(apartAsLaid(s), ", laid as proposed. ", ". ") + says}}
	if m.ListHeight() < lowStrip { // a low screen has the sentences with the rows
		says = words.Capital(longest(s.Short(m.Sys), w-1))
		p.Lines = []string{says}
	}
	p.Why = saidReasons(m, s, of, says)
	columns := barColumns(m, s, w)
	p.Cols = columns.Head()
	for n := s.Least; n <= s.Most; n++ {
		if n == s.Now {
			p.Start = len(p.Rows)
			if apartAsLaid(s) {
				p.Rows = append(p.Rows, laidRow(m, s, columns))
			}
		}
		p.Rows = append(p.Rows, countRow(m, s, columns, of, n))
	}
	p.Rows = append(p.Rows, change)
	return p
}

// longest is the first of some texts, the longest first, that has room in w cells; else the last.
func longest(all []string, w int) string {
	for _, text := range all {
		if len(text) <= w || text == all[len(all)-1] {
			return text
		}
	}
	return ""
}

// lowStrip is the height below which a list has room for no sentences.
const lowStrip = 10

// counted is what is counted, and how many there are.
func counted(s *cliff.Strip) string {
	if s.What == cliff.Spares {
		return words.Plural(s.Now, "spare", "spares") + " here"
	}
	return words.Plural(s.Now, "wire", "wires") + " of size " + s.Size
}

// apartAsLaid reports whether the lay-up in use is another than the one proposed for so many.
func apartAsLaid(s *cliff.Strip) bool {
	p, ok := s.Point(s.Now)
	return ok && s.Laid.Branch != nil && unit.MM.Diameter(p.OverMM) != unit.MM.Diameter(s.Laid.OverMM)
}

// laidRow is the branch as it is laid now, where that is another lay-up than the proposed one.
func laidRow(m *desk.Model, s *cliff.Strip, columns kit.Columns[bar]) desk.Row {
	detail := "The lay-up in use"
	if room := s.Room(); room > 0 {
		detail += fmt.Sprintf(", room for %d", room)
	}
	return desk.Row{Key: "laid", Text: columns.Line(bar{mark: "=", Point: s.Laid, note: "as laid"}),
		Detail: detail + ". The other bars are proposed", Why: pointReasons(m, s.Laid)}
}

// countRow is one bar.
func countRow(m *desk.Model, s *cliff.Strip, columns kit.Columns[bar], of string, n int) desk.Row {
	point, known := s.Point(n)
	b := bar{Point: point, note: strip.Note(s, n, columns.Width() < wideStrip)}
	if b.N = n; n == s.Now && !apartAsLaid(s) {
		b.mark = "="
	}
	r := desk.Row{Key: fmt.Sprint(n), Text: columns.Line(b), Detail: "is being worked out"}
	if !known {
		return r
	}
	r.Detail = countSays(m, s, n)
	if point.Branch != nil {
		r.Show = showPoint(s, of, point)
		r.Why = desk.InTrial(r.Show, pointReasons(m, point))
		r.WhyOf = func() []desk.Reason { return append(r.Why, saidReasons(m, s, of, r.Detail)...) }
	}
	return r
}

// countSays is a bar in words: what it is, what begins with it, and what is odd about it.
func countSays(m *desk.Model, s *cliff.Strip, n int) string {
	p, _ := s.Point(n)
	if p.Branch == nil {
		return fmt.Sprintf("%d: no lay-up of so many keeps what is locked", n)
	}
	text := s.Comes(n, m.Sys)
	if text == "" {
		text = fmt.Sprintf("%d: OD %s %s", n, m.Sys.Diameter(p.OverMM), m.Sys.Name())
		if p.Sheath > 0 {
			text += fmt.Sprintf(", in sheath %s %s", m.Sys.Diameter(p.Sheath), m.Sys.Name())
		}
		text += "."
	}
	if odd := s.Odd(n, m.Sys); odd != "" {
		text = odd
	}
	switch p.Relaxed {
	case plan.Gaps:
		text += " It has gaps over the limit."
	case plan.GapLift:
		text += " It is tight and has gaps over the limit."
	case plan.Nothing:
		text += " It will not close."
	}
	return text
}

// bar is one line of the strip.
type bar struct {
	cliff.Point
	mark, note string
}

// The widths from which a strip has the tube and the lay-up, and from which the OD of the sheath.
const (
	wideStrip   = 60
	widestStrip = 96
)

// barColumns are the columns of the strip. A narrow one has the count, the bar, the OD and the note.
func barColumns(m *desk.Model, s *cliff.Strip, w int) kit.Columns[bar] {
	w -= kit.GutterW
	most := strip.Most(s)
	over := func(v unit.Millimetre) string {
		if v <= 0 {
			return "-"
		}
		return m.Sys.Diameter(v)
	}
	counted := kit.Column[bar]{Head: countWires, Least: 5, Align: kit.ToRight, Cell: func(b bar) string { return fmt.Sprint(b.N) }}
	if s.What == cliff.Spares {
		counted.Head, counted.Least = countSpares, 6
	}
	behind := []kit.Column[bar]{
		{Head: "OD " + m.Sys.Name(), Least: 6, Align: kit.ToRight, Cell: func(b bar) string { return over(b.OverMM) }}}
	if w >= widestStrip {
		behind = append(behind,
			kit.Column[bar]{Head: "in sheath", Least: 10, Align: kit.ToRight, Cell: func(b bar) string { return over(b.Sheath) }})
	}
	if w >= wideStrip {
		behind = append(behind,
			kit.Column[bar]{Head: "tube", Least: 6, Align: kit.ToRight, Cell: func(b bar) string { return strip.Size(b.Point) }},
			kit.Column[bar]{Head: "lay-up", Lead: 1, Least: 16, Cell: func(b bar) string { return strip.Lays(b.Point, m.Cfg.ASCII) }})
	}
	behind = append(behind, kit.Column[bar]{Head: "begins", Least: beginsW(w), Lead: 1,
		Cell: func(b bar) string { return b.note }})
	room := w - 2 - counted.Least
	for _, c := range behind {
		room -= 1 + c.Lead + c.Least
	}
	room = min(max(room-1, 4), 60)
	return kit.GivenColumns(append([]kit.Column[bar]{{Least: 1, Cell: func(b bar) string { return b.mark }}, counted,
		{Least: room, Cell: func(b bar) string { return strip.Bar(b.OverMM, most, room, m.Cfg.ASCII) }}}, behind...), m.Cfg.ASCII)
}

// beginsW is how wide the note of what begins is: a narrow strip does not name the tube.
func beginsW(w int) int {
	if w >= wideStrip {
		return len("layer, tube 1/2")
	}
	return strip.ShortNote
}

// showPoint is the bench with the branch as a point has it: to draw, never to change. What is said of
// the rest of the harness is left out: the wires that are counted up have no cavities of their own.
func showPoint(s *cliff.Strip, of string, p cliff.Point) func(m *desk.Model) *desk.Model {
	return func(m *desk.Model) *desk.Model {
		t := m.Try(fmt.Sprintf("%s %d", of, p.N), func() *model.Harness { return s.Harness(p) })
		id := m.H.Branches[m.Branch].ID
		if slices.ContainsFunc(t.Sheet.Snags, func(g sheet.Snag) bool { return g.Where != id }) {
			t.Sheet = t.Sheet.About(id)
		}
		return t
	}
}

// pointReasons are the figures of a bar, in the lay-up that it is of.
func pointReasons(m *desk.Model, p cliff.Point) []desk.Reason {
	id := m.H.Branches[m.Branch].ID
	out := desk.FiguresOf(id, "branch.over")
	if p.Sheath > 0 {
		out = append(out, desk.FiguresOfPart(id, p.Tube.ID, "tube.over")...)
	}
	return out
}

// saidReasons are the figures of what is said of a strip: the OD of each lay-up that is named.
func saidReasons(m *desk.Model, s *cliff.Strip, of, says string) []desk.Reason {
	var out []desk.Reason
	named := map[string]bool{}
	if s.Laid.Branch != nil {
		out = append(out, pointReasons(m, s.Laid)...)
		named[m.Sys.Diameter(s.Laid.OverMM)] = true
	}
	for n := s.Least; n <= s.Most; n++ {
		p, ok := s.Point(n)
		if !ok || p.Branch == nil {
			continue
		}
		over := m.Sys.Diameter(p.OverMM)
		if named[over] || !strings.Contains(says, over) {
			continue
		}
		named[over] = true
		out = append(out, desk.InTrial(showPoint(s, of, p), desk.FiguresOf(m.H.Branches[m.Branch].ID, "branch.over"))...)
	}
	return out
}
