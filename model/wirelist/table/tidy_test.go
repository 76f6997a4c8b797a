package table_test

import (
	"fmt"
	"html"
	"strings"
	"testing"

	"contralay/model/visible"
	"contralay/model/wirelist/listtest"
	"contralay/model/wirelist/table"
)

// A cell that holds what a terminal obeys, or what does not show, is read without, and said: in
// every kind of list, for every such character that the kind can hold.
func TestOddCells(t *testing.T) {
	const head = "Wire,From,To,Signal\n"
	for _, c := range []struct{ name, cell, read, shown string }{
		{"a sequence", "In\x1b[2Jj", "In[2Jj", "In␛[2Jj"},
		{"a bell", "Inj\x07", "Inj", "Inj␇"},
		{"eight bits", "In\u009b2Jj", "In2Jj", "In␛[2Jj"},
		{"direction", "In\u202ej", "Inj", "In<U+202E>j"},
		{"no room", "In\u200bj \ufeff1", "Inj 1", "In<U+200B>j <U+FEFF>1"},
		{"a joiner", "In\u200dj", "Inj", "In<U+200D>j"},
		{"between blanks", "Inj \u200e 1", "Inj 1", "Inj <U+200E> 1"},
		{"the marks of this reader", "In\uFDD0j\uFDD1", "Inj", "In<U+FDD0>j<U+FDD1>"},
		{"nothing odd", "Größe é Ω 線", "Größe é Ω 線", ""},
		{"a soft hyphen", "Injec\u00adtor", "Injector", ""},
		{"two lines", "In\u2028j\u00851", "In j 1", ""},
	} {

		rows := `<row r="1"><c r="A1" t="inlineStr"><is><t>Wire</t></is></c></row><row r="2"><c r="A2"><v>1</v></c><c r="D2" t="inlineStr">` +
			`<is><t>` + html.EscapeString(c.cell) + `</t></is></c></row>`
		files := map[string][]byte{
			"a.csv": []byte(head + "1,P1:A,P2:A," + c.cell + "\n"),
			"a.tsv": []byte(strings.ReplaceAll(head+"1,P1:A,P2:A,", ",", "\t") + c.cell + "\n"),
			"a.md":  []byte("| Wire | From | To | Signal |\n|---|---|---|---|\n| 1 | P1:A | P2:A | " + c.cell + " |\n"),
		}
		if !strings.ContainsAny(c.cell, "\x1b\x07") { // XML has no way to hold these
			files["a.xlsx"] = listtest.Packed(t, listtest.Workbook("<worksheet><sheetData>"+rows+"</sheetData></worksheet>"))
			files["a.ods"] = listtest.Packed(t, listtest.OpenDocument(`<table name="One"><table-row><table-cell><p>Wire</p></table-cell>`+
				`</table-row><table-row><table-cell><p>1</p></table-cell><table-cell/><table-cell/><table-cell><p>`+
				html.EscapeString(c.cell)+`</p></table-cell></table-row></table>`))
		}
		for name, data := range files {
			all, err := table.Read(name, data, table.Limits{})
			if err != nil || len(all) != 1 {
				t.Errorf("%s, %s: %v", c.name, name, err)
				continue
			}
			last := all[0].Rows[len(all[0].Rows)-1]
			if got := last.Cells[len(last.Cells)-1]; got != c.read {
				t.Errorf("%s, %s: read %q, want %q", c.name, name, got, c.read)
			}
			want := "[]"
			if c.shown != "" {
				want = fmt.Sprint([]table.Odd{{Row: last.Line, Col: 3, Shown: c.shown}})
			}
			if got := fmt.Sprint(all[0].Odd); got != want {
				t.Errorf("%s, %s: odd %s, want %s", c.name, name, got, want)
			}
		}
	}
}

// Names of files and of sheets are shown; a row of nothing else is no row.
func TestOddNames(t *testing.T) {
	parts := listtest.Workbook("<worksheet><sheetData><row><c t=\"str\"><v>a</v></c></row><row><c " +
		"t=\"str\"><v>\u200b</v></c></row></sheetData></worksheet>")
	parts["xl/workbook.xml"] = strings.Replace(parts["xl/workbook.xml"], `name="One"`, "name=\"O\u202ene\"", 1)
	all, err := table.Read("a\n\x1b[2J.xlsx", listtest.Packed(t, parts), table.Limits{})
	if err != nil || len(all) != 1 {
		t.Fatal(err)
	}
	if all[0].File != "a␊␛[2J.xlsx" || all[0].Sheet != "One" || len(all[0].Rows) != 1 {
		t.Errorf("%+v", all[0])
	}
	if want := fmt.Sprint([]table.Odd{{Shown: "O<U+202E>ne"}, {Row: 2, Shown: "<U+200B>"}}); fmt.Sprint(all[0].Odd) != want {
		t.Errorf("odd %v, want %s", all[0].Odd, want)
	}
	if _, err := table.Read("a\nstop: b.csv", nil, table.Limits{}); err == nil || strings.Contains(err.Error(), "\n") {
		t.Errorf("%v", err)
	}
	for _, tt := range []struct{ in, want string }{{"a\x1b\u200d\u202eb", "ab"}, {" a\n b ", "a b"}} {
		if got := table.Tidy(tt.in); got != tt.want {
			t.Errorf("%q is %q, want %q", tt.in, got, tt.want)
		}
		if _, found := visible.Find(table.Tidy(tt.in)); found {
			t.Errorf("%q", table.Tidy(tt.in))
		}
	}
}
