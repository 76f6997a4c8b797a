package main

import (
	"bytes"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"

	"contralay/calc"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/file"
	"contralay/model/unit"
	"contralay/ui/paper"
	"contralay/ui/paper/figure"
	"contralay/ui/question"
)

func newFile(name string) (int, error) {
	if _, err := os.Lstat(name); err == nil {
		return usage, fmt.Errorf("%s exists already and was not changed", name)
	} else if !errors.Is(err, fs.ErrNotExist) {
		return usage, err
	}
	d := file.Document{Harness: model.Harness{Head: model.Head{
		Name: model.Some(""), Number: model.Some(""), Revision: model.Some("A"), SupplyV: model.Some[unit.Volt](13.8),
		Units: model.Some("mm"),
	}}, Head: "# A wiring harness. Values are mm, A, V, degrees C and g.\n"}
	return ok, file.Save(name, d)
}

func read(name string, w world) (file.Document, error) {
	if name == "-" {
		return file.Read(w.in, "standard input")
	}
	return file.Load(name)
}

// shopNames are the files that are merged over the embedded catalogue, in this order: the
// shop's own from the configuration folder, its corrections, and --catalogue.
func shopNames(o options, w world) []string {
	var names []string
	if dir := configDir(w); dir != "" {
		for _, name := range []string{"catalogue.toml", correctionsName} {
			own := filepath.Join(dir, "contralay", name)
			if _, err := os.Lstat(own); err == nil { // a link that leads nowhere is told, not passed over
				names = append(names, own)
			}
		}
	}
	if o.catalogue != "" {
		names = append(names, o.catalogue)
	}
	return names
}

// entries merges the embedded catalogue and the files of shopNames; later ones win.
func entries(o options, w world) (*catalogue.Catalogue, error) {
	cat, err := catalogue.Default()
	if err != nil {
		return nil, err
	}
	for _, n := range shopNames(o, w) {
		text, err := file.Bytes(n, "the catalogue", catalogue.MostBytes)
		if err != nil {
			return nil, err
		}
		shop, err := catalogue.Read(bytes.NewReader(text), n)
		if err != nil {
			return nil, err
		}
		cat = catalogue.Merge(cat, shop)
	}
	return cat, nil
}

// configDir is the user's configuration folder by the XDG base directory rules.
func configDir(w world) string {
	if d := w.env("XDG_CONFIG_HOME"); filepath.IsAbs(d) {
		return d
	}
	d, err := os.UserConfigDir()
	if err != nil {
		return ""
	}
	return d
}

func sheetOf(name string, o options, w world) (*sheet.Sheet, error) {
	d, err := read(name, w)
	if err != nil {
		return nil, err
	}
	return completed(d, o, w)
}

// sheetAsTicked is the sheet with what was ticked since the file was saved.
func sheetAsTicked(name string, o options, w world) (*sheet.Sheet, error) {
	d, err := readTicked(name, w)
	if err != nil {
		return nil, err
	}
	return completed(d, o, w)
}

func completed(d file.Document, o options, w world) (*sheet.Sheet, error) {
	cat, err := entries(o, w)
	if err != nil {
		return nil, err
	}
	return slowly(w, "working out lay-ups", func() *sheet.Sheet { return calc.Complete(&d.Harness, cat, nil) }), nil
}

func check(name string, o options, w world) (int, error) {
	s, err := sheetAsTicked(name, o, w)
	if err != nil {
		return usage, err
	}
	if err := print(w.out, paper.Check(s)); err != nil {
		return usage, err
	}
	for _, g := range s.Snags {
		if g.Level == sheet.Stop {
			return stopped, nil
		}
	}
	return ok, nil
}

func figuresOf(name string, o options, w world) (int, error) {
	s, err := sheetAsTicked(name, o, w)
	if err != nil {
		return usage, err
	}
	b, err := figure.All(s)
	if err != nil {
		return usage, err
	}
	return ok, printJSON(w.out, b)
}

func planOf(args []string, o options, w world) (int, error) {
	if len(args) == 0 {
		return usage, misuse{"plan needs sizes, each with its quantity first: 32x22 4x20 2x2.9mm (contralay --help)"}
	}
	cat, err := entries(o, w)
	if err != nil {
		return usage, err
	}
	q, err := question.Read(args, question.Terms{Ratio: unit.Ratio(o.ratio), Spares: o.spares, Centres: o.centres, Centre: o.centre,
		Layers: o.layers, Effort: o.effort}, cat)
	if err != nil {
		return usage, misuse{err.Error()}
	}
	a := slowly(w, "working out lay-ups", q.Answer)
	if o.json {
		b, err := a.JSON()
		if err != nil {
			return usage, err
		}
		return ok, printJSON(w.out, b)
	}
	if err := print(w.out, a.Text()); err != nil { // the answer first: what one more costs takes longer
		return usage, err
	}
	text := slowly(w, "working out one more and one fewer", func() string { return q.Strip(o.ascii) })
	return ok, print(w.out, text)
}
