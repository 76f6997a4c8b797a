package bench

import (
	"fmt"

	"contralay/calc"
	"contralay/model/unit"
	"contralay/ui/draw"
)

// branchesScreen lists the branches: length, count, diameter, worst snag.
func branchesScreen() screen {
	return screen{name: "branches", page: func(m *Model, w int) page { return m.branchesPage(w) }}
}

func (m *Model) branchesPage(w int) page {
	p := page{why: figs("", 0, "", "loom.wire", "loom.mass"),
		lines: []string{m.wholeText()},
		empty: "no branch yet: terminations, wires and branches are written in the file; Esc opens the menu"}
	wide := max(10, w-68)
	p.cols = fmt.Sprintf("%-7s%-*s%-14s%7s %6s %9s  %s", "branch", wide, "name", "from, to", m.sys.Name(), "holds", "over", "sheath")
	for i := range m.h.Branches {
		mb, b := &m.h.Branches[i], &m.sheet.Branches[i]
		over := "-"
		if b.OverMM > 0 {
			over = m.sys.Diameter(b.OverMM)
		}
		sheath := b.Sheath.Tube.ShelfLabel
		if b.Sheath.Part == "" && b.OverMM > 0 {
			sheath = "none"
		}
		p.rows = append(p.rows, row{
			text: fmt.Sprintf("%s%s%s%7s %6d %9s  %s", draw.Fit(mb.ID, 6, m.cfg.ASCII)+" ", draw.Fit(mb.Name.V, wide-1, m.cfg.ASCII)+" ",
				draw.Fit(mb.From+" "+mb.To, 13, m.cfg.ASCII)+" ", m.sys.Length(mb.LengthMM), len(b.Components), over, sheath),
			detail: fmt.Sprintf("%s, %s, %d components; Enter opens it", mb.ID, b.Make, len(b.Components)),
			mark:   m.markFor(mb.ID),
			why:    figs(mb.ID, 0, "", "branch.over", "branch.length"),
			enter: func(m *Model) {
				m.branch, m.stack, m.zoom = i, nil, false
			},
		})
	}
	return p
}

func (m *Model) wholeText() string {
	t := fmt.Sprintf("%d branches", len(m.h.Branches))
	if m.waiting() {
		return t + "   lay-ups are being worked out"
	}
	return t + fmt.Sprintf("   wire %s m   mass %s", unit.Fixed(float64(m.sheet.Totals.WireMM)/1000, 1), grams(m.sheet.Totals.Gram, m.sheet.Totals.GramKnown))
}

// waiting reports whether some branch still waits for its lay-up.
func (m *Model) waiting() bool {
	for i := range m.sheet.Branches {
		if m.sheet.Branches[i].Waiting {
			return true
		}
	}
	return false
}

// worst is the worst snag that calls for someone; notes do not.
func (m *Model) worst() (calc.Group, int, bool) {
	var first calc.Group
	n := 0
	for _, g := range calc.Grouped(m.sheet.Snags) {
		if g.Level == calc.Note {
			break
		}
		if n == 0 {
			first = g
		}
		n++
	}
	return first, n, n > 0
}
