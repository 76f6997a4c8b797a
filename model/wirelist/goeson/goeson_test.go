package goeson_test

import (
	"testing"

	"contralay/model/wirelist/goeson"
	"contralay/model/wirelist/table"
)

// A title goes on with the one above that it begins as; it stays where there is none, where there are two, and where a cavity would be
// told twice.
func TestGoesOn(t *testing.T) {
	rows := func(title, pin string, more ...string) *table.Table {
		t := &table.Table{Rows: []table.Row{{Line: 1, Cells: []string{"Plug A (grey)"}}, {Line: 2, Cells: []string{"Pin", "Use"}},
			{Line: 3, Cells: []string{"1", "up"}}}}
		for i, m := range more {
			t.Rows = append(t.Rows, table.Row{Line: 5 + i, Cells: []string{m}})
		}
		t.Rows = append(t.Rows, table.Row{Line: 20, Cells: []string{title}}, table.Row{Line: 21, Cells: []string{"Pin", "Use"}},
			table.Row{Line: 22, Cells: []string{pin, "down"}})
		return t
	}
	for _, c := range []struct {
		title, pin string
		more       []string
		want       string
	}{
		{"Plug A (continued)", "2", nil, "Plug A (grey)"},
		{"Plug A, cont'd:", "2", nil, "Plug A (grey)"},
		{"PLUG A - Fortsetzung", "2", nil, "Plug A (grey)"},
		{"Plug A (suite de la page 3)", "2", nil, "Plug A (grey)"},
		{"Plug A (continued)", "1", nil, "Plug A (continued)"},
		{"Plug B (continued)", "2", nil, "Plug B (continued)"},
		{"Plug A (rear)", "2", nil, "Plug A (rear)"},
		{"Plug A (continued)", "2", []string{"Plug A (black)"}, "Plug A (continued)"},
		{"Plug A continued", "2", []string{"Plug Alpha"}, "Plug A (grey)"},
		{"continued", "2", nil, "continued"},
	} {
		in := rows(c.title, c.pin, c.more...)
		out := goeson.Rows(in)
		if got := out[len(out)-3].Cells[0]; got != c.want {
			t.Errorf("%q above %q: %q, want %q", c.title, c.pin, got, c.want)
		}
		if got := in.Rows[len(in.Rows)-3].Cells[0]; got != c.title {
			t.Errorf("the rows that were given are changed: %q", got)
		}
	}
}
