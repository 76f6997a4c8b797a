package table

import "strings"

// signed reads lines whose cells one sign parts, within a text that is no table as a whole: two or more one after another,
// with as many cells.
//
//	The front plug:
//	Pin;Signal;Colour
//	1;Horn;red
func signed(d *document, i int) int {
	for _, sep := range []byte{'\t', ';', '|'} {
		k := outside(d.line(i), sep)
		if k == 0 || k == 1 && sep == '|' {
			continue
		}
		n := 1
		for d.line(i+n) != "" && outside(d.lines[i+n], sep) > 0 {
			n++
		}
		if n < 2 {
			continue
		}
		for at := range n {
			row := Row{First: at == 0}
			text := strings.TrimRight(d.lines[i+at], "\r")
			if sep == '|' {
				row.Cells = tableCells(strings.TrimSpace(text))
			} else if _, _, problem := readRow(text, sep, &row, d.l); problem != "" {
				row.Cells = nil
				for cell := range strings.SplitSeq(text, string([]byte{sep})) {
					row.Cells = append(row.Cells, marked(cell))
				}
			}
			d.add(i+at, row)
		}
		return n
	}
	return 0
}
