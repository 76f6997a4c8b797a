package values_test

import (
	"fmt"
	"maps"
	"reflect"
	"slices"
	"strconv"
	"strings"
	"testing"

	"contralay/model"
	"contralay/model/file/schema"
	"contralay/model/shorttest"
	"contralay/ui/bench/benchtest"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/values"
	"contralay/ui/bench/values/label"
)

// eachTable visits every table of the file format, those on one line too.
func eachTable(visit func(t schema.Table)) {
	var walk func(all []schema.Table)
	walk = func(all []schema.Table) {
		for _, t := range all {
			visit(t)
			for _, k := range t.Keys {
				if k.Kind == schema.KindTable {
					visit(schema.Table{Name: t.Name + "." + k.Name, One: true, Keys: k.Keys})
				}
			}
			walk(t.Tables)
		}
	}
	walk(schema.Tables())
}

// Every key of the file format has a label of its own in its table and a row that changes it. With
// -v the test prints them all: key, screen, row.
func TestEveryKeyHasItsRow(t *testing.T) {
	m := benchtest.Open(t, "every-key.toml")
	keys := 0
	eachTable(func(table schema.Table) {
		noun := label.NounOf(table.Name)
		one := noun.One
		if one == "" || one == table.Name && noun.Does == "" || noun.Many == "" && !table.One {
			t.Errorf("table %s has no noun", table.Name)
		}
		at := first(m.H, table.Name)
		if at == nil {
			t.Errorf("every-key.toml has no %s", table.Name)
			return
		}
		p := values.RecordPage(m, 76, values.SubjectOf(m.H, at))
		met := map[string]string{}
		for _, k := range table.Keys {
			keys++
			l, ok := label.Known(table.Name, k.Name)
			says, does := l.Says, l.Does
			switch {
			case !ok || says == "" || does == "":
				t.Errorf("%s.%s has no label: give it one in the labels of its table", table.Name, k.Name)
				continue
			case len(says) > 22:
				t.Errorf("%s.%s: the label %q is too long", table.Name, k.Name, says)
			case met[says] != "":
				t.Errorf("%s: %s and %s are both called %q", table.Name, met[says], k.Name, says)
			case len(does) > 100 || strings.HasSuffix(does, ".") || strings.Contains(does, "_"):
				t.Errorf("%s.%s: %q is no plain line", table.Name, k.Name, does)
			}
			met[says] = k.Name
			i := slices.IndexFunc(p.Rows, func(r desk.Row) bool { return r.Key == k.Name })
			if i < 0 {
				t.Errorf("%s.%s has no row", table.Name, k.Name)
				continue
			}
			r := p.Rows[i]
			switch {
			case r.Enter == nil && r.Field == nil:
				t.Errorf("%s.%s: Enter does nothing on its row", table.Name, k.Name)
			case r.Detail == "":
				t.Errorf("%s.%s: its row says nothing", table.Name, k.Name)
			case (r.Drop != nil) != (!k.Must && schema.Get(m.H, at, k.Name) != nil):
				t.Errorf("%s.%s: it must be given: %v, and . leaves it out: %v", table.Name, k.Name, k.Must, r.Drop != nil)
			case number(k) && (r.Step == nil || r.Field == nil || !r.Field.Number):
				t.Errorf("%s.%s: a number is stepped and typed", table.Name, k.Name)
			case (k.Kind == schema.KindChoice || k.Kind == schema.KindFlag) && r.Step == nil:
				t.Errorf("%s.%s: + - do not step it", table.Name, k.Name)
			}
			t.Logf("%-28s %-22s %s", table.Name+"."+k.Name, one, r.Line())
		}
	})
	if keys < 200 {
		t.Errorf("only %d keys met", keys)
	}
	t.Logf("%d keys", keys)
}

func number(k schema.Key) bool { return k.Kind == schema.KindNumber || k.Kind == schema.KindCount }

