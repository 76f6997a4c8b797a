package value

import (
	"strings"

	"contralay/model/wirelist/table"
)

// IsDitto reports whether a cell is a mark that says "as above".
func IsDitto(cell string) bool {
	switch strings.Trim(table.Fold(cell), ". ") {
	case `"`, `''`, "ditto", "dito", "dto", "idem", "do", "„", "″", "〃":
		return true
	}
	return false
}
