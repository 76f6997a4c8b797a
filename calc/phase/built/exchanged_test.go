package built

import "testing"

// What a step has now and had not, and the other way round, in words.
func TestExchangedInWords(t *testing.T) {
	for _, c := range []struct {
		more, less []string
		want       string
	}{
		{[]string{"a", "b"}, nil, "has a, b too"}, {nil, []string{"a", "b"}, "no longer has a, b"},
		{[]string{"a"}, []string{"b", "c"}, "has a, had b, c"},
	} {
		if got := exchanged(c.more, c.less); got != c.want {
			t.Errorf("%q, want %q", got, c.want)
		}
	}
	more, less := apart([]string{"a", "b", "c"}, []string{"c", "d", "a"})
	if len(more) != 1 || more[0] != "b" || len(less) != 1 || less[0] != "d" {
		t.Errorf("%v more, %v less", more, less)
	}
}
