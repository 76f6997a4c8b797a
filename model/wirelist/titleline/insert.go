package titleline

import "strings"

// IsInsert reports whether w is one or two digits, a dash, one to three digits.
func IsInsert(w string) bool {
	a, b, ok := strings.Cut(w, "-")
	return ok && len(a) >= 1 && len(a) <= 2 && len(b) >= 1 && len(b) <= 3 && strings.Trim(a+b, "0123456789") == ""
}
