package bench

import (
	"fmt"
	"slices"
	"strings"

	"contralay/model/file"
	"contralay/ui/draw"
)

// binding is one line of the key table: which keys, what the bar and the help
// say, where it works, and what it does. The table drives dispatch, the bar, the
// help and the README section; a test fails where they differ.
type binding struct {
	keys []string
	name string // as printed on the keycaps
	bar  string // on the bar; "" keeps it off
	help string
	on   func(m *Model, r *row) bool // works now; nil: always
	do   func(m *Model, r *row, k key)
}

func onStep(m *Model, _ *row) bool { return len(m.stack) == 0 }

// table is the key table, in the order of the bar.
func table() []binding {
	return []binding{
		{keys: []string{"left", "right"}, name: "< >", bar: "step", help: "the step before or after; inside a list, left goes back",
			do: func(m *Model, _ *row, k key) { m.sideways(k) }},
		{keys: []string{"up", "down", "pgup", "pgdown", "home", "end"}, name: "^ v", bar: "row", help: "the row above or below; page and end keys go further",
			do: func(m *Model, _ *row, k key) { m.upDown(m.page(m.listWidth()), k) }},
		{keys: []string{"+", "-"}, name: "+ -", bar: "change", help: "one more or less, the next or the one before, further out or in",
			on: func(_ *Model, r *row) bool { return r != nil && r.step != nil },
			do: func(m *Model, r *row, k key) {
				by := 1
				if k.name == "-" {
					by = -1
				}
				r.step(m, by)
			}},
		{keys: []string{"enter"}, name: "Enter", bar: "open", help: "open the row, or take what it offers",
			on: func(_ *Model, r *row) bool {
				return r != nil && (r.enter != nil || r.field != nil || len(r.why) > 0 || r.whyOf != nil)
			},
			do: func(m *Model, r *row, _ key) {
				switch {
				case r.enter != nil:
					r.enter(m)
				case r.field != nil:
					m.openField(*r.field, "")
				default:
					m.askWhy()
				}
			}},
		{keys: []string{"0", "1", "2", "3", "4", "5", "6", "7", "8", "9"}, name: "0-9", help: "type the row's value; a calliper may send digits and Enter at once",
			on: func(_ *Model, r *row) bool { return r != nil && r.field != nil },
			do: func(m *Model, r *row, k key) { m.openField(*r.field, k.text) }},
		{keys: []string{"."}, name: ". 5", help: "a value that begins with a point",
			on: func(_ *Model, r *row) bool {
				return r != nil && r.drop == nil && r.field != nil && r.field.number
			},
			do: func(m *Model, r *row, _ key) { m.openField(*r.field, "0.") }},
		{keys: []string{".", "delete"}, name: ".", help: "take the row's component or wire out",
			on: func(_ *Model, r *row) bool { return r != nil && r.drop != nil },
			do: func(m *Model, r *row, _ key) { r.drop(m) }},
		{keys: []string{"backspace", "u", "ctrl+z"}, name: "Backspace", bar: "undo", help: "undo, without limit; on a page that is only read, and in a run, back; on a list the last thing said of it",
			do: func(m *Model, _ *row, _ key) {
				switch {
				case m.top() == "import":
					m.unsay()
				case m.onlyRead():
					m.back()
				case m.top() == "run":
					m.runBack()
				default:
					m.undoOne()
				}
			}},
		{keys: []string{"esc"}, name: "Esc", bar: "back", help: "back; from a step to the branches, from there to the menu (save, help, quit)",
			do: func(m *Model, _ *row, _ key) { m.escape() }},
		{keys: []string{"r"}, name: "R", help: "do again what was undone",
			do: func(m *Model, _ *row, _ key) { m.redoOne() }},
		{keys: []string{"/", "b"}, name: "/", help: "the next branch", on: onStep,
			do: func(m *Model, _ *row, _ key) { m.nextBranch() }},
		{keys: []string{"*", "z"}, name: "*", help: "the section by size, by role, by where it leaves, by temperature, or the part round the row in hand",
			on: func(m *Model, _ *row) bool { return !m.wideTop() },
			do: func(m *Model, _ *row, _ key) { m.look() }},
		{keys: []string{"w"}, name: "W", bar: "why", help: "why: how the figures of the row in hand were made, and what would change them",
			do: func(m *Model, _ *row, _ key) {
				if m.top() == "why" {
					m.tell("this is the why; + - the next figure, Enter how an input was made, Esc back")
					return
				}
				m.askWhy()
			}},
		{keys: []string{"m"}, name: "M", help: "mm or inch on the screen; the file stays in mm",
			do: func(m *Model, _ *row, _ key) { m.sys = 1 - m.sys; m.tell("lengths in " + m.sys.Name()) }},
		{keys: []string{"p"}, name: "P", help: "at the step Build: write the build sheet, to be printed, beside the file",
			on: func(m *Model, r *row) bool { return onStep(m, r) && m.step == Build },
			do: func(m *Model, _ *row, _ key) { m.print() }},
		{keys: []string{"s"}, name: "S", help: "save",
			do: func(m *Model, _ *row, _ key) { m.save() }},
		{keys: []string{"h", "?"}, name: "H", help: "help on what is in front; + - turns its pages",
			do: func(m *Model, _ *row, _ key) {
				if m.top() == "help" {
					m.tell("this is the help; + - turns the page, Esc goes back")
					return
				}
				m.open(helpScreen(m.helpFor()))
			}},
		{keys: []string{"q", "ctrl+c"}, name: "Q", help: "quit; unsaved work is asked for",
			do: func(m *Model, _ *row, _ key) { m.askQuit() }},
	}
}

