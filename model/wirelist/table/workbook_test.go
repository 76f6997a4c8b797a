package table_test

import (
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"contralay/model/wirelist/listtest"
	"contralay/model/wirelist/table"
)

// A formula gives the value stored with it, one without value its text; a date that a
// spreadsheet made of a cavity is shown as one.
func TestCellsOfAWorkbook(t *testing.T) {
	parts := listtest.Workbook(`<worksheet><sheetData><row r="3">
<c r="A3"><f>1+1</f><v>2</v></c><c r="C3"><f>NOW()</f></c><c r="D3" t="b"><v>1</v></c><c r="E3"><v>0.34999999999999998</v></c>
<c r="F3" t="s"><v>1</v></c><c r="G3" s="1"><v>46054</v></c><c r="H3" t="s"><v>99</v></c></row></sheetData></worksheet>`)
	parts["xl/_rels/workbook.xml.rels"] = `<Relationships><Relationship Id="r1" Type="` + listtest.Office +
		`/worksheet" Target="/xl/worksheets/sheet1.xml"/>
<Relationship Id="r2" Type="` + listtest.Office + `/sharedStrings" Target="sharedStrings.xml"/>` +
		`<Relationship Id="r3" Type="` + listtest.Office +
		`/styles" Target="styles.xml"/>
<Relationship Id="r4" Type="` + listtest.Office + `/externalLink" TargetMode="External" Target="file:///etc/passwd"/></Relationships>`
	parts["xl/sharedStrings.xml"] = `<sst><si><t>zero</t></si><si><r><t>red</t></r><r><t xml:space="preserve"> /white</t></r>` +
		`<rPh><t>no</t></rPh></si></sst>`
	parts["xl/styles.xml"] = `<styleSheet><numFmts><numFmt numFmtId="164" formatCode="d\-mmm"/></numFmts><cellStyleXfs>` +
		`<xf numFmtId="14"/></cellStyleXfs><cellXfs><xf numFmtId="0"/><xf numFmtId="164"/></cellXfs></styleSheet>`
	tables, err := table.Read("book.xlsx", listtest.Packed(t, parts), table.Limits{})
	if err != nil {
		t.Fatal(err)
	}
	want := []table.Table{{File: "book.xlsx", Sheet: "One", Comma: true,
		Rows: []table.Row{{Line: 3, Cells: []string{"2", "", "=NOW()", "yes", "0.35", "red /white", "2026-02-01", "99"}}}}}
	if d := cmp.Diff(want, tables); d != "" {
		t.Errorf("-want +got:\n%s", d)
	}
}

// A range that goes over more rows than a list may have cells costs no more than they do.
func TestMergedFarDown(t *testing.T) {
	var b strings.Builder
	b.WriteString(`<worksheet><sheetData>`)
	for i := 1; i <= 500; i++ {
		b.WriteString(`<row><c t="str"><v>x</v></c></row>`)
	}
	b.WriteString(`</sheetData><mergeCells>`)
	for range 2000 {
		b.WriteString(`<mergeCell ref="B1:B1048576"/><mergeCell ref="A1:A1048576"/>`)
	}
	b.WriteString(`</mergeCells></worksheet>`)
	if _, err := table.Read("book.xlsx", listtest.Packed(t, listtest.Workbook(b.String())), table.Limits{Cells: 2000}); err != nil {
		t.Error(err)
	}
}
