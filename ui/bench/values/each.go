package values

import (
	"fmt"
	"maps"
	"slices"
	"strings"

	"contralay/model/file/schema"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/values/label"
)

// A table of texts: what each name becomes.

// eachRows are the names of a table of texts, each with what it becomes, and a row that adds one.
func eachRows(m *desk.Model, at schema.At, k schema.Key, l label.Label, w int) []desk.Row {
	now := func(m *desk.Model) map[string]any {
		table, _ := schema.Get(m.H, at, k.Name).(map[string]any)
		return table
	}
	set := func(m *desk.Model, name, value string) error {
		if value = strings.TrimSpace(value); value == "" {
			return fmt.Errorf("type a %s", l.Item)
		}
		next := maps.Clone(now(m))
		if next == nil {
			next = map[string]any{}
		}
		next[name] = value
		return put(m, at, k, next)
	}
	field := func(name, value string) *desk.Field {
		return &desk.Field{Label: l.Item + " of " + name, ID: true, Value: value,
			Set: func(m *desk.Model, text string) error { return set(m, name, text) }}
	}
	there := func(m *desk.Model) bool { return schema.Has(m.H, at) }
	choose := func(m *desk.Model, name, value string) {
		if l.Items == nil {
			m.OpenField(*field(name, value), "")
			return
		}
		m.Open(desk.ChooseScreen(l.Item+" of "+name, there, func(m *desk.Model) []desk.Choice { return l.Items(m, at) },
			func(*desk.Model) string { return value }, func(m *desk.Model, v string) { refuse(m, set(m, name, v)) }, field(name, value)))
	}
	var rows []desk.Row
	table := now(m)
	for _, name := range slices.Sorted(maps.Keys(table)) {
		value, _ := table[name].(string)
		rows = append(rows, desk.Row{Key: "each " + name, Text: line(m, w, name, value), Detail: l.Does + ". Press . to remove it",
			Field: field(name, value), Enter: func(m *desk.Model) { choose(m, name, value) }, Drop: func(m *desk.Model) {
				next := maps.Clone(now(m))
				delete(next, name)
				refuse(m, put(m, at, k, next))
			}})
	}
	begin := func(m *desk.Model, name string) error {
		if name = strings.TrimSpace(name); name == "" {
			return fmt.Errorf("type which one it is")
		}
		for m.Top() == desk.KindChoice {
			m.Back()
		}
		choose(m, name, "")
		return nil
	}
	adds := desk.Row{Key: "add", Text: "add one", Detail: l.Does, Does: "add",
		Field: &desk.Field{Label: l.Says + " of " + title(m.H, at), ID: true, Set: begin}}
	if l.From != nil {
		other := adds.Field
		adds.Enter = func(m *desk.Model) {
			m.Open(desk.ChooseScreen(l.Says, there, func(m *desk.Model) []desk.Choice { return l.From(m, at) },
				func(*desk.Model) string { return "\x00" }, func(m *desk.Model, v string) { refuse(m, begin(m, v)) }, other))
		}
	}
	return append(rows, adds)
}
