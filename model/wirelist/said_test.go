package wirelist_test

import (
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"contralay/model/catalogue"
	"contralay/model/shorttest"
	"contralay/model/wirelist"
	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

// Whatever a person says about any table of any list: the harness that comes of it holds, no wire comes of a table or a
// row that is left out, and the recipe that keeps it reads as the same.
func TestWhateverIsSaid(t *testing.T) {
	var paths []string
	for _, pattern := range []string{"*.md", "*.csv", "*.tsv", "*.xlsx", "*.ods", "kinds/*.md", "kinds/*.csv", "kinds/*.xlsx"} {
		more, err := filepath.Glob(filepath.Join(lists, pattern))
		if err != nil {
			t.Fatal(err)
		}
		paths = append(paths, more...)
	}
	if len(paths) < 30 {
		t.Fatalf("%d lists", len(paths))
	}
	cat, err := catalogue.Default()
	if err != nil {
		t.Fatal(err)
	}
	for _, path := range shorttest.Some(paths) {
		data, err := os.ReadFile(path)
		if err != nil {
			t.Fatal(err)
		}
		tables, err := table.Read(filepath.Base(path), data, table.Limits{})
		if err != nil {
			t.Fatal(err)
		}
		all := wirelist.Tables(tables, nil)
		for i := range all {
			for _, s := range things(&all[i]) {
				saidOnce(t, path, tables, &all[i], s, draft.Options{Catalogue: cat}, shared(all, i))
			}
		}
	}
}

// shared reports whether another table stands beside a table, on the same rows.
func shared(all []wirelist.Found, i int) bool {
	for k, o := range all {
		if k != i && o.Place.Sheet == all[i].Place.Sheet && slices.ContainsFunc(o.All, func(r table.Row) bool {
			return slices.ContainsFunc(all[i].All, func(own table.Row) bool { return own.Line == r.Line })
		}) {
			return true
		}
	}
	return false
}

// things are what can be said about a table, one at a time.
func things(f *wirelist.Found) []name.TableSaid {
	all := []name.TableSaid{{LeftOut: true}, {NoHeading: true}, {GoesOn: true}, {Connector: "X77"}}
	for _, called := range f.Names {
		all = append(all, name.TableSaid{Reading: called})
	}
	for _, r := range f.All[:min(len(f.All), 3)] {
		if text := shape.RowText(r.Cells); text != "" {
			all = append(all, name.TableSaid{Heading: text}, name.TableSaid{Rows: []string{text}})
		}
	}
	for i := range f.Reading().Block.Cols {
		for k, field := range name.Fields() {
			if (i+k)%11 == 0 { // some of each
				all = append(all, name.TableSaid{Columns: map[string]name.Field{f.ColumnKey(i): field}})
			}
		}
	}
	return all
}

// saidOnce imports a list with one thing said about one of its tables.
func saidOnce(t *testing.T, path string, tables []table.Table, f *wirelist.Found, s name.TableSaid, opt draft.Options, beside bool) {
	t.Helper()
	recipe := name.Recipe{}.Say(f.Key, f.Alike, func(to *name.TableSaid) {
		key := to.Key
		*to = s.Clone()
		to.Key = key
	})
	kept, err := name.DecodeRecipe("r", recipe.Encode())
	if err != nil {
		t.Fatalf("%s: %+v: %v", path, s, err)
	}
	opt.Recipe = &kept
	h, rep, err := wirelist.Import(tables, opt)
	if err != nil {
		return // it makes no harness, and says so
	}
	if faults := h.Check(); len(faults) > 0 {
		t.Errorf("%s: %+v: %v", path, s, faults[0])
	}
	out := map[table.Place]bool{}
	for _, r := range f.All {
		if !beside && (s.LeftOut || slices.Contains(s.Rows, shape.RowText(r.Cells))) {
			at := f.Place
			at.Row = r.Line
			out[at] = true
		}
	}
	for id, places := range rep.Rows {
		for _, at := range places {
			if at.Column = ""; out[at] {
				t.Errorf("%s: wire %s comes of row %d, which is left out", path, id, at.Row)
			}
		}
	}
}

// A size of all wires below the heading of one lead is not said of the others, not even in their notes.
func TestSizeOfOneSection(t *testing.T) {
	const list = "# Leads\n\n### Paddle to mast\n\n| Signal | X1 | X2 | Colour |\n|---|---|---|---|\n| CW | 1 | 2 | white |\n" +
		"| CCW | 2 | 1 | black |\n\n### Mast to motor\n\nAll 20 AWG, silicone.\n\n| Signal | X3 | X4 | Colour |\n|---|---|---|---|\n" +
		"| A+ | 1 | 1 | brown |\n| A- | 2 | 3 | white |\n"
	tables, err := table.Read("leads.md", []byte(list), table.Limits{})
	if err != nil {
		t.Fatal(err)
	}
	h, rep, err := wirelist.Import(tables, draft.Options{})
	if err != nil || len(h.Wires) != 4 {
		t.Fatalf("%v %+v", err, h.Wires)
	}
	for k, want := range []string{"", "", "20", "20"} {
		if w := h.Wires[k]; w.Size != want || strings.Contains(w.Note.V, "20") {
			t.Errorf("%s: %q, note %q, want %q\n%s", w.ID, w.Size, w.Note.V, want, strings.Join(rep.Full(), "\n"))
		}
	}
}
