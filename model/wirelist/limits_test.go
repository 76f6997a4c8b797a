package wirelist_test

import (
	"archive/zip"
	"bytes"
	"errors"
	"fmt"
	"os"
	"runtime"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"contralay/model/wirelist"
	"contralay/model/wirelist/draft"
	wirelistname "contralay/model/wirelist/name"
	"contralay/model/wirelist/value"
)

// packed makes a zip of parts.
func packed(t testing.TB, parts map[string]string) []byte {
	t.Helper()
	var b bytes.Buffer
	z := zip.NewWriter(&b)
	for name, text := range parts {
		w, err := z.Create(name)
		if err == nil {
			_, err = w.Write([]byte(text))
		}
		if err != nil {
			t.Fatal(err)
		}
	}
	if err := z.Close(); err != nil {
		t.Fatal(err)
	}
	return b.Bytes()
}

// workbook is the parts of an .xlsx of one sheet.
func workbook(sheet string) map[string]string {
	const office = "http://schemas.openxmlformats.org/officeDocument/2006/relationships"
	return map[string]string{
		"[Content_Types].xml": "<Types/>",
		"_rels/.rels": `<Relationships><Relationship Id="r1" Type="` + office +
			`/officeDocument" Target="xl/workbook.xml"/></Relationships>`,
		"xl/workbook.xml": `<workbook xmlns:r="` + office +
			`"><sheets><sheet name="One" sheetId="1" r:id="r1"/></sheets></workbook>`,
		"xl/_rels/workbook.xml.rels": `<Relationships><Relationship Id="r1" Type="` + office +
			`/worksheet" Target="worksheets/sheet1.xml"/></Relationships>`,
		"xl/worksheets/sheet1.xml": sheet,
	}
}

func ods(table string) map[string]string {
	return map[string]string{"content.xml": "<doc>" + table + "</doc>"}
}

// Each refusal says what, where and what is allowed.
func TestRefused(t *testing.T) {
	for _, c := range []struct {
		name string
		data []byte
		want string
	}{
		{"", nil, "list: is empty; allowed: separated values, columns of text, Markdown, .xlsx, .ods"},
		{"large", make([]byte, 2<<20), "list: is 2097152 bytes; allowed: up to 1048576"},
		{"binary", []byte("a\x00b"),
			"list: is no text: it has zero bytes; allowed: separated values, columns of text, Markdown, .xlsx, .ods"},
		{"old workbook", []byte{0xd0, 0xcf, 0x11, 0xe0, 0},
			"list: is a workbook of the old binary kind, or one with a password; allowed: save it as .xlsx or .ods without password"},
		{"page", []byte("%PDF-1.7"),
			"list: is a page to print, not a list; allowed: separated values, columns of text, Markdown, .xlsx, .ods"},
		{"quotation mark", []byte("Pin,Signal\nA,\"left open\nB,x\n"),
			"list, row 2: a quotation mark opens a cell here and none closes it; allowed: cells of up to 4096 bytes, each quotation mark " +
				"closed"},
		{"long cell", []byte("Pin,Signal\nA," + strings.Repeat("x", 5000)),
			"list, row 2: a cell has 5000 bytes; allowed: cells of up to 4096 bytes, each quotation mark closed"},
		{"columns", []byte("Pin,Signal\n" + strings.Repeat("x,", 100)), "list, row 2: has 65 cells; allowed: up to 64 in a row"},
		{"rows", []byte(strings.Repeat("a,b\n", 2001)), "list, row 2001: is one row too many; allowed: up to 2000 rows in a file"},
		{"no zip", []byte("PK\x03\x04 and no more"), "list: is a broken zip: zip: not a valid zip file; allowed: a whole .xlsx or .ods"},
		{"zip of something", packed(t, map[string]string{"../../etc/passwd": "x"}),
			"list: is a zip, and no workbook in it; allowed: .xlsx, .ods; unpack it first if lists are in it"},
		{"bomb", packed(t, ods(strings.Repeat(" ", 5<<20))), "list: unpacks to more than 4194304 bytes; allowed: a smaller workbook"},
		{"deep", packed(t, ods(strings.Repeat("<a>", 40)+strings.Repeat("</a>", 40))),
			`list: part "content.xml" has elements more than 32 deep; allowed: what a spreadsheet program writes`},
		{"entities", packed(t, map[string]string{"content.xml": `<!DOCTYPE d [<!ENTITY a "b">]><d>&a;</d>`}),
			`list: part "content.xml" declares a document type; allowed: what a spreadsheet program writes`},
		{"broken part", packed(t, ods("<a>")),
			`list: part "content.xml" is broken: </doc> closes no element of its name; allowed: a whole workbook`},
		{"rows said to repeat",
			packed(t,
				ods(`<table name="A"><table-row number-rows-repeated="1000000"><table-cell><p>x</p></table-cell></table-row></table>`)),
			`list, sheet "A", row 2001: is one row too many; allowed: up to 2000 rows in a file`},
		{"cells said to repeat",
			packed(t,
				ods(`<table name="A"><table-row><table-cell number-columns-repeated="100000"><p>x</p></table-cell></table-row></table>`)),
			`list, sheet "A", row 1, column A: is a column too far; allowed: up to 64 columns`},
		{"sheets", packed(t, ods(strings.Repeat("<table/>", 9))), "list: has more than 8 sheets; allowed: fewer"},
		{"column far out", packed(t, workbook(`<worksheet><row r="1"><c r="XFD1"><v>1</v></c></row></worksheet>`)),
			`list, sheet "One", row 1, column XFD: is a column too far; allowed: up to 64 columns`},
		{"cell nowhere", packed(t, workbook(`<worksheet><row r="1"><c r="1A"><v>1</v></c></row></worksheet>`)),
			`list, sheet "One": a cell stands at "1A"; allowed: A1, B1 …`},
		{"no sheet part", packed(t, map[string]string{"[Content_Types].xml": "", "_rels/.rels": "<R/>"}),
			`list: has no part "xl/workbook.xml"; allowed: a whole workbook`},
	} {
		t.Run(c.name, func(t *testing.T) {
			tables, err := value.Read("list", c.data, small())
			if tables != nil || err == nil || err.Error() != c.want {
				t.Errorf("%d tables, %v\nwant %s", len(tables), err, c.want)
			}
		})
	}
}

