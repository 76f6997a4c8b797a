package wirelist_test

import (
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"contralay/model"
	"contralay/model/file"
	"contralay/model/wirelist"
	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/listtest"
	"contralay/model/wirelist/name"
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
			if d := cmp.Diff(listtest.Columns(table, nil), listtest.Columns(table, &name.Recipe{})); d != "" {
				t.Errorf("%s: %s", path, d)
			}
		}
	}
}

// A shop's own words of colours are read as it says, and kept as the list has them where no code says all of it.
func TestColoursOfAShop(t *testing.T) {
	r, err := name.DecodeRecipe("r", []byte("[colours]\nbordeaux = \"dark red\"\nKirsch = \"red\"\n"))
	if err != nil {
		t.Fatal(err)
	}
	if again, err := name.DecodeRecipe("r", r.Encode()); err != nil || !cmp.Equal(r, again) {
		t.Errorf("%v %v", again, err)
	}
	tables, err := table.Read("l.csv", []byte("Pin,Signal,Colour\n1,Horn,Bordeaux\n2,Lamp,kirsch/white\n3,Fan,blue\n"), table.Limits{})
	if err != nil {
		t.Fatal(err)
	}
	h, _, err := wirelist.Import(tables, draft.Options{Recipe: &r})
	if err != nil {
		t.Fatal(err)
	}
	if w := h.Wires; w[0].Colour.V != "2" || w[0].Shade.V != model.ShadeDark || w[0].Note.V != "colour: Bordeaux" ||
		w[1].Colour.V != "29" ||
		w[2].Colour.V != "6" {
		t.Errorf("%+v", w)
	}
}
