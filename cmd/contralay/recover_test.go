package main

import (
	"os"
	"path/filepath"
	"testing"

	"contralay/model"
	"contralay/model/file"
)

// A second stop leaves what the first one saved.
func TestRecoverUnderAFreeName(t *testing.T) {
	name := filepath.Join(t.TempDir(), "loom.toml")
	work := func(number string) *kept {
		return &kept{file.Document{Harness: model.Harness{Head: model.Head{Number: model.Some(number)}}}, true}
	}
	var saved []string
	for _, n := range []string{"first", "second", "third"} {
		to, err := recoverWork(name, work(n))
		if err != nil {
			t.Fatal(err)
		}
		saved = append(saved, to)
	}
	for i, n := range []string{"first", "second", "third"} {
		d, err := file.Load(saved[i])
		if err != nil || d.Harness.Head.Number.V != n {
			t.Errorf("%s holds %q, want %q (%v)", saved[i], d.Harness.Head.Number.V, n, err)
		}
		if _, err := os.Stat(saved[i] + ".bak"); err == nil {
			t.Errorf("%s has a needless .bak", saved[i])
		}
	}
	if to, err := recoverWork(name, &kept{}); to != "" || err != nil {
		t.Errorf("nothing to save, and %q was written (%v)", to, err)
	}
}
