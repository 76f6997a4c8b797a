package values

import (
	"fmt"
	"maps"
	"slices"
	"strings"

	"contralay/model/file/schema"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/values/label"
	"contralay/ui/bench/words"
)

// A key that holds several values has a page of its own.

// ItemsPage is the values of one key.
func ItemsPage(m *desk.Model, w int, of string) desk.Page {
	s, ok := find(m.H, of)
	t, known := schema.Find(s.at.Table())
	k, has := t.Key(s.key)
	if !ok || !known || !has {
		return desk.Page{Empty: gone}
	}
	l := label.Of(t.Name, k.Name)
	p := desk.Page{Lines: []string{fmt.Sprintf("%s: %s. %s.", words.Capital(title(m.H, s.at)), l.Says, l.Does)}}
	if serial := serialOf(m.H, s.at); serial != "" {
		p.Lines = append(p.Lines, "This changes the record of serial "+serial+".")
	}
	value := schema.Get(m.H, s.at, k.Name)
	switch {
	case k.Kind == schema.KindPair:
		p.Rows = pairRows(m, s.at, k, l, w)
	case k.Kind == schema.KindMap && !s.of:
		p.Rows = mapRows(m, s, k, l, w)
	case k.Kind == schema.KindEach:
		p.Rows = eachRows(m, s.at, k, l, w)
	case k.Kind == schema.KindMap:
		table, _ := value.(map[string]any)
		list, there := table[s.sub].([]any)
		if !there {
			return desk.Page{Empty: gone}
		}
		p.Lines[0] = fmt.Sprintf("%s: %s, %s.", words.Capital(title(m.H, s.at)), l.Says, s.sub)
		p.Rows = itemRows(m, s, k, label.Label{Says: l.Says, Item: l.Item, From: l.Items, Does: l.Does}, list, w)
		return p
	default:
		list, _ := value.([]any)
		p.Rows = itemRows(m, s, k, l, list, w)
	}
	if value == nil && k.Kind != schema.KindPair {
		p.Rows = append(p.Rows, desk.Row{Key: "none", Text: "none: say so", Does: "take",
			Detail: "Enter writes down that there is none. Left out, nothing is said",
			Enter: func(m *desk.Model) {
				if k.Kind == schema.KindEach {
					refuse(m, put(m, s.at, k, map[string]any{}))
					return
				}
				refuse(m, putItems(m, s, k, []any{}))
			}})
	}
	return p
}

// putItems gives a list its items: that of a key, or one of those in a table of lists.
func putItems(m *desk.Model, s subject, k schema.Key, list []any) error {
	if k.Kind != schema.KindMap {
		return put(m, s.at, k, list)
	}
	was, _ := schema.Get(m.H, s.at, k.Name).(map[string]any)
	now := maps.Clone(was)
	if now == nil {
		now = map[string]any{}
	}
	if s.of {
		now[s.sub] = list
	}
	return put(m, s.at, k, now)
}

// itemsNow are the items as they are now.
func itemsNow(m *desk.Model, s subject, k schema.Key) []any {
	value := schema.Get(m.H, s.at, k.Name)
	if table, is := value.(map[string]any); is {
		value = table[s.sub]
	}
	list, _ := value.([]any)
	return list
}

