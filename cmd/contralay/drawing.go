package main

import (
	"fmt"
	"path/filepath"
	"strings"

	"contralay/ui/paper/board"
	"contralay/ui/paper/filename"
	"contralay/ui/paper/tile"
)

// drawingOf writes a harness at full size into a folder, and says what has to be known about it.
func drawingOf(args []string, o options, w world) (int, error) {
	name, err := one("drawing", args)
	if err != nil {
		return usage, err
	}
	if o.folder == "" {
		return usage, misuse{"drawing needs a folder to write to: contralay drawing FILE -o DIR"}
	}
	if o.paper == "" {
		o.paper = tile.Papers[0].Name
	}
	paper, known := tile.Find(o.paper)
	if !known {
		return usage, misuse{fmt.Sprintf("--paper %q: give one of %s", o.paper, strings.Join(tile.Names(), ", "))}
	}
	s, err := sheetOf(name, o, w)
	if err != nil {
		return usage, err
	}
	meta := board.Meta{On: o.on, File: filepath.Base(name)}
	if name == "-" {
		meta.File = "standard input"
	}
	if meta.On == "" {
		meta.On = w.now().Format("2006-01-02")
	}
	d, err := board.Make(s, paper, meta)
	if err != nil {
		return usage, fmt.Errorf("%s: %w", shown(name), err)
	}
	base := filename.Sheet(s.H.Head.Number.V, s.H.Head.Revision.V) + "-drawing"
	pdf := base + "-" + paper.Name + ".pdf"
	if err := writeAll(o.folder, map[string][]byte{pdf: d.PDF, base + ".svg": d.SVG, base + ".dxf": d.DXF}); err != nil {
		return usage, err
	}
	out := fmt.Sprintf("%s, %d pages, and the same as %s.svg and .dxf, identity %s\n", shown(filepath.Join(o.folder, pdf)), d.Pages,
		base, d.Identity)
	for _, n := range d.Notes {
		out += n + "\n"
	}
	return ok, print(w.out, out)
}
