package table

import (
	"slices"
	"strings"
)

// drawn reads a table that is drawn with signs. Its lines between the rows name nothing. What stands between two of them in
// several lines, of which the first cell of all but the first is empty, is one row.
//
//	+-----+-------+--------+
//	| Pin | Name  | Colour |
//	+-----+-------+--------+
//	|  1  | Horn  | red    |
//	+-----+-------+--------+
func drawn(d *document, i int) int {
	if !d.isBars(i) && !(isDrawnRule(d.line(i)) && d.isBars(i+1)) {
		return 0
	}
	var groups [][]int // the lines between two rules
	n, open, rules := 0, false, 0
	for ; ; n++ {
		switch {
		case isDrawnRule(d.line(i + n)):
			open = false
			rules++
			continue
		case d.isBars(i + n):
			if !open {
				groups, open = append(groups, nil), true
			}
			groups[len(groups)-1] = append(groups[len(groups)-1], i+n)
			continue
		}
		break
	}
	if rules == 0 || len(groups) == 0 {
		return 0
	}
	first := true
	for g, group := range groups {
		head := g == 0 && len(groups) > 1
		for k, row := range d.together(group, head) {
			row.First, row.Ruled = first, first && head && k == 0
			first = false
			row.strike()
			d.add(row.Line, row)
		}
	}
	return n
}

// together makes rows of the lines between two rules; Line is the index of the first of each. Headings are one row.
func (d *document) together(group []int, head bool) (rows []Row) {
	for _, i := range group {
		cells := tableCells(barred(d.line(i)))
		if n := len(rows); n > 0 && (head || cells[0] == "" && (d.wraps(group) || isWrapped(rows[n-1].Cells, cells))) {
			last := rows[n-1].Cells
			for k := range cells {
				if k < len(last) {
					last[k] = oneBlank(last[k] + " " + cells[k])
				} else {
					last = append(last, cells[k])
				}
			}
			rows[n-1].Cells = last
			continue
		}
		rows = append(rows, Row{Line: i, Cells: cells})
	}
	return rows
}

// isWrapped reports whether some cells are the one that was too long for the row above.
func isWrapped(above, cells []string) bool {
	n, first := Row{Cells: cells}.Filled()
	at := slices.Index(cells, first)
	return n == 1 && at > 0 && at < len(above) && above[at] != "" && len(cells) > 2
}

// wraps reports whether only the first of some lines has a first cell: they are one row, its cells broken.
func (d *document) wraps(group []int) bool {
	for k, i := range group {
		if cells := tableCells(barred(d.line(i))); (cells[0] == "") != (k > 0) {
			return false
		}
	}
	return true
}

// isBars reports whether a line is cells between bars.
func (d *document) isBars(i int) bool {
	line := barred(d.line(i))
	return len(line) > 2 && line[0] == '|' && line[len(line)-1] == '|' && !isDrawnRule(line)
}

// barred writes the bars that some drawings have as the plain one.
func barred(line string) string {
	return strings.NewReplacer("│", "|", "║", "|", "┃", "|", "¦", "|").Replace(line)
}

// isDrawnRule reports whether a line is nothing but the signs that tables are drawn with, corners or bars among them.
func isDrawnRule(line string) bool {
	line = strings.TrimSpace(line)
	const corners, lines = "+|┌┬┐├┼┤└┴┘╔╦╗╠╬╣╚╩╝╒╤╕╞╪╡╘╧╛╓╥╖╟╫╢╙╨╜┏┳┓┣╋┫┗┻┛╭╮╰╯│║┃", "-=─═━╌┄: "
	return len(line) > 2 && strings.ContainsAny(line, corners) && strings.ContainsAny(line, "-=─═━╌┄") &&
		strings.Trim(line, corners+lines) == ""
}
