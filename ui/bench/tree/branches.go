package tree

import (
	"fmt"
	"slices"
	"strings"

	"contralay/calc/phase/planning"
	"contralay/calc/phase/wires"
	"contralay/calc/query/why"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/edit"
	"contralay/model/unit"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/kit"
	"contralay/ui/bench/words"
)

// The screens of the tree of branches.
const (
	BranchesKind           = desk.KindMap
	SplitKind    desk.Kind = "split"
)

// BranchesPage is the map: the tree of branches with lengths, counts, diameters and
// what is wrong, and what can be done to it.
func BranchesPage(m *desk.Model, w int, _ string) desk.Page {
	p := desk.Page{Why: desk.FiguresOf(desk.WholeLoom, "loom.wire", "loom.mass"),
		Lines: []string{wholeText(m)},
		Empty: "Nothing is here yet. Esc opens the menu"}
	if len(m.H.Branches)+len(m.H.Terminations) == 0 {
		p.Lines = []string{"An empty board. Begin with what the wires come from."}
		p.Rows = append(m.Tables.First(m), desk.FileRows(m)...)
		return p
	}
	p.Rows = append(p.Rows, needRows(m)...)
	p.Start = len(p.Rows) // what is missing moves nobody who only looks at the tree
	if stale := planning.Stale(m.Sheet); len(stale) > 0 {
		p.Rows = append(p.Rows, staleRow(m, stale))
	}
	tree := max(18, min(44, w-52))
	columns := branchColumns(m, tree)
	p.Cols = columns.Head()
	at, walk := "", wires.Walked(m.Sheet)
	for n, k := range walk {
		if k.Deep == 0 && k.From != at {
			at = k.From
			p.Rows = append(p.Rows, placeRow(m, at, w, ""))
		}
		p.Rows = append(p.Rows, branchRow(m, walk, n, columns))
		if _, is := m.Sheet.Index.Breakout[k.To]; is {
			p.Rows = append(p.Rows, placeRow(m, k.To, w, stem(m, k)))
		}
	}
	for _, id := range bare(m) {
		p.Rows = append(p.Rows, placeRow(m, id, w, ""))
	}
	p.Rows = append(append(p.Rows, endsRow(m), splicesRow(m), listsRow(m)), desk.FileRows(m)...)
	if p.Start == len(p.Rows) {
		p.Start = 0
	}
	return p
}

// twigs draws where a branch hangs.
func twigs(m *desk.Model, last []bool) string {
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
	if m.Cfg.ASCII {
		out = strings.NewReplacer("│", "|", "└", "'", "├", "|").Replace(out)
	}
	return out
}

// clockText is how a termination is clocked, seen from the wire side: its key, and where
// its boot points.
func clockText(m *desk.Model, id string) string {
	t, ok := m.Sheet.Index.Termination[id]
	if !ok {
		return ""
	}
	h, out := &m.H.Terminations[t], ""
	if h.Clock.Set {
		out += fmt.Sprintf(" key %d", h.Clock.V)
	}
	if h.BootClock.Set {
		out += fmt.Sprintf(" boot %d", h.BootClock.V)
	}
	return out
}

func placeName(m *desk.Model, id string) string {
	if t, ok := m.Sheet.Index.Termination[id]; ok {
		return m.H.Terminations[t].Name.V
	}
	if t, ok := m.Sheet.Index.Breakout[id]; ok {
		return m.H.Breakouts[t].Name.V
	}
	return ""
}

