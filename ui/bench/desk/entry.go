package desk

import (
	"contralay/ui/bench/kit"
	"contralay/ui/bench/words"
)

// Entry is an open field: a draft beside the old value, taken with Enter.
type Entry struct {
	Field
	Input *kit.Field
}

// OpenField opens a field; first is what is typed already, or "".
func (m *Model) OpenField(f Field, first string) {
	m.Entry = &Entry{Field: f, Input: kit.OpenField(kit.FieldOf{Label: f.Label, Unit: f.Unit, Value: f.Value, Number: f.Number, ID: f.ID,
		Take: func(text string) error {
			m.Says = ""
			return f.Set(m, text)
		}}, first)}
	m.Tell("")
}

// Draft is the text as it stands.
func (e *Entry) Draft() string { return e.Input.Draft() }

// Key gives one key to the open field.
func (e *Entry) Key(m *Model, k words.Key) {
	before, where := m.H, m.cursorKey()
	answer := e.Input.Press(k.Name, k.Text, k.Paste)
	switch {
	case answer.Refused:
		m.Refuse(answer.Says)
	case !answer.Taken:
		m.Tell(answer.Says)
	case m.H == before && m.Says == "" && m.Entry == e && m.cursorKey() == where:
		m.Tell("unchanged")
	}
	if answer.Closed && m.Entry == e { // what it took may have opened another
		m.Entry = nil
	}
	if answer.Taken && e.Next {
		putNext(m)
	}
}
