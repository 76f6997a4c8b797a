package bench

import (
	"fmt"
	"slices"
	"strings"

	"contralay/ui/bench/desk"
	"contralay/ui/bench/kit"
	"contralay/ui/bench/tree"
	"contralay/ui/bench/words"
)

// binding is one line of the key table: which keys, what the bar and the help
// say, where it works, and what it does. The table drives dispatch, the bar, the
// help and the README section; a test fails where they differ.
type binding struct {
	keys []string
	caps int    // how many of the keys the bar names
	name string // as printed on the keycaps, in the help and the README
	bar  string // on the bar; "" keeps it off
	help string
	on   func(m *desk.Model, r *desk.Row) bool // works now; nil: always
	do   func(m *desk.Model, r *desk.Row, k words.Key)
}

func onStep(m *desk.Model, _ *desk.Row) bool { return len(m.Stack) == 0 }

// keyTable is the key table, in the order of the bar.
var keyTable = []binding{
	{keys: []string{"left", "right"}, caps: 2, name: "< >", bar: "step",
		help: "previous or next step; in a list, left goes back, right goes on where wires are marked",
		do:   func(m *desk.Model, _ *desk.Row, k words.Key) { sideways(m, k) }},
	{keys: []string{"up", "down", "pgup", "pgdown", "home", "end"}, caps: 2, name: "^ v", bar: "row",
		help: "previous or next row; page and end keys go further",
		do:   func(m *desk.Model, _ *desk.Row, k words.Key) { upDown(m, m.Page(m.ListWidth()), k) }},
	{keys: []string{"+", "-"}, caps: 2, name: "+ -", bar: "change",
		help: "change the row: more or less, next or previous, further out or in",
		on:   func(_ *desk.Model, r *desk.Row) bool { return r != nil && r.Step != nil },
		do: func(m *desk.Model, r *desk.Row, k words.Key) {
			by := 1
			if k.Name == "-" {
				by = -1
			}
			r.Step(m, by)
		}},
	{keys: []string{"+", "-"}, name: "+ -", help: "in a list of rows that are only chosen from: a page on or back",
		on: func(m *desk.Model, r *desk.Row) bool { return r != nil && r.Step == nil && turnsPages(m) },
		do: func(m *desk.Model, _ *desk.Row, k words.Key) {
			page := "pgdown"
			if k.Name == "-" {
				page = "pgup"
			}
			upDown(m, m.Page(m.ListWidth()), words.Key{Name: page})
		}},
	{keys: []string{"enter"}, caps: 1, name: "Enter", bar: "open", help: "open the row, or take what it offers",
		on: func(_ *desk.Model, r *desk.Row) bool {
			return r != nil && (r.Enter != nil || r.Field != nil || len(r.Why) > 0 || r.WhyOf != nil)
		},
		do: func(m *desk.Model, r *desk.Row, _ words.Key) {
			switch {
			case r.Enter != nil:
				r.Enter(m)
			case r.Field != nil:
				m.OpenField(*r.Field, "")
			default:
				askWhy(m)
			}
		}},
	{keys: []string{"0", "1", "2", "3", "4", "5", "6", "7", "8", "9"}, name: "0-9",
		help: "type the row's value; a calliper may send digits and Enter at once",
		on:   func(_ *desk.Model, r *desk.Row) bool { return r != nil && r.Field != nil },
		do:   func(m *desk.Model, r *desk.Row, k words.Key) { m.OpenField(*r.Field, k.Text) }},
	{keys: []string{"."}, name: ". 5", help: "start a value with a point",
		on: func(_ *desk.Model, r *desk.Row) bool {
			return r != nil && r.Drop == nil && r.Field != nil && r.Field.Number
		},
		do: func(m *desk.Model, r *desk.Row, _ words.Key) { m.OpenField(*r.Field, "0.") }},
	{keys: []string{".", "delete"}, name: ".", help: "remove the wire, piece or cover of the row",
		on: func(_ *desk.Model, r *desk.Row) bool { return r != nil && r.Drop != nil },
		do: func(m *desk.Model, r *desk.Row, _ words.Key) { r.Drop(m) }},
	{keys: undoKeys, caps: 1, name: "Backspace", bar: "undo",
		help: "undo (no limit). On read-only pages and in a run: back. While importing: undo the last choice",
		do: func(m *desk.Model, _ *desk.Row, _ words.Key) {
			switch here := m.Here(); {
			case here.Backspace != nil:
				here.Backspace(m)
			case here.ReadOnly:
				m.Back()
			default:
				desk.UndoSoon(m)
			}
		}},
	{keys: []string{"esc"}, caps: 1, name: "Esc", bar: "back",
		help: "back; from a step to the branches, from there to the menu (save, help, quit)",
		do:   func(m *desk.Model, _ *desk.Row, _ words.Key) { escape(m) }},
	{keys: []string{"r"}, name: "R", help: "redo what was undone",
		do: func(m *desk.Model, _ *desk.Row, _ words.Key) { m.Redo() }},
	{keys: []string{"/", "b"}, name: "/", help: "the next branch", on: onStep,
		do: func(m *desk.Model, _ *desk.Row, _ words.Key) { nextBranch(m) }},
	{keys: []string{"*", "z"}, name: "*",
		help: "section by destination, size, role, temperature, tightness, or closer round this row",
		on:   func(m *desk.Model, _ *desk.Row) bool { return !m.Here().Wide },
		do:   func(m *desk.Model, _ *desk.Row, _ words.Key) { look(m) }},
	{keys: []string{"w"}, caps: 1, name: "W", bar: "why",
		help: "why: how the figures of this row were made, and what would change them",
		do: func(m *desk.Model, _ *desk.Row, _ words.Key) {
			if m.Top() == whyKind {
				m.Tell("this is the why. + - shows other figures, Enter how an input was made")
				return
			}
			askWhy(m)
		}},
	{keys: []string{"m"}, name: "M", help: "mm or inch on the screen; the file stays in mm",
		do: func(m *desk.Model, _ *desk.Row, _ words.Key) {
			m.Sys = 1 - m.Sys
			m.Tell("lengths in " + m.Sys.Name())
		}},
	{keys: []string{"p"}, name: "P", help: "on the step Build: write the build sheet to print, beside the file",
		on: func(m *desk.Model, r *desk.Row) bool { return m.Here().Print != nil },
		do: func(m *desk.Model, _ *desk.Row, _ words.Key) { m.Here().Print(m) }},
	{keys: []string{"s"}, name: "S", help: "save",
		do: func(m *desk.Model, _ *desk.Row, _ words.Key) { m.Save() }},
	{keys: []string{"h", "?"}, caps: 1, name: "H", bar: "help", help: "help on this screen; + - turns its pages",
		do: func(m *desk.Model, _ *desk.Row, _ words.Key) {
			if m.Top() == helpKind {
				m.Tell("this is the help. + - turns its pages, Esc goes back")
				return
			}
			openHelp(m, m.Here().Help)
		}},
	{keys: []string{"q", "ctrl+c"}, name: "Q", help: "quit; it asks if work is not saved",
		do: func(m *desk.Model, _ *desk.Row, _ words.Key) { askQuit(m) }},
}

