package values

import (
	"contralay/model"
	"contralay/model/file/schema"
	"contralay/ui/bench/desk"
)

// What the tests reach for.

// Label is what a key is called, and what it does; false where it has no label.
func Label(table, key string) (says, does string, ok bool) {
	l, ok := labels[table][key]
	return l.says, l.does, ok
}

// Noun is what one of a table and several are called; false where it has none.
func Noun(table string) (one, many string, ok bool) {
	n, ok := nouns[table]
	return n.one, n.many, ok
}

// SubjectOf is what the screen of a record is about.
func SubjectOf(h *model.Harness, at schema.At) string { return subject{at: at}.String(h) }

// Asked are the keys that a new record of a table is asked for.
func Asked(m *desk.Model, parent schema.At, table string) ([]schema.Key, error) {
	t, _ := schema.Find(joined(parent, table))
	known, err := fresh(m, parent, table)
	return asked(t, known), err
}

// ReadSubject finds what a screen is about.
func ReadSubject(h *model.Harness, of string) (schema.At, bool) {
	s, ok := find(h, of)
	return s.at, ok
}
