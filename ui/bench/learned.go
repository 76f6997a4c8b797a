package bench

import (
	"fmt"

	"contralay/calc/learn"
	"contralay/model/catalogue"
	"contralay/model/unit"
	"contralay/ui/paper"
)

// What was measured of this harness beside what was predicted, and what the shop goes by.

// plusMinus is a difference with its sign.
func (m *Model) plusMinus(v unit.Millimetre) string {
	if v < 0 {
		return "-" + m.sys.Fine(-v)
	}
	return "+" + m.sys.Fine(v)
}

// learnedRow opens it; it is there once something is measured, or corrected by.
func (m *Model) learnedRow() (row, bool) {
	n := len(m.sheet.Measured(m.fileName()))
	if n == 0 && len(m.sheet.Cat.Corrections) == 0 {
		return row{}, false
	}
	return row{key: "learned", text: fmt.Sprintf("measured and learned: %s", plural(n, "figure", "figures")), detail: "Enter: what was measured beside what was predicted, and what the shop corrects by", enter: func(m *Model) { m.open(learnedScreen()) }}, true
}

func (m *Model) fileName() string {
	if m.path == "" {
		return "this one"
	}
	return m.path
}

func learnedScreen() screen {
	return screen{name: "learned", page: func(m *Model, w int) page {
		p := page{lines: []string{"Measured beside predicted, of this harness alone: contralay learn FILE... takes many. Few readings, many groups and one reel behind them all teach less than they seem to."}, empty: "nothing is measured yet; Esc goes back"}
		for _, l := range m.lessons() {
			var text []string
			for _, t := range paper.Lesson(l) {
				text = append(text, wrap(t, max(20, w-3))...)
			}
			r := row{key: l.Group, text: text[0], detail: "too few to correct by", enter: func(m *Model) { m.tell("+ accepts it for every harness of this shop, . withdraws it") }}
			if l.Enough && m.cfg.Learn != nil {
				r.detail = "+ corrects every harness of this shop by it, . takes that back; the history stays"
				r.step = func(m *Model, by int) {
					if by < 0 {
						m.tell("+ accepts it")
						return
					}
					if len(l.Outliers) > 0 {
						m.refuse("an odd one out, " + l.Outliers[0].Of + ": contralay learn leaves it out, or takes it, by name")
						return
					}
					c, ok := paper.Accepted(l, m.today(), m.fileName())
					if !ok {
						m.refuse("too few readings: nothing is corrected")
						return
					}
					m.goBy(c, "corrected by "+l.Group)
				}
			}
			m.withdraws(&r, l.Group)
			p.rows = append(p.rows, r)
			for _, t := range text[1:] {
				p.rows = append(p.rows, row{text: t, detail: t})
			}
		}
		seen := map[string]bool{}
		for _, c := range m.cfg.Cat.Corrections {
			if seen[c.Of] {
				continue
			}
			seen[c.Of] = true
			text := paper.InUse(m.cfg.Cat, c.Of)
			lines := wrap(text, max(20, w-3))
			r := row{key: "in use " + c.Of, text: lines[0], detail: text}
			m.withdraws(&r, c.Of)
			p.rows = append(p.rows, r)
			for _, t := range lines[1:] {
				p.rows = append(p.rows, row{text: "  " + t, detail: text})
			}
		}
		return p
	}}
}

// lessons are those of this harness.
func (m *Model) lessons() []learn.Lesson {
	return learn.Lessons(m.sheet.Measured(m.fileName()), learn.Options{})
}

func (m *Model) today() string {
	if m.cfg.Now == nil {
		return ""
	}
	return m.cfg.Now().Format("2006-01-02")
}

// withdraws lets a row take back what the shop goes by.
func (m *Model) withdraws(r *row, of string) {
	if _, in := m.cfg.Cat.Correction(of); !in || m.cfg.Learn == nil {
		return
	}
	r.drop = func(m *Model) {
		m.goBy(catalogue.Correction{Of: of, On: m.today(), Withdrawn: true}, of+" is no longer corrected")
	}
}

// goBy writes what the shop goes by from now on, and works everything out anew by it.
func (m *Model) goBy(c catalogue.Correction, says string) {
	cat, err := m.cfg.Learn(c)
	if err != nil {
		m.refuse("not written: " + err.Error())
		return
	}
	m.cfg.Cat = cat
	m.rebuild()
	m.tell(says)
}