// itemRows are the items of a list and a row that adds one.
func itemRows(m *desk.Model, s subject, k schema.Key, l label.Label, list []any, w int) []desk.Row {
	one := schema.Key{Name: k.Name, Kind: schema.KindText, Unit: k.Unit, Words: k.Words}
	switch k.Kind {
	case schema.KindNumbers:
		one.Kind = schema.KindNumber
	case schema.KindIDs, schema.KindMap:
		one.Kind = schema.KindID
	}
	item := words.Either(l.Item == "", "value", l.Item)
	read := func(m *desk.Model, text string) (any, error) {
		if text == "" {
			return nil, fmt.Errorf("type a %s", item)
		}
		if k.Kind != schema.KindNumbers {
			return text, nil
		}
		v, err := parse(m, one, text)
		if err == nil && !k.Holds(v) {
			err = fmt.Errorf("%s is out of range. Allowed: %s", text, allowed(m, k))
		}
		return v, err
	}
	field := func(value any, set func(m *desk.Model, v any) error) *desk.Field {
		f := &desk.Field{Label: item + " of " + title(m.H, s.at), ID: one.Kind == schema.KindID, Number: k.Kind == schema.KindNumbers,
			Unit: unitOf(m, one, label.Label{})}
		switch v := value.(type) {
		case string:
			f.Value = v
		case float64:
			f.Value = numberText(m, one, v)
		}
		was := f.Value
		f.Set = func(m *desk.Model, text string) error {
			if text == was && was != "" {
				return nil
			}
			v, err := read(m, text)
			if err != nil {
				return err
			}
			return set(m, v)
		}
		return f
	}
	var rows []desk.Row
	for i, v := range list {
		r := desk.Row{Key: fmt.Sprint("item ", i), Text: line(m, w, fmt.Sprint(item, " ", i+1), shown(m, one, label.Label{}, v)),
			Detail: "Press . to remove it", Why: reasons(m, one, l, v, ""),
			Drop: func(m *desk.Model) {
				refuse(m, putItems(m, s, k, slices.Delete(slices.Clone(itemsNow(m, s, k)), i, i+1)))
			}}
		if k.Kind != schema.KindWords {
			r.Field = field(v, func(m *desk.Model, v any) error {
				now := slices.Clone(itemsNow(m, s, k))
				now[i] = v
				return putItems(m, s, k, now)
			})
		}
		if k.Kind == schema.KindNumbers {
			r.Step = func(m *desk.Model, by int) {
				now := slices.Clone(itemsNow(m, s, k))
				f, _ := now[i].(float64)
				now[i] = nudged(m, one, l, f, by)
				refuse(m, putItems(m, s, k, now))
			}
		}
		if l.Order && k.Kind != schema.KindNumbers {
			r.Detail = "+ - moves it. Press . to remove it"
			r.Step = func(m *desk.Model, by int) {
				now := slices.Clone(itemsNow(m, s, k))
				if i+by < 0 || i+by >= len(now) {
					m.Tell(words.Either(by < 0, "it is the first", "it is the last"))
					return
				}
				now[i], now[i+by] = now[i+by], now[i]
				refuse(m, putItems(m, s, k, now))
				m.PutOn(fmt.Sprint("item ", i+by))
			}
		}
		rows = append(rows, r)
	}
	append1 := func(m *desk.Model, v any) error {
		err := putItems(m, s, k, append(slices.Clone(itemsNow(m, s, k)), v))
		if err == nil {
			m.PutOn("add") // the next one is typed there, and not over this one
		}
		return err
	}
	adds := desk.Row{Key: "add", Text: "add a " + item, Detail: l.Does, Does: "add"}
	if k.Kind != schema.KindWords {
		adds.Field = field(nil, append1)
		adds.Detail = "Digits or Enter: " + l.Does
	}
	if l.From != nil || k.Kind == schema.KindWords {
		other := adds.Field
		adds.Enter = func(m *desk.Model) {
			m.Open(desk.ChooseScreen(item, func(m *desk.Model) bool { return schema.Has(m.H, s.at) }, func(m *desk.Model) []desk.Choice {
				all := label.These(k.Words...)
				if l.From != nil {
					all = l.From(m, s.at)
				}
				return slices.DeleteFunc(all, func(c desk.Choice) bool { return slices.Contains(itemsNow(m, s, k), any(c.Value)) })
			}, func(*desk.Model) string { return "\x00" }, func(m *desk.Model, v string) { refuse(m, append1(m, v)) }, other))
		}
	}
	return append(rows, adds)
}

