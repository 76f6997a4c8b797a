package wirelist_test

import (
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"

	"contralay/model/shorttest"
	"contralay/model/wirelist"
	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/listtest"
	"contralay/model/wirelist/table"
)

// flat is a workbook as one plain text, which a spreadsheet program makes into others: a
// gauge merged over three rows, a row struck out, a row and a sheet that are not shown.
const flat = `<?xml version="1.0" encoding="UTF-8"?>
<office:document xmlns:office="urn:oasis:names:tc:opendocument:xmlns:office:1.0" ` +
	`xmlns:style="urn:oasis:names:tc:opendocument:xmlns:style:1.0" xmlns:text="urn:oasis:names:tc:opendocument:xmlns:text:1.0" ` +
	`xmlns:table="urn:oasis:names:tc:opendocument:xmlns:table:1.0" ` +
	`xmlns:fo="urn:oasis:names:tc:opendocument:xmlns:xsl-fo-compatible:1.0" office:version="1.2" ` +
	`office:mimetype="application/vnd.oasis.opendocument.spreadsheet">
<office:automatic-styles>
<style:style style:name="gone" style:family="table-cell"><style:text-properties style:text-line-through-style="solid" ` +
	`style:text-line-through-type="single"/></style:style>
<style:style style:name="shown" style:family="table"><style:table-properties table:display="true"/></style:style>
<style:style style:name="away" style:family="table"><style:table-properties table:display="false"/></style:style>
</office:automatic-styles>
<office:body><office:spreadsheet>
<table:table table:name="J1" table:style-name="shown">
<table:table-row>` +
	`<table:table-cell office:value-type="string"><text:p>Pin</text:p></table:table-cell>` +
	`<table:table-cell office:value-type="string"><text:p>Function</text:p></table:table-cell>` +
	`<table:table-cell office:value-type="string"><text:p>Gauge</text:p></table:table-cell></table:table-row>
<table:table-row><table:table-cell office:value-type="string"><text:p>A</text:p></table:table-cell>` +
	`<table:table-cell office:value-type="string"><text:p>Lamp</text:p></table:table-cell>` +
	`<table:table-cell table:number-rows-spanned="3" office:value-type="string"><text:p>20 AWG</text:p></table:table-cell></table:table-row>
<table:table-row table:visibility="collapse"><table:table-cell office:value-type="string"><text:p>B</text:p></table:table-cell>` +
	`<table:table-cell office:value-type="string"><text:p>Horn</text:p></table:table-cell><table:covered-table-cell/></table:table-row>
<table:table-row><table:table-cell office:value-type="string"><text:p>C</text:p></table:table-cell>` +
	`<table:table-cell office:value-type="string"><text:p>Pump</text:p></table:table-cell><table:covered-table-cell/></table:table-row>
<table:table-row><table:table-cell table:style-name="gone" office:value-type="string"><text:p>D</text:p></table:table-cell>` +
	`<table:table-cell table:style-name="gone" office:value-type="string"><text:p>Old fan</text:p></table:table-cell>` +
	`<table:table-cell table:style-name="gone" office:value-type="string"><text:p>16 AWG</text:p></table:table-cell></table:table-row>
<table:table-row><table:table-cell table:style-name="gone" office:value-type="string"><text:p>E</text:p></table:table-cell>` +
	`<table:table-cell office:value-type="string"><text:p>Wiper</text:p></table:table-cell>` +
	`<table:table-cell office:value-type="string"><text:p>22 AWG</text:p></table:table-cell></table:table-row>
</table:table>
<table:table table:name="old" table:style-name="away">
<table:table-row><table:table-cell office:value-type="string"><text:p>Pin</text:p></table:table-cell>` +
	`<table:table-cell office:value-type="string"><text:p>Function</text:p></table:table-cell></table:table-row>
<table:table-row><table:table-cell office:value-type="string"><text:p>A</text:p></table:table-cell>` +
	`<table:table-cell office:value-type="string"><text:p>Old lamp</text:p></table:table-cell></table:table-row>
</table:table>
</office:spreadsheet></office:body></office:document>`

// shownAsIs holds what is read of that workbook, of whatever kind.
func shownAsIs(t *testing.T, name string, data []byte) {
	t.Helper()
	tables, err := table.Read(name, data, table.Limits{})
	if err != nil {
		t.Fatal(err)
	}
	h, rep, err := wirelist.Import(tables, draft.Options{})
	if err != nil {
		t.Fatal(err)
	}
	report := strings.Join(rep.Full(), "\n")
	sizes := ""
	for _, w := range h.Wires {
		sizes += w.From.V + " " + w.Size + ", "
	}
	if sizes != "J1:A 20, J1:B 20, J1:C 20, J1:E 22, " {
		t.Errorf("%s: %s\n%s", name, sizes, report)
	}
	for _, want := range []string{"row 5: warn: row struck out: D Old fan 16 AWG; left out", "row 3: note: hidden row",
		`sheet "old": warn: hidden sheet; left out; named as a sheet it is read`} {
		if !strings.Contains(report, want) {
			t.Errorf("%s: %q is not in\n%s", name, want, report)
		}
	}
	if h, _, err := wirelist.Import(tables, draft.Options{Sheets: []string{"old"}}); err != nil || len(h.Wires) != 1 ||
		h.Wires[0].Signal.V != "Old lamp" {
		t.Errorf("%s: the hidden sheet by its name: %v %+v", name, err, h.Wires)
	}
}

