package over_test

import (
	"fmt"
	"testing"

	"contralay/calc/calctest"
)

// TestTwinsByWhatIsKnown: two connectors of one insert, gender and key within an arm's length are a warning; where the
// gender or the key of one or both is not entered they may differ in it, and it is a note that says which; where they differ, or
// are further apart than 1,000 mm, nothing is said.
func TestTwinsByWhatIsKnown(t *testing.T) {
	for _, c := range []struct {
		a, b   string
		length int
		want   string
	}{
		{"gender = \"pin\"\nkey = \"N\"\n", "gender = \"pin\"\nkey = \"N\"\n", 999, "[warn Z]"},
		{"gender = \"pin\"\nkey = \"N\"\n", "gender = \"pin\"\nkey = \"N\"\n", 1001, "[]"},
		{"key = \"N\"\n", "key = \"N\"\n", 400, "[note Z]"},
		{"gender = \"pin\"\n", "gender = \"pin\"\n", 400, "[note Z]"},
		{"", "", 400, "[note Z]"},
		{"gender = \"pin\"\nkey = \"N\"\n", "key = \"N\"\n", 400, "[note Z]"},
		{"key = \"N\"\n", "gender = \"pin\"\nkey = \"N\"\n", 400, "[note Z]"},
		{"gender = \"pin\"\n", "key = \"N\"\n", 400, "[note Z]"},
		{"gender = \"pin\"\n", "gender = \"socket\"\nkey = \"N\"\n", 400, "[]"},
		{"key = \"A\"\n", "gender = \"socket\"\nkey = \"N\"\n", 400, "[]"},
		{"gender = \"pin\"\nkey = \"N\"\n", "gender = \"socket\"\nkey = \"N\"\n", 400, "[]"},
		{"gender = \"pin\"\nkey = \"N\"\n", "gender = \"pin\"\nkey = \"A\"\n", 400, "[]"},
	} {
		s := calctest.Built(t, "format = 1\n[[termination]]\nid = \"A\"\ninsert = \"8-35\"\n"+c.a+
			"[[termination]]\nid = \"Z\"\ninsert = \"8-35\"\n"+c.b+
			"[[wire]]\nid = \"w\"\nfrom = \"A:1\"\nto = \"Z:1\"\nspec = \"AS22759/32\"\nsize = \"22\"\n"+
			fmt.Sprintf("[[branch]]\nid = \"T\"\nfrom = \"A\"\nto = \"Z\"\nlength_mm = %d\n", c.length))
		if got := fmt.Sprint(calctest.SaidOf(s, "twins")); got != c.want {
			t.Errorf("%q and %q, %d mm apart: %s, want %s", c.a, c.b, c.length, got, c.want)
		}
	}
}

// TestTwinsSayWhatIsOpen: what is said of two connectors that may be swapped names what both have, and what is to be entered.
func TestTwinsSayWhatIsOpen(t *testing.T) {
	for _, c := range []struct{ a, b, want string }{
		{"gender = \"pin\"\nkey = \"N\"\n", "gender = \"pin\"\nkey = \"N\"\n",
			"It is like A, 400 mm from it along the harness: same insert, gender and key, so the two can be swapped. Give one of them " +
				"a different keying"},
		{"gender = \"pin\"\nkey = \"N\"\n", "key = \"N\"\n",
			"It is like A, 400 mm from it along the harness: same insert and key, so the two may be swapped. Enter the gender of both"},
		{"", "gender = \"pin\"\n",
			"It is like A, 400 mm from it along the harness: same insert, so the two may be swapped. Enter the gender and the key of both"},
	} {
		s := calctest.Built(t, "format = 1\n[[termination]]\nid = \"A\"\ninsert = \"8-35\"\n"+c.a+
			"[[termination]]\nid = \"Z\"\ninsert = \"8-35\"\n"+c.b+
			"[[wire]]\nid = \"w\"\nfrom = \"A:1\"\nto = \"Z:1\"\nspec = \"AS22759/32\"\nsize = \"22\"\n"+
			"[[branch]]\nid = \"T\"\nfrom = \"A\"\nto = \"Z\"\nlength_mm = 400\n")
		if g, ok := calctest.Snag(s, "twins", "Z"); !ok || g.Says != c.want {
			t.Errorf("%q and %q: %q, want %q", c.a, c.b, g.Says, c.want)
		}
	}
}

// Twins are found over a breakout as along one branch: 600 and 399 mm make less than an arm's length, 600 and 400 do not.
func TestTwinsOverABreakout(t *testing.T) {
	for leg, want := range map[int]string{399: "[warn Z]", 400: "[]"} {
		text := "format = 1\n[[breakout]]\nid = \"J\"\n"
		for _, id := range []string{"A", "Z"} {
			text += "[[termination]]\nid = \"" + id + "\"\ninsert = \"8-35\"\ngender = \"pin\"\nkey = \"N\"\n"
		}
		s := calctest.Built(t, text+"[[branch]]\nid = \"T\"\nfrom = \"A\"\nto = \"J\"\nlength_mm = 600\n"+
			fmt.Sprintf("[[branch]]\nid = \"L\"\nfrom = \"J\"\nto = \"Z\"\nlength_mm = %d\n", leg))
		if got := fmt.Sprint(calctest.SaidOf(s, "twins")); got != want {
			t.Errorf("%d mm: %s, want %s", leg, got, want)
		}
	}
}
