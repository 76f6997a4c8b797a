package name

import "strings"

// WithoutBrackets takes what stands in brackets off a heading: "Controller (15-pin D)". A word for cavities alone stays: "Dash (pin)" is
// "Dash pin".
func WithoutBrackets(s string) string {
	if front, in, ok := strings.Cut(s, " ("); ok && strings.HasSuffix(in, ")") && (IsPinWord(strings.ToLower(in[:len(in)-1]))) {
		return front + " " + in[:len(in)-1]
	}
	for _, pair := range []string{"()", "[]"} {
		if i := strings.IndexByte(s, pair[0]); i > 0 {
			if j := strings.IndexByte(s[i:], pair[1]); j > 0 {
				s = s[:i] + s[i+j+1:]
			}
		}
	}
	return s
}
