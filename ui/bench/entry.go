package bench

import (
	"strings"

	"contralay/model/unit"
)

// entry is an open field: a draft beside the old value, taken with Enter.
type entry struct {
	field
	draft string
	fresh bool // nothing typed yet: the first key replaces the draft
}

func (m *Model) openField(f field, first string) {
	e := &entry{field: f, draft: f.value, fresh: true}
	if first != "" {
		e.draft, e.fresh = first, false
	}
	m.entry = e
	m.tell("")
}

// entryKey gives one key to the open field.
func (m *Model) entryKey(k key) {
	e := m.entry
	switch k.name {
	case "esc":
		m.entry = nil
		m.tell("left as it was")
	case "enter":
		text := strings.TrimSpace(e.draft)
		if e.number && text != "" {
			if _, err := unit.ParseNumber(text); err != nil {
				m.refuse(text + " is not a number: digits, one decimal point or comma")
				return
			}
		}
		before := m.h
		m.says = ""
		if err := e.set(m, text); err != nil {
			m.refuse(err.Error() + "; Backspace corrects, Esc leaves it")
			return
		}
		m.entry = nil
		if m.h == before && m.says == "" {
			m.tell("unchanged")
		}
	case "backspace", "delete":
		if rs := []rune(e.draft); len(rs) > 0 {
			e.draft = string(rs[:len(rs)-1])
		}
		e.fresh = false
		m.tell("")
	case "up", "down", "left", "right":
		m.tell("Enter takes the value, Esc leaves it as it was")
	default:
		if k.text == "" {
			m.tell("no action for that key in an open field")
			return
		}
		if e.number && !k.paste && !strings.ContainsAny(k.text, "0123456789.,/- ") {
			m.refuse("a number is wanted here: digits, . and /; Esc leaves it as it was")
			return
		}
		if e.fresh {
			e.draft, e.fresh = "", false
		}
		e.draft += k.text
		m.tell("")
	}
}
