package board

import (
	"fmt"
	"strconv"

	"contralay/model"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/words"
)

// The revision a sheet is of.

// raised is the revision after one: the next letter or the next number; "A" after none, and
// "" where it is neither, for a person to say.
func raised(r string) string {
	if r == "" {
		return "A"
	}
	if n, err := strconv.Atoi(r); err == nil && n >= 0 && n < 1e6 {
		return strconv.Itoa(n + 1)
	}
	last := r[len(r)-1]
	switch {
	case last >= 'A' && last < 'Z', last >= 'a' && last < 'z', last >= '0' && last < '9':
		return r[:len(r)-1] + string(last+1)
	case last == 'Z' && len(r) == 1:
		return "AA"
	}
	return ""
}

// revisionRow raises the revision: the file of the one before is kept beside it when the
// new one is saved.
func revisionRow(m *desk.Model) desk.Row {
	now := m.H.Head.Revision.V
	set := func(m *desk.Model, r string) {
		h := *m.H
		h.Head.Revision = model.Some(r)
		m.Change(&h, fmt.Sprintf("revision %s; saving keeps the file of %s beside it", r, words.OrDash(now)))
	}
	return desk.Row{Key: "revision", Text: "revision " + words.OrDash(now),
		Detail: "+ raises it, Enter types one. The old file is kept beside the new one", Step: func(m *desk.Model, by int) {
			next := raised(now)
			if by < 0 || next == "" {
				m.Tell("+ raises it; Backspace goes back; Enter types one")
				return
			}
			set(m, next)
		}, Field: &desk.Field{Label: "revision", Value: now, Set: func(m *desk.Model, text string) error {
			if text == "" {
				return fmt.Errorf("type a revision: a letter, a number, any text")
			}
			set(m, text)
			return nil
		}}}
}
