package over_test

import (
	"fmt"
	"testing"

	"contralay/calc/calctest"
	"contralay/calc/phase/over"
	"contralay/calc/phase/wires"
)

// Two capped spares end in two branches: each stands out of its own alone, whichever is written first.
func TestBulgesOfTheirOwnBranch(t *testing.T) {
	for _, caps := range [][2]string{{"J", "K"}, {"K", "J"}} {
		text := "format = 1\n[[breakout]]\nid = \"J\"\n[[breakout]]\nid = \"K\"\n[[termination]]\nid = \"P\"\n[[termination]]\nid = \"Q\"\n"
		for k, w := range []string{"from = \"P:1\"\nto = \"Q:1\"\n", "from = \"P:2\"\ncapped_at = \"" + caps[0] + "\"\nrole = \"spare\"\n",
			"from = \"P:3\"\ncapped_at = \"" + caps[1] + "\"\nrole = \"spare\"\n"} {
			text += fmt.Sprintf("[[wire]]\nid = \"%d\"\n%sspec = \"AS22759/32\"\nsize = \"22\"\n", k, w)
		}
		for _, e := range [][3]string{{"T", "P", "J"}, {"M", "J", "K"}, {"L", "K", "Q"}} {
			text += fmt.Sprintf("[[branch]]\nid = %q\nfrom = %q\nto = %q\nlength_mm = 400.0\n", e[0], e[1], e[2])
		}
		s := calctest.Built(t, text)
		for i, want := range []int{1, 1, 0} {
			if got := len(over.Bulges(s, i)); got != want {
				t.Errorf("capped at %v: %d stand out of %s, want %d", caps, got, s.H.Branches[i].ID, want)
			}
		}
	}
}

// What a transition has to pass on a leg with a splice is the leg and what the splice stands out by: the sleeve of the part
// over the wire that it lies on.
func TestTailsPassASplice(t *testing.T) {
	const text = "format = 1\n[[breakout]]\nid = \"J\"\n[[splice]]\nid = \"S\"\nat = \"J\"\ntoward = \"L\"\n" +
		"offset_mm = 100.0\npart = \"AS81824/1-2\"\n" +
		"[[termination]]\nid = \"P\"\n[[termination]]\nid = \"Q\"\n" +
		"[[wire]]\nid = \"a\"\nfrom = \"P:1\"\nto = \"S\"\nspec = \"AS22759/32\"\nsize = \"20\"\n" +
		"[[wire]]\nid = \"b\"\nfrom = \"S\"\nto = \"Q:1\"\nspec = \"AS22759/32\"\nsize = \"20\"\n" +
		"[[branch]]\nid = \"T\"\nfrom = \"P\"\nto = \"J\"\nlength_mm = 400.0\n" +
		"[[branch]]\nid = \"L\"\nfrom = \"J\"\nto = \"Q\"\nlength_mm = 400.0\n"
	s := calctest.Built(t, text)
	part, ok := s.Cat.Splice("AS81824/1-2")
	if !ok {
		t.Fatal("no such splice")
	}
	for _, k := range wires.Walked(s) {
		if s.H.Branches[k.Branch].ID != "L" {
			continue
		}
		got, _ := over.Tails(s, k)
		// One wire of 1.27 ± 0.051 mm, and the sleeve that takes its place.
		calctest.Near(t, "what it passes", float64(got), 0.051+float64(part.OverMM), 1e-6)
	}
}

// Splices stand out of the branches that they lie on, whichever is written first, also where one of them has no part.
func TestSplicesOfTheirOwnBranch(t *testing.T) {
	for _, on := range [][3]string{{"L", "M", "L"}, {"M", "L", "L"}} {
		text := "format = 1\n[[breakout]]\nid = \"J\"\n[[termination]]\nid = \"P\"\n[[termination]]\nid = \"Q\"\n" +
			"[[termination]]\nid = \"R\"\n"
		for k, b := range on {
			far := map[string]string{"L": "Q", "M": "R"}[b]
			text += fmt.Sprintf("[[splice]]\nid = \"S%d\"\nat = \"J\"\ntoward = %q\noffset_mm = %d.0\n", k, b, 60+40*k) +
				"part = \"AS81824/1-2\"\n"
			text += fmt.Sprintf("[[wire]]\nid = \"a%d\"\nfrom = \"P:%d\"\nto = \"S%d\"\nspec = \"AS22759/32\"\nsize = \"20\"\n", k, k, k) +
				fmt.Sprintf("[[wire]]\nid = \"b%d\"\nfrom = \"S%d\"\nto = \"%s:%d\"\nspec = \"AS22759/32\"\nsize = \"20\"\n", k, k, far, k)
		}
		for _, e := range [][3]string{{"T", "P", "J"}, {"L", "J", "Q"}, {"M", "J", "R"}} {
			text += fmt.Sprintf("[[branch]]\nid = %q\nfrom = %q\nto = %q\nlength_mm = 400.0\n", e[0], e[1], e[2])
		}
		s := calctest.Built(t, text)
		for i, want := range []int{0, 2, 1} {
			if got := len(over.Bulges(s, i)); got != want {
				t.Errorf("splices on %v: %d stand out of %s, want %d", on, got, s.H.Branches[i].ID, want)
			}
		}
	}
}
