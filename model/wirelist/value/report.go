package value

import (
	"strings"
)

func JoinNonEmpty(sep string, parts ...string) string {
	var all []string
	for _, p := range parts {
		if p != "" {
			all = append(all, p)
		}
	}
	return strings.Join(all, sep)
}
