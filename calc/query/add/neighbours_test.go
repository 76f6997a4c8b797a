package add

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"contralay/calc/calctest"
)

// Of six cavities in a row each set that is taken, and each number that is wanted: neighbours are found a second time as a run
// of letters in
// a line of signs; where there is none the first that are free, and where there are fewer nothing. What is given is given once.
func TestNeighboursOfAnySix(t *testing.T) {
	const names = "abcdef"
	for taken := range 1 << len(names) {
		line, text := "", "format = 1\n[[termination]]\nid = \"P\"\ncavities = [\"a\", \"b\", \"c\", \"d\", \"e\", \"f\"]\n"+
			"[[termination]]\nid = \"Q\"\n"
		for k := range len(names) {
			if taken>>k&1 == 0 {
				line += names[k : k+1]
				continue
			}
			line += "."
			text += fmt.Sprintf("[[wire]]\nid = \"%d\"\nfrom = \"P:%s\"\nto = \"Q:%d\"\nspec = \"AS22759/32\"\nsize = \"22\"\n",
				k, names[k:k+1], k)
		}
		s := calctest.Built(t, text+"[[branch]]\nid = \"T\"\nfrom = \"P\"\nto = \"Q\"\nlength_mm = 100.0\n")
		free := strings.ReplaceAll(line, ".", "")
		for n := 1; n <= 4; n++ {
			want, ok := "", len(free) >= n
			if ok {
				want = free[:n]
			}
			for from := 0; n > 1 && from+n <= len(line); from++ {
				if run := line[from : from+n]; !strings.Contains(run, ".") {
					want = run
					break
				}
			}
			m := newMaker(s)
			got, had := m.cavities(0, "AS22759/32", "22", n)
			if strings.Join(got, "") != want || had != ok {
				t.Fatalf("%s, %d wanted: %v, want %q", line, n, got, want)
			}
			if more, _ := m.cavities(0, "AS22759/32", "22", 1); len(more) > 0 && slices.Contains(got, more[0]) {
				t.Fatalf("%s: %v is given twice", line, more)
			}
		}
	}
}

// An end of which no cavity is known has as many as are wanted, numbered on past those that wires have.
func TestCavitiesNumberedOn(t *testing.T) {
	s := calctest.Built(t, "format = 1\n[[termination]]\nid = \"P\"\n[[termination]]\nid = \"Q\"\n"+
		"[[wire]]\nid = \"1\"\nfrom = \"P:2\"\nto = \"Q:1\"\nspec = \"AS22759/32\"\nsize = \"22\"\n"+
		"[[branch]]\nid = \"T\"\nfrom = \"P\"\nto = \"Q\"\nlength_mm = 100.0\n")
	m := newMaker(s)
	for _, want := range []string{"1 3", "4 5 6", "7"} {
		got, ok := m.cavities(0, "AS22759/32", "22", len(strings.Fields(want)))
		if !ok || strings.Join(got, " ") != want {
			t.Errorf("%v, want %s", got, want)
		}
	}
}