// No list without headings becomes a harness; what sheets there are is said.
func TestNothingToImport(t *testing.T) {
	tables, err := value.Read("list.csv", []byte("one,two\nthree,four\n"), value.Limits{})
	if err != nil {
		t.Fatal(err)
	}
	h, report, err := wirelist.Import(tables, draft.Options{})
	const want = "list.csv: no row names its columns; allowed: a row with two headings or more, such as Pin and Description, or From and " +
		"To; or columns named by a recipe"
	if err == nil || err.Error() != want || len(h.Wires) > 0 || len(report.Facts) > 0 {
		t.Errorf("%v", err)
	}
	data, err := os.ReadFile(lists + "/book.ods")
	if err != nil {
		t.Fatal(err)
	}
	if tables, err = value.Read("book.ods", data, value.Limits{}); err != nil {
		t.Fatal(err)
	}
	_, _, err = wirelist.Import(tables, draft.Options{Sheets: []string{"Gearbox"}})
	if err == nil || err.Error() != `no sheet is called "Gearbox"; allowed: "Engine", "P9 wheel"` {
		t.Errorf("%v", err)
	}
	if h, _, err = wirelist.Import(tables, draft.Options{Sheets: []string{"Engine"}}); err != nil || len(h.Wires) != 4 {
		t.Errorf("one sheet: %d wires, %v", len(h.Wires), err)
	}
}

// A formula gives the value stored with it, one without value its text; a date that a
// spreadsheet made of a cavity is shown as one.
func TestCellsOfAWorkbook(t *testing.T) {
	parts := workbook(`<worksheet><sheetData><row r="3">
<c r="A3"><f>1+1</f><v>2</v></c><c r="C3"><f>NOW()</f></c><c r="D3" t="b"><v>1</v></c><c r="E3"><v>0.34999999999999998</v></c>
<c r="F3" t="s"><v>1</v></c><c r="G3" s="1"><v>46054</v></c><c r="H3" t="s"><v>99</v></c></row></sheetData></worksheet>`)
	const office = "http://schemas.openxmlformats.org/officeDocument/2006/relationships"
	parts["xl/_rels/workbook.xml.rels"] = `<Relationships><Relationship Id="r1" Type="` + office +
		`/worksheet" Target="/xl/worksheets/sheet1.xml"/>
<Relationship Id="r2" Type="` + office + `/sharedStrings" Target="sharedStrings.xml"/><Relationship Id="r3" Type="` + office +
		`/styles" Target="styles.xml"/>
<Relationship Id="r4" Type="` + office + `/externalLink" TargetMode="External" Target="file:///etc/passwd"/></Relationships>`
	parts["xl/sharedStrings.xml"] = `<sst><si><t>zero</t></si><si><r><t>red</t></r><r><t xml:space="preserve"> /white</t></r><rPh><t>no</t></rPh></si></sst>`
	parts["xl/styles.xml"] = `<styleSheet><numFmts><numFmt numFmtId="164" formatCode="d\-mmm"/></numFmts><cellStyleXfs><xf numFmtId="14"/></cellStyleXfs><cellXfs><xf numFmtId="0"/><xf numFmtId="164"/></cellXfs></styleSheet>`
	tables, err := value.Read("book.xlsx", packed(t, parts), value.Limits{})
	if err != nil {
		t.Fatal(err)
	}
	want := []value.Table{{File: "book.xlsx", Sheet: "One", Comma: true,
		Rows: []value.Row{{Line: 3, Cells: []string{"2", "", "=NOW()", "yes", "0.35", "red /white", "2026-02-01", "99"}}}}}
	if d := cmp.Diff(want, tables); d != "" {
		t.Errorf("-want +got:\n%s", d)
	}
}