// first is a record of a table that has most of its keys given; nil where there is none.
func first(h *model.Harness, table string) schema.At {
	var best schema.At
	most := -1
	var walk func(at schema.At, rest []string)
	walk = func(at schema.At, rest []string) {
		if len(rest) == 0 {
			t, _ := schema.Find(table)
			n := 0
			for _, k := range t.Keys {
				if schema.Get(h, at, k.Name) != nil {
					n++
				}
			}
			if n > most {
				best, most = at, n
			}
			return
		}
		for i := 0; schema.Has(h, at.In(rest[0], i)); i++ {
			walk(at.In(rest[0], i), rest[1:])
		}
	}
	walk(nil, strings.Split(table, "."))
	return best
}

// pad is the keys that a person in gloves has; a keyboard types names in open fields.
var pad = strings.Fields("up down left right enter backspace esc 0 1 2 3 4 5 6 7 8 9 + - * / .")

// hand presses keys as a person would: it looks at the rows and walks.
type hand struct {
	t       *testing.T
	m       *desk.Model
	presses int
	refused string // what the last key that was refused said
}

func (h *hand) press(keys ...string) {
	h.t.Helper()
	for _, k := range keys {
		if h.m.Entry == nil && !slices.Contains(pad, k) {
			h.t.Fatalf("%q is no key of the pad, and no field is open:\n%s", k, benchtest.View(h.m))
		}
		h.presses++
		benchtest.Press(h.m, k)
		if h.m.Trouble {
			h.refused = h.m.Says
		}
	}
}

// row walks to the row with a key.
func (h *hand) row(key string) desk.Row {
	h.t.Helper()
	for range 2000 {
		p := h.m.Page(h.m.ListWidth())
		want, at := slices.IndexFunc(p.Rows, func(r desk.Row) bool { return r.Key == key }), h.m.At(p)
		if want < 0 {
			h.t.Fatalf("no row %q on %s:\n%s", key, h.m.Title(), benchtest.View(h.m))
		}
		if at == want {
			return p.Rows[at]
		}
		for ; at < want; at++ { // with no look at the rows that are passed
			h.press("down")
		}
		for ; at > want; at-- {
			h.press("up")
		}
	}
	h.t.Fatalf("row %q is not reached", key)
	return desk.Row{}
}

// has reports whether the page in front has a row with a key.
func (h *hand) has(key string) bool {
	return slices.ContainsFunc(h.m.Page(h.m.ListWidth()).Rows, func(r desk.Row) bool { return r.Key == key })
}

// say answers an open field or an open list with a text; the keys of a field are typed one by one.
func (h *hand) say(text string) {
	h.t.Helper()
	if h.m.Entry == nil && h.m.Top() == desk.KindChoice {
		if h.has(text) {
			h.row(text)
			h.press("enter")
			return
		}
		h.row("other")
		h.press("enter")
	}
	if h.m.Entry == nil {
		h.t.Fatalf("no field is open for %q:\n%s", text, benchtest.View(h.m))
	}
	if text == "" {
		for range len([]rune(h.m.Entry.Draft())) {
			h.press("backspace")
		}
	}
	for _, r := range text {
		h.press(string(r))
	}
	h.press("enter")
	if h.m.Entry != nil && h.m.Trouble { // it was not taken
		h.press("esc")
	}
	if h.m.Top() == desk.KindChoice && h.m.Entry == nil && h.refused != "" {
		h.press("esc")
	}
}

// list opens the list of a table of a record, from wherever the hand is.
func (h *hand) list(parent schema.At, table string) {
	h.t.Helper()
	h.file()
	for n := range parent {
		s := parent[n]
		h.row(s.Table)
		h.press("enter")
		h.row(h.recordKey(parent[:n+1]))
		h.press("enter")
	}
	h.row(table)
	h.press("enter")
}

// file opens the list of all that the file holds.
func (h *hand) file() {
	h.t.Helper()
	for range 12 {
		if h.m.Entry != nil || h.m.Top() != "branches" && len(h.m.Stack) > 0 {
			h.press("esc")
		}
	}
	if len(h.m.Stack) == 0 {
		h.press("esc")
	}
	h.row("file")
	h.press("enter")
}

