package wirelist_test

import (
	"errors"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"contralay/model/wirelist"
	"contralay/model/wirelist/draft"
	wirelistname "contralay/model/wirelist/name"
	"contralay/model/wirelist/value"
)

// seeds gives a fuzz test every fixture of a kind.
func seeds(f *testing.F, endings ...string) {
	f.Helper()
	entries, err := os.ReadDir(lists)
	if err != nil {
		f.Fatal(err)
	}
	for _, e := range entries {
		for _, end := range endings {
			if strings.HasSuffix(e.Name(), end) {
				data, err := os.ReadFile(filepath.Join(lists, e.Name()))
				if err != nil {
					f.Fatal(err)
				}
				f.Add(data)
			}
		}
	}
}

// small are limits that let a fuzz test reach them.
func small() value.Limits {
	return value.Limits{FileBytes: 1 << 20, UnpackedBytes: 4 << 20, Rows: 2000, Columns: 64, Cells: 20_000, CellBytes: 4096, Sheets: 8,
		XMLDepth: 32}
}

// whatever reads any bytes: tables within the limits or an Error, and of tables a
// harness that is sound or an Error.
func whatever(t *testing.T, name string, data []byte) {
	tables, err := value.Read(name, data, small())
	var bad *value.Error
	if err != nil {
		if !errors.As(err, &bad) || tables != nil {
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
		if strings.ContainsAny(line, "\n\r\x1b") {
			t.Fatalf("a line of the report is not one: %q", line)
		}
	}
}

func FuzzSeparated(f *testing.F) {
	seeds(f, ".csv", ".tsv")
	f.Fuzz(func(t *testing.T, data []byte) { whatever(t, "list.csv", data) })
}

func FuzzMarkdown(f *testing.F) {
	seeds(f, ".md")
	f.Fuzz(func(t *testing.T, data []byte) { whatever(t, "list.md", data) })
}

func FuzzWorkbook(f *testing.F) {
	seeds(f, ".xlsx", ".ods")
	f.Fuzz(func(t *testing.T, data []byte) { whatever(t, "book", data) })
}

// FuzzContent reaches the parts of a workbook past its zip.
func FuzzContent(f *testing.F) {
	f.Add([]byte(`<d><table name="A"><table-row number-rows-repeated="3"><table-cell value-type="string"><p>Pin</p></table-cell></table-row></table></d>`), true)
	f.Add([]byte(`<worksheet><sheetData><row r="2"><c r="B2" t="inlineStr"><is><t>Pin</t></is></c></row></sheetData></worksheet>`), false)
	f.Fuzz(func(t *testing.T, data []byte, ods bool) {
		if ods {
			whatever(t, "book.ods", packed(t, map[string]string{"content.xml": string(data)}))
			return
		}
		whatever(t, "book.xlsx", packed(t, workbook(string(data))))
	})
}

func FuzzRecipe(f *testing.F) {
	seeds(f, ".recipe.toml")
	f.Fuzz(func(t *testing.T, data []byte) {
		r, err := wirelistname.DecodeRecipe("recipe", data)
		if err != nil {
			return
		}
		text := r.Encode()
		again, err := wirelistname.DecodeRecipe("recipe", text)
		if err != nil || string(again.Encode()) != string(text) {
			t.Fatalf("%v\n%s\n%s", err, text, again.Encode())
		}
	})
}

func FuzzGauge(f *testing.F) {
	for _, s := range []string{"22", "2x24 AWG shielded", "M22759/32-22-9", "0,5", "1/0", "0.35 mm²"} {
		f.Add(s, false)
	}
	f.Fuzz(func(t *testing.T, text string, metric bool) {
		bare := value.BareAWG
		if metric {
			bare = value.BareMM2
		}
		g, ok := value.ParseGauge(text, bare, value.MarkUnknown)
		if !ok {
			return
		}
		again, ok := value.ParseGauge(g.String(), bare, value.MarkPoint)
		if !ok || again.String() != g.String() || again.Size != g.Size || again.Spec != g.Spec {
			t.Fatalf("%q: %+v is printed %q and read %+v, %v", text, g, g.String(), again, ok)
		}
	})
}

func FuzzColour(f *testing.F) {
	for _, s := range []string{"R/W", "Light Blue", "GNYE", "92", "grün/gelb", "hellblau", "bleu clair"} {
		f.Add(s, "de")
	}
	f.Fuzz(func(t *testing.T, text, lang string) {
		c, ok := value.ParseColour(text, lang)
		if !ok {
			return
		}
		again, ok := value.ParseColour(c.String(), "")
		if !ok || !again.Equal(c) {
			t.Fatalf("%q: %v is printed %q and read %v, %v", text, c, c.String(), again, ok)
		}
	})
}

func FuzzLength(f *testing.F) {
	for _, s := range []string{"610mm", "24 1/2 in", "2' 6\"", "0,58 m", "1.250"} {
		f.Add(s, "mm")
	}
	f.Fuzz(func(t *testing.T, text, bare string) {
		mm, ok := value.ParseLength(text, value.LengthUnit(bare), value.MarkUnknown)
		if !ok {
			return
		}
		again, ok := value.ParseLength(value.FormatLength(mm), "", value.MarkUnknown)
		if !ok || again != mm || mm < 0 || mm > 100_000 {
			t.Fatalf("%q: %v is printed %q and read %v, %v", text, mm, value.FormatLength(mm), again, ok)
		}
	})
}
