package titleline

import (
	"strings"

	"contralay/model/wirelist/table"
)

// isDashed reports whether the first word of a title is a designator with a dash before its number: the connector is called by it, and what
// follows is what it is for, whatever signs stand within.
//
//	C-205 COMPARTMENT LTS / DOOR AJAR, 12 CAV        X-12 Winde - Bremse, 6-polig
func isDashed(first string) bool {
	first = strings.TrimRight(first, ":,")
	letters, number, ok := strings.Cut(first, "-")
	return ok && letters != "" && number != "" && first == strings.ToUpper(first) && isDesignator(table.Fold(letters+number))
}
