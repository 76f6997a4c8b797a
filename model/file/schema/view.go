package schema

import (
	"fmt"
	"strings"
)

// What others see of the schema: every table and key with what it may be. A screen is made
// from it, so that a new key is on the screen without a line of its own.

// Kind is what the value of a key is.
type Kind int

// The kinds of key. Beside each is what Get gives and Put takes: what a TOML decoder gives.
const (
	KindText    Kind = iota // text of one line: string
	KindID                  // an id, or what leads to one: string
	KindNote                // text of more than one line: string
	KindChoice              // one of some words: string
	KindNumber              // float64
	KindCount               // a whole number: int64
	KindFlag                // bool
	KindTexts               // a list of texts: []any of string
	KindIDs                 // a list of ids: []any of string
	KindWords               // a list in which each is one of some words: []any of string
	KindNumbers             // a list of numbers: []any of float64
	KindPair                // exactly two numbers: []any of float64
	KindMap                 // ids, each with a list of ids: map[string]any of []any of string
	KindEach                // ids, each with one id: map[string]any of string
	KindTable               // a table on one line: map[string]any
)

// Key is what is known of one key of a table.
type Key struct {
	Name   string
	Kind   Kind
	Must   bool     // a file must give it
	Words  []string // of a choice, or of each in a list of words
	Unit   string   // behind a number; "" of a pure one
	Least  int      // of a count
	Most   int
	Called string // what the two numbers of a pair are
	Keys   []Key  // of a table on one line

	bound bound
}

// Allowed is what its value may be, in words.
func (k Key) Allowed() string {
	switch k.Kind {
	case KindChoice, KindWords:
		return `"` + strings.Join(k.Words, `", "`) + `"`
	case KindNumber, KindNumbers:
		return k.bound.least()
	case KindPair:
		return "two numbers: " + k.Called
	case KindCount:
		return fmt.Sprintf("a whole number from %d to %d", k.Least, k.Most)
	case KindFlag:
		return "yes or no"
	}
	return "one line of text"
}

// Holds reports whether a number is within the bounds of a key of numbers.
func (k Key) Holds(v float64) bool { return k.bound.holds(v) }

// Table is what is known of one table of a file.
type Table struct {
	Name   string // "branch.layer": with the tables that it is in
	One    bool   // one table, not a list of them
	Keys   []Key
	Tables []Table
}

// Key is the key of a name.
func (t Table) Key(name string) (Key, bool) {
	for _, k := range t.Keys {
		if k.Name == name {
			return k, true
		}
	}
	return Key{}, false
}

// tables is never written to.
var tables = func() []Table {
	var out []Table
	for _, p := range whole.parts {
		out = append(out, p.view(""))
	}
	return out
}()

// Tables are the tables of a file, in the order they are written.
func Tables() []Table { return tables }

// Find is the table of a name: "branch.layer". A key that is a table on one line is one as well:
// "build.step.what".
func Find(name string) (Table, bool) {
	in := Tables()
	var found Table
	parts := strings.Split(name, ".")
	for n, want := range parts {
		full, ok := strings.Join(parts[:n+1], "."), false
		for _, t := range in {
			if t.Name == full {
				found, ok = t, true
			}
		}
		if k, is := found.Key(want); !ok && is && k.Kind == KindTable {
			found, ok = Table{Name: full, One: true, Keys: k.Keys}, true
		}
		if !ok {
			return Table{}, false
		}
		in = found.Tables
	}
	return found, true
}

// view is the table as others see it; at is the name of what it is in, with its point.
func (t table[T]) view(called, at string, one bool) Table {
	out := Table{Name: at + called, One: one, Keys: t.views()}
	for _, p := range t.parts {
		out.Tables = append(out.Tables, p.view(out.Name+"."))
	}
	return out
}

func (t table[T]) views() []Key {
	var out []Key
	for _, k := range t.keys {
		seen := k.is
		seen.Name, seen.Must = k.name, k.must
		out = append(out, seen)
	}
	return out
}

func (o one[T, S]) view(at string) Table  { return o.inside.view(o.called, at, true) }
func (m many[T, S]) view(at string) Table { return m.inside.view(m.called, at, false) }
