package schema

import (
	"fmt"
	"maps"
	"slices"
	"strings"
)

// table is the schema of one TOML table that fills a T: its keys in the order
// they are written, then the tables inside it.
type table[T any] struct {
	what  string // what a person calls one of them
	keys  []key[T]
	parts []part[T]
}

// key is one key of a table. put reads a decoded value into v; get gives the text
// of the value, "" where it is left out; raw gives it as a decoder would, nil where it is
// left out; clear leaves it out, and is nil where it is always written. open is the table that a
// key is written as, on one line.
type key[T any] struct {
	name  string
	must  bool
	is    Key
	put   func(v *T, raw any) problem
	get   func(v *T) string
	raw   func(v *T) any
	clear func(v *T)
	open  func(v *T, own bool) node
}

// part is a table, or a list of tables, inside a T.
type part[T any] interface {
	name() string
	read(d *decoder, v *T, raw any, at place)
	write(w *writer, v *T, at string)
	raw(v *T) any    // as a decoder would give it, nil where it is left out
	sound(v *T) bool // each of its values can be read

	view(at string) Table
	count(v *T) int
	open(v *T, index int, own bool) node
	insert(v *T, index int) bool
	remove(v *T, index int) bool
	move(v *T, from, to int) bool
}

// readTable fills v from a decoded table.
func readTable[T any](d *decoder, t table[T], v *T, raw map[string]any, at place) {
	for _, name := range slices.Sorted(maps.Keys(raw)) {
		if k := t.find(name); k != nil {
			if p := k.put(v, raw[name]); p != "" {
				d.say(at.key(name), p)
			}
			continue
		}
		if i := slices.IndexFunc(t.parts, func(p part[T]) bool { return p.name() == name }); i >= 0 {
			t.parts[i].read(d, v, raw[name], at)
			continue
		}
		d.say(at.key(name), t.unknown(name))
	}
	for _, k := range t.keys {
		if _, given := raw[k.name]; k.must && !given {
			d.say(at.key(k.name), problem("it is missing, and a file must give it"))
		}
	}
}

func (t table[T]) find(name string) *key[T] {
	for i := range t.keys {
		if t.keys[i].name == name {
			return &t.keys[i]
		}
	}
	return nil
}

func (t table[T]) unknown(name string) problem {
	var names []string
	for _, k := range t.keys {
		names = append(names, k.name)
	}
	for _, p := range t.parts {
		names = append(names, p.name())
	}
	says := "it is not known"
	if hint := nearest(name, names); hint != "" {
		says += fmt.Sprintf(" (did you mean %s?)", hint)
	}
	return bad(says, strings.Join(names, ", "))
}

// one is a single table, [name].
type one[T, S any] struct {
	called string
	at     func(*T) *S
	inside table[S]
}

func (o one[T, S]) name() string { return o.called }

func (o one[T, S]) read(d *decoder, v *T, raw any, at place) {
	here := place{at.path + "." + o.called, comma(at.where, o.called)}
	m, ok := raw.(map[string]any)
	if !ok {
		d.say(here, bad("is "+describe(raw), "one table, ["+o.called+"]"))
		return
	}
	readTable(d, o.inside, o.at(v), m, here)
}

// write leaves out a table of which nothing is set.
func (o one[T, S]) write(w *writer, v *T, at string) {
	if lines := o.inside.lines(o.at(v), nil); len(lines) > 0 {
		w.table("["+at+o.called+"]", lines)
	}
}

func (o one[T, S]) raw(v *T) any {
	if all := o.inside.raw(o.at(v)); len(all) > 0 {
		return all
	}
	return nil
}

// raw is a table as a decoder would give it.
func (t table[T]) raw(v *T) map[string]any {
	out := map[string]any{}
	for _, k := range t.keys {
		if value := k.raw(v); value != nil {
			out[k.name] = value
		}
	}
	for _, p := range t.parts {
		if value := p.raw(v); value != nil {
			out[p.name()] = value
		}
	}
	return out
}

// many is a list of tables, [[name]].
type many[T, S any] struct {
	called string
	at     func(*T) *[]S
	inside table[S]
}

func (m many[T, S]) name() string { return m.called }

func (m many[T, S]) read(d *decoder, v *T, raw any, at place) {
	rows, ok := tablesOf(raw)
	if !ok {
		here := place{at.path + "." + m.called, comma(at.where, m.called)}
		d.say(here, bad("is "+describe(raw), "a list of tables, [["+m.called+"]] at the head of each"))
		return
	}
	all := m.at(v)
	for i, row := range rows {
		var s S
		id, _ := row["id"].(string)
		here := place{fmt.Sprintf("%s.%s[%d]", at.path, m.called, i), comma(at.where, calls(m.inside.what, id, i))}
		readTable(d, m.inside, &s, row, here)
		*all = append(*all, s)
	}
}

func (m many[T, S]) write(w *writer, v *T, at string) {
	all := *m.at(v)
	header := "[[" + at + m.called + "]]"
	for i := range all {
		w.room = m.inside.lines(&all[i], w.room[:0])
		w.table(header, w.room)
		w.depth++
		for _, p := range m.inside.parts {
			p.write(w, &all[i], at+m.called+".")
		}
		w.depth--
	}
}

func (m many[T, S]) raw(v *T) any {
	all := *m.at(v)
	if len(all) == 0 {
		return nil
	}
	out := make([]any, len(all))
	for i := range all {
		out[i] = m.inside.raw(&all[i])
	}
	return out
}

// tablesOf reads a list of tables, whichever of the two ways it was written.
func tablesOf(raw any) ([]map[string]any, bool) {
	switch list := raw.(type) {
	case []map[string]any:
		return list, true
	case []any:
		rows := make([]map[string]any, len(list))
		for i, one := range list {
			row, ok := one.(map[string]any)
			if !ok {
				return nil, false
			}
			rows[i] = row
		}
		return rows, true
	}
	return nil, false
}
