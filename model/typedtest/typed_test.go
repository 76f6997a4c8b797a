package typedtest

import (
	"strings"
	"testing"
)

// TestTables opens every table, and counts the cells that were read in a document or quoted from
// one: 400 at the least. Places of cavities on a face are not counted.
func TestTables(t *testing.T) {
	all := 0
	for _, name := range Names() {
		table := Must(t, name)
		n := table.Published()
		if name == "face" || name == "face_rim" {
			continue
		}
		t.Logf("%4d  %s: %s", n, name, table.Source)
		all += n
	}
	t.Logf("%d cells published, in %d tables", all, len(Names()))
	if all < 400 {
		t.Errorf("%d published cells, want 400 or more", all)
	}
}

// TestCounts holds the sizes of the tables that are known from their documents: 17 sizes of wire
// at 3 temperatures in AC 43.13-1B Table 11-9; 1 to 19 wires by 5 loads on the bundle chart of
// MIL-W-5088L, and the 20th at one; 9 sizes of contacts in MIL-DTL-38999N table IV that are named
// by the issue, with 8 coax and 8 twinax.
func TestCounts(t *testing.T) {
	count := func(name string, columns ...string) (n int) {
		table := Must(t, name)
		for _, r := range table.Rows {
			for _, c := range columns {
				if _, ok := table.Number(r, c); ok {
					n++
				}
			}
		}
		return n
	}
	for _, c := range []struct {
		name    string
		columns []string
		want    int
	}{
		{"table_11_9", []string{"105", "150", "200"}, 51},
		{"bundle_chart", []string{"40", "60", "80", "100"}, 4 * 19},
		{"bundle_chart", []string{"20"}, 21}, // and 20 wires, and 35 from memory
		{"contact_seal", []string{"seal_min_mm", "seal_max_mm"}, 2 * 10},
		{"grubbs", []string{"limit"}, 28}, // n from 3 to 30
	} {
		if got := count(c.name, c.columns...); got != c.want {
			t.Errorf("%s, columns %v: %d cells, want %d", c.name, c.columns, got, c.want)
		}
	}
}

func TestParseRefuses(t *testing.T) {
	const head = "# source: s\n# how: read\n# typed from: f\n"
	for _, c := range []struct{ name, text, want string }{
		{"no source", "# how: read\n# typed from: f\na,b\n1,2\n", "source, how and typed from"},
		{"how is not known", "# source: s\n# how: seen\n# typed from: f\na,b\n1,2\n", "source, how and typed from"},
		{"another line", "# sourec: s\n", "unknown line"},
		{"a row twice", head + "a,b\n1,2\n1,3\n", `row "1" stands twice`},
		{"a column twice", head + "a,b,b\n1,2,3\n", `column "b" stands twice`},
		{"a short row", head + "a,b\n1\n", "wrong number of fields"},
		{"nothing", head + "a,b\n", "no cells"},
	} {
		if _, err := parse("x", c.text); err == nil || !strings.Contains(err.Error(), c.want) {
			t.Errorf("%s: %v, want %q", c.name, err, c.want)
		}
	}
	table, err := parse("x", head+"a,b,c,d\n1,2.5 m,,word\n")
	if err != nil {
		t.Fatal(err)
	}
	if c, _ := table.Cell("1", "b"); c != (Cell{"2.5", Memory}) {
		t.Errorf("a marked cell is %v", c)
	}
	if _, ok := table.Cell("1", "c"); ok {
		t.Error("an empty cell is there")
	}
	if c, _ := table.Cell("1", "d"); c != (Cell{"word", Read}) || table.Published() != 1 {
		t.Errorf("a word is %v, published %d", c, table.Published())
	}
}
