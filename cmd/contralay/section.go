package main

import (
	"fmt"
	"path/filepath"
	"strings"

	"contralay/calc/sheet"
	"contralay/model/file"
	"contralay/ui/cross/picture"
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
	text, err := picture.SVG(s, i, o.by, o.layer)
	if wrong, is := err.(picture.Unknown); is {
		return usage, misuse{wrong.Error()}
	} else if err != nil {
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
