package table_test

import (
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"contralay/model/wirelist/table"
)

// One list in every dress it comes in gives the same cells.
func TestDresses(t *testing.T) {
	want := [][]string{{"Ader", "Farbe", "Maß"}, {"1", "grün", `24" lang`}, {"2", "weiß", "1,35"}}
	semicolons := "Ader;Farbe;Maß\r\n1;grün;\"24\"\" lang\"\r\n2;weiß;1,35"
	utf16 := func(s string, big bool) string {
		var b strings.Builder
		for _, r := range "\ufeff" + s { // all of it lies below U+10000
			hi, lo := byte(r>>8), byte(r)
			if big {
				b.Write([]byte{hi, lo})
			} else {
				b.Write([]byte{lo, hi})
			}
		}
		return b.String()
	}
	latin := func(s string) string {
		var b strings.Builder
		for _, r := range s {
			b.WriteByte(byte(r))
		}
		return b.String()
	}
	for name, text := range map[string]string{
		"semicolons, CRLF, no last line end": semicolons,
		"byte-order mark":                    "\ufeff" + semicolons,
		"Latin-1":                            latin(semicolons),
		"UTF-16, little end first":           utf16(semicolons, false),
		"UTF-16, big end first":              utf16(semicolons, true),
		"old line ends":                      strings.ReplaceAll(semicolons, "\r\n", "\r"),
		"commas":                             "Ader,Farbe,Maß\n1,grün,\"24\"\" lang\"\n2,weiß,\"1,35\"\n",
		"a mark that quotes nothing":         "Ader,Farbe,Maß\n1,grün,24\" lang\n2,weiß,\"1,35\"\n",
		"tabs":                               "Ader\tFarbe\tMaß\n1\tgrün\t24\" lang\n2\tweiß\t1,35\n",
		"bars":                               "Ader|Farbe|Maß\n1|grün|24\" lang\n2|weiß|1,35\n",
		"its separator said":                 "sep=;\n" + semicolons,
		"empty rows and blanks":              "\n Ader ; Farbe;Maß\n;;\n1;grün;24\"  lang\n\n2;weiß; 1,35 \n",
		"a line break in a cell":             "Ader;Farbe;Maß\n1;grün;\"24\"\"\nlang\"\n2;weiß;1,35\n",
		"Markdown": "| Ader | Farbe | Maß |\n|---|:-:|--|\n" +
			"| 1 | **grün** | 24\" lang |\n| `2` | weiß | 1,35 |\n",
		"Markdown without outer bars": "Ader | Farbe | Maß\n--- | --- | ---\n1 | grün | 24\" lang\n2 | weiß | 1,35\n",
	} {
		tables, err := table.Read("list", []byte(text), table.Limits{})
		if err != nil || len(tables) != 1 {
			t.Errorf("%s: %d tables, %v", name, len(tables), err)
			continue
		}
		var got [][]string
		for _, r := range tables[0].Rows {
			got = append(got, r.Cells)
		}
		if d := cmp.Diff(want, got); d != "" {
			t.Errorf("%s (-want +got):\n%s", name, d)
		}
	}
}

// A row of a text knows its line as it stands; one of separated values, or with a command in it, does not.
func TestRaw(t *testing.T) {
	for name, want := range map[string][]string{
		"list.txt": {" 1  a   RED", " 2  b   BLUE", "", " 4  d   GREEN"},
		"list.csv": {"", "", "", ""},
	} {
		text := " 1  a   RED\n 2  b   BLUE\n 3  \x1bc   WHITE\n 4  d   GREEN\n"
		if name == "list.csv" {
			text = strings.ReplaceAll(text, "   ", ",")
		}
		tables, err := table.Read(name, []byte(text), table.Limits{})
		if err != nil || len(tables) != 1 {
			t.Fatal(err, len(tables))
		}
		var got []string
		for _, r := range tables[0].Rows {
			got = append(got, r.Raw)
		}
		if d := cmp.Diff(want, got); d != "" {
			t.Errorf("%s (-want +got):\n%s", name, d)
		}
	}
}

// Lines are those of the file, headings keep their depth.
func TestLines(t *testing.T) {
	tables, err := table.Read("list.md", []byte("# Loom\n\ntext with a \x1b[31m sign\n\n## P1\n| a | b \\| c |\n|---|---|\n| x | |\n"),
		table.Limits{})
	if err != nil {
		t.Fatal(err)
	}
	want := []table.Row{
		{Line: 1, Level: 1, Prose: true, Cells: []string{"Loom"}}, {Line: 3, Prose: true, Cells: []string{"text with a [31m sign"}},
		{Line: 5, Level: 2, Prose: true, Cells: []string{"P1"}},
		{Line: 6, Ruled: true, First: true, Cells: []string{"a", "b | c"}}, {Line: 8, Cells: []string{"x", ""}},
	}
	for i := range tables[0].Rows {
		tables[0].Rows[i].Raw = "" // see TestRaw
	}
	if d := cmp.Diff(want, tables[0].Rows); d != "" {
		t.Errorf("-want +got:\n%s", d)
	}
	for n, letters := range map[int]string{0: "A", 25: "Z", 26: "AA", 51: "AZ", 52: "BA", 701: "ZZ", 702: "AAA"} {
		if got := table.ColumnLetter(n); got != letters {
			t.Errorf("column %d is %q, want %q", n, got, letters)
		}
	}
}
