package rising

import (
	"strconv"
	"strings"

	"contralay/model/wirelist/table"
)

// Next reports whether the first cells of two rows are cavities of one connector that follow each other: then the first is no heading of
// the second.
//
//	LOG1-1 | brake front | white | sensor F pin C
//	LOG1-2 | brake rear  | red   | sensor R pin C
func Next(a, b table.Row) bool {
	_, first := a.Filled()
	_, second := b.Filled()
	stem := strings.TrimRight(first, "0123456789")
	number, err := strconv.Atoi(first[len(stem):])
	if err != nil || len(stem) < 2 || !strings.ContainsAny(stem[len(stem)-1:], "-:./") {
		return false // most rows
	}
	return second == stem+strconv.Itoa(number+1)
}
