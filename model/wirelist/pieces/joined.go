package pieces

import (
	"strings"

	"contralay/model/wirelist/value"
)

// joined is the text of a line that was parted in cells at its commas. A comma between two cells of which the first is a number alone and
// the second what stands behind the comma of a usual section was one of decimals, "A a B, 1,5 mm²".
func joined(cells []string) string {
	var b strings.Builder
	for i, c := range cells {
		switch {
		case i == 0:
		case isDecimal(cells[i-1], c):
			b.WriteByte(',')
		default:
			b.WriteByte('\t')
		}
		b.WriteString(c)
	}
	return b.String()
}

// isDecimal reports whether two cells are the two sides of the comma of a section.
func isDecimal(front, behind string) bool {
	if len(front) > 2 || strings.Trim(front, "0123456789") != "" {
		return false
	}
	digits := behind[:len(behind)-len(strings.TrimLeft(behind, "0123456789"))]
	return digits != "" && value.IsSection(front+"."+digits)
}
