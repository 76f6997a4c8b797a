package placehead

import (
	"strings"

	"contralay/model/wirelist/name"
)

// EndsInDesignator reports whether a heading is a designator, or a place and one, "Cab X1".
func EndsInDesignator(head string) bool {
	all := strings.Fields(head)
	if len(all) == 0 || len(all) > 3 {
		return false
	}
	last := all[len(all)-1]
	return name.IsDesignator(last) && (len(all) == 1 || last == strings.ToUpper(last) && strings.ContainsAny(last, "0123456789"))
}
