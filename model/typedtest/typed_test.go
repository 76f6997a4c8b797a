package typedtest

import (
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"
)

// composed are the tables whose names a test puts together from the sheet and the class of a tube.
var composed = map[string]bool{"tube_04_class1": true, "tube_04_class2": true, "tube_04_class3": true, "tube_16": true}

// tests is the text of every test of the program.
func tests(t *testing.T) string {
	t.Helper()
	var b strings.Builder
	err := filepath.WalkDir(filepath.Join("..", ".."), func(path string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() || !strings.HasSuffix(path, "_test.go") || filepath.Base(path) == "typed_test.go" &&
			filepath.Base(filepath.Dir(path)) == "typedtest" {
			return err
		}
		text, err := os.ReadFile(path)
		b.Write(text)
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	return b.String()
}

// TestTables opens every table and counts its cells by how their source was seen. 400 at the least were read in a
// document or quoted from one, in tables that some test compares with the program; a table that none opens is
// counted apart. Places of cavities on a face are not counted.
func TestTables(t *testing.T) {
	text := tests(t)
	compared, apart := map[How]int{}, map[How]int{}
	var idle []string
	for _, name := range Names() {
		table := Must(t, name)
		if name == "face" || name == "face_rim" {
			continue
		}
		to := compared
		if !composed[name] && !strings.Contains(text, `"`+name+`"`) {
			to = apart
			idle = append(idle, name)
		}
		for _, c := range table.cells {
			to[c.How]++
		}
		t.Logf("%4d  %s: %s", table.Published(), name, table.Source)
	}
	published := compared[Read] + compared[SecondHand]
	t.Logf("%d cells published (%d read, %d quoted), %d of practice, %d of memory, %d computed, in %d tables that are compared",
		published, compared[Read], compared[SecondHand], compared[Practice], compared[Memory], compared[Computed],
		len(Names())-2-len(idle))
	t.Logf("%d more published, %d of memory or practice, in %d tables that nothing is compared with: %s", apart[Read]+apart[SecondHand],
		apart[Memory]+apart[Practice], len(idle), strings.Join(idle, ", "))
	if published < 400 {
		t.Errorf("%d published cells are compared, want 400 or more", published)
	}
	for name := range composed {
		if !slices.Contains(Names(), name) {
			t.Errorf("%s is no table", name)
		}
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
