package name

import "strings"

// WithoutBrackets takes what stands in brackets off a heading: "Controller (15-pin D)".
func WithoutBrackets(s string) string {
	for _, pair := range []string{"()", "[]"} {
		if i := strings.IndexByte(s, pair[0]); i > 0 {
			if j := strings.IndexByte(s[i:], pair[1]); j > 0 {
				s = s[:i] + s[i+j+1:]
			}
		}
	}
	return s
}
