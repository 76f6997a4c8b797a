package values_test

import (
	"slices"
	"strings"
	"testing"

	"contralay/model/file/schema"
	"contralay/model/shorttest"
	"contralay/ui/bench/benchtest"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/values"
	"contralay/ui/draw"
)

// pages opens every page of this family on every-key.toml, one after another: each table's record
// with most keys, its lists of records, its lists of values.
func pages(t *testing.T, file string, visit func(m *desk.Model, name string)) {
	t.Helper()
	m := benchtest.Open(t, file)
	m.Show(desk.KindWholeFile, "")
	visit(m, "the file")
	eachTable(func(table schema.Table) {
		at := first(m.H, table.Name)
		if at == nil {
			return
		}
		show := func(kind desk.Kind, of, name string) {
			m.Stack = nil
			m.Show(kind, of)
			visit(m, name)
		}
		of := values.SubjectOf(m.H, at)
		show(desk.KindRecord, of, table.Name)
		if !table.One {
			show(desk.KindRecords, values.ListOf(m.H, at.Up(), at.Last().Table), "list of "+table.Name)
		}
		for _, k := range table.Keys {
			if k.Kind >= schema.KindTexts && k.Kind <= schema.KindEach {
				show(values.ItemsKind, values.ItemsOf(m.H, at, k.Name), table.Name+"."+k.Name)
			}
		}
	})
}

// Every page fits every size, in plain characters too.
func TestPagesFit(t *testing.T) {
	n := 0
	pages(t, "every-key.toml", func(m *desk.Model, name string) {
		n++
		for _, ascii := range []bool{false, true} {
			m.ShownOn(m.Cfg.Palette, ascii)
			for _, size := range [][2]int{{80, 24}, {120, 40}, {40, 12}, {34, 10}, {20, 8}} {
				benchtest.Size(m, size[0], size[1])
				v := benchtest.View(m)
				lines := strings.Split(v, "\n")
				if len(lines) != size[1] {
					t.Errorf("%s at %v: %d lines", name, size, len(lines))
				}
				for _, l := range lines {
					if draw.Width(l) > size[0] {
						t.Errorf("%s at %v: a line of %d cells", name, size, draw.Width(l))
					}
				}
				if ascii && strings.ContainsFunc(v, func(r rune) bool { return r != '\n' && (r < 0x20 || r > 0x7e) }) {
					t.Errorf("%s at %v is not in plain characters:\n%s", name, size, v)
				}
			}
		}
		m.ShownOn(m.Cfg.Palette, false)
		benchtest.Size(m, 80, 24)
	})
	if n < 70 {
		t.Errorf("only %d pages", n)
	}
}

// Every key answers on every row of every page, and no key but those that open a file does harm: what
// it changes is undone by one Backspace.
func TestEveryKeyAnswersOnEveryRow(t *testing.T) {
	shorttest.Turn(t)
	keys := strings.Fields("enter + - . 5 / * w")
	if testing.Short() {
		keys = keys[:4]
	}
	presses := 0
	pages(t, "every-key.toml", func(m *desk.Model, name string) {
		was, stack := m.H, slices.Clone(m.Stack)
		rows := len(m.Page(m.ListWidth()).Rows)
		for at := range rows {
			for i, k := range keys {
				if !shorttest.Long() && (at+i)%6 > 0 {
					continue // every sixth key, others on the next row
				}
				m.Put(at, "")
				m.Says = ""
				steps := m.History.Steps()
				line := m.Page(m.ListWidth()).Rows[at].Line()
				benchtest.Press(m, k)
				presses++
				changed := m.H != was
				switch {
				case !changed && m.Says == "" && m.Entry == nil && len(m.Stack) == len(stack):
					t.Errorf("%s, row %q: %q changes nothing and says nothing", name, line, k)
				case changed && m.History.Steps() != steps+1:
					t.Errorf("%s, row %q: %q is %d steps to undo", name, line, k, m.History.Steps()-steps)
				}
				m.Entry = nil
				if changed {
					m.Undo()
					if !m.H.Same(was) {
						t.Errorf("%s, row %q: %q is not undone whole", name, line, k)
					}
				}
				m.Stack = slices.Clone(stack)
			}
		}
	})
	if presses < 250 || shorttest.Long() && presses < 1500 {
		t.Errorf("only %d presses", presses)
	}
}
