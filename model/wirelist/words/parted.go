package words

import "strings"

// Parted parts words that are written as one, "WireColor".
func Parted(head string) string {
	var b strings.Builder
	for i, r := range head {
		if i > 0 && r >= 'A' && r <= 'Z' && head[i-1] >= 'a' && head[i-1] <= 'z' {
			b.WriteByte(' ')
		}
		if at := len(head) - 1; i == at && i > 2 && (r == '1' || r == '2') && head[i-1]|0x20 >= 'a' && head[i-1]|0x20 <= 'z' {
			b.WriteByte(' ') // "Pin1" and "Pin2"
		}
		b.WriteRune(r)
	}
	return b.String()
}