func TestRecipeRefused(t *testing.T) {
	for text, want := range map[string]string{
		"columns = 3":            "r: columns: is no table; allowed: headings and their meanings, \"Ader\" = \"wire\"",
		"length_unit = \"yard\"": "r: length_unit: yard is not one of the words; allowed: mm, cm, m, in, ft",
		"[columns]\nA = \"weight\"": "r: columns.\"A\": weight is no meaning; allowed: wire, from, from pin, to, to pin, from and to, " +
			"connector, pin, signal, gauge, spec, colour, stripe, length, current, unit, fuse, note, cable, keep, ignore",
		"[columns]\n\"#0\" = \"pin\"": "r: columns.\"#0\": is no column; allowed: #1 to #256, or a heading",
		"header = 3": "r: header: unknown key; allowed: columns, connector, decimal, header_row, language, length_unit, " +
			"spec, spec_metric",
		"header_row = -1": "r: header_row: -1 is no row; allowed: a whole number from 0 to 1000000",
	} {
		if _, err := wirelistname.DecodeRecipe("r", []byte(text)); err == nil || err.Error() != want {
			t.Errorf("%q: %v\nwant %s", text, err, want)
		}
	}
	var bad *value.Error
	if _, err := wirelistname.DecodeRecipe("r", []byte("a = = b")); !errors.As(err, &bad) || bad.Row != 1 {
		t.Errorf("%v", err)
	}
}

// many is a from-to list of n rows over 40 connectors.
func many(n int) []byte {
	var b bytes.Buffer
	b.WriteString("Wire,From,Pin,To,Pin,Gauge,Colour,Length,Current,Signal,Notes\n")
	for i := range n {
		fmt.Fprintf(&b, "W%d,P%d,%d,DEV%d,%d,22 AWG,white/blue,%d mm,0.5 A,Signal %d,\"2x24 shielded, note %d\"\n", i, i%20, i/20, 20+i%20,
			i/20, 300+i%700, i, i)
	}
	return b.Bytes()
}

func BenchmarkImport20000(b *testing.B) {
	data := many(20_000)
	b.ReportAllocs()
	for b.Loop() {
		tables, err := value.Read("list.csv", data, value.Limits{})
		if err != nil {
			b.Fatal(err)
		}
		if _, _, err := wirelist.Import(tables, draft.Options{}); err != nil {
			b.Fatal(err)
		}
	}
}

// manyPacked is the same list as a workbook, its texts in the cells.
func manyPacked(b testing.TB, n int) []byte {
	var sheet strings.Builder
	sheet.WriteString("<worksheet><sheetData>")
	row := 0
	for line := range strings.Lines(string(many(n))) {
		row++
		fmt.Fprintf(&sheet, `<row r="%d">`, row)
		for k, cell := range strings.SplitN(strings.TrimSpace(line), ",", 11) {
			fmt.Fprintf(&sheet, `<c r="%c%d" t="inlineStr"><is><t>%s</t></is></c>`, 'A'+k, row, strings.Trim(cell, `"`))
		}
		sheet.WriteString("</row>")
	}
	sheet.WriteString("</sheetData></worksheet>")
	return packed(b, workbook(sheet.String()))
}

func BenchmarkWorkbook20000(b *testing.B) {
	data := manyPacked(b, 20_000)
	b.ReportAllocs()
	for b.Loop() {
		tables, err := value.Read("list.xlsx", data, value.Limits{})
		if err != nil {
			b.Fatal(err)
		}
		if _, _, err := wirelist.Import(tables, draft.Options{}); err != nil {
			b.Fatal(err)
		}
	}
}

// 20,000 rows take 256 MB at most; their time stands in the benchmarks.
func TestManyRows(t *testing.T) {
	if testing.Short() {
		t.Skip("the race detector takes ten times as long")
	}
	data := many(20_000)
	var before, after runtime.MemStats
	runtime.ReadMemStats(&before)
	tables, err := value.Read("list.csv", data, value.Limits{})
	if err != nil {
		t.Fatal(err)
	}
	h, _, err := wirelist.Import(tables, draft.Options{})
	runtime.ReadMemStats(&after)
	if err != nil || len(h.Wires) != 20_000 {
		t.Fatalf("%d wires, %v", len(h.Wires), err)
	}
	if mb := (after.TotalAlloc - before.TotalAlloc) >> 20; mb > 256 {
		t.Errorf("allocated %d MB", mb)
	}
}