// branchColumns are the columns of the tree, tree cells wide where the twigs are.
func branchColumns(m *desk.Model, tree int) kit.Columns[wires.Walk] {
	return kit.GivenColumns([]kit.Column[wires.Walk]{
		{Head: "branch", Least: tree, Cell: func(k wires.Walk) string {
			mb := &m.H.Branches[k.Branch]
			name := mb.ID + " to " + k.To + clockText(m, k.To)
			if n := mb.Name.V; n != "" {
				name += "  " + n
			}
			return twigs(m, k.Last) + name
		}},
		{Head: m.Sys.Name(), Least: 6, Align: kit.ToRight,
			Cell: func(k wires.Walk) string {
				if mb := &m.H.Branches[k.Branch]; mb.Measured() {
					return m.Sys.Length(mb.LengthMM)
				}
				return "?"
			}},
		{Head: "pieces", Least: 6, Align: kit.ToRight, Cell: func(k wires.Walk) string {
			return fmt.Sprint(len(m.Sheet.Branches[k.Branch].Components))
		}},
		{Head: "OD", Least: 8, Align: kit.ToRight, Cell: func(k wires.Walk) string {
			if over := m.Sheet.Branches[k.Branch].OverMM; over > 0 {
				return m.Sys.Diameter(over)
			}
			return "-"
		}},
		{Head: "sheath", Lead: 1, Cell: func(k wires.Walk) string {
			b := &m.Sheet.Branches[k.Branch]
			if b.Sheath.Part == "" && b.OverMM > 0 && m.H.Branches[k.Branch].Measured() {
				return "none"
			}
			return b.Sheath.Tube.V.ShelfLabel
		}},
	}, m.Cfg.ASCII)
}

// branchRow is the n-th branch of a walk: + hangs a leg at its far end, - opens what can be
// changed of it, digits set its length and go on to the next branch.
func branchRow(m *desk.Model, walk []wires.Walk, n int, columns kit.Columns[wires.Walk]) desk.Row {
	k := walk[n]
	mb, b := &m.H.Branches[k.Branch], &m.Sheet.Branches[k.Branch]
	id, to, from := mb.ID, k.To, k.From
	next := ""
	if n+1 < len(walk) {
		next = "branch " + m.H.Branches[walk[n+1].Branch].ID
	}
	length := lengthField(m, id)
	set := length.Set
	length.Set = func(m *desk.Model, text string) error {
		if err := set(m, text); err != nil {
			return err
		}
		if next != "" {
			m.PutOn(next)
		}
		return nil
	}
	return desk.Row{
		Key:    "branch " + id,
		Text:   columns.Line(k),
		Detail: fmt.Sprintf("+ adds at %s, - changes %s, . removes it, digits set its length. %s", to, id, branchSays(m, mb, b)),
		Mark:   m.MarkFor(id),
		Why:    desk.FiguresOf(id, "branch.over", "branch.length"),
		Enter: func(m *desk.Model) {
			m.TakeBranch(m.Sheet.Index.Branch[id])
		},
		Step: func(m *desk.Model, by int) {
			if by < 0 {
				m.Show(ChangeKind, id)
				return
			}
			m.Tables.AddAt(m, to)
		},
		Field: &length,
		Drop:  func(m *desk.Model) { removeBranch(m, id, from) },
	}
}

func branchSays(m *desk.Model, mb *model.Branch, b *sheet.Branch) string {
	return fmt.Sprintf("%s, %s", desk.LengthText(m, mb), b.Make)
}

// lengthField sets the length of a branch.
func lengthField(m *desk.Model, id string) desk.Field {
	mb := &m.H.Branches[m.Sheet.Index.Branch[id]]
	return desk.Field{Label: "length of " + id, Unit: m.Sys.Name(), Value: m.Sys.Length(mb.LengthMM), Number: true,
		Set: func(m *desk.Model, text string) error {
			v, err := m.Sys.Parse(text)
			if err != nil {
				return err
			}
			if v < 1 || v > desk.LongestBranch {
				return fmt.Errorf("%s %s is out of range: %s to %s %s", text, m.Sys.Name(), m.Sys.Length(1),
					m.Sys.Length(desk.LongestBranch), m.Sys.Name())
			}
			setLength(m, id, v, text)
			return nil
		}}
}

func setLength(m *desk.Model, id string, v unit.Millimetre, text string) {
	m.Change(m.H.EditBranch(m.Sheet.Index.Branch[id], func(b *model.Branch) { b.LengthMM = v }), id+" is now "+text+" "+m.Sys.Name())
}

