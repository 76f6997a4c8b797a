package quotation_test

import (
	"testing"

	"contralay/model/wirelist/quotation"
)

// Each line keeps its number in both parts.
func TestPart(t *testing.T) {
	for _, c := range []struct {
		text, answer, letter string
		ok                   bool
	}{
		{"one\ntwo", "one\ntwo", "", false},
		{"> one\ntwo", "> one\ntwo", "", false}, // one line is chance
		{"Hi\n> a\n>> b\n> c", "Hi\n\n\n", "\na\n> b\nc", true},
		{"Hi\nyou\nthree\n> a\n>\n", "Hi\nyou\nthree\n> a\n>\n", "\n\n\na\n\n", true}, // the answer is longer
		{">a\n>b", ">a\n>b", "", false},                                               // no blank behind the sign: no letter
	} {
		answer, letter, ok := quotation.Part(c.text)
		if answer != c.answer || letter != c.letter || ok != c.ok {
			t.Errorf("%q: %q, %q, %v", c.text, answer, letter, ok)
		}
	}
}
