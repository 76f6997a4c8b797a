package column

import (
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/signoff"
	"contralay/model/wirelist/table"
	"strconv"
)

// PairsOnce reports whether no two rows have the same cells in two columns, of two rows or more that have both.
func PairsOnce(rows []table.Row, a, b int) bool {
	seen := map[[2]string]bool{}
	for _, r := range rows {
		if max(a, b) >= len(r.Cells) || r.Cells[a] == "" || r.Cells[b] == "" || shape.IsText(r) {
			continue
		}
		key := [2]string{table.Fold(r.Cells[a]), r.Cells[b]}
		if seen[key] {
			return false
		}
		seen[key] = true
	}
	return len(seen) > 1
}

// Data counts the rows that are more than a text, as far as a profile looks.
func Data(rows []table.Row) (n int) {
	for _, r := range rows[:min(len(rows), MostLooked)] {
		if !shape.IsText(r) && !signoff.Is(r) {
			n++
		}
	}
	return n
}

// Falls reports whether the cells of a column are whole numbers of which one is not more than the one above it.
func Falls(rows []table.Row, i int) (falls bool) {
	last := 0
	for _, r := range rows[:min(len(rows), MostLooked)] {
		if i >= len(r.Cells) || r.Cells[i] == "" || shape.IsText(r) {
			continue
		}
		n, err := strconv.Atoi(r.Cells[i])
		if err != nil {
			return false
		}
		falls = falls || n <= last
		last = n
	}
	return falls
}

// Designators counts the cells of a column that are names of connectors and devices as drawings have them, "K1".
func Designators(rows []table.Row, i int) (n int) {
	for _, r := range rows[:min(len(rows), MostLooked)] {
		if i < len(r.Cells) && name.IsDesignator(r.Cells[i]) {
			n++
		}
	}
	return n
}
