package wirelist_test

import (
	"errors"
	"flag"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"contralay/model"
	"contralay/model/file"
	"contralay/model/wirelist"
	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/report"
	"contralay/model/wirelist/table"
)

var update = flag.Bool("update", false, "write the expected harness and report of each list anew")

const lists = "../../testdata/lists"

// Each list of testdata/lists gives the harness and the report beside it.
func TestLists(t *testing.T) {
	entries, err := os.ReadDir(lists)
	if err != nil {
		t.Fatal(err)
	}
	n := 0
	for _, e := range entries {
		name := e.Name()
		if e.IsDir() || strings.HasSuffix(name, ".toml") || strings.HasSuffix(name, ".report") {
			continue
		}
		n++
		t.Run(name, func(t *testing.T) {
			h, report := imported(t, filepath.Join(lists, name))
			golden(t, name+".report", strings.Join(append(report.Lines(), "", strings.Join(report.Full()[len(report.Facts):], "\n")), "\n")+
				"\n")
			golden(t, name+".toml", string(file.Encode(file.Document{Harness: h})))
		})
	}
	if n < 12 {
		t.Errorf("%d lists, want 12 or more", n)
	}
}

// imported reads one list, with the recipe beside it where there is one, and holds
// the harness to what every harness must be.
func imported(t *testing.T, path string) (model.Harness, report.Report) {
	t.Helper()
	data, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	var opt draft.Options
	recipe, err := os.ReadFile(strings.TrimSuffix(path, filepath.Ext(path)) + ".recipe.toml")
	if err == nil {
		r, err := name.DecodeRecipe("recipe", recipe)
		if err != nil {
			t.Fatal(err)
		}
		opt.Recipe = &r
	} else if !errors.Is(err, os.ErrNotExist) {
		t.Fatal(err)
	}
	tables, err := table.Read(filepath.Base(path), data, table.Limits{})
	if err != nil {
		t.Fatal(err)
	}
	h, report, err := wirelist.Import(tables, opt)
	if err != nil {
		t.Fatal(err)
	}
	sound(t, h)
	return h, report
}

// sound: a harness passes its check, is written and loads again.
func sound(t interface {
	Helper()
	Errorf(string, ...any)
}, h model.Harness) {
	t.Helper()
	if f := h.Check(); len(f) > 0 {
		t.Errorf("the harness cannot be: %v", f)
	}
	text := file.Encode(file.Document{Harness: h})
	if _, err := file.Parse(text, "imported"); err != nil {
		t.Errorf("the harness does not load: %v\n%s", err, text)
	}
}

func golden(t *testing.T, name, got string) {
	t.Helper()
	path := filepath.Join(lists, name)
	if *update {
		if err := os.WriteFile(path, []byte(got), 0o644); err != nil {
			t.Fatal(err)
		}
		return
	}
	want, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	if d := cmp.Diff(string(want), got); d != "" {
		t.Errorf("%s (-want +got):\n%s", name, d)
	}
}
