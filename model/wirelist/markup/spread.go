package markup

import (
	"slices"
	"strings"
)

// A cell may stand over several columns and over several rows. Each row of what comes of it has a cell in every column.

// drawnCell is a cell as the language has it.
type drawnCell struct {
	text       string
	cols, rows int // that it stands over; 0 is one
	head       bool
}

// drawn is a row of them.
type drawn struct {
	line  int
	cells []drawnCell
	head  bool // the language says that it is of the headings
}

// slot is a place in the spread table, with the row and the column that its cell begins in.
type slot struct {
	text     string
	row, col int
	head     bool
	filled   bool
}

// mostSpan is how many columns or rows a cell stands over at the most (no source).
const mostSpan = 256

// spread makes the rows of a table; caption is the text that heads it, "" where it has none, on line at.
//
//	|      | Box        | Mast       |        |    | Box Pin | Box Colour | Mast Pin | Mast Colour |
//	| No   | Pin | Col. | Pin | Col. |   →    | No | …
func spread(all []drawn, caption string, at int) (rows []Row) {
	if caption != "" {
		rows = append(rows, Row{Line: at, Cells: []string{caption}, Prose: true, Level: Caption})
	}
	all = slices.DeleteFunc(all, func(d drawn) bool { return len(d.cells) == 0 })
	table, width := placed(all)
	first := true
	var heads []string
	for i := 0; i < len(table); {
		n := 0
		for i+n < len(table) && isHeading(all[i+n], table[i+n]) {
			n++
		}
		if n == len(table) { // everything is a heading: then nothing is but the first row
			n = 1
		}
		titles, own := table[i:i], table[i:i+n]
		for len(own) > 0 && (len(own) > 1 || i == 0 && n == 0) && isWhole(own[0], width) {
			titles, own = table[i:i+len(titles)+1], own[1:]
		}
		if i == 0 && n == 0 && len(table) > 2 && isWhole(table[0], width) {
			titles, n = table[:1], 1
		}
		for k, t := range titles {
			rows = append(rows, Row{Line: all[i+k].line, Cells: []string{t[0].text}, Prose: true, Level: Caption})
		}
		if len(own) > 0 {
			heads = joined(own)
			rows = append(rows, Row{Line: all[i+n-1].line, Cells: heads, First: true, Head: true})
			first = false
		}
		if i += n; n > 0 || i == len(table) {
			continue
		}
		cells := make([]string, len(table[i]))
		for c, s := range table[i] {
			if s.col == c {
				cells[c] = s.text
			}
		}
		again := heads != nil && slices.Equal(cells, heads)
		if strings.Join(cells, "") != "" {
			rows = append(rows, Row{Line: all[i].line, Cells: cells, First: first || again, Head: again})
			first = false
		}
		i++
	}
	return rows
}

// placed gives each cell its place; width is the number of columns.
func placed(all []drawn) (table [][]slot, width int) {
	table = make([][]slot, len(all))
	for i, d := range all {
		at := 0
		for _, c := range d.cells {
			for at < len(table[i]) && table[i][at].filled {
				at++
			}
			cols, down := min(max(c.cols, 1), mostSpan), min(max(c.rows, 1), mostSpan, len(all)-i)
			for k := i; k < i+down; k++ {
				for len(table[k]) < at+cols {
					table[k] = append(table[k], slot{col: len(table[k]), row: k})
				}
				for x := at; x < at+cols; x++ {
					table[k][x] = slot{c.text, i, at, c.head || d.head, true}
				}
			}
			if at += cols; at > 2*mostSpan {
				break
			}
		}
		width = max(width, len(table[i]))
	}
	return table, width
}

// isHeading reports whether every cell of a row with text is of the headings, and begins there or above in them.
func isHeading(d drawn, row []slot) bool {
	if d.head {
		return true
	}
	some := false
	for _, s := range row {
		if s.text != "" && !s.head {
			return false
		}
		some = some || s.text != ""
	}
	return some
}

// isWhole reports whether one cell takes a whole row of a table of several columns.
func isWhole(row []slot, width int) bool {
	return width > 1 && len(row) == width && row[0].text != "" && !slices.ContainsFunc(row, func(s slot) bool { return s.col != 0 })
}

// joined makes one row of headings of several: what stands over a column, each text once, from the top.
func joined(rows [][]slot) []string {
	width := 0
	for _, r := range rows {
		width = max(width, len(r))
	}
	heads := make([]string, width)
	for c := range heads {
		var last slot
		for _, r := range rows {
			if c >= len(r) || r[c].text == "" || r[c] == last || r[c].text == last.text {
				continue
			}
			last = r[c]
			heads[c] = strings.TrimSpace(heads[c] + " " + last.text)
		}
	}
	return heads
}

// overNext gives a heading of the first of two rows to the columns behind it that have one below and none of their own, where a language
// has no sign for cells over several columns.
func overNext(heads []drawn) {
	for i := 0; i+1 < len(heads); i++ {
		over, below := heads[i].cells, heads[i+1].cells
		for c := 1; c < len(over) && c < len(below); c++ {
			if over[c].text == "" && below[c].text != "" && below[c-1].text != "" {
				over[c].text = over[c-1].text
			}
		}
	}
}
