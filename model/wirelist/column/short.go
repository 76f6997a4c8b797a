package column

import (
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

// ShortPads counts the cells of a column that are short, of so many bytes at most, and have a digit or a pole, "C1+", as cavities have
// and kinds of lugs have not.
func ShortPads(rows []table.Row, i, most int) (n int) {
	for _, r := range rows[:min(len(rows), MostLooked)] {
		if i < len(r.Cells) && len(r.Cells[i]) <= most && (strings.ContainsAny(r.Cells[i], "0123456789+") ||
			len(r.Cells[i]) > 1 && strings.HasSuffix(r.Cells[i], "-")) && !name.IsThread(r.Cells[i]) {
			n++
		}
	}
	return n
}

// ShortNames counts the cells of a column that are one short word, as the cavities of boards are: "D0", "GND", "+5".
func ShortNames(rows []table.Row, i int) (n int) {
	for _, r := range rows[:min(len(rows), MostLooked)] {
		if i < len(r.Cells) && r.Cells[i] != "" && len(r.Cells[i]) <= 5 && !shape.IsText(r) {
			n++
		}
	}
	return n
}
