package main

import (
	"os"
	"path/filepath"

	"contralay/ui/bench/kit"
)

// listFolder is what lies in a folder, for a file to be chosen from it. What a link leads to
// counts; a file that went away meanwhile is left out.
func listFolder(folder string) ([]kit.Entry, error) {
	all, err := os.ReadDir(folder)
	if err != nil {
		return nil, err
	}
	var out []kit.Entry
	for _, e := range all {
		info, err := os.Stat(filepath.Join(folder, e.Name()))
		if err != nil || !info.IsDir() && !info.Mode().IsRegular() {
			continue // nothing to read: a link to nowhere, a pipe, a device
		}
		out = append(out, kit.Entry{Name: e.Name(), Folder: info.IsDir(), Bytes: info.Size(), When: info.ModTime()})
	}
	return out, nil
}
