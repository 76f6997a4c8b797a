package words

import (
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// IsPortName reports whether a heading is of names that a processor gives its cavities.
func IsPortName(head string) bool {
	switch strings.Join(name.Words(table.Fold(head)), " ") {
	case "gpio", "gpio no", "io", "port", "channel":
		return true
	}
	return false
}
