package words

import (
	"fmt"
	"strings"
)

// Few names some ids and counts the rest.
func Few(ids []string) string {
	if len(ids) > 4 {
		return strings.Join(ids[:4], ", ") + fmt.Sprintf(" and %d more", len(ids)-4)
	}
	return strings.Join(ids, ", ")
}
