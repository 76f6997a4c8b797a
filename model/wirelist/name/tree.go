package name

import (
	"cmp"

	"contralay/model/wirelist/value"
)

// CompareCavities sorts 2 before 10 and A before a.
func CompareCavities(a, b string) int {
	number := func(s string) (int, bool) {
		n := 0
		for _, c := range []byte(s) {
			if !value.IsDigit(c) || n > 1e8 {
				return 0, false
			}
			n = 10*n + int(c-'0')
		}
		return n, s != ""
	}
	m, ok1 := number(a)
	n, ok2 := number(b)
	if ok1 && ok2 {
		return cmp.Or(cmp.Compare(m, n), cmp.Compare(a, b))
	}
	return cmp.Compare(a, b)
}
