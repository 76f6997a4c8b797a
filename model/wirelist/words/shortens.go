package words

import (
	"strings"

	"contralay/model/wirelist/table"
)

// Shortens reports whether the heading of some cavities begins with that of a column of devices, or with three letters of it or more:
// "Dev pin" beside "Device".
func Shortens(pins, devices string) bool {
	first, _, _ := strings.Cut(table.Fold(pins), " ")
	first = strings.TrimRight(first, ".")
	return len(first) > 2 && strings.HasPrefix(table.Fold(devices), first)
}
