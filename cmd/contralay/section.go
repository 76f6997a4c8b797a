package main

import (
	"fmt"
	"path/filepath"
	"strconv"
	"strings"

	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/file"
	"contralay/model/unit"
	"contralay/ui/cross"
	"contralay/ui/draw/shape"
)

// sectionOf writes the section of a branch as a drawing.
func sectionOf(args []string, o options, w world) (int, error) {
	if len(args) != 2 {
		return usage, misuse{"section needs one FILE and one BRANCH: contralay section FILE BRANCH -o FILE.svg"}
	}
	if o.folder == "" {
		return usage, misuse{"section needs a file to write to: contralay section FILE BRANCH -o FILE.svg"}
	}
	if !strings.EqualFold(filepath.Ext(o.folder), ".svg") { // whatever it replaces was a drawing
		return usage, misuse{fmt.Sprintf("-o %s: the name of a drawing must end in .svg", shown(o.folder))}
	}
	s, err := sheetOf(args[0], o, w)
	if err != nil {
		return usage, err
	}
	i, known := s.Index.Branch[args[1]]
	if !known {
		return usage, fmt.Errorf("%s has no branch %q. %s", shown(args[0]), args[1], branchesOf(s))
	}
	text, err := sectionText(s, i, o)
	if err != nil {
		return usage, err
	}
	if err := file.Write(o.folder, []byte(text)); err != nil {
		return usage, err
	}
	return ok, print(w.out, shown(o.folder)+"\n")
}

// branchesOf names the branches of a harness.
func branchesOf(s *sheet.Sheet) string {
	if len(s.H.Branches) == 0 {
		return "It has no branch yet"
	}
	const most = 12
	var ids []string
	for _, b := range s.H.Branches[:min(len(s.H.Branches), most)] {
		ids = append(ids, b.ID)
	}
	if more := len(s.H.Branches) - most; more > 0 {
		ids = append(ids, fmt.Sprintf("and %d more", more))
	}
	return "It has " + strings.Join(ids, ", ")
}

// sectionText is the drawing of a branch.
func sectionText(s *sheet.Sheet, i int, o options) (string, error) {
	b, mb := &s.Branches[i], &s.H.Branches[i]
	if len(b.Layers) == 0 {
		return "", fmt.Errorf("branch %s has nothing to draw: no wire runs in it, or the size of one is not known", mb.ID)
	}
	by, known := cross.ByColour, true
	if o.by != "" {
		by, known = cross.Find(o.by)
	}
	if !known {
		return "", misuse{fmt.Sprintf("--by %q: give one of %s", o.by, strings.Join(waysOf(), ", "))}
	}
	section := cross.Of(s, i)
	names := cross.Paint(s, i, &section, by, unit.MM)
	if o.layer != "" {
		k, err := strconv.Atoi(o.layer)
		if o.layer == "centre" {
			k, err = 0, nil
		}
		if err != nil || k < 0 || k >= len(b.Layers) {
			return "", misuse{fmt.Sprintf("--layer %q: %s has %s", o.layer, mb.ID, layersOf(len(b.Layers)))}
		}
		cross.TakeLayer(s, i, &section, k)
	}
	var keys []shape.Key
	for k, n := range names {
		keys = append(keys, shape.Key{Class: k, Name: n})
	}
	says := []string{"OD " + unit.MM.Diameter(b.OverMM) + " mm"}
	if section.Says != "" {
		says = append([]string{section.Says}, says...)
	}
	if section.SheathMM > 0 {
		says = append(says, "in sheath "+unit.MM.Diameter(section.SheathMM)+" mm")
	}
	section.Says = strings.Join(says, ", ")
	head := strings.Fields(s.H.Head.Number.V + " " + s.H.Head.Revision.V + " " + mb.ID + " " + mb.Name.V)
	title := strings.Join(head, " ") + ", from " + mb.From + ", by " + by.String()
	return shape.SVG(section, title, keys), nil
}

// waysOf are the words that --by takes.
func waysOf() []string { return append([]string{"colour"}, cross.Names()[1:]...) }

// layersOf are the layers that --layer takes.
func layersOf(n int) string {
	switch n {
	case 1:
		return "only its centre (0)"
	case 2:
		return "its centre (0) and " + model.LayerName(1) + " (1)"
	}
	return fmt.Sprintf("its centre (0) and layers 1 to %d", n-1)
}
