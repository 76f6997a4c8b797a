package several

import (
	"cmp"
	"fmt"
	"strconv"

	"contralay/calc/query/bulk"
	"contralay/model"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/kit"
	"contralay/ui/bench/words"
	"contralay/ui/paper"
)

// Page lists the wires of a connector, or of the branch in hand where of is "", and marks some of
// them.
func Page(m *desk.Model, w int, of string) desk.Page {
	here := wiresOf(m, of)
	ids := marked(m, of)
	where := of
	if b, _, ok := m.BranchHere(); of == "" && ok {
		where = b.ID
	}
	p := desk.Page{Empty: "No wire here yet. Esc goes back", Start: 2}
	if len(here) == 0 {
		return p
	}
	p.Lines = []string{fmt.Sprintf("%s: none of %d wires is marked.", where, len(here))}
	if len(ids) > 0 {
		p.Lines[0] = fmt.Sprintf("%s: %d of %d wires marked. Right goes on.", where, len(ids), len(here))
	}
	columns := columnsOf(m, w, of)
	p.Cols = columns.Head()
	p.Rows = append(p.Rows, groupRow(m, of), changeRow(m, of, ids))
	for _, i := range here {
		id := m.H.Wires[i].ID
		p.Rows = append(p.Rows, desk.Row{Key: id, Id: id, Mark: m.MarkFor(id), Does: "mark",
			TextOf: func() string { return columns.Line(i) }, More: func() string { return markText(m, of, id) },
			Enter: func(m *desk.Model) {
				k := marksOf(m, of)
				k.on[id], k.like = !k.on[id], ""
				sayMarked(m, of)
			},
			Step:  func(m *desk.Model, by int) { markLike(m, of, id, by > 0) },
			WhyOf: func() []desk.Reason { return desk.WireReasons(m, i) }})
	}
	return p
}

// columnsOf are the columns of the list; the first is the mark.
func columnsOf(m *desk.Model, w int, of string) kit.Columns[int] {
	on := marksOf(m, of).on
	columns := []kit.Column[int]{
		{Head: "", Least: 3, Cell: func(i int) string { return words.Either(on[m.H.Wires[i].ID], "[x]", "[ ]") }},
		{Head: "wire", Least: 5, Cell: func(i int) string { return m.H.Wires[i].ID }},
		{Head: "size", Least: 7, Cell: func(i int) string { return paper.Size(&m.H.Wires[i]) }},
		{Head: "col", Least: 4, Cell: func(i int) string { return words.OrDash(m.H.Wires[i].Colour.V) }},
		{Head: "role", Least: 6, Cell: func(i int) string { return words.OrDash(string(m.H.Wires[i].Role.V)) }},
		{Head: "A", Least: 5, Align: kit.ToRight, Cell: func(i int) string { return ampsText(&m.H.Wires[i]) }},
	}
	if w >= 60 {
		columns = append(columns, kit.Column[int]{Head: "ends", Lead: 1, Least: 17, Cell: func(i int) string {
			return words.OrDash(m.H.Wires[i].From.V) + " " + words.OrDash(m.H.Wires[i].To.V)
		}}, kit.Column[int]{Head: "signal", Least: max(5, w-61), Cell: func(i int) string { return m.H.Wires[i].Signal.V }})
	}
	return kit.GivenColumns(columns, m.Cfg.ASCII)
}

func ampsText(w *model.Wire) string {
	if !w.Amps.Set {
		return "-"
	}
	return strconv.FormatFloat(float64(w.Amps.V), 'f', -1, 64)
}

// markText says what the keys do on a wire.
func markText(m *desk.Model, of, id string) string {
	like := likeOf(m, of, id)
	w := &m.H.Wires[m.Sheet.Index.Wire[id]]
	text := "Enter " + words.Either(marksOf(m, of).on[id], "unmarks", "marks") + " " + id
	if len(like) > 1 {
		what := paper.Size(w)
		if w.Role.V != "" {
			what += ", " + string(w.Role.V)
		}
		text += fmt.Sprintf(", + - all %d like it (%s)", len(like), what)
	}
	return text + ". Right goes on"
}

// groupRow marks like wires at once.
func groupRow(m *desk.Model, of string) desk.Row {
	k := marksOf(m, of)
	now := k.like
	return desk.Row{Key: "like", Text: "mark like ones: " + words.Either(now == "", "+ - size, role, far end", now),
		Detail: "+ - by size, role, far end, colour. Enter marks all, or none",
		Does:   "mark all",
		Enter: func(m *desk.Model) {
			all := groupsOf(m, of)
			to := allHere
			if len(marked(m, of)) == len(wiresOf(m, of)) {
				to = noWire
			}
			for _, g := range all {
				if g.name == to {
					marksOf(m, of).mark(g)
				}
			}
			sayMarked(m, of)
		},
		Step: func(m *desk.Model, by int) {
			var names []string
			all := groupsOf(m, of)
			for _, g := range all {
				names = append(names, g.name)
			}
			next, _ := words.Around(names, cmp.Or(now, noWire), by)
			for _, g := range all {
				if g.name == next {
					marksOf(m, of).mark(g)
				}
			}
			m.Tell(fmt.Sprintf("%s: %s marked", next, countText(len(marked(m, of)))))
		}}
}

// changeRow opens what can be done with the marked wires.
func changeRow(m *desk.Model, of string, ids []string) desk.Row {
	r := desk.Row{Key: "change", Text: "change the marked wires: none yet", Detail: "Enter on a wire marks it",
		Enter: func(m *desk.Model) { Onward(m) }}
	if len(ids) > 0 {
		r.Text = fmt.Sprintf("change the marked wires: %s", bulk.Named(ids))
		r.Detail = "Enter opens size, colour, role, current, unit, splice, more, remove"
	}
	return r
}

// markLike marks or unmarks every wire that is like one.
func markLike(m *desk.Model, of, id string, on bool) {
	k := marksOf(m, of)
	k.like = ""
	for _, like := range likeOf(m, of, id) {
		k.on[like] = on
	}
	sayMarked(m, of)
}

func sayMarked(m *desk.Model, of string) {
	m.Tell(countText(len(marked(m, of))) + " marked. Right goes on")
}

// Onward opens what can be done with the marked wires; it is what the right arrow does.
func Onward(m *desk.Model) {
	of := m.Subject()
	if len(marked(m, of)) == 0 {
		m.Refuse("no wire is marked: Enter on a wire marks it")
		return
	}
	m.Show(MarkedKind, of)
}

// Leave closes the page and drops its marks.
func Leave(m *desk.Model) {
	*desk.State[marks](m) = marks{}
	m.Back()
}
