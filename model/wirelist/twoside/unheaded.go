package twoside

import (
	"strings"

	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// Pins may stand in two columns beside each other without headings: their numbers, taken together, count the pins of one plug, each once.
//
//	1   Up        5   Lamp
//	2   Down      6   Buzzer
//	3   Left      7   Ground
//	4   Right     8   +5V

// leastUnheaded is how many such rows follow each other where that is no chance (no source).
const leastUnheaded = 3

// unheaded are the rows of such a table, from row i on, below headings that the list does not have, and how many rows those are; nil where
// they are anything else.
func unheaded(t *table.Table, i int) (made []table.Row, n int) {
	if t.Marked || !isQuad(t.Rows[i]) || i > 0 && t.Rows[i-1].Line+1 == t.Rows[i].Line && !shape.IsText(t.Rows[i-1]) {
		return nil, 0
	}
	for i+n < len(t.Rows) && (n == 0 || t.Rows[i+n].Line == t.Rows[i+n-1].Line+1) && isQuad(t.Rows[i+n]) {
		n++
	}
	rows := t.Rows[i : i+n]
	goesOn := i+n < len(t.Rows) && n > 0 && t.Rows[i+n].Line == rows[n-1].Line+1 && !shape.IsText(t.Rows[i+n])
	if n < leastUnheaded || goesOn || !oneHeader(rows, 0, 2) {
		return nil, 0
	}
	same := 0
	var said, colours [2]int
	for _, r := range rows {
		c := pick(r.Cells, []int{0, 1, 2, 3})
		if c[2] != "" && alike(c[1], c[3]) {
			same++
		}
		for side, cell := range []string{c[1], c[3]} {
			if cell == "" {
				continue
			}
			said[side]++
			if _, ok := value.ParseColour(cell, ""); ok {
				colours[side]++
			}
		}
	}
	areColours := [2]bool{2*colours[0] > said[0], 2*colours[1] > said[1]}
	if said[1] < leastUnheaded-1 || 2*same >= n || areColours[0] != areColours[1] {
		return nil, 0 // the two ends of wires, or values of one and the same wire
	}
	head := rows[0]
	head.Cells, head.First, head.Made = []string{"Pin", "Signal"}, true, true
	if areColours[0] {
		head.Cells = []string{"Pin", "Colour"}
	}
	made = append(made, head)
	for _, half := range [][]int{{0, 1}, {2, 3}} {
		for _, r := range rows {
			if r.Cells = pick(r.Cells, half); r.Cells[0] != "" {
				made = append(made, r)
			}
		}
	}
	return made, n
}

// isQuad reports whether a row is a number, a text, and both once more or nothing.
func isQuad(r table.Row) bool {
	if len(r.Cells) < 2 || len(r.Cells) > 4 || r.Prose || r.Level > 0 || r.First {
		return false
	}
	c := pick(r.Cells, []int{0, 1, 2, 3})
	for k := 0; k < 4; k += 2 {
		if k == 2 && c[2] == "" && c[3] == "" {
			return true
		}
		if c[k] == "" || strings.Trim(c[k], "0123456789") != "" || strings.Trim(c[k+1], "0123456789.,") == "" {
			return false
		}
	}
	return true
}
