package filename

import (
	"strings"
	"testing"
)

// Names of files, by hand: what says all of its text is the text; any other ends in ~ and twelve digits of a hash, which no other has.
func TestNamesOnDisk(t *testing.T) {
	for text, want := range map[string]string{"HC2-ENG-01": "HC2-ENG-01", "A_1.B": "A_1.B", "abc": "abc~", "A B": "A-B~", "-A": "A~",
		"A.": "A~", "CON": "CON~",
		"CON.1": "CON.1~", "CONS": "CONS", "COM1": "COM1~", "LPT9.X": "LPT9.X~", "COM12": "COM12", "": "harness~", "///": "harness~",
		"Ö1":     "Ö1~",
		"a\xffb": "a-b~", strings.Repeat("A", 30): strings.Repeat("A", 30), strings.Repeat("A", 31): strings.Repeat("A", 31) + "~",
		strings.Repeat("A", 70): strings.Repeat("A", 60) + "~", strings.Repeat("Ö", 40): strings.Repeat("Ö", 30) + "~"} {
		got := OnDisk(text)
		shown, hash, hashed := strings.Cut(got, "~")
		if wantShown, wantHash := strings.CutSuffix(want, "~"); shown != wantShown || hashed != wantHash || hashed && len(hash) != 12 {
			t.Errorf("%q is called %q, want %q", text, got, want)
		}
	}
	if OnDisk("abc") == OnDisk("abd") || OnDisk("a b") == OnDisk("a/b") {
		t.Error("two texts have one name")
	}
}

// Number and revision, by hand: plain where they can be read apart, with a hash where they could be others.
func TestNamesOfSheets(t *testing.T) {
	for _, c := range [][3]string{{"HC2-ENG-01", "C", "HC2-ENG-01-C"}, {"A1", "", "A1"}, {"A-1", "", "A-1~"}, {"A1", "B-2", "A1-B-2~"},
		{"", "", "harness"},
		{"", "B", "B~"}, {"a", "B", "a-B~"}, {"A", "b", "A-b~"}, {strings.Repeat("N", 70), "C", strings.Repeat("N", 60) + "-C~"}} {
		got := Sheet(c[0], c[1])
		shown, hash, hashed := strings.Cut(got, "~")
		if wantShown, wantHash := strings.CutSuffix(c[2], "~"); shown != wantShown || hashed != wantHash || hashed && len(hash) != 12 {
			t.Errorf("%q revision %q is called %q, want %q", c[0], c[1], got, c[2])
		}
	}
	if Sheet("A-1", "") == Sheet("A", "1") || Sheet("a", "b") == Sheet("ab", "") || Sheet("a", "bc") == Sheet("ab", "c") {
		t.Error("two sheets have one name")
	}
}
