package catalogue

import (
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"contralay/model/typedtest"
)

// kinds are the kinds of entry as the table of the README names them.
var kinds = []struct{ prefix, name string }{{"wire ", "wire"}, {"tube ", "tube"}, {"boot ", "boots"}, {"contact ", "contacts"},
	{"insert ", "inserts"}, {"splice ", "splices"}, {"device ", "devices"}}

// standingOf is the column of a figure: read or quoted only where the catalogue calls it published
// and the second typing says so, too.
func standingOf(x cell) int {
	switch {
	case x.standing == Published && x.want.how == typedtest.Read:
		return 0
	case x.standing == Published && x.want.how == typedtest.SecondHand:
		return 1
	case x.want.how == typedtest.Computed:
		return 2
	case x.standing == Practice:
		return 3
	}
	return 4
}

// TestReadmeStandings makes the table of the README, and holds it to the catalogue: with -update
// it is written anew.
func TestReadmeStandings(t *testing.T) {
	var b strings.Builder
	b.WriteString("| | read in its document | quoted second hand | worked out | practice | memory | all |\n|---|---|---|---|---|---|---|\n")
	var all [6]int
	cells := cellsOf(mustDefault(t))
	line := func(name string, n [6]int) {
		fmt.Fprintf(&b, "| %s |", name)
		for _, v := range n {
			fmt.Fprintf(&b, " %d |", v)
		}
		b.WriteByte('\n')
	}
	for _, kind := range kinds {
		var n [6]int
		for entry, of := range cells {
			if !strings.HasPrefix(entry, kind.prefix) {
				continue
			}
			for _, x := range of {
				if x.got == 0 || strings.Contains(x.key, ", as ") { // not given; a second opinion
					continue
				}
				n[standingOf(x)]++
				n[5]++
			}
		}
		for k := range n {
			all[k] += n[k]
		}
		line(kind.name, n)
	}
	line("all", all)
	path := filepath.Join("..", "..", "README.md")
	was, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	const begin, end = "<!-- standings -->\n", "<!-- /standings -->\n"
	before, rest, ok := strings.Cut(string(was), begin)
	table, after, ok2 := strings.Cut(rest, end)
	switch {
	case !ok || !ok2:
		t.Fatalf("%s has no place for the table between %q and %q", path, begin, end)
	case table == b.String():
	case *update:
		if err := os.WriteFile(path, []byte(before+begin+b.String()+end+after), 0o644); err != nil {
			t.Fatal(err)
		}
	default:
		t.Errorf("the table of the README is stale: go test ./model/catalogue -update\n%s", b.String())
	}
}
