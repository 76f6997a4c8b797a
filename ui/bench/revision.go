package bench

import (
	"fmt"
	"strconv"

	"contralay/model"
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
func (m *Model) revisionRow() row {
	now := m.h.Head.Revision.V
	set := func(m *Model, r string) {
		h := *m.h
		h.Head.Revision = model.Some(r)
		m.change(&h, fmt.Sprintf("revision %s; saving keeps the file of %s beside it", r, orDash(now)))
	}
	return row{key: "revision", text: "revision " + orDash(now), detail: "+ raises it, Enter types one; the file of the one before is kept beside the new", step: func(m *Model, by int) {
		next := raised(now)
		if by < 0 || next == "" {
			m.tell("+ raises it; Backspace goes back; Enter types one")
			return
		}
		set(m, next)
	}, field: &field{label: "revision", value: now, set: func(m *Model, text string) error {
		if text == "" {
			return fmt.Errorf("a revision is wanted: a letter, a number, any text")
		}
		set(m, text)
		return nil
	}}}
}
