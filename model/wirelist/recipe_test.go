package wirelist_test

import (
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"contralay/model/file"
	"contralay/model/wirelist"
	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/reading"
	"contralay/model/wirelist/table"
)

// A recipe that says nothing of columns, as a screen has before a person says anything,
// changes nothing.
func TestEmptyRecipe(t *testing.T) {
	entries, err := os.ReadDir(lists)
	if err != nil {
		t.Fatal(err)
	}
	for _, e := range entries {
		path := filepath.Join(lists, e.Name())
		if e.IsDir() || strings.HasSuffix(path, ".toml") || strings.HasSuffix(path, ".report") {
			continue
		}
		data, err := os.ReadFile(path)
		if err != nil {
			t.Fatal(err)
		}
		tables, err := table.Read(filepath.Base(path), data, table.Limits{})
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
			if d := cmp.Diff(reading.Columns(table, nil), reading.Columns(table, &name.Recipe{})); d != "" {
				t.Errorf("%s: %s", path, d)
			}
		}
	}
}
