package signoff

import "contralay/model/wirelist/table"

// PartPaper parts what stands about the paper below the rows of a table from those, so that no share of the rows counts it.
func PartPaper(rows []table.Row) (of, paper []table.Row) {
	n := len(rows)
	for n > 1 && Is(rows[n-1]) {
		n--
	}
	return rows[:n], rows[n:]
}
