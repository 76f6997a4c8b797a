package main

import (
	"fmt"
	"path/filepath"

	"contralay/model/file"
)

// ticked is a harness with what was ticked since its file was saved, from the run log beside it, and
// whether there is any; base is the sum of the file as it was read. That it is there is said once, and so
// is a log that cannot be read: what it holds is then not counted.
func ticked(name, base string, d file.Document, w world) (file.Document, bool) {
	if name == "-" {
		return d, false
	}
	with, n, err := file.WithRunLog(name, base, d)
	switch {
	case err != nil:
		tell(w, fmt.Sprintf("what was ticked since the last save is not counted: %v", err))
		return d, false
	case n == 0:
		return d, false
	case n == 1:
		tell(w, fmt.Sprintf("1 entry of %s.run that is not saved yet is counted too", filepath.Base(name)))
	default:
		tell(w, fmt.Sprintf("%d entries of %s.run that are not saved yet are counted too", n, filepath.Base(name)))
	}
	return with, true
}

// readTicked reads a harness with what was ticked since it was saved.
func readTicked(name string, w world) (file.Document, error) {
	base := file.Sum(name)
	d, err := read(name, w)
	if err == nil {
		d, _ = ticked(name, base, d, w)
	}
	return d, err
}
