package main

import (
	"crypto/sha256"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
	"unicode"

	"contralay/calc"
	calcsheet "contralay/calc/sheet"
	"contralay/model/file"
	"contralay/ui/paper"
)

// mostHarness is more than the loader takes, bytes: it says so itself.
const mostHarness = 16 << 20

// sheetFor writes the build sheet of a file, and its lists, into a folder.
func sheetFor(name string, o options, w world) (int, error) {
	if o.folder == "" {
		return usage, misuse{"sheet needs a folder to write to: contralay sheet FILE -o DIR"}
	}
	text, err := bytesOf(name, "the harness", mostHarness, w)
	if err != nil {
		return usage, err
	}
	d, err := file.Parse(text, name)
	if err != nil {
		return usage, err
	}
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
	meta := paper.Meta{On: on, Hash: hashOf(text), File: filepath.Base(name)}
	if name == "-" {
		meta.File = "standard input"
	}
	page, n, err := writeSheet(s, meta, o.folder)
	if err != nil {
		return usage, err
	}
	return ok, print(w.out, fmt.Sprintf("%s, and %d lists in the same folder\n", page, n))
}

// printBeside writes the sheet of what is on the bench into a folder beside its file, or
// where the program runs while it has none.
func printBeside(path string, s *calcsheet.Sheet, unsaved bool, w world) (string, error) {
	meta := paper.Meta{On: w.now().Format("2006-01-02"), Unsaved: unsaved}
	folder := "contralay-sheet"
	if path != "" {
		folder = strings.TrimSuffix(path, filepath.Ext(path)) + "-sheet"
		meta.File = filepath.Base(path)
		if text, err := os.ReadFile(path); err == nil && !unsaved {
			meta.Hash = hashOf(text)
		}
	}
	page, _, err := writeSheet(s, meta, folder)
	return page, err
}

// hashOf is enough of a text's hash to tell two files apart on paper.
func hashOf(text []byte) string { return fmt.Sprintf("sha256 %x", sha256.Sum256(text))[:7+12] }

// writeSheet makes the sheet and writes it and its lists into a folder, which is made where
// there is none. A sheet of another number or revision is not touched. Each file is at
// every moment the old or the new one.
func writeSheet(s *calcsheet.Sheet, meta paper.Meta, folder string) (page string, lists int, err error) {
	sheet, err := paper.Make(s, meta)
	if err != nil {
		return "", 0, err
	}
	if err := os.MkdirAll(folder, 0o755); err != nil {
		return "", 0, fmt.Errorf("nothing was written: %w", err)
	}
	base := sheetName(s)
	page = filepath.Join(folder, base+".html")
	for _, t := range sheet.Lists {
		text, err := paper.CSV(t)
		if err != nil {
			return "", 0, err
		}
		if err := swapIn(filepath.Join(folder, base+"-"+t.File+".csv"), text); err != nil {
			return "", 0, err
		}
	}
	return page, len(sheet.Lists), swapIn(page, sheet.HTML)
}

// sheetName is number and revision, spelled so that any disk takes it.
func sheetName(s *calcsheet.Sheet) string {
	h := s.H.Head
	return diskName(strings.Trim(strings.Join([]string{h.Number.V, h.Revision.V}, "-"), "-"))
}

// diskName is a text as a file may be called; "harness" where nothing of it is left.
func diskName(text string) string {
	out := strings.Map(func(r rune) rune {
		switch {
		case unicode.IsLetter(r), unicode.IsDigit(r), r == '-', r == '_', r == '.':
			return r
		}
		return '-'
	}, text)
	if out = strings.Trim(out, "-."); out == "" {
		return "harness"
	}
	if rs := []rune(out); len(rs) > 60 {
		return string(rs[:60])
	}
	return out
}

// swapIn writes a file beside its place and swaps it in.
func swapIn(name string, text []byte) error {
	if info, err := os.Stat(name); err == nil && !info.Mode().IsRegular() {
		return fmt.Errorf("%s is not a plain file and was not changed", name)
	} else if err != nil && !errors.Is(err, fs.ErrNotExist) {
		return err
	}
	f, err := os.CreateTemp(filepath.Dir(name), ".sheet-*")
	if err != nil {
		return fmt.Errorf("%s was not written: %w", name, err)
	}
	_, err = f.Write(text)
	if cerr := f.Close(); err == nil {
		err = cerr
	}
	if err == nil {
		err = os.Chmod(f.Name(), 0o644)
	}
	if err == nil {
		err = os.Rename(f.Name(), name)
	}
	if err != nil {
		os.Remove(f.Name())
		return fmt.Errorf("%s was not written: %w", name, err)
	}
	return nil
}
