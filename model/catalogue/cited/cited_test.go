package cited_test

import (
	"testing"

	"contralay/model/catalogue/cited"
)

// Ids in braces are replaced, also within what is put in; one that is not known, or has no end, stays; two that refer to each
// other end.
func TestIn(t *testing.T) {
	words := map[string]string{"a": "table 1", "b": "as {a}, p. 2", "x": "{y}", "y": "{x}", "": "nothing"}
	for text, want := range map[string]string{
		"": "", "plain": "plain", "see {a}": "see table 1", "{a}{a}": "table 1table 1", "{b}.": "as table 1, p. 2.",
		"{c} {a}": "{c} table 1",
		"{a":      "{a", "a}": "a}", "{": "{", "{{a}": "{table 1", "{}": "nothing",
	} {
		if got := cited.In(text, func(id string) (string, bool) { s, ok := words[id]; return s, ok }); got != want {
			t.Errorf("%q is %q, want %q", text, got, want)
		}
	}
	if got := cited.In("{x}", func(id string) (string, bool) { return words[id], true }); got != "{x}" && got != "{y}" {
		t.Errorf("two that refer to each other: %q", got)
	}
}