// key dispatches one key. Every key answers: a change, or one plain line.
func (m *Model) key(k key) {
	m.greet = false
	if m.entry != nil {
		if k.name == "ctrl+c" {
			m.entry = nil
			m.askQuit()
			return
		}
		m.entryKey(k)
		return
	}
	if k.paste {
		m.refuse("a paste needs an open field: press Enter on one first")
		return
	}
	p := m.page(m.listWidth())
	var r *row
	if len(p.rows) > 0 {
		at := m.at(p)
		r = &p.rows[at]
		if _, been := m.cursor[m.cursorKey()]; !been { // where it began is where it stays
			m.cursor[m.cursorKey()], m.on[m.cursorKey()] = at, r.key
		}
	}
	for _, b := range table() {
		if !slices.Contains(b.keys, k.name) {
			continue
		}
		if b.on != nil && !b.on(m, r) {
			continue // another line of the table may have the key
		}
		m.tell("")
		b.do(m, r, k)
		return
	}
	m.tell(fmt.Sprintf("no action for %s here; H shows the keys", shown(k.name)))
}

func shown(name string) string {
	if len([]rune(name)) == 1 {
		return strings.ToUpper(name)
	}
	return name
}

// bar is the keys that work now, as printed on the last line.
func (m *Model) bar(r *row) string {
	if m.entry != nil {
		if m.entry.number {
			return "digits type   Enter take   Backspace delete   Esc leave as it was"
		}
		return "type it   Enter take   Backspace delete   Esc leave as it was"
	}
	var out []string
	for _, b := range table() {
		if b.bar == "" || (b.on != nil && !b.on(m, r)) {
			continue
		}
		what := b.bar
		if what == "undo" && (m.onlyRead() || m.top() == "run") {
			what = "back"
		}
		if what == "open" && m.top() == "run" && r != nil && r.key == "done" {
			what = "done"
		}
		if b.keys[0] == "left" && len(m.stack) > 0 {
			continue
		}
		out = append(out, b.name+" "+what)
	}
	// On a narrow screen what is known by heart goes first; help and undo stay.
	tail := "H help"
	for len(out) > 1 && draw.Width(strings.Join(out, "  "))+2+len(tail) > m.w {
		out = slices.Delete(out, drop(out), drop(out)+1)
	}
	return strings.Join(append(out, tail), "  ")
}

