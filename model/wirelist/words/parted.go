package words

import "strings"

// Parted parts words that are written as one, "WireColor".
func Parted(head string) string {
	var b strings.Builder
	for i, r := range head {
		if i > 0 && r >= 'A' && r <= 'Z' && head[i-1] >= 'a' && head[i-1] <= 'z' {
			b.WriteByte(' ')
		}
		b.WriteRune(r)
	}
	return b.String()
}
