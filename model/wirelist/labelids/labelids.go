// Package labelids takes what the wires are labelled with for their numbers, where the column that numbers them only counts the rows of the
// list.
//
//	Cct | Description  | From       | To       | Label         Wire label | Description  | From       | To       | Cct
//	1   | Saloon light | Fuse board | Light LH | A01      ->   A01        | Saloon light | Fuse board | Light LH | 1
//	2   | Saloon light | Fuse board | Light RH | A02           A02        | Saloon light | Fuse board | Light RH | 2
package labelids

import (
	"slices"
	"strconv"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
	"contralay/model/wirelist/words"
)

const leastRows = 3 // wires of such a table (no source)

// heading is what the column of the labels is called: all know it for the numbers of wires.
const heading = "Wire label"

// Headed gives the labels of such a table the heading of numbers, and puts them before the column that counts where that one is known for
// numbers, too: it still tells the wires that have no label.
func Headed(h shape.Headings, head table.Row, rows []table.Row) (table.Row, []table.Row) {
	label := slices.IndexFunc(head.Cells, words.HeadsLabel)
	if label < 0 {
		return head, rows // most tables
	}
	cols, _ := h.Columns([]table.Row{head}, 0)
	b := shape.Block{Cols: cols}
	if !b.Has(name.FieldFrom, name.FieldFromPin) || !b.Has(name.FieldTo, name.FieldToPin) {
		return head, rows
	}
	count := -1
	for i, c := range cols {
		switch {
		case i == label:
		case words.HeadsLabel(c.Head):
			return head, rows // two of them
		case c.Field == name.FieldWire || c.Field == name.FieldNumber:
			if count >= 0 {
				return head, rows
			}
			count = i
		}
	}
	if count < 0 || !counts(rows, count, label) || !areLabels(rows, count, label) {
		return head, rows
	}
	head.Cells = slices.Clone(head.Cells)
	head.Cells[label] = heading
	if count > label || h.Words[strings.Join(name.Words(table.Fold(head.Cells[count])), " ")].Field != name.FieldWire {
		return head, rows
	}
	head.Cells = swapped(head.Cells, count, label)
	rows = slices.Clone(rows)
	for k, r := range rows {
		if !shape.IsText(r) {
			rows[k].Cells = swapped(r.Cells, count, label)
		}
	}
	return head, rows
}

// swapped is some cells with two of them in the place of each other.
func swapped(cells []string, a, b int) []string {
	out := slices.Clone(cells)
	for len(out) <= max(a, b) {
		out = append(out, "")
	}
	out[a], out[b] = out[b], out[a]
	return out
}

// counts reports whether a column counts the rows from one: a letter behind a number is one more of them, "3a". A row with neither a number
// nor a label is no wire, as one that sums the list up.
func counts(rows []table.Row, i, label int) bool {
	last, n := 0, 0
	for _, r := range rows {
		if shape.IsText(r) || cell(r, i)+cell(r, label) == "" {
			continue
		}
		c := strings.TrimRight(cell(r, i), ".)")
		bare := strings.TrimRight(c, "abcdefgh")
		k, err := strconv.Atoi(bare)
		if err != nil || len(c)-len(bare) > 1 || k != last+1 && (k != last || bare == c) {
			return false
		}
		last = k
		n++
	}
	return n >= leastRows
}

// areLabels reports whether the cells of a column are names of wires: with a digit, without a blank, none twice, in two rows of three.
func areLabels(rows []table.Row, count, i int) bool {
	seen := map[string]bool{}
	n, same := 0, 0
	for _, r := range rows {
		c := cell(r, i)
		if shape.IsText(r) || cell(r, count)+c == "" {
			continue
		}
		n++
		if value.IsNothing(c) {
			continue
		}
		if !value.HasDigit(c) || strings.ContainsAny(c, " ,;:") || seen[c] {
			return false
		}
		if seen[c] = true; c == strconv.Itoa(n) {
			same++
		}
	}
	return 3*len(seen) >= 2*n && len(seen) >= leastRows && same < len(seen)
}

func cell(r table.Row, i int) string {
	if i >= len(r.Cells) {
		return ""
	}
	return strings.TrimSpace(r.Cells[i])
}
