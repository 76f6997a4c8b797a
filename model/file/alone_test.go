package file

import (
	"io/fs"
	"os"
	"path/filepath"
	"strings"
	"sync"
	"testing"
)

// Whoever adds to a file alone finds what the one before added: nothing is lost, its mode and the
// link to it are kept, and no lock is left lying.
func TestAlone(t *testing.T) {
	dir, home := t.TempDir(), t.TempDir()
	real, link := filepath.Join(dir, "real.toml"), filepath.Join(home, "link.toml")
	if err := os.WriteFile(real, nil, 0o640); err != nil {
		t.Fatal(err)
	}
	if err := os.Symlink(real, link); err != nil {
		t.Skip(err)
	}
	const each = 40
	var all sync.WaitGroup
	for _, path := range []string{real, link, link} {
		all.Go(func() {
			for range each {
				if err := Alone(path, func() error {
					text, err := os.ReadFile(path)
					if err != nil {
						return err
					}
					return Write(path, append(text, "line\n"...))
				}); err != nil {
					t.Error(err)
				}
			}
		})
	}
	all.Wait()
	text, err := os.ReadFile(real)
	if n := strings.Count(string(text), "line\n"); err != nil || n != 3*each {
		t.Errorf("%d lines, %d were added (%v)", n, 3*each, err)
	}
	if info, err := os.Stat(real); err != nil || info.Mode().Perm() != 0o640 {
		t.Errorf("mode %v (%v)", info.Mode(), err)
	}
	if info, err := os.Lstat(link); err != nil || info.Mode()&fs.ModeSymlink == 0 {
		t.Errorf("the link is none any more (%v)", err)
	}
	if left := append(names(t, dir), names(t, home)...); len(left) != 2 {
		t.Errorf("%q remain", left)
	}
}

// A file that is not there yet is written whole, and one that is there is not touched.
func TestWriteNew(t *testing.T) {
	path := filepath.Join(t.TempDir(), "new.csv")
	if err := WriteNew(path, []byte("one")); err != nil {
		t.Fatal(err)
	}
	if err := WriteNew(path, []byte("two")); err == nil || !strings.Contains(err.Error(), "exists already and was not changed") {
		t.Errorf("%v", err)
	}
	if text, err := os.ReadFile(path); err != nil || string(text) != "one" {
		t.Errorf("%q (%v)", text, err)
	}
	if left := names(t, filepath.Dir(path)); len(left) != 1 {
		t.Errorf("%q remain", left)
	}
}