func TestShownInAPlainWorkbook(t *testing.T) {
	shownAsIs(t, "book.ods", listtest.Packed(t, map[string]string{"content.xml": flat}))
	parts := listtest.Workbook(`<worksheet><sheetData><row r="1"><c r="A1" t="str"><v>Pin</v></c><c r="B1" t="str">` +
		`<v>Function</v></c><c r="C1" t="str"><v>Gauge</v></c></row>
<row r="2"><c r="A2" t="str"><v>A</v></c><c r="B2" t="str"><v>Lamp</v></c><c r="C2" t="str"><v>20 AWG</v></c></row>
<row r="3" hidden="1"><c r="A3" t="str"><v>B</v></c><c r="B3" t="str"><v>Horn</v></c><c r="C3"/></row>
<row r="4"><c r="A4" t="str"><v>C</v></c><c r="B4" t="str"><v>Pump</v></c></row>
<row r="5"><c r="A5" t="str" s="1"><v>D</v></c><c r="B5" t="str" s="1"><v>Old fan</v></c><c r="C5" t="str" s="1"><v>16 AWG</v></c></row>
<row r="6"><c r="A6" t="str" s="1"><v>E</v></c><c r="B6" t="str"><v>Wiper</v></c><c r="C6" t="str"><v>22 AWG</v></c></row></sheetData>
<mergeCells><mergeCell ref="C2:C4"/><mergeCell ref="A7:C7"/><mergeCell ref="nonsense"/></mergeCells></worksheet>`)
	parts["xl/workbook.xml"] = `<workbook xmlns:r="` + listtest.Office +
		`"><sheets><sheet name="J1" r:id="r1"/><sheet name="old" state="hidden" r:id="r3"/></sheets></workbook>`
	parts["xl/_rels/workbook.xml.rels"] = `<Relationships><Relationship Id="r1" Type="` + listtest.Office +
		`/worksheet" Target="worksheets/sheet1.xml"/><Relationship Id="r2" Type="` + listtest.Office +
		`/styles" Target="styles.xml"/><Relationship Id="r3" Type="` + listtest.Office +
		`/worksheet" Target="worksheets/sheet2.xml"/></Relationships>`
	parts["xl/styles.xml"] = `<styleSheet><fonts><font/><font><strike/></font><font><strike val="0"/></font></fonts><cellXfs>` +
		`<xf fontId="0"/><xf fontId="1"/><xf fontId="2"/></cellXfs></styleSheet>`
	parts["xl/worksheets/sheet2.xml"] = `<worksheet><row r="1"><c r="A1" t="str"><v>Pin</v></c><c r="B1" t="str"><v>Function</v>` +
		`</c></row><row r="2"><c r="A2" t="str"><v>A</v></c><c r="B2" t="str"><v>Old lamp</v></c></row></worksheet>`
	shownAsIs(t, "book.xlsx", listtest.Packed(t, parts))
}

// The same as a spreadsheet program writes it.
func TestShownInAWorkbook(t *testing.T) {
	program := shorttest.Program(t, "soffice") // without it workbooks of our own making hold what is hidden and struck out
	if testing.Short() {
		t.Skip("starts a program twice")
	}
	for _, kind := range []string{"xlsx", "ods"} {
		t.Run(kind, func(t *testing.T) {
			t.Parallel()
			dir := t.TempDir()
			source := filepath.Join(dir, "book.fods")
			if err := os.WriteFile(source, []byte(flat), 0o600); err != nil {
				t.Fatal(err)
			}
			cmd := exec.Command(program, "-env:UserInstallation=file://"+filepath.Join(dir, "profile"), "--headless", "--convert-to", kind,
				"--outdir", dir, source)
			if out, err := cmd.CombinedOutput(); err != nil {
				t.Fatalf("%v: %s", err, out)
			}
			book, err := os.ReadFile(filepath.Join(dir, "book."+kind))
			if err != nil {
				t.Fatal(err)
			}
			shownAsIs(t, "book."+kind, book)
		})
	}
}

// A row that says it is gone is not built, and is told.
func TestDeletedRows(t *testing.T) {
	h,
		report := of(t, "list.csv", "Wire,From,To,Gauge,Notes,Rev\n1,A:1,B:1,22,,\n2,A:2,B:2,22,DELETED rev "+
		"C,\n3,A:3,B:3,22,,entfällt\n4,A:4,B:4,22,removed blue sleeve,\n5,A:5,B:5,22,obsolete,\n")
	if ends(h) != "A:1 B:1, A:4 B:4" || strings.Count(report, "row marked as deleted") != 3 {
		t.Errorf("%s\n%s", ends(h), report)
	}
}