var undoKeys = []string{"backspace", "u", "ctrl+z"}

// dispatch dispatches one key. Every key answers: a change, or one plain line.
func dispatch(m *desk.Model, k words.Key) {
	if desk.Behind(m) {
		if slices.Contains(undoKeys, k.Name) { // the key before it was one, on this screen
			desk.UndoSoon(m)
			return
		}
		m.CatchUp()
	}
	m.Greet = false
	if m.Entry != nil {
		if k.Name == "ctrl+c" {
			m.Entry = nil
			askQuit(m)
			return
		}
		m.Entry.Key(m, k)
		return
	}
	if k.Paste {
		m.Refuse("a paste needs an open field: press Enter on one first")
		return
	}
	p, r := m.Hand()
	m.Settle(p)
	if p.Widget != nil && p.Widget.Press(m, k) {
		return
	}
	for _, b := range keyTable {
		if !slices.Contains(b.keys, k.Name) {
			continue
		}
		if b.on != nil && !b.on(m, r) {
			continue // another line of the table may have the key
		}
		m.Tell("")
		b.do(m, r, k)
		return
	}
	m.Tell(fmt.Sprintf("%s does nothing here. H shows the keys", k.Cap()))
}

// worth is how long a key stays on a bar that has no room for all: rows are moved along by
// heart, Esc is known to go back, and what the row in hand takes stays longest. Help never goes.
var worth = map[string]int{"row": 1, "why": 2, "step": 3, "back": 4, "change": 6, "open": 7, "undo": 8, "help": kit.Never}