// pairRows are the two numbers of a pair. The first that is given is both, until the other is.
func pairRows(m *desk.Model, at schema.At, k schema.Key, l label.Label, w int) []desk.Row {
	one := schema.Key{Name: k.Name, Kind: schema.KindNumber, Unit: k.Unit}
	now := func(m *desk.Model) []any {
		list, _ := schema.Get(m.H, at, k.Name).([]any)
		return list
	}
	var rows []desk.Row
	for n, says := range l.Pair {
		set := func(m *desk.Model, v float64) error {
			if !k.Holds(v) {
				return fmt.Errorf("%s is out of range. Allowed: %s", numberText(m, one, v), allowed(m, one))
			}
			list := slices.Clone(now(m))
			if len(list) != 2 {
				list = []any{v, v}
			}
			list[n] = v
			return put(m, at, k, list)
		}
		r := desk.Row{Key: fmt.Sprint("item ", n), Detail: l.Does,
			Field: &desk.Field{Label: says + ", " + title(m.H, at), Unit: unitOf(m, one, l), Number: true,
				Set: func(m *desk.Model, text string) error {
					v, err := parse(m, one, text)
					if err != nil {
						return err
					}
					return set(m, v)
				}}}
		value := any(nil)
		if list := now(m); len(list) == 2 {
			value = list[n]
		}
		v, given := value.(float64)
		if given {
			r.Field.Value = numberText(m, one, v)
			r.Drop = func(m *desk.Model) { clear(m, at, k) }
		}
		r.Text, r.Why = line(m, w, says, shown(m, one, l, value)), reasons(m, one, l, value, "")
		r.Step = func(m *desk.Model, by int) {
			next := start(m, one, l)
			if given {
				next = nudged(m, one, l, v, by)
			}
			if !k.Holds(next) {
				m.Tell(says + " is at its lowest")
				return
			}
			refuse(m, set(m, next))
		}
		rows = append(rows, r)
	}
	return rows
}

// mapRows are the lists of a table of lists, each under its name, and a row that adds one.
func mapRows(m *desk.Model, s subject, k schema.Key, l label.Label, w int) []desk.Row {
	table, _ := schema.Get(m.H, s.at, k.Name).(map[string]any)
	var rows []desk.Row
	open := func(name string) func(m *desk.Model) {
		return func(m *desk.Model) {
			m.Show(ItemsKind, subject{at: s.at, key: k.Name, sub: name, of: true}.String(m.H))
		}
	}
	for _, name := range slices.Sorted(maps.Keys(table)) {
		list, _ := table[name].([]any)
		rows = append(rows, desk.Row{Key: "list " + name,
			Text:   line(m, w, name, listText(m, schema.Key{Kind: schema.KindIDs}, label.Label{}, list)),
			Detail: "Enter opens its list. Press . to remove it", Enter: open(name), Drop: func(m *desk.Model) {
				was, _ := schema.Get(m.H, s.at, k.Name).(map[string]any)
				now := maps.Clone(was)
				delete(now, name)
				refuse(m, put(m, s.at, k, now))
			}})
	}
	begin := func(m *desk.Model, name string) error {
		was, _ := schema.Get(m.H, s.at, k.Name).(map[string]any)
		if name = strings.TrimSpace(name); name == "" {
			return fmt.Errorf("type which one it is")
		}
		if _, there := was[name]; !there {
			if err := putItems(m, subject{at: s.at, sub: name, of: true}, k, []any{}); err != nil {
				return err
			}
		}
		for m.Top() == desk.KindChoice {
			m.Back()
		}
		open(name)(m)
		return nil
	}
	adds := desk.Row{Key: "add", Text: "add one", Detail: l.Does, Does: "add",
		Field: &desk.Field{Label: l.Says + " of " + title(m.H, s.at), ID: true, Set: begin}}
	if l.From != nil {
		other := adds.Field
		adds.Enter = func(m *desk.Model) {
			m.Open(desk.ChooseScreen(l.Says, func(m *desk.Model) bool { return schema.Has(m.H, s.at) }, func(m *desk.Model) []desk.Choice {
				return l.From(m, s.at)
			}, func(*desk.Model) string { return "\x00" }, func(m *desk.Model, v string) { refuse(m, begin(m, v)) }, other))
		}
	}
	return append(rows, adds)
}
