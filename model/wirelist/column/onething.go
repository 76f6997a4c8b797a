package column

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
)

// IsOneThing reports whether a column that nobody knows names one thing for all its rows, which is not what a tab or a title says the
// connector is: the ribbon, the loom or the drawer of that connector.
//
//	J2 keys
//
//	Ribbon | Pin | Net
//	R2     | 1   | ROW0
//	       | 2   | ROW1
func IsOneThing(prof []Profile, i int, titles ...string) bool {
	return prof[i].Distinct == 1 && slices.ContainsFunc(titles, func(title string) bool {
		return name.SaysConnector(title) && strings.ContainsAny(title, "0123456789")
	})
}
