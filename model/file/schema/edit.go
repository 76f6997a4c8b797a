package schema

import (
	"fmt"
	"maps"
	"slices"
	"strings"

	"contralay/model"
)

// Edits of a harness by the names of its tables and keys, through what the loader reads with.
// Each gives a new harness that shares what it did not change; the old one stays as it was.

// Refused is why an edit was not made: what is wrong with the value of a key, and what is allowed.
type Refused struct {
	Table   string // as At.Table has it
	ID      string // of the record, "" where it has none
	Key     string
	Says    string // "is the number -1.0"
	Allowed string
}

// Error renders "wire 101, amps: is the number -1.0; allowed: a number in A, 0 or more".
func (r *Refused) Error() string {
	where := strings.TrimSpace(r.Table + " " + r.ID)
	return comma(where, r.Key) + ": " + string(r.problem())
}

func (r *Refused) problem() problem {
	if r.Allowed == "" {
		return problem(r.Says)
	}
	return bad(r.Says, r.Allowed)
}

func refused(at At, key string, p problem) error {
	says, allowed, _ := strings.Cut(string(p), "; allowed: ")
	return &Refused{Table: at.Table(), Key: key, Says: says, Allowed: allowed}
}

// Get is the value of a key, as Kind says; nil where it is left out.
func Get(h *model.Harness, at At, key string) any {
	if n := reach(h, at, false); n != nil {
		return n.get(key)
	}
	return nil
}

// Has reports whether there is a record at a place.
func Has(h *model.Harness, at At) bool { return reach(h, at, false) != nil }

// Count is how many records of a table are in the one at a place.
func Count(h *model.Harness, at At, table string) int {
	if n := reach(h, at, false); n != nil {
		return n.count(table)
	}
	return 0
}

// Put gives a key a value.
func Put(h *model.Harness, at At, key string, value any) (*model.Harness, error) {
	return PutAll(h, at, map[string]any{key: value})
}

// PutAll gives several keys of one record their values, all of them or none.
func PutAll(h *model.Harness, at At, values map[string]any) (*model.Harness, error) {
	return edit(h, at, func(n node) (string, problem) { return putAll(n, values) })
}

func putAll(n node, values map[string]any) (string, problem) {
	for _, key := range slices.Sorted(maps.Keys(values)) {
		if p := n.put(key, values[key]); p != "" {
			return key, p
		}
	}
	return "", ""
}

// Clear leaves a key out.
func Clear(h *model.Harness, at At, key string) (*model.Harness, error) {
	return edit(h, at, func(n node) (string, problem) { return key, n.clear(key) })
}

// Add puts a new record before the one at index into a table of the record at a place, or behind
// the last where index is −1.
func Add(h *model.Harness, at At, table string, index int, values map[string]any) (*model.Harness, error) {
	return edit(h, at, func(n node) (string, problem) {
		if index < 0 {
			index = n.count(table)
		}
		if !n.insert(table, index) {
			return "", problem("there is no place for it")
		}
		made := n.open(table, index, true)
		for _, key := range made.musts() {
			if _, given := values[key]; !given {
				return key, problem("it is missing, and must be given")
			}
		}
		return putAll(made, values)
	})
}

// Remove takes a record out of its table.
func Remove(h *model.Harness, at At) (*model.Harness, error) {
	last := at.Last()
	return edit(h, at.Up(), func(n node) (string, problem) {
		if !n.remove(last.Table, last.Index) {
			return "", problem("it is gone")
		}
		return "", ""
	})
}

// Move puts a record of a table to another place in it.
func Move(h *model.Harness, at At, to int) (*model.Harness, error) {
	last := at.Last()
	return edit(h, at.Up(), func(n node) (string, problem) {
		if !n.move(last.Table, last.Index, to) {
			return "", problem("there is no further place")
		}
		return "", ""
	})
}

// edit makes a change to a copy of the record at a place, and refuses what makes the harness one
// that could not be.
func edit(h *model.Harness, at At, do func(n node) (key string, p problem)) (*model.Harness, error) {
	out := *h
	n := reach(&out, at, true)
	if n == nil {
		return h, &Refused{Table: at.Table(), Says: "it is gone"}
	}
	if key, p := do(n); p != "" {
		return h, refused(at, key, p)
	}
	if f, is := worse(h, &out); is {
		table := f.Table
		if f.Sub != "" {
			table += "." + f.Sub
		}
		return h, &Refused{Table: table, ID: f.ID, Key: f.Key, Says: f.Says, Allowed: f.Allowed}
	}
	return &out, nil
}

// worse is the first thing that is wrong with a harness and was not with the one before.
func worse(was, is *model.Harness) (model.Finding, bool) {
	now := is.Check()
	if len(now) == 0 {
		return model.Finding{}, false
	}
	known := map[string]bool{}
	name := func(f model.Finding) string {
		return fmt.Sprint(f.Table, "\x00", f.ID, "\x00", f.Sub, "\x00", f.Key, "\x00", f.Says)
	}
	for _, f := range was.Check() {
		known[name(f)] = true
	}
	for _, f := range now {
		if !known[name(f)] {
			return f, true
		}
	}
	return model.Finding{}, false
}