// onlyRead reports whether what is in front shows nothing that an undo would change.
func (m *Model) onlyRead() bool {
	switch m.top() {
	case "why", "figures", "help", "told":
		return true
	}
	return len(m.stack) > 0 && m.stack[len(m.stack)-1].pick
}

// drop is which entry of the bar goes first: rows are moved along by heart, Esc is known to
// go back, and what the row in hand takes stays longest.
func drop(out []string) int {
	for _, first := range []string{"^ v row", "W why", "< > step", "Esc back"} {
		if i := slices.Index(out, first); i >= 0 {
			return i
		}
	}
	return 0
}

func (m *Model) sideways(k key) {
	if len(m.stack) > 0 {
		if k.name == "left" {
			m.escape()
			return
		}
		m.tell("Enter opens the row; left or Esc goes back")
		return
	}
	s := m.step + 1
	if k.name == "left" {
		s = m.step - 1
	}
	if s < 0 || s >= steps {
		m.tell(map[bool]string{true: "Wires is the first step", false: "Build is the last step"}[s < 0])
		return
	}
	m.step = s
}

func (m *Model) upDown(p page, k key) {
	if len(p.rows) == 0 {
		m.tell("no rows here")
		return
	}
	at, last := m.at(p), len(p.rows)-1
	const leap = 10 // rows of a page key
	to := at + 1
	switch k.name {
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
	if to < 0 || to > last || to == at {
		m.tell(map[bool]string{true: "first row", false: "last row"}[to <= 0])
		return
	}
	m.cursor[m.cursorKey()] = to
	m.on[m.cursorKey()] = p.rows[to].key
}

func (m *Model) escape() {
	switch m.top() {
	case "branches":
		if len(m.h.Branches) > 0 && m.stackHas("menu") {
			m.back()
			return
		}
		m.open(menuScreen())
	default:
		if len(m.stack) > 0 {
			m.back()
			return
		}
		m.open(branchesScreen())
		if m.branch < len(m.h.Branches) {
			m.on[m.cursorKey()] = "branch " + m.h.Branches[m.branch].ID
			m.cursor[m.cursorKey()] = 0
		}
	}
}

func (m *Model) stackHas(name string) bool {
	return slices.ContainsFunc(m.stack, func(s screen) bool { return s.name == name })
}

func (m *Model) nextBranch() {
	if len(m.h.Branches) == 0 {
		m.tell("there is no branch")
		return
	}
	m.branch = (m.branch + 1) % len(m.h.Branches)
	m.zoom = false
}

func (m *Model) undoOne() {
	n := len(m.undo)
	if n == 0 {
		m.tell("nothing left to undo")
		return
	}
	was := m.doc()
	m.redo = append(m.redo, m.h)
	m.h, m.undo = m.undo[n-1], m.undo[:n-1]
	m.rebuild()
	// What came back may stand on another page, so it is named.
	says := ""
	if d := file.Differences(was, m.doc()); len(d) > 0 {
		says = ": " + d[0]
		if len(d) > 1 {
			says += " ..."
		}
	}
	m.tell(fmt.Sprintf("undone; %d more%s", n-1, says))
	m.leaveGone()
}

func (m *Model) redoOne() {
	n := len(m.redo)
	if n == 0 {
		m.tell("nothing to do again")
		return
	}
	m.undo = append(m.undo, m.h)
	m.h, m.redo = m.redo[n-1], m.redo[:n-1]
	m.rebuild()
	m.tell("done again")
	m.leaveGone()
}

// leaveGone closes screens of a thing that an undo took away.
func (m *Model) leaveGone() {
	if m.branch >= len(m.h.Branches) {
		m.branch = 0
	}
	for len(m.stack) > 0 && m.top() != "branches" && len(m.page(m.listWidth()).rows) == 0 {
		m.back()
	}
}

// KeyList is the key table as the README shows it.
func KeyList() string {
	var b strings.Builder
	for _, k := range table() {
		fmt.Fprintf(&b, "| `%s` | %s |\n", k.name, k.help)
	}
	return b.String()
}
