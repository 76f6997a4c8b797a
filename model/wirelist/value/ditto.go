package value

import (
	"strings"

	"contralay/model/wirelist/table"
)

// IsDitto reports whether a cell is a mark that says "as above".
func IsDitto(cell string) bool {
	text := strings.TrimLeft(cell, ". ")
	if text == "" || text[0] < 0x80 && strings.IndexByte(`"'dDiI`, text[0]) < 0 {
		return false // most cells
	}
	switch strings.Trim(table.Fold(cell), ". ") {
	case `"`, `''`, "ditto", "dito", "dto", "idem", "do", "„", "″", "〃":
		return true
	}
	return false
}
