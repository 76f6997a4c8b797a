package words

import (
	"testing"
)

// A name that is longer than its place shows its end, where the typing goes on.
func TestLongDraft(t *testing.T) {
	for _, c := range []struct {
		text string
		w    int
		want string
	}{{"short", 20, "short"}, {"/a/very/long/name/of/a.csv", 12, ".../of/a.csv"}, {"/a/very/long/name/of/a.csv", 2, "...a.csv"}} {
		if got := Tail(c.text, c.w); got != c.want || len(got) > max(c.w, 8) {
			t.Errorf("%q in %d: %q, want %q", c.text, c.w, got, c.want)
		}
	}
}
