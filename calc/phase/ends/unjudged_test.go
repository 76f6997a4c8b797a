package ends_test

import (
	"strings"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/sheet"
)

// A connector that does not give its gender or its contact sizes is named as not judged, once;
// one that gives them, a flying lead and a ring terminal are not.
func TestNotJudgedIsNamed(t *testing.T) {
	for _, c := range []struct{ name, end, want string }{
		{"an insert with its gender", "insert = \"10-35\"\ngender = \"pin\"\n", ""},
		{"an insert without", "insert = \"10-35\"\n", "Its gender is not given"},
		{"its own cavities with their contacts", "cavities = [\"1\", \"2\"]\ncontacts = { \"20\" = [\"1\", \"2\"] }\n", ""},
		{"its own cavities without", "cavities = [\"1\", \"2\"]\n", "Its contact sizes and its seal are not given: whether the wires fit"},
		{"its own cavities with their seal alone", "cavities = [\"1\", \"2\"]\nseal_mm = [1.0, 2.0]\n", "Its contact sizes are not given"},
		{"the contacts of one", "cavities = [\"1\", \"2\"]\ncontacts = { \"20\" = [\"1\"] }\n", "The contact sizes of 1 of its 2 wired"},
		{"of a cavity that is not wired", "cavities = [\"1\", \"2\", \"3\"]\ncontacts = { \"20\" = [\"1\", \"2\"] }\n", ""},
		{"a connector by its mount", "mount = \"flange\"\n", "Its contact sizes and its seal are not given"},
		{"a flying lead", "", ""},
		{"an insert in no catalogue", "insert = \"none-such\"\n", ""}, // said as that
	} {
		s := calctest.Built(t, "format = 1\n[[termination]]\nid = \"A\"\n"+c.end+"[[termination]]\nid = \"Z\"\n"+
			"[[wire]]\nid = \"1\"\nfrom = \"A:1\"\nto = \"Z:1\"\nspec = \"AS22759/32\"\nsize = \"22\"\n"+
			"[[wire]]\nid = \"2\"\nfrom = \"A:2\"\nto = \"Z:2\"\nspec = \"AS22759/32\"\nsize = \"22\"\n"+
			"[[branch]]\nid = \"T\"\nfrom = \"A\"\nto = \"Z\"\nlength_mm = 300\n")
		var said []string
		for _, g := range s.Snags {
			if g.Rule == "connector.unknown" {
				said = append(said, g.Says)
				if g.Level != sheet.Note || g.Where != "A" {
					t.Errorf("%s: %+v", c.name, g)
				}
			}
		}
		if len(said) != calctest.Once(c.want != "") || c.want != "" && !strings.HasPrefix(said[0], c.want) {
			t.Errorf("%s: %q", c.name, said)
		}
		again := calc.Build(s.H, s.Base, s) // what is taken over says the same
		if a, b := len(calctest.SaidOf(s, "connector.unknown")), len(calctest.SaidOf(again, "connector.unknown")); a != b {
			t.Errorf("%s: %d, then %d", c.name, a, b)
		}
	}
	ring := calctest.Built(t, "format = 1\n[[termination]]\nid = \"G\"\ncavities = [\"1\"]\n[[termination]]\nid = \"Z\"\n"+
		"[[wire]]\nid = \"1\"\nfrom = \"G:1\"\nto = \"Z:1\"\nspec = \"AS22759/32\"\nsize = \"22\"\n"+
		"[[branch]]\nid = \"T\"\nfrom = \"G\"\nto = \"Z\"\nlength_mm = 300\n")
	if g, ok := calctest.Snag(ring, "connector.unknown", ""); ok {
		t.Errorf("a ring terminal: %+v", g)
	}
	lines := 0
	for _, g := range sheet.Grouped(calctest.Laid(t, "feeds").Snags) {
		if g.Rule == "connector.unknown" {
			lines++
			if g.Count < 2 {
				t.Errorf("%+v", g)
			}
		}
	}
	if lines != 1 {
		t.Errorf("seven connectors without contact sizes are %d lines", lines)
	}
}
