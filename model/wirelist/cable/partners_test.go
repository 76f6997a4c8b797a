package cable

import (
	"slices"
	"testing"
)

// A note names the wires that its wire is made up with, and keeps what it says besides.
func TestReadWith(t *testing.T) {
	for _, c := range []struct {
		note string
		of   []string
		text string
		rest string
	}{
		{"pair with 105", []string{"105"}, "pair with 105", ""},
		{"twisted with 105 and 106", []string{"105", "106"}, "twisted with 105 and 106", ""},
		{"twisted with 105, 106", []string{"105", "106"}, "twisted with 105, 106", ""},
		{"twisted with 102, screened", []string{"102"}, "twisted with 102, screened", ""},
		{"TP with W02", []string{"W02"}, "TP with W02", ""},
		{"5 V, twisted with 102", []string{"102"}, "twisted with 102", "5 V"},
		{"twisted with 102, 30 mm pitch", []string{"102"}, "twisted with 102,", "30 mm pitch"},
		{"screened, twisted with wire no. 7; fit boot", []string{"7"}, "screened, twisted with wire no. 7", "fit boot"},
		{"verdrillt mit Ader 12", []string{"12"}, "verdrillt mit Ader 12", ""},
		{"zusammen verdrillt mit 12", []string{"12"}, "verdrillt mit 12", "zusammen"},
		{"twisted together with 12", []string{"12"}, "twisted together with 12", ""},
		{"torsadé avec 14", []string{"14"}, "torsadé avec 14", ""},
		{"trenzado con 14", []string{"14"}, "trenzado con 14", ""},
		{"twisted with CAN L", []string{"CAN L"}, "twisted with CAN L", ""},
		{"twisted with CAN1 L, 120 ohm at the end", []string{"CAN1 L"}, "twisted with CAN1 L", "120 ohm at the end"},
		{"twisted with B", []string{"B"}, "twisted with B", ""},
		{"twisted with B and C", []string{"B", "C"}, "twisted with B and C", ""},
		{"(twisted with 14)", []string{"14"}, "twisted with 14", ""},
		{"mit W4 verdrillt, geschirmt", []string{"W4"}, "mit W4 verdrillt, geschirmt", ""},
		{"supplied with plug", nil, "", ""},
		{"shares its fuse with 105", nil, "", ""},
		{"twisted with", nil, "", ""},
	} {
		got := ReadWith(c.note)
		if !slices.Equal(got.Of, c.of) || got.Rest != c.rest || c.of != nil && got.Text != trimmed(c.text) {
			t.Errorf("%q: %q, %q, %q", c.note, got.Of, got.Text, got.Rest)
		}
	}
}

// trimmed is a text without the comma behind it.
func trimmed(s string) string {
	for len(s) > 0 && s[len(s)-1] == ',' {
		s = s[:len(s)-1]
	}
	return s
}

// A note that names its own wire among others makes it up with these, and only where it says nothing else.
func TestReadBeside(t *testing.T) {
	for _, c := range []struct {
		note, own string
		of        []string
	}{
		{"W1/W2 twisted", "W1", []string{"W2"}},
		{"twisted pair 101 + 102", "102", []string{"101"}},
		{"101, 102 and 103 twisted", "101", []string{"102", "103"}},
		{"101/102 twisted, screened", "101", []string{"102"}},
		{"101/102 twisted", "103", nil},         // it is not among them
		{"101/102", "101", nil},                 // nothing says what they are
		{"twisted pair 101", "101", nil},        // alone
		{"cut 101 twisted off 102", "101", nil}, // a sentence
		{"CAN twisted", "CAN", nil},
	} {
		if got := ReadBeside(c.note, c.own); !slices.Equal(got.Of, c.of) {
			t.Errorf("%q of %s: %q", c.note, c.own, got.Of)
		}
	}
}
