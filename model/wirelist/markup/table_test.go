package markup_test

import (
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"contralay/model/wirelist/markup"
)

// limits are those of a small table.
var limits = markup.Limits{Rows: 10, Columns: 4, CellBytes: 100, Bytes: 100}

// Cells keep their places: over two columns the second is empty, over two rows the text stands in both; entities are read, and
// what no tag closes ends with the row.
func TestTable(t *testing.T) {
	rows, n := markup.Table(strings.Split("<TABLE>\n<tr><th>Pin<th>Name</tr>\n<tr><td rowspan=2>1</td>\n<td>A &amp; <b>B</b></td></tr>\n"+
		"<tr><td colspan=\"2\">C</td></tr>\n</TABLE>\nmore", "\n"), limits)
	want := []markup.Row{{Line: 1, Cells: []string{"Pin", "Name"}, First: true, Headed: true}, {Line: 2, Cells: []string{"1", "A & B"}},
		{Line: 4, Cells: []string{"1", "C", ""}}}
	if d := cmp.Diff(want, rows); d != "" || n != 6 {
		t.Errorf("%d lines, -want +got:\n%s", n, d)
	}
}

// A table that is made to fill the machine stays within its limits.
func TestLimits(t *testing.T) {
	rows, _ := markup.Table(strings.Split("<table><tr><td colspan=99999999 rowspan=99999999>"+strings.Repeat("x", 90)+
		strings.Repeat("\n<tr><td>y", 50), "\n"), limits)
	if len(rows) > limits.Rows+1 {
		t.Errorf("%d rows", len(rows))
	}
	bytes := 0
	for _, r := range rows {
		if len(r.Cells) > limits.Columns+2 {
			t.Errorf("%d cells", len(r.Cells))
		}
		bytes += len(strings.Join(r.Cells, ""))
	}
	if bytes > 90+limits.Bytes+len(rows) {
		t.Errorf("%d bytes", bytes)
	}
}

// A heading has its rank, any other line its text.
func TestWithoutTags(t *testing.T) {
	for line, want := range map[string]string{`<h2 align="center">Ice <b>auger</b></h2>`: "Ice auger", "<hr>": "", "1 < 2": "1 < 2"} {
		text, level := markup.WithoutTags(line)
		if text != want || (level == 2) != strings.HasPrefix(line, "<h2") {
			t.Errorf("%s is %q at %d", line, text, level)
		}
	}
}
