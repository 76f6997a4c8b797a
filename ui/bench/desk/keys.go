package desk

import (
	"strings"
)

func Shown(name string) string {
	if len([]rune(name)) == 1 {
		return strings.ToUpper(name)
	}
	return name
}
