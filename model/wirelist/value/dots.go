package value

import "strings"

// IsDots reports whether a cell is nothing but dots, which stand for rows that a list leaves out.
func IsDots(cell string) bool {
	return len(cell) > 1 && strings.Trim(cell, ".… ") == ""
}
