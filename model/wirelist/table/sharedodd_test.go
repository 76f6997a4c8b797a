package table_test

import (
	"strings"
	"testing"

	"contralay/model/wirelist/listtest"
	"contralay/model/wirelist/table"
)

// What is odd in a text that cells share is left out and shown as it is in a cell with a text of its own.
func TestOddSharedText(t *testing.T) {
	const odd = "FUEL\u202e PUMP"
	sheet := func(cell string) map[string]string {
		return listtest.Workbook(`<worksheet><sheetData><row r="1">` + cell + `</row></sheetData></worksheet>`)
	}
	own := sheet(`<c r="A1" t="inlineStr"><is><t>` + odd + `</t></is></c>`)
	shared := sheet(`<c r="A1" t="s"><v>0</v></c>`)
	shared["xl/sharedStrings.xml"] = `<sst><si><t>` + odd + `</t></si></sst>`
	shared["xl/_rels/workbook.xml.rels"] = strings.Replace(shared["xl/_rels/workbook.xml.rels"], "</Relationships>",
		`<Relationship Id="r2" Type="`+listtest.Office+`/sharedStrings" Target="sharedStrings.xml"/></Relationships>`, 1)
	var read [2]table.Table
	for i, parts := range []map[string]string{own, shared} {
		all, err := table.Read("l.xlsx", listtest.Packed(t, parts), table.Limits{})
		if err != nil {
			t.Fatal(err)
		}
		read[i] = all[0]
	}
	if got := read[1].Rows[0].Cells[0]; got != "FUEL PUMP" || len(read[1].Odd) != 1 || read[1].Odd[0] != read[0].Odd[0] {
		t.Errorf("%q, %+v; in a cell of its own %+v", got, read[1].Odd, read[0].Odd)
	}
}