// keyBar is the keys that work now, as printed on the last line.
func keyBar(m *desk.Model, r *desk.Row, l desk.Layout) string {
	t := m.Theme
	var out []kit.BarKey
	put := func(worth int, says string, keys ...string) {
		out = append(out, kit.BarKey{Binding: kit.NewKey(keys, t.Shown(keys...), says), Worth: worth})
	}
	if m.Entry != nil {
		if m.Entry.Number {
			out = append(out, kit.BarKey{Binding: kit.NewKey(nil, "0-9", "type"), Worth: 1})
		}
		put(2, "move", "left", "right")
		put(kit.Never, "take", "enter")
		put(4, "delete", "backspace")
		put(kit.Never, "leave as it was", "esc")
		return t.Bar(out, l.W-2*len(l.Margin))
	}
	for _, b := range keyTable {
		if b.bar == "" || (b.on != nil && !b.on(m, r)) || b.keys[0] == "left" && len(m.Stack) > 0 {
			continue
		}
		what := b.bar
		switch {
		case what == "undo":
			what = m.Here().Undoes()
		case what == "open" && r != nil && r.Does != "":
			what = r.Does
		case what == "change" && r != nil && r.Steps != "":
			put(worth[b.bar], r.Steps, "+")
			continue
		}
		put(worth[b.bar], what, b.keys[:min(len(b.keys), b.caps)]...)
	}
	return t.Bar(out, l.W-2*len(l.Margin))
}

func sideways(m *desk.Model, k words.Key) {
	if len(m.Stack) > 0 {
		if k.Name == "left" {
			escape(m)
			return
		}
		if m.Here().Onward != nil {
			m.Here().Onward(m)
			return
		}
		m.Tell("Enter opens the row. Left or Esc goes back")
		return
	}
	all, by := m.Tables.Steps, 1
	if k.Name == "left" {
		by = -1
	}
	switch to := slices.IndexFunc(all, func(p desk.Place) bool { return p.Kind == m.Step }) + by; {
	case to < 0:
		m.Tell(all[0].Title + " is the first step")
	case to >= len(all):
		m.Tell(all[len(all)-1].Title + " is the last step")
	default:
		m.Step = all[to].Kind
	}
}

// turnsPages reports whether the list in front is one to choose from that does not fit its place.
func turnsPages(m *desk.Model) bool {
	p := m.Page(m.ListWidth())
	return m.Here().ReadOnly && len(p.Rows) > m.ListHeight()
}

func upDown(m *desk.Model, p desk.Page, k words.Key) {
	if len(p.Rows) == 0 {
		m.Tell("no rows here")
		return
	}
	at, last := m.At(p), len(p.Rows)-1
	leap := max(1, m.ListHeight()-2) // a page key: the last row seen is seen again
	to := at + 1
	switch k.Name {
	case "up":
		to = at - 1
	case "pgup":
		to = max(0, at-leap)
	case "pgdown":
		to = min(last, at+leap)
	case "home":
		to = 0
	case "end":
		to = last
	}
	if to >= 0 && to <= last {
		by := 1
		if to < at {
			by = -1
		}
		to = p.Past(to, by)
	}
	if to < 0 || to > last || to == at {
		m.Tell(words.Either(to <= 0, "first row", "last row"))
		return
	}
	m.Put(to, p.Rows[to].Key)
}

func escape(m *desk.Model) {
	switch here := m.Here(); {
	case here.Escape != nil:
		here.Escape(m)
	case len(m.Stack) > 0:
		m.Back()
	default:
		m.Show(tree.BranchesKind, "")
		if m.Branch < len(m.H.Branches) {
			m.Put(0, "branch "+m.H.Branches[m.Branch].ID)
		}
	}
}

// leaveBranches opens the menu, or goes back to it where the branches were opened from there.
func leaveBranches(m *desk.Model) {
	if len(m.H.Branches) > 0 && slices.ContainsFunc(m.Stack, func(s desk.Screen) bool { return s.Kind == menuKind }) {
		m.Back()
		return
	}
	m.Show(menuKind, "")
}

func nextBranch(m *desk.Model) {
	if len(m.H.Branches) == 0 {
		m.Tell("there is no branch")
		return
	}
	m.TakeBranch((m.Branch + 1) % len(m.H.Branches))
}

// keyList is the key table as the README shows it.
func keyList() string {
	var b strings.Builder
	for _, k := range keyTable {
		fmt.Fprintf(&b, "| `%s` | %s |\n", k.name, k.help)
	}
	return b.String()
}
