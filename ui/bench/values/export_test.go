package values

import (
	"contralay/model"
	"contralay/model/file/schema"
	"contralay/ui/bench/desk"
)

// What the tests reach for.

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

// ListOf is what the screen of a table of records is about; ItemsOf that of the values of a key.
func ListOf(h *model.Harness, parent schema.At, table string) string {
	return subject{at: parent, table: table}.String(h)
}

// ItemsOf is what the screen of the values of a key is about.
func ItemsOf(h *model.Harness, at schema.At, key string) string {
	return subject{at: at, key: key}.String(h)
}
