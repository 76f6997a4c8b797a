package listtest

import (
	"archive/zip"
	"bytes"
	"testing"

	"contralay/model/wirelist/table"
)

// Office begins the names of the relations between the parts of an .xlsx.
const Office = "http://schemas.openxmlformats.org/officeDocument/2006/relationships"

// Packed makes a zip of parts, by their names.
func Packed(t testing.TB, parts map[string]string) []byte {
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

// Workbook is the parts of an .xlsx of one sheet.
func Workbook(sheet string) map[string]string {
	return map[string]string{
		"[Content_Types].xml": "<Types/>",
		"_rels/.rels": `<Relationships><Relationship Id="r1" Type="` + Office +
			`/officeDocument" Target="xl/workbook.xml"/></Relationships>`,
		"xl/workbook.xml": `<workbook xmlns:r="` + Office +
			`"><sheets><sheet name="One" sheetId="1" r:id="r1"/></sheets></workbook>`,
		"xl/_rels/workbook.xml.rels": `<Relationships><Relationship Id="r1" Type="` + Office +
			`/worksheet" Target="worksheets/sheet1.xml"/></Relationships>`,
		"xl/worksheets/sheet1.xml": sheet,
	}
}

// OpenDocument is the parts of an .ods of some tables.
func OpenDocument(tables string) map[string]string {
	return map[string]string{"content.xml": "<doc>" + tables + "</doc>"}
}

// SmallLimits are limits that a test reaches with a few kilobytes.
func SmallLimits() table.Limits {
	return table.Limits{FileBytes: 1 << 20, UnpackedBytes: 4 << 20, Rows: 2000, Columns: 64, Cells: 20_000, CellBytes: 4096, Sheets: 8,
		XMLDepth: 32}
}