func (h *hand) recordKey(at schema.At) string {
	for _, key := range []string{"id", "serial"} {
		if id, ok := schema.Get(h.m.H, at, key).(string); ok {
			return at.Last().Table + " " + id
		}
	}
	return fmt.Sprint(at.Last().Table, " ", at.Last().Index)
}

// record opens the page of a record.
func (h *hand) record(at schema.At) {
	h.t.Helper()
	one := at.Last()
	if t, _ := schema.Find(at.Table()); t.One {
		h.file()
		h.row(one.Table)
		h.press("enter")
		return
	}
	h.list(at.Up(), one.Table)
	h.row(h.recordKey(at))
	h.press("enter")
}

// set gives a key of the record in front its value; false where that was refused.
func (h *hand) set(at schema.At, k schema.Key, want any) bool {
	h.t.Helper()
	h.refused = ""
	r := h.row(k.Name)
	switch v := want.(type) {
	case bool:
		for range 3 {
			if schema.Get(h.m.H, at, k.Name) != want {
				h.press("+")
			}
		}
	case float64:
		h.press("enter")
		h.say(strconv.FormatFloat(v, 'f', -1, 64))
	case int64:
		h.press(strconv.FormatInt(v, 10)[:1])
		h.press(strings.Split(strconv.FormatInt(v, 10)[1:]+"", "")...)
		h.press("enter")
	case string:
		if k.Kind == schema.KindChoice {
			for range len(k.Words) + 1 {
				if schema.Get(h.m.H, at, k.Name) != want {
					h.press("+")
				}
			}
			break
		}
		if v == "" && r.Enter == nil && schema.Get(h.m.H, at, k.Name) == nil {
			h.press("enter")
			h.say("x") // what was never given and is left empty stays left out
		}
		h.press("enter")
		h.say(v)
	case []any:
		h.press("enter")
		if k.Kind == schema.KindPair {
			for n := range v {
				h.row(fmt.Sprint("item ", n))
				h.press("enter")
				h.say(strconv.FormatFloat(v[n].(float64), 'f', -1, 64))
			}
		} else {
			h.items(v)
		}
		h.press("esc")
	case map[string]any:
		h.press("enter")
		h.table(at, k, v)
		h.press("esc")
	}
	if got := schema.Get(h.m.H, at, k.Name); !reflect.DeepEqual(got, want) {
		if h.refused == "" {
			h.t.Errorf("%s %s: %v was made, wanted %v; it said %q\n%s", at, k.Name, got, want, h.m.Says, benchtest.View(h.m))
		}
		return false
	}
	return true
}

// items adds the items of a list whose page is in front.
func (h *hand) items(all []any) {
	h.t.Helper()
	if len(all) == 0 && h.has("none") {
		h.row("none")
		h.press("enter")
	}
	for _, v := range all {
		h.row("add")
		h.press("enter")
		switch v := v.(type) {
		case string:
			h.say(v)
		case float64:
			h.say(strconv.FormatFloat(v, 'f', -1, 64))
		}
	}
}

// table fills in a table of lists, or a table on one line, whose page is in front.
func (h *hand) table(at schema.At, k schema.Key, all map[string]any) {
	h.t.Helper()
	if len(all) == 0 {
		h.row("none")
		h.press("enter")
		return
	}
	if k.Kind == schema.KindTable {
		for _, in := range k.Keys {
			if v, given := all[in.Name]; given {
				h.set(at.In(k.Name, 0), in, v)
			}
		}
		return
	}
	for _, name := range slices.Sorted(maps.Keys(all)) {
		h.row("add")
		h.press("enter")
		h.say(name)
		if one, is := all[name].(string); is {
			h.say(one)
			continue
		}
		h.items(all[name].([]any))
		h.press("esc")
	}
}

// aNote is the note of wire 101 as it can be typed: a field takes one line, and no control character.
const aNote = `Ö "first" \ second third, line`

