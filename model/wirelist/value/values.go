package value

import (
	"strings"
)

// IsNothing: a dash that fills an empty cell.
func IsNothing(cell string) bool { return strings.Trim(cell, "-–—. ") == "" }
