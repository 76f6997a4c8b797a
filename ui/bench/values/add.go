package values

import (
	"fmt"
	"slices"

	"contralay/model"
	"contralay/model/file/schema"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/values/label"
	"contralay/ui/bench/words"
)

// Adding a record: what a file must give of it is made up where there is a sound value, else it is
// asked for, one after another, and the record is made with the last answer.

// add adds a record to a table of the record at a place.
func add(m *desk.Model, parent schema.At, table string) {
	t, ok := schema.Find(joined(parent, table))
	if !ok {
		m.Refuse(gone)
		return
	}
	values, err := fresh(m, parent, table)
	if err != nil {
		m.Refuse(err.Error())
		return
	}
	ask(m, parent, t, values)
}

func joined(parent schema.At, table string) string { return parent.In(table, 0).Table() }

// asked are the keys of a table that are asked for.
func asked(t schema.Table, known map[string]any) []schema.Key {
	var out []schema.Key
	for _, k := range t.Keys {
		if _, has := known[k.Name]; k.Must && !has {
			out = append(out, k)
		}
	}
	return out
}

// ask asks for the first thing that is not known yet, and adds the record when nothing is missing.
func ask(m *desk.Model, parent schema.At, t schema.Table, values map[string]any) {
	missing := asked(t, values)
	if len(missing) == 0 {
		refuse(m, made(m, parent, t, values))
		return
	}
	k := missing[0]
	l := label.Of(t.Name, k.Name)
	of := subject{at: parent}.String(m.H)
	answer := func(m *desk.Model, value any) error {
		s, ok := find(m.H, of)
		if !ok && len(parent) > 0 {
			return fmt.Errorf("%s", gone)
		}
		now := map[string]any{k.Name: value}
		for name, v := range values {
			now[name] = v
		}
		if len(asked(t, now)) == 0 {
			return made(m, s.at, t, now)
		}
		ask(m, s.at, t, now)
		return nil
	}
	f := desk.Field{Label: l.Says + " of the new " + label.NounOf(t.Name).One, Unit: unitOf(m, k, l), ID: k.Kind == schema.KindID,
		Number: k.Kind == schema.KindNumber || k.Kind == schema.KindCount,
		Set: func(m *desk.Model, text string) error {
			switch {
			case text == "":
				return fmt.Errorf("it must be given. %s", l.Does)
			case k.Kind == schema.KindNumber || k.Kind == schema.KindCount:
				v, err := number(m, parent, k, text)
				if err != nil {
					return err
				}
				return answer(m, v)
			}
			return answer(m, text)
		}}
	list := k.Words
	if l.From == nil && k.Kind != schema.KindChoice {
		m.OpenField(f, "")
		return
	}
	var other *desk.Field
	if k.Kind != schema.KindChoice {
		other = &f
	}
	m.Open(desk.ChooseScreen(l.Says, func(*desk.Model) bool { return true }, func(m *desk.Model) []desk.Choice {
		if k.Kind == schema.KindChoice {
			return label.These(list...)
		}
		return l.From(m, parent.In(lastName(t), 0))
	}, func(*desk.Model) string { return "\x00" }, func(m *desk.Model, v string) { refuse(m, answer(m, v)) }, other))
}

// made adds the record and opens it.
func made(m *desk.Model, parent schema.At, t schema.Table, values map[string]any) error {
	name := lastName(t)
	h, err := schema.Add(m.H, parent, name, -1, values)
	if err != nil {
		return said(m, parent.In(name, 0), err)
	}
	at, says := parent.In(name, schema.Count(m.H, parent, name)), ""
	if t.Name == "branch.cover" {
		h, at, says = withSheath(m, h, at)
	}
	was := m.H
	take(m, at, h, title(h, at)+" added"+says)
	if m.H != was {
		for m.Top() == desk.KindChoice {
			m.Back()
		}
		m.PutOn(recordKey(m.H, at))
		m.Show(desk.KindRecord, subject{at: at}.String(m.H))
	}
	return nil
}

