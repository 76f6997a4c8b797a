package desk

import (
	"strings"

	"contralay/model/unit"
	"contralay/ui/bench/words"
)

// Entry is an open field: a draft beside the old value, taken with Enter.
type Entry struct {
	Field
	Draft string
	fresh bool // nothing typed yet: the first key replaces the draft
}

// OpenField opens a field; first is what is typed already, or "".
func (m *Model) OpenField(f Field, first string) {
	e := &Entry{Field: f, Draft: f.Value, fresh: true}
	if first != "" {
		e.Draft, e.fresh = first, false
	}
	m.Entry = e
	m.Tell("")
}

// Key gives one key to the open field.
func (e *Entry) Key(m *Model, k words.Key) {
	switch k.Name {
	case "esc":
		m.Entry = nil
		m.Tell("left as it was")
	case "enter":
		text := strings.TrimSpace(e.Draft)
		if e.Number && text != "" {
			if _, err := unit.ParseNumber(text); err != nil {
				m.Refuse(text + " is not a number: digits, one decimal point or comma")
				return
			}
		}
		before := m.H
		m.Says = ""
		if err := e.Set(m, text); err != nil {
			m.Refuse(err.Error() + "; Backspace corrects, Esc leaves it")
			return
		}
		m.Entry = nil
		if m.H == before && m.Says == "" {
			m.Tell("unchanged")
		}
	case "backspace", "delete":
		if rs := []rune(e.Draft); len(rs) > 0 {
			e.Draft = string(rs[:len(rs)-1])
		}
		e.fresh = false
		m.Tell("")
	case "up", "down", "left", "right":
		m.Tell("Enter takes the value, Esc leaves it as it was")
	default:
		if k.Text == "" {
			m.Tell("no action for that key in an open field")
			return
		}
		if e.Number && !k.Paste && !strings.ContainsAny(k.Text, "0123456789.,/- ") {
			m.Refuse("a number is wanted here: digits, . and /; Esc leaves it as it was")
			return
		}
		if e.fresh {
			e.Draft, e.fresh = "", false
		}
		e.Draft += k.Text
		m.Tell("")
	}
}