// Every table and every key of every-key.toml is made from nothing, by keys alone, on a file as
// contralay new writes it.
func TestEveryKeyIsMadeByKeys(t *testing.T) {
	shorttest.Turn(t)
	whole := benchtest.Load(t, "every-key.toml").Harness
	want := whole.EditWire(0, func(w *model.Wire) { w.Note = model.Some(aNote) })
	h := &hand{t: t, m: benchtest.Typed(t, "format = 1\n")}
	benchtest.Size(h.m, 100, 40)

	// Every record with what a file must give of it, then everything else: a splice lies toward a
	// branch that is made after it.
	var all []schema.At
	for _, table := range schema.Tables() {
		if table.One {
			all = append(all, schema.At{{Table: table.Name}})
			continue
		}
		for i := range schema.Count(want, nil, table.Name) {
			at := schema.At{{Table: table.Name, Index: i}}
			h.make(want, at)
			all = append(all, at)
		}
	}
	for _, at := range all {
		h.fill(want, at)
	}
	if got, is := schema.Text(h.m.H), schema.Text(want); got != is {
		a, b := strings.Split(got, "\n"), strings.Split(is, "\n")
		for n := range min(len(a), len(b)) {
			if a[n] != b[n] {
				t.Fatalf("line %d: made %q, wanted %q", n+1, a[n], b[n])
			}
		}
		t.Fatalf("%d lines were made, wanted %d", len(a), len(b))
	}
	if !h.m.H.Same(want) {
		t.Error("the text is the same and the harness is not")
	}
	t.Logf("%d key presses, %d steps to undo", h.presses, h.m.History.Steps())
	for h.m.History.Steps() > 0 {
		h.m.Undo()
	}
	if len(h.m.H.Terminations)+len(h.m.H.Builds) > 0 || schema.Text(h.m.H) != schema.Text(&model.Harness{}) {
		t.Error("undone to the start, the harness is not empty")
	}
}

// make adds a record with what a file must give of it.
func (h *hand) make(want *model.Harness, at schema.At) {
	h.t.Helper()
	last := at.Last()
	h.list(at.Up(), last.Table)
	h.row("add")
	asks, err := values.Asked(h.m, at.Up(), last.Table)
	if err != nil {
		h.t.Fatalf("%s: %v", at, err)
	}
	h.press("enter")
	for _, k := range asks {
		v := schema.Get(want, at, k.Name)
		switch v := v.(type) {
		case string:
			h.say(v)
		case float64:
			h.say(strconv.FormatFloat(v, 'f', -1, 64))
		case int64:
			h.say(strconv.FormatInt(v, 10))
		}
	}
	if n := schema.Count(h.m.H, at.Up(), last.Table); n != last.Index+1 {
		h.t.Fatalf("%s: %d are there after it was added; it said %q\n%s", at, n, h.m.Says, benchtest.View(h.m))
	}
	t, _ := schema.Find(at.Table())
	var musts []schema.Key
	for _, k := range t.Keys {
		if k.Must {
			musts = append(musts, k)
		}
	}
	h.setAll(want, at, musts)
}

// setAll gives keys their values; what is refused is tried again once the others are given.
func (h *hand) setAll(want *model.Harness, at schema.At, keys []schema.Key) {
	h.t.Helper()
	for range 3 {
		var rest []schema.Key
		for _, k := range keys {
			v := schema.Get(want, at, k.Name)
			if v == nil || reflect.DeepEqual(schema.Get(h.m.H, at, k.Name), v) {
				continue
			}
			if !h.set(at, k, v) {
				rest = append(rest, k)
			}
		}
		if keys = rest; len(keys) == 0 {
			return
		}
	}
	h.t.Errorf("%s %s was refused: %s", at, keys[0].Name, h.refused)
}

// fill gives a record everything else, and makes the records in it.
func (h *hand) fill(want *model.Harness, at schema.At) {
	h.t.Helper()
	h.record(at)
	t, _ := schema.Find(at.Table())
	h.setAll(want, at, t.Keys)
	for _, in := range t.Tables {
		name := in.Name[strings.LastIndexByte(in.Name, '.')+1:]
		for i := range schema.Count(want, at, name) {
			h.make(want, at.In(name, i))
			h.fill(want, at.In(name, i))
		}
	}
}
