package signs_test

import (
	"strings"
	"testing"

	"contralay/model/wirelist/signs"
)

// A set finds and takes off what package strings does.
func TestAsStrings(t *testing.T) {
	for _, of := range []string{"0123456789", " .:()[]*", "", "a"} {
		set := signs.Of(of)
		for _, text := range []string{"", "a", "12", "a1", " (a) ", "1a2", "ä1", "*ä*", "\xff1", "aaa"} {
			if got, want := set.Index(text), strings.IndexAny(text, of); got != want {
				t.Errorf("%q in %q: %d, not %d", of, text, got, want)
			}
			if set.In(text) != strings.ContainsAny(text, of) || set.Are(text) != (strings.Trim(text, of) == "") {
				t.Errorf("%q in %q: %v, alone %v", of, text, set.In(text), set.Are(text))
			}
			if set.Trim(text) != strings.Trim(text, of) || set.TrimLeft(text) != strings.TrimLeft(text, of) ||
				set.TrimRight(text) != strings.TrimRight(text, of) {
				t.Errorf("%q off %q: %q, %q, %q", of, text, set.Trim(text), set.TrimLeft(text), set.TrimRight(text))
			}
		}
	}
}
