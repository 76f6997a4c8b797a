package bench

import (
	"fmt"
	"slices"
	"strings"

	"contralay/calc"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
	"contralay/ui/draw"
)

// branchesScreen is the map: the tree of branches with lengths, counts, diameters and
// what is wrong, and what can be done to it.
func branchesScreen() screen {
	return screen{name: "branches", page: func(m *Model, w int) page { return m.branchesPage(w) }}
}

func (m *Model) branchesPage(w int) page {
	p := page{why: figs("", 0, "", "loom.wire", "loom.mass"),
		lines: []string{m.wholeText()},
		empty: "no branch yet: terminations, wires and branches are written in the file; Esc opens the menu"}
	if stale := m.sheet.Stale(); len(stale) > 0 {
		p.rows = append(p.rows, m.staleRow(stale))
	}
	tree := max(18, min(44, w-52))
	p.cols = fmt.Sprintf("%-*s%7s%7s%9s  %s", tree, "branch", m.sys.Name(), "holds", "over", "sheath")
	at := ""
	for _, k := range m.sheet.Walked() {
		if k.Deep == 0 && k.From != at {
			at = k.From
			p.rows = append(p.rows, m.placeRow(at, tree, ""))
		}
		p.rows = append(p.rows, m.branchRow(k, tree))
	}
	if len(m.h.Branches) > 0 {
		p.rows = append(p.rows, m.endsRow(), m.splicesRow(), m.listsRow())
	}
	return p
}

// twigs draws where a branch hangs.
func (m *Model) twigs(last []bool) string {
	out := ""
	for n, l := range last {
		switch {
		case n < len(last)-1 && l:
			out += "  "
		case n < len(last)-1:
			out += "│ "
		case l:
			out += "└ "
		default:
			out += "├ "
		}
	}
	if m.cfg.ASCII {
		out = strings.NewReplacer("│", "|", "└", "'", "├", "|").Replace(out)
	}
	return out
}

// placeRow is the termination the tree is walked from.
func (m *Model) placeRow(id string, tree int, twig string) row {
	r := row{key: "place " + id, text: twig + draw.Fit(id+m.clockText(id)+"  "+m.placeName(id), tree, m.cfg.ASCII), mark: m.markFor(id), detail: "Enter opens it"}
	if _, ok := m.sheet.X.Termination[id]; ok {
		r.enter = func(m *Model) { m.open(endScreen(id)) }
		return r
	}
	r.detail = "a breakout"
	return r
}

// clockText is how a termination is clocked, seen from the wire side: its key, and where
// its boot points.
func (m *Model) clockText(id string) string {
	t, ok := m.sheet.X.Termination[id]
	if !ok {
		return ""
	}
	h, out := &m.h.Terminations[t], ""
	if h.Clock.Set {
		out += fmt.Sprintf(" key %d", h.Clock.V)
	}
	if h.BootClock.Set {
		out += fmt.Sprintf(" boot %d", h.BootClock.V)
	}
	return out
}

func (m *Model) placeName(id string) string {
	if t, ok := m.sheet.X.Termination[id]; ok {
		return m.h.Terminations[t].Name.V
	}
	if t, ok := m.sheet.X.Breakout[id]; ok {
		return m.h.Breakouts[t].Name.V
	}
	return ""
}

func (m *Model) branchRow(k calc.Walk, tree int) row {
	i := k.Branch
	mb, b := &m.h.Branches[i], &m.sheet.Branches[i]
	over := "-"
	if b.OverMM > 0 {
		over = m.sys.Diameter(b.OverMM)
	}
	sheath := b.Sheath.Tube.ShelfLabel
	if b.Sheath.Part == "" && b.OverMM > 0 {
		sheath = "none"
	}
	id, to := mb.ID, k.To
	name := mb.ID + " to " + to + m.clockText(to)
	if n := mb.Name.V; n != "" {
		name += "  " + n
	}
	return row{
		key:    "branch " + id,
		text:   fmt.Sprintf("%s%7s%7d%9s  %s", draw.Fit(m.twigs(k.Last)+name, tree, m.cfg.ASCII), m.sys.Length(mb.LengthMM), len(b.Components), over, sheath),
		detail: fmt.Sprintf("Enter opens it, + a leg at %s, - splits it, digits its length; %s, %s", to, m.lengthText(mb), b.Make),
		mark:   m.markFor(id),
		why:    figs(id, 0, "", "branch.over", "branch.length"),
		enter: func(m *Model) {
			m.branch, m.stack, m.zoom = m.sheet.X.Branch[id], nil, false
		},
		step: func(m *Model, by int) {
			if by < 0 {
				m.open(splitScreen(id))
				return
			}
			m.addLeg(to)
		},
		field: &field{label: "length of " + id, unit: m.sys.Name(), value: m.sys.Length(mb.LengthMM), number: true, set: func(m *Model, text string) error {
			v, err := m.sys.Parse(text)
			if err != nil {
				return err
			}
			if v < 1 || v > longestBranch {
				return fmt.Errorf("%s %s is out of range: %s to %s %s", text, m.sys.Name(), m.sys.Length(1), m.sys.Length(longestBranch), m.sys.Name())
			}
			m.change(m.h.EditBranch(m.sheet.X.Branch[id], func(b *model.Branch) { b.LengthMM = v }), id+" is now "+text+" "+m.sys.Name())
			return nil
		}},
	}
}

