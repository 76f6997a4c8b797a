package wirelist_test

import (
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"

	"contralay/model/file"
	"contralay/model/wirelist"
	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/value"
)

// What a screen shows of a list: with headings, without, and with a recipe.
func TestColumns(t *testing.T) {
	show := func(text string, r *name.Recipe) string {
		tables, err := value.Read("l.csv", []byte(text), value.Limits{})
		if err != nil {
			t.Fatal(err)
		}
		var lines []string
		for _, c := range shape.Columns(tables[0], r) {
			lines = append(lines, fmt.Sprintf("%s %s = %s %v", c.Place, c.Key(), c.Field, c.Samples))
		}
		return strings.Join(lines, "\n")
	}
	for _, c := range []struct {
		text string
		r    *name.Recipe
		want string
	}{
		{"Pin,Signal,Bay\nA,x,1\nB,y,\n", nil,
			"l.csv, row 1, column A Pin = pin [A B]\nl.csv, row 1, column B Signal = signal [x y]\nl.csv, row 1, column C Bay = keep [1]"},
		{"Pin,Signal,Bay\nA,x,1\n", &name.Recipe{Columns: map[string]name.Field{"bay": name.FieldIgnore}},
			"l.csv, row 1, column A Pin = pin [A]\nl.csv, row 1, column B Signal = signal [x]\nl.csv, row 1, column C Bay = ignore [1]"},
		{"A,x\nB,y\nC,z\nD,u\n", nil, "l.csv, column A #1 = keep [A B C]\nl.csv, column B #2 = keep [x y z]"},
		{"A,x\nB,y\n", &name.Recipe{Columns: map[string]name.Field{"#1": name.FieldPin, "#2": name.FieldSignal}},
			"l.csv, column A #1 = pin [A B]\nl.csv, column B #2 = signal [x y]"},
	} {
		if got := show(c.text, c.r); got != c.want {
			t.Errorf("%q:\n%s\nwant\n%s", c.text, got, c.want)
		}
	}
}

// A recipe that says nothing of columns, as a screen has before a person says anything,
// changes nothing.
func TestEmptyRecipe(t *testing.T) {
	entries, err := os.ReadDir(lists)
	if err != nil {
		t.Fatal(err)
	}
	for _, e := range entries {
		path := filepath.Join(lists, e.Name())
		if strings.HasSuffix(path, ".toml") || strings.HasSuffix(path, ".report") {
			continue
		}
		data, err := os.ReadFile(path)
		if err != nil {
			t.Fatal(err)
		}
		tables, err := value.Read(filepath.Base(path), data, value.Limits{})
		if err != nil {
			t.Fatal(err)
		}
		a, ra, errA := wirelist.Import(tables, draft.Options{})
		b, rb, errB := wirelist.Import(tables, draft.Options{Recipe: &name.Recipe{}})
		if fmt.Sprint(errA) != fmt.Sprint(errB) ||
			string(file.Encode(file.Document{Harness: a})) != string(file.Encode(file.Document{Harness: b})) || cmp.Diff(ra, rb) != "" {
			t.Errorf("%s: an empty recipe makes another harness or report", path)
		}
		for _, table := range tables {
			if d := cmp.Diff(shape.Columns(table, nil), shape.Columns(table, &name.Recipe{})); d != "" {
				t.Errorf("%s: %s", path, d)
			}
		}
	}
}

// A recipe that is written is read as the same.
func TestRecipeRoundTrip(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		word := func(all ...string) string { return rapid.SampledFrom(all).Draw(t, "word") }
		r := name.Recipe{
			HeaderRow: rapid.IntRange(0, 99).Draw(t, "row"), Unit: value.LengthUnit(word("", "mm", "cm", "m", "in", "ft")),
			Mark: value.Mark(rapid.IntRange(0, 2).Draw(t, "mark")), Language: word("", "en", "de", "fr", "es", "it"),
			Spec: word("", "AS22759/32"), Metric: word("", "ISO 6722 thin"), Connector: word("", "P1", `a "b" \ c`),
		}
		if rapid.Bool().Draw(t, "columns") {
			r.Columns = rapid.MapOf(rapid.StringMatching(`[^#\x00]{0,12}|#[1-9]`), rapid.SampledFrom(name.Fields())).Draw(t, "columns")
		}
		again, err := name.DecodeRecipe("r", r.Encode())
		if err != nil || string(again.Encode()) != string(r.Encode()) || len(again.Columns) != len(r.Columns) {
			t.Fatalf("%v\n%s\n%s", err, r.Encode(), again.Encode())
		}
	})
}
