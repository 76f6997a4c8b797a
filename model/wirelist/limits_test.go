package wirelist_test

import (
	"bytes"
	"fmt"
	"runtime"
	"strings"
	"testing"

	"contralay/model/shorttest"
	"contralay/model/wirelist"
	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/listtest"
	"contralay/model/wirelist/table"
)

// No list without headings becomes a harness; what sheets there are is said.
func TestNothingToImport(t *testing.T) {
	tables, err := table.Read("list.csv", []byte("one,two\nthree,four\n"), table.Limits{})
	if err != nil {
		t.Fatal(err)
	}
	h, report, err := wirelist.Import(tables, draft.Options{})
	const want = "list.csv: no row names its columns; allowed: a row with two headings or more, such as Pin and Description, or From and " +
		"To; or columns named by a recipe"
	if err == nil || err.Error() != want || len(h.Wires) > 0 || len(report.Facts) > 0 {
		t.Errorf("%v", err)
	}
	data := listtest.Read(t, "book.ods")
	if tables, err = table.Read("book.ods", data, table.Limits{}); err != nil {
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

// manyConnectors is a pin table of n rows, each of another connector.
func manyConnectors(n int) []byte {
	var b bytes.Buffer
	b.WriteString("Connector,Pin,Signal,Gauge,Colour\n")
	for i := range n {
		fmt.Fprintf(&b, "Device number %d,1,Net %d,22 AWG,red\n", i, i)
	}
	return b.Bytes()
}

func BenchmarkConnectors20000(b *testing.B) {
	data := manyConnectors(20_000)
	b.ReportAllocs()
	for b.Loop() {
		tables, err := table.Read("list.csv", data, table.Limits{})
		if err != nil {
			b.Fatal(err)
		}
		if _, _, err := wirelist.Import(tables, draft.Options{}); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkImport20000(b *testing.B) {
	data := many(20_000)
	b.ReportAllocs()
	for b.Loop() {
		tables, err := table.Read("list.csv", data, table.Limits{})
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
	return listtest.Packed(b, listtest.Workbook(sheet.String()))
}

func BenchmarkWorkbook20000(b *testing.B) {
	data := manyPacked(b, 20_000)
	b.ReportAllocs()
	for b.Loop() {
		tables, err := table.Read("list.xlsx", data, table.Limits{})
		if err != nil {
			b.Fatal(err)
		}
		if _, _, err := wirelist.Import(tables, draft.Options{}); err != nil {
			b.Fatal(err)
		}
	}
}

// 20,000 rows take 256 MB at most, as a list of wires and as one of as many connectors, although all that was ever allocated
// is counted; a quarter of both where the long form is not asked for. What a workbook takes at its peak is held where the
// program is run; times stand in the benchmarks.
func TestManyRows(t *testing.T) {
	if testing.Short() {
		t.Skip("the race detector takes ten times as long")
	}
	rows, most := 2_000, uint64(30) // MB
	if shorttest.Long() {
		rows, most = 20_000, 256
	}
	for _, c := range []struct {
		file string
		data []byte
	}{
		{"list.csv", many(rows)}, {"connectors.csv", manyConnectors(rows)},
	} {
		var before, after runtime.MemStats
		runtime.ReadMemStats(&before)
		tables, err := table.Read(c.file, c.data, table.Limits{})
		if err != nil {
			t.Fatal(err)
		}
		h, _, err := wirelist.Import(tables, draft.Options{})
		runtime.ReadMemStats(&after)
		if err != nil || max(len(h.Wires), len(h.Terminations)) != rows {
			t.Fatalf("%s: %d wires, %d terminations, %v", c.file, len(h.Wires), len(h.Terminations), err)
		}
		mb := (after.TotalAlloc - before.TotalAlloc) >> 20
		t.Logf("%s: %d MB", c.file, mb)
		if mb > most {
			t.Errorf("%s: allocated %d MB", c.file, mb)
		}
	}
}

// A workbook of more rows than are read is refused before they are kept: in less memory than its rows would take.
func TestTooManyRowsOfAWorkbook(t *testing.T) {
	data := listtest.Packed(t, listtest.Workbook("<worksheet><sheetData>"+
		strings.Repeat(`<row><c t="inlineStr"><is><t>Wire</t></is></c></row>`, 50_100)+"</sheetData></worksheet>"))
	var before, after runtime.MemStats
	runtime.ReadMemStats(&before)
	_, err := table.Read("list.xlsx", data, table.Limits{})
	runtime.ReadMemStats(&after)
	if err == nil || !strings.Contains(err.Error(), "row 50001: is one row too many") {
		t.Errorf("%v", err)
	}
	if mb := (after.TotalAlloc - before.TotalAlloc) >> 20; mb > 64 { // a quarter of what an import may take
		t.Errorf("allocated %d MB", mb)
	}
}
