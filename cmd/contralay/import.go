package main

import (
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"strings"

	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/compare"
	"contralay/model/file"
	"contralay/model/wirelist"
	"contralay/model/wirelist/draft"
	wirelistname "contralay/model/wirelist/name"
	"contralay/model/wirelist/report"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// importMemory is how much an import takes before it collects more often than gcPercent has it, in bytes: a list of 20,000 rows
// is read and saved in some 200 MB. One that needs more takes more.
const importMemory = 192 << 20

// importGCPercent has an import collect seldom, as what it reads grows until it is saved; more would cost more in pages than it saves.
const importGCPercent = 200

// A list of more than largeList bytes is read into largeRoom bytes of large pages, before more is asked for: what one of 20,000 rows
// takes until the second half of it is read (no source).
const (
	largeList = 128 << 10
	largeRoom = 160 << 20
)

// importLists makes a harness of wire lists and writes it to a new file; with --check of a
// harness that is there, the lists go into it as what an independent hand says.
func importLists(names []string, o options, w world) (int, error) {
	if len(names) == 0 {
		return usage, misuse{"import needs one LIST or more (contralay --help)"}
	}
	if o.explain {
		tables, err := tablesOf(names, w)
		if err != nil {
			return usage, err
		}
		r, err := recipeOf(o)
		if err != nil {
			return usage, err
		}
		return ok, print(w.out, strings.Join(onOneLine(wirelist.Explain(tables, r)), "\n")+"\n")
	}
	if (o.folder == "") == (o.against == "") {
		return usage,
			misuse{"import needs a file to write. Give -o FILE for a new harness, or --into FILE to attach the lists to a harness that " +
				"exists"}
	}
	if o.folder != "" {
		if _, err := os.Lstat(o.folder); err == nil {
			return usage, fmt.Errorf("%s exists already and was not changed", o.folder)
		} else if !errors.Is(err, fs.ErrNotExist) {
			return usage, err
		}
	}
	w.takes(importGCPercent, importMemory)
	cat, err := entries(o, w)
	if err != nil {
		return usage, err
	}
	h, rep, err := readLists(names, o, cat, w)
	if err != nil {
		return usage, err
	}
	lines := rep.Lines()
	if o.full {
		lines = rep.Full()
	}
	if o.against != "" {
		h, _ = compare.Bare(h, rep)
		says, err := attach(h, o.against, strings.Join(base(names), ", "))
		if err != nil {
			return usage, err
		}
		return ok, print(w.out, strings.Join(append(onOneLine(lines), says...), "\n")+"\n")
	}
	d := file.Document{Harness: h, Head: "# Made from " + strings.Join(base(names), ", ") + ".\n"}
	if err := file.Save(o.folder, d); err != nil {
		return usage, err
	}
	return ok, print(w.out, strings.Join(onOneLine(lines), "\n")+"\n")
}

func base(names []string) []string {
	var out []string
	for _, n := range names {
		out = append(out, called(n))
	}
	return out
}

// readLists reads lists of any kind into one harness: our own TOML alone as it is, all
// others by what their columns mean.
func readLists(names []string, o options, cat *catalogue.Catalogue, w world) (model.Harness, report.Report, error) {
	if len(names) == 1 && isHarness(names[0]) {
		d, err := file.Load(names[0])
		if err != nil {
			return model.Harness{}, report.Report{}, err
		}
		return d.Harness,
			report.Report{Facts: []string{fmt.Sprintf("%s is a harness already: %d terminations, %d wires", called(names[0]),
				len(d.Harness.Terminations), len(d.Harness.Wires))}}, nil
	}
	tables, err := tablesOf(names, w)
	if err != nil {
		return model.Harness{}, report.Report{}, err
	}
	return importTables(tables, names, o, cat)
}

// tablesOf is the tables of lists.
func tablesOf(names []string, w world) ([]table.Table, error) {
	var tables []table.Table
	large := 0
	for _, name := range names {
		if isHarness(name) {
			return nil, fmt.Errorf("%s is a harness, not a list: import it by itself", name)
		}
		data, err := listBytes(name, w)
		if err != nil {
			return nil, err
		}
		if large = large + len(data); large > largeList && w.large != nil {
			w.large(largeRoom)
			w.large = nil
		}
		ts, err := table.Read(filepath.Base(name), data, table.Limits{})
		if err != nil {
			return nil, err
		}
		tables = append(tables, ts...)
	}
	return tables, nil
}

// importTables makes one harness of the tables of lists.
func importTables(tables []table.Table, names []string, o options, cat *catalogue.Catalogue) (model.Harness, report.Report, error) {
	opt := draft.Options{NoEnds: o.noEnds, Unit: value.LengthUnit(o.unit), Spec: o.spec, Sheets: o.sheets, Catalogue: cat,
		Name: strings.TrimSuffix(filepath.Base(names[0]), filepath.Ext(names[0]))}
	r, err := recipeOf(o)
	if err != nil {
		return model.Harness{}, report.Report{}, err
	}
	opt.Recipe = r
	return wirelist.Import(tables, opt)
}

// recipeOf is the recipe that was asked for; nil where none was.
func recipeOf(o options) (*wirelistname.Recipe, error) {
	if o.recipe == "" {
		return nil, nil
	}
	text, err := file.Bytes(o.recipe, "the recipe", mostRecipe)
	if err != nil {
		return nil, err
	}
	r, err := wirelistname.DecodeRecipe(o.recipe, text)
	return &r, err
}

func isHarness(name string) bool { return strings.EqualFold(filepath.Ext(name), ".toml") }

// mostRecipe is the size of a recipe that is still read, in bytes: one has some lines.
const mostRecipe = 1 << 20

// listBytes reads a list, and no more of it than a list may be; of standard input one byte more
// than that, for its reader to refuse.
func listBytes(name string, w world) ([]byte, error) {
	most := int64(table.DefaultLimits().FileBytes)
	if name == "-" {
		return io.ReadAll(io.LimitReader(w.in, most+1))
	}
	return file.Bytes(name, "the list", most)
}

// attach puts what lists say of what is joined into a harness that is there.
func attach(list model.Harness, name, from string) ([]string, error) {
	d, err := file.Load(name)
	if err != nil {
		return nil, err
	}
	nets := compare.Nets(list, d.Harness)
	if len(nets) == 0 {
		return nil, fmt.Errorf("the lists join nothing that %s has, so nothing was written", name)
	}
	strange, _ := compare.Unheld(list, d.Harness)
	if len(strange) > 0 {
		return nil, fmt.Errorf("nothing was written, because the lists name what %s does not have: %s. Use its id or name from the "+
			"harness, or leave it out", name, strings.Join(strange, ", "))
	}
	d.Harness.Listed = nets
	d.Harness.Head.ListedFrom = model.Some(from)
	if err := file.Save(name, d); err != nil {
		return nil, err
	}
	says := []string{fmt.Sprintf("%d nets of the lists are now in %s. Where the harness joins differently, the sheet says stop",
		len(nets), shown(name))}
	return append(says, compare.NotHeld(list, d.Harness)...), nil
}

// compareTwo says what changed from one list or harness to another.
func compareTwo(names []string, o options, w world) (int, error) {
	if len(names) != 2 {
		return usage, misuse{"compare needs two lists or harnesses (contralay --help)"}
	}
	if names[0] == "-" && names[1] == "-" {
		return usage, misuse{"only one of the two lists can be -, the standard input"}
	}
	cat, err := entries(o, w)
	if err != nil {
		return usage, err
	}
	var l [2]compare.List
	var odd []string // what was left out of either before it was compared
	for k, n := range names {
		if l[k], err = listToCompare(n, o, cat, w); err != nil {
			return usage, err
		}
		for _, f := range l[k].Report.Findings {
			if f.Rule == report.Control {
				odd = append(odd, f.String())
			}
		}
	}
	r := compare.Between(l[0], l[1])
	if l[0].Whole && l[1].Whole && !r.Nothing {
		r.Differences = append(r.Differences, compare.BesideWires(l[0].Harness, l[1].Harness, r.Differences)...)
	}
	code := ok
	switch {
	case r.Nothing:
		code = usage
	case len(r.Differences) > 0:
		code = stopped
	}
	text := []byte(r.Text())
	if o.json {
		if text, err = r.JSON(); err != nil {
			return usage, err
		}
		for _, says := range odd {
			tell(w, says)
		}
		return code, print(w.out, string(text))
	}
	// What was matched stays the last line.
	for _, says := range onOneLine(odd) {
		if err := print(w.out, says+"\n"); err != nil {
			return usage, err
		}
	}
	return code, print(w.out, string(text))
}

// listToCompare reads one of two lists. One that holds nothing is a list too, and so is one whose rows
// name no cavity and no end: its wires are known by their ids or signals.
func listToCompare(name string, o options, cat *catalogue.Catalogue, w world) (compare.List, error) {
	if isHarness(name) {
		h, rep, err := readLists([]string{name}, o, cat, w)
		return compare.List{Harness: h, Report: rep, Whole: true}, err
	}
	tables, err := tablesOf([]string{name}, w)
	var h model.Harness
	var rep report.Report
	if err == nil {
		h, rep, err = importTables(tables, []string{name}, o, cat)
	}
	var empty *table.EmptyError
	if errors.As(err, &empty) {
		return compare.List{}, nil
	}
	if tables != nil && (err != nil || len(h.Wires) == 0) {
		o.noEnds = true
		if g, more, err := importTables(tables, []string{name}, o, cat); err == nil && len(g.Wires) > 0 {
			return compare.List{Harness: g, Report: more}, nil
		}
	}
	return compare.List{Harness: h, Report: rep}, err
}

// writeNew writes a file that is not there yet.
func writeNew(name string, text []byte) error { return file.WriteNew(name, text) }
