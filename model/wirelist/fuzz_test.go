package wirelist_test

import (
	"errors"
	"testing"

	"contralay/model/visible"
	"contralay/model/wirelist"
	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/listtest"
	"contralay/model/wirelist/table"
)

// whatever reads any bytes: tables within the limits or an Error, and of tables a
// harness that is sound or an Error.
func whatever(t *testing.T, file string, data []byte) {
	tables, err := table.Read(file, data, listtest.SmallLimits())
	var bad *table.Error
	if err != nil {
		if _, found := visible.Find(err.Error()); found || !errors.As(err, &bad) || tables != nil {
			t.Fatalf("%v beside %d tables", err, len(tables))
		}
		return
	}
	rows := 0
	for _, table := range tables {
		rows += len(table.Rows)
		for _, r := range table.Rows {
			if len(r.Cells) > 64 || r.Line < 1 {
				t.Fatalf("row %d has %d cells", r.Line, len(r.Cells))
			}
		}
	}
	if rows > 2000 {
		t.Fatalf("%d rows", rows)
	}
	h, report, err := wirelist.Import(tables, draft.Options{Unit: "mm"})
	if err != nil {
		if !errors.As(err, &bad) || len(h.Wires) > 0 {
			t.Fatalf("%v beside %d wires", err, len(h.Wires))
		}
		return
	}
	sound(t, h)
	for _, line := range report.Full() {
		if c, found := visible.Find(line); found {
			t.Fatalf("a line of the report is not one, or commands a terminal by %U: %q", c, line)
		}
	}
}

func FuzzSeparated(f *testing.F) {
	listtest.Seed(f, ".csv", ".tsv")
	f.Fuzz(func(t *testing.T, data []byte) { whatever(t, "list.csv", data) })
}

func FuzzMarkdown(f *testing.F) {
	listtest.Seed(f, ".md")
	f.Fuzz(func(t *testing.T, data []byte) { whatever(t, "list.md", data) })
}

func FuzzWorkbook(f *testing.F) {
	listtest.Seed(f, ".xlsx", ".ods")
	f.Fuzz(func(t *testing.T, data []byte) { whatever(t, "book", data) })
}

// FuzzContent reaches the parts of a workbook past its zip.
func FuzzContent(f *testing.F) {
	f.Add([]byte(`<d><table name="A"><table-row number-rows-repeated="3"><table-cell value-type="string"><p>Pin</p></table-cell>`+
		`</table-row></table></d>`), true)
	f.Add([]byte(`<worksheet><sheetData><row r="2"><c r="B2" t="inlineStr"><is><t>Pin</t></is></c></row></sheetData></worksheet>`), false)
	f.Fuzz(func(t *testing.T, data []byte, ods bool) {
		if ods {
			whatever(t, "book.ods", listtest.Packed(t, map[string]string{"content.xml": string(data)}))
			return
		}
		whatever(t, "book.xlsx", listtest.Packed(t, listtest.Workbook(string(data))))
	})
}
