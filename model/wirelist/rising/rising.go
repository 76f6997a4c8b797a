// Package rising tells numbers of wires that rise by one from row to row, whatever stands behind them.
package rising

import (
	"strconv"
	"strings"

	"contralay/model/wirelist/table"
)

// ByOne reports whether each cell of a column begins with a number of its own and goes on with letters alone, each number one more than
// that of the row above, three or more: "1-red", "2-blue", "3-grey" are numbers of wires, and no sizes. A line of text is no row.
func ByOne(rows []table.Row, i int) bool {
	last, n := 0, 0
	for _, r := range rows {
		filled, _ := r.Filled()
		if i >= len(r.Cells) || filled < 2 || strings.Trim(r.Cells[i], "-–. ") == "" {
			continue
		}
		rest := strings.TrimLeft(r.Cells[i], "0123456789")
		number, err := strconv.Atoi(r.Cells[i][:len(r.Cells[i])-len(rest)])
		tail := strings.TrimLeft(rest, "-_/. ")
		if err != nil || n > 0 && number != last+1 || tail == "" || strings.ContainsAny(tail, "0123456789") {
			return false
		}
		last, n = number, n+1
	}
	return n > 2
}
