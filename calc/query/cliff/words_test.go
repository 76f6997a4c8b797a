package cliff

import (
	"fmt"
	"strings"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
)

// Numbers in order, and one or several, in words.
func TestNumbersInWords(t *testing.T) {
	for n, want := range map[int]string{1: "1st", 2: "2nd", 3: "3rd", 4: "4th", 10: "10th", 11: "11th", 12: "12th", 13: "13th",
		21: "21st",
		22: "22nd", 23: "23rd", 101: "101st", 111: "111th", 112: "112th", 113: "113th", 121: "121st"} {
		if got := (&Strip{Ask: Ask{What: Wires}}).nth(n); got != want {
			t.Errorf("%d is the %s", n, got)
		}
		if got := (&Strip{Ask: Ask{What: Spares}}).nth(n); got != want+" spare" {
			t.Errorf("%d is the %s", n, got)
		}
	}
	for _, c := range [][2]string{{plural(1, "filler", "fillers"), "1 filler"}, {plural(0, "filler", "fillers"), "0 fillers"},
		{plural(2, "filler", "fillers"), "2 fillers"}, {isAre(1), "is"}, {isAre(0), "are"}, {isAre(2), "are"},
		{(&Strip{Ask: Ask{What: Spares}}).count(1), "1 spare"}, {(&Strip{Ask: Ask{What: Spares}}).count(3), "3 spares"},
		{(&Strip{Ask: Ask{What: Wires, Size: "22"}}).count(1), "1 wire of size 22"},
		{(&Strip{Ask: Ask{What: Wires, Size: "22"}}).count(3), "3 wires of size 22"},
		{fmt.Sprint(near(3, 5), near(5, 3), near(4, 4)), "2 2 0"}} {
		if c[0] != c[1] {
			t.Errorf("%q, want %q", c[0], c[1])
		}
	}
}

// Why no spare can be added is told end by end: what lacks, and where.
func TestNoSpareBecause(t *testing.T) {
	loom := func(p, q string, wires string) string {
		return "format = 1\n[[termination]]\nid = \"P\"\n" + p + "\n[[termination]]\nid = \"Q\"\n" + q + "\n" + wires +
			"[[branch]]\nid = \"T\"\nfrom = \"P\"\nto = \"Q\"\nlength_mm = 300.0\n"
	}
	wire := "[[wire]]\nid = \"1\"\nfrom = \"P:1\"\nto = \"Q:1\"\nspec = \"AS22759/32\"\nsize = \"22\"\n"
	two, full := "cavities = [\"1\", \"2\"]", "cavities = [\"1\"]"
	small := "cavities = [\"1\", \"2\"]\ncontacts = { \"20\" = [\"1\"], \"8\" = [\"2\"] }"
	for _, c := range []struct{ name, text, want string }{
		{"both have room", loom(two, two, wire), ""},
		{"full at the from end", loom(full, two, wire), "No spare can be added: no cavity is free at the P end"},
		{"full at the to end", loom(two, full, wire), "No spare can be added: no cavity is free at the Q end"},
		{"a contact that is too large", loom(two, small, wire), "No spare can be added: no free cavity at the Q end takes size 22"},
		{"nothing to be like", loom(two, two, strings.Replace(wire, "AS22759/32", "own", 1)),
			"No single wire of a known size runs here: there is nothing a spare could be like"},
	} {
		s := calctest.Built(t, c.text)
		s = calc.Complete(s.H, s.Cat, s)
		a, why := OfSpares(s, 0)
		if why != c.want {
			t.Errorf("%s: %q, want %q", c.name, why, c.want)
		}
		if c.want == "" && (a.Most-a.Now != 1 || a.What != Spares || a.Now != 0) {
			t.Errorf("%s: from %d to %d", c.name, a.Now, a.Most)
		}
	}
}