// SplitPage asks where a branch is parted.
func SplitPage(m *desk.Model, _ int, id string) desk.Page {
	i, ok := m.Sheet.Index.Branch[id]
	if !ok {
		return desk.Page{Empty: "branch " + id + " is gone. Esc goes back"}
	}
	b := &m.H.Branches[i]
	p := desk.Page{Lines: []string{fmt.Sprintf("Split %s, %s %s long, at a new breakout.", id, m.Sys.Length(b.LengthMM), m.Sys.Name()),
		"Both parts keep its lay-up, tolerance and bend. Covers are cut there. Wires leave where you add legs."}}
	at := func(label string, v unit.Millimetre) desk.Row {
		return desk.Row{Key: label, Text: fmt.Sprintf("%s: %s %s from %s", label, m.Sys.Length(v), m.Sys.Name(), b.From),
			Detail: "Enter splits it there", Enter: func(m *desk.Model) { split(m, id, v) },
			Why: []desk.Reason{{Made: func() (why.Why, bool) {
				return why.Stated("the middle of "+id, "half its length", float64(v), why.Length,
					catalogue.Origin{Source: "given in the file", Standing: catalogue.House}), true
			}}},
			Field: &desk.Field{Label: "from " + b.From, Unit: m.Sys.Name(), Number: true, Set: func(m *desk.Model, text string) error {
				v, err := m.Sys.Parse(text)
				if err != nil {
					return err
				}
				if v <= 0 || v >= b.LengthMM {
					return fmt.Errorf("%s %s is out of range: more than 0, less than %s", text, m.Sys.Name(), m.Sys.Length(b.LengthMM))
				}
				split(m, id, v)
				return nil
			}}}
	}
	p.Rows = []desk.Row{at("in the middle, or type where", b.LengthMM/2),
		{Key: "no", Text: "do not split it", Enter: func(m *desk.Model) { m.Back() }}}
	return p
}

func split(m *desk.Model, id string, at unit.Millimetre) {
	h, j, err := edit.Split(m.H, id, at)
	if err != nil {
		m.Refuse(err.Error())
		return
	}
	if changed(m, h, fmt.Sprintf("%s now ends at the new breakout %s. + on it adds a leg there", id, j)+uncovered(m.H, h, id, j)) {
		toMap(m, "branch "+id)
	}
}

func listsRow(m *desk.Model) desk.Row {
	return desk.Row{Key: "lists", Text: "lists: wire by reel, contacts, crimps, units", Detail: "Enter lists what to take off the shelf",
		Enter: func(m *desk.Model) { m.Show(ListsKind, "") }}
}

// staleRow offers to lay anew what no longer holds what runs there.
func staleRow(m *desk.Model, stale []int) desk.Row {
	var ids []string
	for _, i := range stale {
		ids = append(ids, m.H.Branches[i].ID)
	}
	return desk.Row{Key: "stale", Mark: "!", Text: fmt.Sprintf("lay %s again: its wires have changed", words.Few(ids)),
		Detail: "Enter removes them and proposes new ones. Locked or pinned lay-ups stay", Enter: func(m *desk.Model) {
			h, n := m.H.LayAnew(planning.Stale(m.Sheet))
			if n == 0 {
				m.Refuse("each of them has something locked or pinned: open the branch")
				return
			}
			m.Change(h, fmt.Sprintf("%d lay-ups removed. New ones are proposed", n))
		}}
}

func wholeText(m *desk.Model) string {
	t := words.Plural(len(m.H.Branches), "branch", "branches")
	if n := len(allNeeds(m)); n > 0 { // the rows that say which may be above what is in sight
		t += ", " + words.Plural(n, "thing", "things") + " missing"
	}
	if desk.Waiting(m.Sheet) {
		return t + ", lay-ups are being worked out"
	}
	clocked := ""
	if slices.ContainsFunc(m.H.Terminations, func(t model.Termination) bool { return t.Clock.Set || t.BootClock.Set }) {
		clocked = ", key and boot by the clock, from the wire side"
	}
	so := ""
	if slices.ContainsFunc(m.Sheet.Wires, func(w sheet.Wire) bool { return w.Cut <= 0 }) {
		so = " so far"
	}
	return t + fmt.Sprintf(", wire %s m%s, mass %s"+clocked, unit.Fixed(m.Sheet.Totals.WireMM/1000, 1), so,
		words.Grams(m.Sheet.Totals.Gram.V, m.Sheet.Totals.Gram.Set))
}
