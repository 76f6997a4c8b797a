package grid

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
	"contralay/model/wirelist/words"
)

// figures takes apart a table that has a row for each device and a column for each of its leads, where the text above it says of what its
// figures are the cavities.
//
//	Probe leads to the plug EM1 (figure = pin of EM1).
//
//	Probe | CHT + | CHT -
//	Cyl 1 | 1     | 14
//	Cyl 2 | 2     | 15
func figures(h shape.Headings, above, rows []table.Row) (made []table.Row, n int) {
	head := rows[0]
	if len(head.Cells) < 3 || head.Cells[0] == "" || shape.HasNumber(head) || len(above) == 0 || !shape.IsText(above[len(above)-1]) {
		return nil, 0
	}
	_, text := above[len(above)-1].Filled()
	of := figuresOf(text)
	if of == "" {
		return nil, 0
	}
	at := head
	at.Cells = []string{of + " pin", "Signal", "To", "To pin"}
	made = append(made, at)
	seen := map[string]bool{}
	for _, r := range rows[1:] {
		if r.First || shape.IsText(r) || cellAt(r, 0) == "" || h.IsHead(r) {
			break
		}
		for i := 1; i < len(head.Cells); i++ {
			cell := cellAt(r, i)
			if value.IsNothing(cell) {
				continue
			}
			if head.Cells[i] == "" || !name.IsCavity(cell) || seen[cell] {
				return nil, 0
			}
			seen[cell] = true
			row := r
			row.Cells = []string{cell, head.Cells[i], r.Cells[0], head.Cells[i]}
			made = append(made, row)
		}
		n++
	}
	if n < 2 || len(made) < 5 {
		return nil, 0
	}
	return made, n + 1
}

// figuresOf is the connector that a text says the figures of a table are the cavities of, "EM1" of "figure = pin of EM1"; "" where it says
// none.
func figuresOf(text string) string {
	const near = 5 // words from one to the next (no source)
	all := strings.Fields(text)
	bare := func(w string) string { return strings.Trim(w, ".,:;()[]=\"'") }
	find := func(from int, is func(w string) bool) int {
		to := min(len(all), from+near)
		if from >= to {
			return -1
		}
		if k := slices.IndexFunc(all[from:to], func(w string) bool { return is(bare(w)) }); k >= 0 {
			return from + k
		}
		return -1
	}
	for i, w := range all {
		if !words.IsFigure(table.Fold(bare(w))) {
			continue
		}
		pin := find(i+1, func(w string) bool { return name.IsPinWord(table.Fold(w)) || words.ArePins(table.Fold(w)) })
		if pin < 0 {
			continue
		}
		if k := find(pin+1, func(w string) bool { return name.IsDesignator(w) && w == strings.ToUpper(w) }); k >= 0 {
			return bare(all[k])
		}
	}
	return ""
}
