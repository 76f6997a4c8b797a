package values

import (
	"fmt"
	"strings"

	"contralay/model"
	"contralay/model/file/schema"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/values/label"
	"contralay/ui/bench/words"
)

// FilePage lists every table of the file.
func FilePage(m *desk.Model, w int, _ string) desk.Page {
	p := desk.Page{Lines: []string{"Everything that the file can hold. Enter opens it."}}
	for _, t := range schema.Tables() {
		p.Rows = append(p.Rows, tableRow(m, nil, t, w))
	}
	return p
}

// lastName is the name of a table without those that it is in.
func lastName(t schema.Table) string { return t.Name[strings.LastIndexByte(t.Name, '.')+1:] }

// tableRow opens a table of a record.
func tableRow(m *desk.Model, at schema.At, t schema.Table, w int) desk.Row {
	n, name := label.NounOf(t.Name), lastName(t)
	if t.One {
		return desk.Row{Key: name, Text: line(m, w, n.One, oneText(m, at.In(name, 0), t)), Detail: n.Does + ". Enter opens it",
			Enter: func(m *desk.Model) { m.Show(desk.KindRecord, subject{at: at.In(name, 0)}.String(m.H)) }}
	}
	return desk.Row{Key: name, Text: line(m, w, n.Many, fmt.Sprint(schema.Count(m.H, at, name))), Detail: n.Does + ". Enter lists them",
		Enter: func(m *desk.Model) { m.Show(desk.KindRecords, subject{at: at, table: name}.String(m.H)) }}
}

// oneText is what a table of which there is one has, in short.
func oneText(m *desk.Model, at schema.At, t schema.Table) string {
	if t.Name != "rules" {
		return summary(m, at, t)
	}
	own := 0
	for _, k := range t.Keys {
		if schema.Get(m.H, at, k.Name) != nil {
			own++
		}
	}
	return words.Either(own == 0, "all by default", fmt.Sprintf("%d of your own, the rest by default", own))
}

// RecordsPage lists the records of one table, with a row that adds one.
func RecordsPage(m *desk.Model, w int, of string) desk.Page {
	s, ok := find(m.H, of)
	t, known := schema.Find(strings.TrimPrefix(s.at.Table()+"."+s.table, "."))
	if !ok || !known {
		return desk.Page{Empty: gone}
	}
	n := label.NounOf(t.Name)
	head := words.Capital(n.Many)
	if len(s.at) > 0 {
		head += " of " + title(m.H, s.at)
	}
	how := ". Press . to remove one."
	if n.Order {
		how = ". + - moves one, . removes it."
	}
	p := desk.Page{Lines: []string{head + how}}
	if serial := serialOf(m.H, s.at); serial != "" {
		p.Lines = append(p.Lines, "This changes the record of serial "+serial+".")
	}
	if t.Name == "branch.layer" && schema.Count(m.H, s.at, s.table) == 0 {
		p.Lines = append(p.Lines, "No layer is in the file yet. One that you add here takes the place of the lay-up that is proposed.")
	}
	for i := range schema.Count(m.H, s.at, s.table) {
		at := s.at.In(s.table, i)
		r := desk.Row{Key: fmt.Sprint(s.table, " ", i), Detail: n.Does + ". Enter opens it",
			TextOf: func() string { return line(m, w, shortTitle(m.H, at), summary(m, at, t)) }, // of those on the screen alone
			Enter:  func(m *desk.Model) { m.Show(desk.KindRecord, subject{at: at}.String(m.H)) },
			Drop:   func(m *desk.Model) { removeAt(m, at) }}
		if id := idOf(m.H, at); id != "" {
			r.Key, r.Mark = s.table+" "+id, m.MarkFor(id)
		}
		if n.Order {
			r.Step = func(m *desk.Model, by int) {
				h, err := schema.Move(m.H, at, i+by)
				if err != nil {
					m.Tell(words.Either(by < 0, "it is the first", "it is the last"))
					return
				}
				take(m, at, h, shortTitle(m.H, at)+" moved")
				m.PutOn(fmt.Sprint(s.table, " ", i+by))
			}
		}
		p.Rows = append(p.Rows, r)
	}
	p.Rows = append(p.Rows, desk.Row{Key: "add", Text: "add one", Detail: "Enter adds a " + n.One, Does: "add",
		Enter: func(m *desk.Model) { add(m, s.at, s.table) }})
	return p
}

// shortTitle is what a record is called among those of its table.
func shortTitle(h *model.Harness, at schema.At) string {
	all := strings.Split(title(h, at[len(at)-1:]), ", ")
	if id := idOf(h, at); id != "" {
		return id
	}
	if len(at) > 1 {
		all = strings.Split(title(h, at), ", ")
	}
	return all[len(all)-1]
}

// summary is the first things that are given of a record.
func summary(m *desk.Model, at schema.At, t schema.Table) string {
	var out []string
	for _, k := range t.Keys {
		if k.Name == "id" || k.Name == "serial" || len(out) == 4 {
			continue
		}
		if v := schema.Get(m.H, at, k.Name); v != nil && v != "" {
			out = append(out, shown(m, k, label.Of(t.Name, k.Name), v))
		}
	}
	return strings.Join(out, ", ")
}

// removeRow takes the record of a page away.
func removeRow(m *desk.Model, at schema.At) desk.Row {
	return desk.Row{Key: "remove", Text: "remove " + title(m.H, at), Detail: "Enter removes it. Backspace brings it back", Does: "remove",
		Enter: func(m *desk.Model) { removeAt(m, at) }}
}

// removeAt takes a record away and closes the pages that were about it.
func removeAt(m *desk.Model, at schema.At) {
	what := title(m.H, at)
	h, lost, err := removed(m.H, at)
	if err != nil {
		m.Refuse(what + " stays: " + said(m, at, err).Error())
		return
	}
	was := m.H
	take(m, at, h, strings.Join(append([]string{what + " removed"}, lost...), ". "))
	if m.H != was && m.Top() == desk.KindRecord {
		m.Back()
	}
}
