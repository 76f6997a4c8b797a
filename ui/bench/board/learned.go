package board

import (
	"fmt"

	"contralay/calc/formula/learn"
	"contralay/calc/query/run"
	"contralay/model/catalogue"
	"contralay/model/visible"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/kit"
	"contralay/ui/bench/words"
	"contralay/ui/hours"
	"contralay/ui/paper"
)

// What was measured of this harness beside what was predicted, and what the shop goes by.

// learnedRow opens it; it is there once something is measured, or corrected by.
func learnedRow(m *desk.Model) (desk.Row, bool) {
	n := len(run.Measured(m.Sheet, fileName(m)))
	if n == 0 && len(m.Sheet.Cat.Corrections) == 0 {
		return desk.Row{}, false
	}
	return desk.Row{Key: "learned", Text: fmt.Sprintf("measured and learned: %s", words.Plural(n, "figure", "figures")),
		Detail: "Enter compares measured and predicted, and lists the shop's corrections",
		Enter:  func(m *desk.Model) { m.Show(LearnedKind, "") }}, true
}

func fileName(m *desk.Model) string {
	if m.File.Path == "" {
		return "this one"
	}
	return visible.Line(m.File.Path)
}

// LearnedKind is the screen of what was measured.
const LearnedKind desk.Kind = "learned"

// LearnedPage lists what was measured beside what was predicted, and what the shop corrects by.
func LearnedPage(m *desk.Model, w int, _ string) desk.Page {
	p := desk.Page{Lines: []string{"Measured and predicted, of this harness only. contralay measured FILE... reads many files. Few " +
		"readings, many groups or a single reel prove less than they seem to."},
		Empty: "Nothing is measured yet. Esc goes back"}
	for _, l := range lessons(m) {
		var text []string
		for _, t := range paper.Lesson(l) {
			text = append(text, kit.Wrap(t, max(20, w-3))...)
		}
		r := desk.Row{Key: l.Group, Text: text[0], Detail: "Too few readings to correct by",
			Enter: func(m *desk.Model) { m.Tell("+ accepts it for every harness of this shop, . withdraws it") }}
		if l.Enough && m.Cfg.Learn != nil {
			r.Detail = "+ corrects every harness of this shop, . withdraws that. The history stays"
			r.Step = func(m *desk.Model, by int) {
				if by < 0 {
					m.Tell("+ accepts it")
					return
				}
				if len(l.Outliers) > 0 {
					m.Refuse("one is far off, " + l.Outliers[0].Of + ": contralay measured can leave it out or take it, by name")
					return
				}
				c, ok := paper.Accepted(l, today(m), fileName(m))
				if !ok {
					m.Refuse("too few readings: nothing is corrected")
					return
				}
				goBy(m, c, "corrected by "+l.Group)
			}
		}
		withdraws(m, &r, l.Group)
		p.Rows = append(p.Rows, r)
		for _, t := range text[1:] {
			p.Rows = append(p.Rows, desk.Row{Text: t, Detail: t})
		}
	}
	seen := map[string]bool{}
	for _, c := range m.Cfg.Cat.Corrections {
		if seen[c.Of] {
			continue
		}
		seen[c.Of] = true
		text := hours.InUse(m.Cfg.Cat, c.Of)
		lines := kit.Wrap(text, max(20, w-3))
		r := desk.Row{Key: "in use " + c.Of, Text: lines[0], Detail: text}
		withdraws(m, &r, c.Of)
		p.Rows = append(p.Rows, r)
		for _, t := range lines[1:] {
			p.Rows = append(p.Rows, desk.Row{Text: "  " + t, Detail: text})
		}
	}
	return p
}

// lessons are those of this harness.
func lessons(m *desk.Model) []learn.Lesson {
	return learn.Lessons(run.Measured(m.Sheet, fileName(m)), learn.Options{})
}

func today(m *desk.Model) string {
	if m.Cfg.Now == nil {
		return ""
	}
	return m.Cfg.Now().Format("2006-01-02")
}

// withdraws lets a row take back what the shop goes by.
func withdraws(m *desk.Model, r *desk.Row, of string) {
	if _, in := m.Cfg.Cat.Correction(of); !in || m.Cfg.Learn == nil {
		return
	}
	r.Drop = func(m *desk.Model) {
		goBy(m, catalogue.Correction{Of: of, On: today(m), Withdrawn: true}, of+" is no longer corrected")
	}
}

// goBy writes what the shop goes by from now on, and works everything out anew by it.
func goBy(m *desk.Model, c catalogue.Correction, says string) {
	cat, err := m.Cfg.Learn(c)
	if err != nil {
		m.Refuse("not written: " + err.Error())
		return
	}
	m.Cfg.Cat = cat
	m.Rebuild()
	m.Tell(says)
}
