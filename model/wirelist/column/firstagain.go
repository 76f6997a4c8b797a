package column

import (
	"strings"

	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

// FirstAgain counts the devices in a column whose first row has the first cavity, "1" or "A", in another column.
func FirstAgain(rows []table.Row, device, pin int) (again int) {
	last := ""
	seen := map[string]bool{}
	for _, r := range rows[:min(len(rows), MostLooked)] {
		if device >= len(r.Cells) || pin >= len(r.Cells) || r.Cells[device] == "" || shape.IsText(r) {
			continue
		}
		if f := table.Fold(r.Cells[device]); f != last {
			if first := strings.TrimSpace(r.Cells[pin]); !seen[f] && (first == "1" || first == "A") {
				again++
			}
			seen[f], last = true, f
		}
	}
	return again
}