// withSheath writes down the sheath that is only proposed, where another cover is the first that a
// branch is given: with one cover in the file the branch would want no sheath.
func withSheath(m *desk.Model, h *model.Harness, at schema.At) (*model.Harness, schema.At, string) {
	i := at[0].Index
	sh, first := &m.Sheet.Branches[i].Sheath, h.Branches[i].Covers[0].What
	if len(m.H.Branches[i].Covers) > 0 || !sh.Proposed || sh.Part == "" || first == model.CoverSheath {
		return h, at, ""
	}
	place := 0
	if first.Trait().Under {
		place = 1
	}
	out, err := schema.Add(h, at.Up(), "cover", place, map[string]any{"what": string(model.CoverSheath), "part": sh.Part})
	if err != nil {
		return h, at, ""
	}
	return out, at.Up().In("cover", 1-place), ", with the sheath that was proposed"
}

// recordKey is the key of the row of a record in the list of its table.
func recordKey(h *model.Harness, at schema.At) string {
	last := at.Last()
	if id := idOf(h, at); id != "" {
		return last.Table + " " + id
	}
	return fmt.Sprint(last.Table, " ", last.Index)
}

// fresh is what a new record begins with: what nobody would want to be asked.
func fresh(m *desk.Model, parent schema.At, table string) (map[string]any, error) {
	h := m.H
	switch joined(parent, table) {
	case "reel", "build.wire":
		spec, size := likely(m)
		return map[string]any{"spec": spec, "size": size}, nil
	case "termination":
		return map[string]any{"id": h.FreeID("X")}, nil
	case "breakout":
		return map[string]any{"id": h.FreeID("J")}, nil
	case "splice":
		if len(h.Breakouts) == 0 {
			return nil, fmt.Errorf("a splice is at a breakout: add a breakout first")
		}
		return map[string]any{"id": h.FreeID("S"), "at": h.Breakouts[0].ID}, nil
	case "wire":
		spec, size := likely(m)
		like := "100"
		if n := len(h.Wires); n > 0 {
			like = h.Wires[n-1].ID
		}
		return map[string]any{"id": h.NextID(like), "spec": spec, "size": size}, nil
	case "feed":
		return map[string]any{"id": free("F", func(id string) bool {
			return slices.ContainsFunc(h.Feeds, func(f model.Feed) bool { return f.ID == id })
		})}, nil
	case "unit":
		return map[string]any{"id": h.NextID("C0"), "wires": []any{}}, nil
	case "branch":
		return freshBranch(m)
	case "build":
		return map[string]any{"serial": free("", func(id string) bool { return h.BuildOf(fmt.Sprintf("%03s", id)) >= 0 })}, nil
	case "branch.as_built":
		return map[string]any{"layer": int64(schema.Count(h, parent, table))}, nil
	case "build.reading":
		return map[string]any{"layer": int64(0)}, nil
	case "build.again":
		return map[string]any{"times": int64(1)}, nil
	}
	return map[string]any{}, nil
}

// free is the first of a letter and a number that is not taken.
func free(letter string, taken func(id string) bool) string {
	for n := 1; ; n++ {
		id := fmt.Sprint(letter, n)
		if letter == "" {
			id = fmt.Sprintf("%03d", n)
		}
		if !taken(id) {
			return id
		}
	}
}

// likely is the specification and size that the harness has most of, else those of the shop.
func likely(m *desk.Model) (spec, size string) {
	spec, size = m.Sheet.Limits.Spec, m.Sheet.Limits.SizeMin
	used, most := map[[2]string]int{}, 0
	for i := range m.H.Wires {
		w := [2]string{m.H.Wires[i].Spec, m.H.Wires[i].Size}
		if used[w]++; used[w] > most {
			most, spec, size = used[w], w[0], w[1]
		}
	}
	return spec, size
}

// freshBranch runs between the first two places that no way joins yet. Its length is typed.
func freshBranch(m *desk.Model) (map[string]any, error) {
	h := m.H
	var all []string
	for i := range h.Terminations {
		all = append(all, h.Terminations[i].ID)
	}
	for i := range h.Breakouts {
		all = append(all, h.Breakouts[i].ID)
	}
	values := map[string]any{"id": h.FreeID(words.Either(len(h.Branches) == 0, "T", "L")), "length_mm": 300.0}
	for n, from := range all {
		for _, to := range all[n+1:] {
			values["from"], values["to"] = from, to
			if _, err := schema.Add(h, nil, "branch", -1, values); err == nil {
				return values, nil
			}
		}
	}
	return nil, fmt.Errorf("a branch runs between two places that no way joins yet: add a termination or a breakout first")
}
