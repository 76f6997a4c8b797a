package table_test

import (
	"strings"
	"testing"

	"contralay/model/wirelist/listtest"
	"contralay/model/wirelist/table"
)

// Each refusal says what, where and what is allowed.
func TestRefused(t *testing.T) {
	for _, c := range []struct {
		name string
		data []byte
		want string
	}{
		{"", nil, "list: is empty; allowed: separated values, columns of text, Markdown, a page or a wiki with tables, .xlsx, .ods"},
		{"large", make([]byte, 2<<20), "list: is 2097152 bytes; allowed: up to 1048576"},
		{"binary", []byte("a\x00b"),
			"list: is no text: it has zero bytes; allowed: " +
				"separated values, columns of text, Markdown, a page or a wiki with tables, .xlsx, .ods"},
		{"old workbook", []byte{0xd0, 0xcf, 0x11, 0xe0, 0},
			"list: is a workbook of the old binary kind, or one with a password; allowed: save it as .xlsx or .ods without password"},
		{"page", []byte("%PDF-1.7"),
			"list: is a page to print, not a list; allowed: " +
				"separated values, columns of text, Markdown, a page or a wiki with tables, .xlsx, .ods"},
		{"quotation mark", []byte("Pin,Signal\nA,\"left open\nB,x\n"),
			"list, row 2: a quotation mark opens a cell here and none closes it; allowed: cells of up to 4096 bytes, each quotation mark " +
				"closed"},
		{"long cell", []byte("Pin,Signal\nA," + strings.Repeat("x", 5000)),
			"list, row 2: a cell has 5000 bytes; allowed: cells of up to 4096 bytes, each quotation mark closed"},
		{"columns", []byte("Pin,Signal\n" + strings.Repeat("x,", 100)), "list, row 2: has 65 cells; allowed: up to 64 in a row"},
		{"rows", []byte(strings.Repeat("a,b\n", 2001)), "list, row 2001: is one row too many; allowed: up to 2000 rows in a file, " +
			"so that the harness can be saved; part the list"},
		{"no zip", []byte("PK\x03\x04 and no more"), "list: is a broken zip: zip: not a valid zip file; allowed: a whole .xlsx or .ods"},
		{"zip of something", listtest.Packed(t, map[string]string{"../../etc/passwd": "x"}),
			"list: is a zip, and no workbook in it; allowed: .xlsx, .ods; unpack it first if lists are in it"},
		{"bomb", listtest.Packed(t, listtest.OpenDocument(strings.Repeat(" ", 5<<20))), "list: unpacks to more than 4194304 " +
			"bytes; allowed: a smaller workbook"},
		{"deep", listtest.Packed(t, listtest.OpenDocument(strings.Repeat("<a>", 40)+strings.Repeat("</a>", 40))),
			`list: part "content.xml" has elements more than 32 deep; allowed: what a spreadsheet program writes`},
		{"entities", listtest.Packed(t, map[string]string{"content.xml": `<!DOCTYPE d [<!ENTITY a "b">]><d>&a;</d>`}),
			`list: part "content.xml" declares a document type; allowed: what a spreadsheet program writes`},
		{"broken part", listtest.Packed(t, listtest.OpenDocument("<a>")),
			`list: part "content.xml" is broken: </doc> closes no element of its name; allowed: a whole workbook`},
		{"rows said to repeat",
			listtest.Packed(t,
				listtest.OpenDocument(`<table name="A"><table-row number-rows-repeated="1000000"><table-cell><p>x</p>`+
					`</table-cell></table-row></table>`)),
			`list, sheet "A", row 2001: is one row too many; allowed: up to 2000 rows in a file, ` +
				"so that the harness can be saved; part the list"},
		{"cells said to repeat",
			listtest.Packed(t,
				listtest.OpenDocument(`<table name="A"><table-row><table-cell number-columns-repeated="100000"><p>x</p>`+
					`</table-cell></table-row></table>`)),
			`list, sheet "A", row 1, column A: is a column too far; allowed: up to 64 columns`},
		{"sheets", listtest.Packed(t, listtest.OpenDocument(strings.Repeat("<table/>", 9))), "list: has more than 8 sheets; " +
			"allowed: fewer"},
		{"column far out", listtest.Packed(t, listtest.Workbook(`<worksheet><row r="1"><c r="XFD1"><v>1</v></c></row></worksheet>`)),
			`list, sheet "One", row 1, column XFD: is a column too far; allowed: up to 64 columns`},
		{"cell nowhere", listtest.Packed(t, listtest.Workbook(`<worksheet><row r="1"><c r="1A"><v>1</v></c></row></worksheet>`)),
			`list, sheet "One": a cell stands at "1A"; allowed: A1, B1 …`},
		{"no sheet part", listtest.Packed(t, map[string]string{"[Content_Types].xml": "", "_rels/.rels": "<R/>"}),
			`list: has no part "xl/workbook.xml"; allowed: a whole workbook`},
	} {
		t.Run(c.name, func(t *testing.T) {
			tables, err := table.Read("list", c.data, listtest.SmallLimits())
			if tables != nil || err == nil || err.Error() != c.want {
				t.Errorf("%d tables, %v\nwant %s", len(tables), err, c.want)
			}
		})
	}
}

// A row of a great many cells is refused by a reader that reads it once: one that looks for
// the end of the line at each cell takes minutes for these.
func TestLongRow(t *testing.T) {
	_, err := table.Read("long.csv", []byte("a"+strings.Repeat(",a", 2_000_000)), table.Limits{})
	if err == nil || !strings.Contains(err.Error(), "cells") {
		t.Errorf("%v", err)
	}
}
