package block

import (
	"strings"

	"contralay/model/wirelist/point"
	"contralay/model/wirelist/table"
)

// partBrackets gives what stands in brackets at the end of a point its cells, where every piece of it is a colour or a size
// of wire, in every point that has any.
//
//   - Pin 1: heater + (red, 16 AWG)
//   - Pin 2: heater return (black, 16 AWG)
func partBrackets(rows []table.Row) {
	n, other := 0, 0
	for _, r := range rows {
		front, pieces := point.ValuesBehind(r.Cells[len(r.Cells)-1])
		if pieces == nil {
			if strings.HasSuffix(r.Cells[len(r.Cells)-1], ")") {
				other++
			}
			continue
		}
		if front == "" {
			return
		}
		n++
	}
	if 2*n < len(rows) || n <= 2*other {
		return
	}
	for i, r := range rows {
		last := len(r.Cells) - 1
		front, pieces := point.ValuesBehind(r.Cells[last])
		colour, size := "", ""
		for _, p := range pieces {
			if point.IsColourOrLetters(p) {
				colour = p
			} else {
				size = p
			}
		}
		if pieces == nil {
			front = r.Cells[last]
		}
		rows[i].Cells = append(append([]string{}, r.Cells[:last]...), front, colour, size)
	}
}
