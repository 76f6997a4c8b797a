package main

import (
	"crypto/sha256"
	"fmt"
	"io"
	"path/filepath"
	"strings"

	"contralay/calc"
	calcsheet "contralay/calc/sheet"
	"contralay/model/file"
	"contralay/ui/paper"
	"contralay/ui/paper/filename"
)

// mostHarness is more than the loader takes of standard input, in bytes: it says so itself.
const mostHarness = 16 << 20

// textOf is the text of a harness's file, or of standard input.
func textOf(name string, w world) ([]byte, error) {
	if name == "-" {
		return io.ReadAll(io.LimitReader(w.in, mostHarness))
	}
	return file.Text(name)
}

// sheetFor writes the build sheet of a file, and its lists, into a folder.
func sheetFor(name string, o options, w world) (int, error) {
	if o.folder == "" {
		return usage, misuse{"sheet needs a folder to write to: contralay sheet FILE -o DIR"}
	}
	text, err := textOf(name, w)
	if err != nil {
		return usage, err
	}
	d, err := file.Parse(text, name)
	if err != nil {
		return usage, err
	}
	d, more := ticked(name, file.SumOf(text), d, w)
	cat, err := entries(o, w)
	if err != nil {
		return usage, err
	}
	if len(d.Harness.Wires) == 0 {
		return usage, fmt.Errorf("%s has no wire yet, so there is nothing to print", name)
	}
	s := slowly(w, "working out lay-ups", func() *calcsheet.Sheet { return calc.Complete(&d.Harness, cat, nil) })
	on := o.on
	if on == "" {
		on = w.now().Format("2006-01-02")
	}
	meta := paper.Meta{On: on, Hash: hashOf(text), File: filepath.Base(name), Shop: shopFiles(o, w), Serial: o.serial,
		Add: o.add}
	if name == "-" {
		meta.File = "standard input"
	}
	if more { // what is printed stands in no file
		meta.Hash, meta.Unsaved = "", true
	}
	if o.customer {
		return handOver(s, meta, o.folder, o.marks(), w)
	}
	wrote, err := writeSheet(s, meta, o.folder, o.marks())
	if err != nil {
		return usage, err
	}
	return ok, print(w.out, fmt.Sprintf("%s, and %d lists in the same folder, identity %s\n", shown(wrote.page), wrote.lists,
		wrote.identity))
}

// printBeside writes the sheet of what is on the bench into a folder beside its file, or
// where the program runs while it has none.
func printBeside(path string, s *calcsheet.Sheet, unsaved bool, o options, w world) (string, error) {
	meta := paper.Meta{On: w.now().Format("2006-01-02"), Unsaved: unsaved, Shop: shopFiles(o, w)}
	folder := "contralay-sheet"
	if path != "" {
		folder = strings.TrimSuffix(path, filepath.Ext(path)) + "-sheet"
		meta.File = filepath.Base(path)
		if text, err := file.Text(path); err == nil && !unsaved {
			meta.Hash = hashOf(text)
		}
	}
	wrote, err := writeSheet(s, meta, folder, paper.RFC4180())
	return wrote.page, err
}

// shopFiles names the catalogues that were added to the program's own.
func shopFiles(o options, w world) string {
	var names []string
	for _, n := range shopNames(o, w) {
		names = append(names, filepath.Base(n))
	}
	return strings.Join(names, ", ")
}

// hashOf is enough of a text's hash to tell two files apart on paper.
func hashOf(text []byte) string { return fmt.Sprintf("sha256 %x", sha256.Sum256(text))[:7+12] }

// written is a sheet that stands in its folder.
type written struct {
	page     string
	lists    int
	identity string
}

// writeSheet makes the sheet and writes it and its lists into a folder, which is made where
// there is none: all of them, or none. A sheet of another number or revision is not touched.
func writeSheet(s *calcsheet.Sheet, meta paper.Meta, folder string, marks paper.Marks) (written, error) {
	sheet, err := paper.Make(s, meta)
	if err != nil {
		return written{}, err
	}
	return writePaper(sheet, filename.Sheet(s.H.Head.Number.V, s.H.Head.Revision.V), folder, marks)
}

// writePaper writes what was printed and its lists under a name into a folder.
func writePaper(sheet paper.Sheet, base, folder string, marks paper.Marks) (written, error) {
	set := map[string][]byte{base + ".html": sheet.HTML}
	for _, t := range sheet.Lists {
		text, err := paper.CSVWith(t, marks)
		if err != nil {
			return written{}, err
		}
		set[listName(base, t.File)] = text
	}
	for _, list := range sheet.Without { // of an earlier print, which would pass for one of this
		set[listName(base, list)] = nil
	}
	if err := writeAll(folder, set); err != nil {
		return written{}, err
	}
	return written{filepath.Join(folder, base+".html"), len(sheet.Lists), sheet.Identity}, nil
}

// marks is how the lists are written: with semicolons and decimal commas where that is asked for.
func (o options) marks() paper.Marks {
	if o.semicolon {
		return paper.Continental()
	}
	return paper.RFC4180()
}

func listName(base, list string) string { return base + "-" + list + ".csv" }