// longestBranch is more than any vehicle's loom has.
const longestBranch unit.Millimetre = 50_000

// newLeg is what a leg added at the bench begins with: its length is typed next.
const newLeg unit.Millimetre = 300

// addLeg puts a branch to a new termination on a breakout, or says why it cannot.
func (m *Model) addLeg(at string) {
	if _, ok := m.sheet.X.Breakout[at]; !ok {
		m.refuse(at + " is a termination: - splits a branch at a new breakout, legs hang on those")
		return
	}
	h, branch, term := m.h.AddLeg(at, newLeg, 2)
	m.change(h, fmt.Sprintf("branch %s to %s; digits set its length, its ends are under terminations", branch, term))
	m.on[m.cursorKey()] = "branch " + branch
}

// splitScreen asks where a branch is parted.
func splitScreen(id string) screen {
	return screen{name: "split", safe: true, pick: true, page: func(m *Model, w int) page {
		i, ok := m.sheet.X.Branch[id]
		if !ok {
			return page{empty: "branch " + id + " is gone; Esc goes back"}
		}
		b := &m.h.Branches[i]
		p := page{lines: []string{fmt.Sprintf("Split %s, %s %s long, at a new breakout.", id, m.sys.Length(b.LengthMM), m.sys.Name()), "Both parts keep its lay-up; wires leave where legs hang on."}}
		at := func(label string, v unit.Millimetre) row {
			return row{key: label, text: fmt.Sprintf("%s: %s %s from %s", label, m.sys.Length(v), m.sys.Name(), b.From), detail: "Enter splits it there", enter: func(m *Model) { m.split(id, v) },
				why: []reason{{made: func() (calc.Why, bool) {
					return calc.Stated("the middle of "+id, "half its length", float64(v), calc.Length, catalogue.Origin{Source: "given in the file", Standing: catalogue.House}), true
				}}},
				field: &field{label: "from " + b.From, unit: m.sys.Name(), number: true, set: func(m *Model, text string) error {
					v, err := m.sys.Parse(text)
					if err != nil {
						return err
					}
					if v <= 0 || v >= b.LengthMM {
						return fmt.Errorf("%s %s is out of range: more than 0, less than %s", text, m.sys.Name(), m.sys.Length(b.LengthMM))
					}
					m.split(id, v)
					return nil
				}}}
		}
		p.rows = []row{at("in the middle, or type where", b.LengthMM/2), {key: "no", text: "leave it whole", enter: func(m *Model) { m.back() }}}
		return p
	}}
}

func (m *Model) split(id string, at unit.Millimetre) {
	h, j, err := m.h.Split(m.sheet.X.Branch[id], at)
	if err != nil {
		m.refuse(err.Error())
		return
	}
	m.back()
	m.change(h, fmt.Sprintf("%s now ends at the new breakout %s; + on it hangs a leg there", id, j))
}

func (m *Model) listsRow() row {
	return row{key: "lists", text: "lists: wire by reel, contacts, crimps, units", detail: "Enter shows what is taken off the shelf", enter: func(m *Model) { m.open(listsScreen()) }}
}

// staleRow offers to lay anew what no longer holds what runs there.
func (m *Model) staleRow(stale []int) row {
	var ids []string
	for _, i := range stale {
		ids = append(ids, m.h.Branches[i].ID)
	}
	return row{key: "stale", mark: "!", text: fmt.Sprintf("lay anew %s: what runs there has changed", few(ids)), detail: "Enter takes these lay-ups away, so that new ones are proposed; a locked or pinned one stays", enter: func(m *Model) {
		h, n := m.h.LayAnew(m.sheet.Stale())
		if n == 0 {
			m.refuse("all of them hold something locked or pinned: open the branch")
			return
		}
		m.change(h, fmt.Sprintf("%d lay-ups taken away; new ones are proposed", n))
	}}
}

// few names some ids and counts the rest.
func few(ids []string) string {
	if len(ids) > 4 {
		return strings.Join(ids[:4], ", ") + fmt.Sprintf(" and %d more", len(ids)-4)
	}
	return strings.Join(ids, ", ")
}

func (m *Model) wholeText() string {
	t := fmt.Sprintf("%d branches", len(m.h.Branches))
	if m.waiting() {
		return t + "   lay-ups are being worked out"
	}
	clocked := ""
	if slices.ContainsFunc(m.h.Terminations, func(t model.Termination) bool { return t.Clock.Set || t.BootClock.Set }) {
		clocked = "   key and boot by the clock, from the wire side"
	}
	return t + fmt.Sprintf("   wire %s m   mass %s"+clocked, unit.Fixed(float64(m.sheet.Totals.WireMM)/1000, 1), grams(m.sheet.Totals.Gram, m.sheet.Totals.GramKnown))
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
