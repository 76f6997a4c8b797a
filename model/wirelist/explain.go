package wirelist

import (
	"fmt"
	"strings"

	"contralay/model/wirelist/block"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/reading"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// Explain says of each table in some lists how it can be read, the best way first, with the share of the table that
// the way explains and what it takes each column for.
func Explain(tables []table.Table) (lines []string) {
	h := shape.Headings{Words: name.Vocabulary()}
	for _, t := range tables {
		found, over := block.Find(h, shape.WithoutStruckRows(t))
		for _, b := range found {
			at := table.Place{File: t.File, Sheet: t.Sheet, Row: b.Line()}
			lines = append(lines, at.String()+": "+headsOf(&b))
			for k, r := range reading.Of(h, b) {
				lead := "  taken for"
				switch {
				case k > 0:
					lead = "  else for"
				case !r.Wires:
					lead = "  left out, taken for"
				}
				lines = append(lines, fmt.Sprintf("%s %s, %.0f %%; %s", lead, r.Kind, 100*min(r.Score, 1), strings.Join(r.Because, "; ")))
			}
		}
		for _, r := range over {
			at := table.Place{File: t.File, Sheet: t.Sheet, Row: r.Line}
			lines = append(lines, at.String()+": of no table: "+table.Short(shape.RowText(r.Cells)))
		}
	}
	return lines
}

// headsOf names a table: its title and its headings.
func headsOf(b *block.Block) string {
	called := ""
	if n := len(b.Titles); n > 0 {
		_, called = b.Titles[n-1].Filled()
	}
	var heads []string
	for _, h := range b.Head {
		for _, c := range h.Cells {
			if c != "" {
				heads = append(heads, c)
			}
		}
	}
	return value.JoinNonEmpty(": ", called, strings.Join(heads, " | "))
}
