package missing

import "testing"

// Ids within a sentence: all of them up to four, then three and how many more.
func TestListed(t *testing.T) {
	for _, c := range []struct {
		ids  []string
		want string
	}{
		{[]string{"A"}, "A"}, {[]string{"A", "B"}, "A and B"}, {[]string{"A", "B", "C", "D"}, "A, B, C and D"},
		{[]string{"A", "B", "C", "D", "E"}, "A, B, C and 2 more"},
	} {
		if got := listed(c.ids); got != c.want {
			t.Errorf("%v: %q, want %q", c.ids, got, c.want)
		}
	}
	if got := few([]string{"A", "B", "C", "D", "E"}); got != "A, B, C, D ..." {
		t.Errorf("%q", got)
	}
}
