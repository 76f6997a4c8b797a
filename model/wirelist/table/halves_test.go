package table

import (
	"fmt"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
)

// sheetText is a sheet of n rows in a namespace of its own or none, each row made by the function.
func sheetText(n int, row func(i int) string) string {
	var b strings.Builder
	b.WriteString(`<?xml version="1.0"?><worksheet><sheetPr/><sheetData>`)
	for i := range n {
		b.WriteString(row(i + 1))
	}
	b.WriteString(`</sheetData><mergeCells><mergeCell ref="A2:A3"/></mergeCells></worksheet>`)
	return b.String()
}

func plainRow(i int) string {
	return fmt.Sprintf(`<row r="%d"><c r="A%d" t="inlineStr"><is><t>W%d</t></is></c><c r="B%d"><v>%d</v></c></row>`, i, i, i, i, i)
}

func oddBook(l Limits) *xlsxBook {
	return &xlsxBook{book: &book{name: "x.xlsx", l: l, count: counter{l: l}}, texts: map[string]string{}}
}

// Both halves of a sheet give what reading it from the first letter to the last does, or nothing is read.
func TestHalvesAreTheWhole(t *testing.T) {
	for name, c := range map[string]struct {
		text   string
		halved bool
	}{
		"plain":         {sheetText(50, plainRow), true},
		"rows left out": {sheetText(50, func(i int) string { return plainRow(i * 3) }), true},
		"one row":       {sheetText(1, plainRow), false},
		"a comment":     {strings.Replace(sheetText(50, plainRow), "<sheetData>", `<!-- <row r="1"> --><sheetData>`, 1), false},
		"no numbers": {sheetText(50, func(i int) string {
			return strings.Replace(plainRow(i), fmt.Sprintf(`r="%d"`, i), `x=""`, 1)
		}), false},
		"rows in rows": {sheetText(50, func(i int) string { return strings.TrimSuffix(plainRow(i), "</row>") }) +
			strings.Repeat("</row>", 50), false},
		"broken":  {strings.Replace(sheetText(50, plainRow), "W40<", "W40&nothing;<", 1), false},
		"cut off": {sheetText(50, plainRow)[:3000], false},
		"in an aside": {strings.Replace(sheetText(1, plainRow), "</worksheet>",
			"<extLst>"+strings.Repeat(plainRow(9), 9)+"</extLst></worksheet>", 1), false},
	} {
		t.Run(name, func(t *testing.T) {
			l := DefaultLimits()
			x := oddBook(l)
			var got, want Table
			var spans, spansWant []merged
			if halved := x.halves("part", []byte(c.text), &got, &spans); halved != c.halved {
				t.Fatalf("halved is %v, want %v", halved, c.halved)
			}
			whole := oddBook(l)
			err := whole.walkText("part", strings.NewReader(c.text), whole.rows(&want, &spansWant))
			if !c.halved {
				if len(got.Rows) > 0 || len(spans) > 0 {
					t.Errorf("%d rows and %d spans are taken all the same", len(got.Rows), len(spans))
				}
				return
			}
			if err != nil {
				t.Fatal(err)
			}
			if d := cmp.Diff(want, got); d != "" {
				t.Error(d)
			}
			if len(spans) != len(spansWant) || whole.count != x.count {
				t.Errorf("%d spans and count %v, want %d and %v", len(spans), x.count, len(spansWant), whole.count)
			}
		})
	}
}

// What both halves hold together is held against the limits.
func TestHalvesKeepTheLimits(t *testing.T) {
	l := DefaultLimits()
	l.Rows = 30
	var got Table
	var spans []merged
	if oddBook(l).halves("part", []byte(sheetText(50, plainRow)), &got, &spans) {
		t.Errorf("%d rows of 30 are taken", len(got.Rows))
	}
}
