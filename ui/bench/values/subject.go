package values

import (
	"fmt"
	"strings"

	"contralay/model"
	"contralay/model/file/schema"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/values/label"
)

// subject is what a screen here is about: a record, a table of records in it, or a key of it.
type subject struct {
	at    schema.At
	table string // of a list of records
	key   string // of the items of a key
	sub   string // of a table of lists: which list
	of    bool   // sub is given
}

// String is the subject as a screen keeps it.
func (s subject) String(h *model.Harness) string {
	sub := ""
	if s.of {
		sub = "\x00" + s.sub
	}
	return desk.RecordOf(s.at, nameOf(h, s.at)) + "\x00" + s.table + "\x00" + s.key + sub
}

// nameOf is the id of the first record on the way to one.
func nameOf(h *model.Harness, at schema.At) string {
	if len(at) == 0 {
		return ""
	}
	return idOf(h, at[:1])
}

// idOf is the id of a record; "" where it has none.
func idOf(h *model.Harness, at schema.At) string {
	for _, key := range []string{"id", "serial"} {
		if id, ok := schema.Get(h, at, key).(string); ok {
			return id
		}
	}
	return ""
}

// find is the subject of a screen; false where its record is gone.
func find(h *model.Harness, of string) (subject, bool) {
	parts := strings.Split(of, "\x00")
	for len(parts) < 4 {
		parts = append(parts, "")
	}
	at, ok := schema.ParseAt(parts[0])
	s := subject{at: at, table: parts[2], key: parts[3]}
	if len(parts) > 4 {
		s.sub, s.of = parts[4], true
	}
	if !ok {
		return s, false
	}
	if id := parts[1]; id != "" && idOf(h, at[:1]) != id {
		found := false
		for i := range schema.Count(h, nil, at[0].Table) {
			if first := (schema.At{{Table: at[0].Table, Index: i}}); idOf(h, first) == id {
				s.at, found = append(first, at[1:]...), true
				break
			}
		}
		if !found {
			return s, false
		}
	}
	return s, schema.Has(h, s.at) || isLine(h, s.at)
}

// isLine reports whether a place is that of a table on one line, given or not.
func isLine(h *model.Harness, at schema.At) bool {
	if len(at) < 2 || !schema.Has(h, at.Up()) {
		return false
	}
	t, ok := schema.Find(at.Up().Table())
	k, has := t.Key(at.Last().Table)
	return ok && has && k.Kind == schema.KindTable
}

// title is what a person calls a record: "P1", "T1, layer 2", "serial 003, step 4".
func title(h *model.Harness, at schema.At) string {
	var parts []string
	for n, s := range at {
		here, table := at[:n+1], at[:n+1].Table()
		name := label.NounOf(table).One
		id := idOf(h, here)
		t, _ := schema.Find(table)
		switch {
		case table == "termination" && id != "", table == "branch" && id != "", table == "breakout" && id != "":
			name = id
		case table == "build":
			name = "serial " + id
		case id != "":
			name += " " + id
		case s.Table == "layer":
			name = strings.TrimPrefix(model.LayerName(s.Index), "the ")
		case !t.One:
			name += " " + fmt.Sprint(s.Index+1)
		}
		parts = append(parts, name)
	}
	return strings.Join(parts, ", ")
}

// serialOf is the serial of the build that a place is in; "" where it is in none.
func serialOf(h *model.Harness, at schema.At) string {
	if len(at) > 0 && at[0].Table == "build" {
		return nameOf(h, at)
	}
	return ""
}
