package file_test

import (
	"errors"
	"io/fs"
	"math"
	"os"
	"path/filepath"
	"runtime"
	"strings"
	"testing"

	"contralay/model"
	"contralay/model/file"
	"contralay/model/unit"
)

// titled is a document that can be told from another.
func titled(name string) file.Document {
	return file.Document{Harness: model.Harness{Head: model.Head{Name: model.Some(name)}}}
}

func write(t *testing.T, path, text string, mode fs.FileMode) {
	t.Helper()
	if err := os.WriteFile(path, []byte(text), mode); err != nil {
		t.Fatal(err)
	}
	if err := os.Chmod(path, mode); err != nil {
		t.Fatal(err)
	}
}

// holds checks the text and the mode of a file.
func holds(t *testing.T, path, text string, mode fs.FileMode) {
	t.Helper()
	got, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	if string(got) != text {
		t.Errorf("%s holds %q, want %q", filepath.Base(path), got, text)
	}
	info, err := os.Stat(path)
	if err != nil {
		t.Fatal(err)
	}
	if runtime.GOOS != "windows" && info.Mode().Perm() != mode {
		t.Errorf("%s has mode %v, want %v", filepath.Base(path), info.Mode().Perm(), mode)
	}
}

// only checks that a folder holds these names and no temporary file.
func only(t *testing.T, dir string, names ...string) {
	t.Helper()
	all, err := os.ReadDir(dir)
	if err != nil {
		t.Fatal(err)
	}
	var got []string
	for _, e := range all {
		got = append(got, e.Name())
	}
	if strings.Join(got, " ") != strings.Join(names, " ") {
		t.Errorf("the folder holds %q, want %q", got, names)
	}
}

func TestSaveNewFile(t *testing.T) {
	dir := t.TempDir()
	path := filepath.Join(dir, "loom.toml")
	if err := file.Save(path, titled("one")); err != nil {
		t.Fatal(err)
	}
	holds(t, path, string(file.Encode(titled("one"))), 0o644)
	only(t, dir, "loom.toml")
}

func TestSaveKeepsOneOldFileAndTheMode(t *testing.T) {
	dir := t.TempDir()
	path := filepath.Join(dir, "loom.toml")
	write(t, path, "what stood there", 0o600)
	if err := file.Save(path, titled("one")); err != nil {
		t.Fatal(err)
	}
	holds(t, path+".bak", "what stood there", 0o600)
	if err := file.Save(path, titled("two")); err != nil {
		t.Fatal(err)
	}
	holds(t, path, string(file.Encode(titled("two"))), 0o600)
	holds(t, path+".bak", string(file.Encode(titled("one"))), 0o600)
	only(t, dir, "loom.toml", "loom.toml.bak")
}

// A .bak that is a link to the file itself must not be written through.
func TestSaveWhereTheOldCopyIsALink(t *testing.T) {
	dir := t.TempDir()
	path := filepath.Join(dir, "loom.toml")
	write(t, path, "old", 0o644)
	if err := os.Link(path, path+".bak"); err != nil {
		t.Skip(err)
	}
	if err := file.Save(path, titled("one")); err != nil {
		t.Fatal(err)
	}
	holds(t, path, string(file.Encode(titled("one"))), 0o644)
	holds(t, path+".bak", "old", 0o644)
}

func TestSaveFollowsALink(t *testing.T) {
	dir, far := t.TempDir(), t.TempDir()
	link, real := filepath.Join(dir, "loom.toml"), filepath.Join(far, "real.toml")
	if err := os.Symlink(real, link); err != nil {
		t.Skip(err)
	}
	for _, name := range []string{"one", "two"} { // the first time it leads nowhere yet
		if err := file.Save(link, titled(name)); err != nil {
			t.Fatal(err)
		}
		holds(t, real, string(file.Encode(titled(name))), 0o644)
	}
	only(t, dir, "loom.toml")
	only(t, far, "real.toml", "real.toml.bak")
	if _, err := os.Readlink(link); err != nil {
		t.Errorf("the link is gone: %v", err)
	}
}

func TestSaveThatFailsLeavesTheOldFile(t *testing.T) {
	twice := file.Document{Harness: model.Harness{Breakouts: []model.Breakout{{ID: "J"}, {ID: "J"}}}}
	nan := titled("")
	nan.Harness.Rules.LayRatio = model.Some(unit.Ratio(math.NaN()))
	for _, tt := range []struct {
		name  string
		doc   file.Document
		block func(t *testing.T, path string)
		says  string
	}{
		{"folder where the old copy goes", titled("new"), func(t *testing.T, path string) {
			write(t, filepath.Join(mkdir(t, path+".bak"), "x"), "", 0o644)
		}, "the old file cannot be kept"},
		{"write-protected", titled("new"), func(t *testing.T, path string) {
			if err := os.Chmod(path, 0o444); err != nil {
				t.Fatal(err)
			}
		}, "write-protected"},
		{"id twice", twice, nil, `"J" is given twice`},
		{"no figure", nan, nil, "which is not a finite number"},
	} {
		t.Run(tt.name, func(t *testing.T) {
			dir := t.TempDir()
			path := filepath.Join(dir, "loom.toml")
			write(t, path, "old", 0o644)
			if tt.block != nil {
				tt.block(t, path)
			}
			err := file.Save(path, tt.doc)
			if err == nil || !strings.Contains(err.Error(), "not saved") || !strings.Contains(err.Error(), tt.says) {
				t.Fatalf("error %v, want one with %q", err, tt.says)
			}
			got, _ := os.ReadFile(path)
			if string(got) != "old" {
				t.Errorf("the file holds %q", got)
			}
			if temps, _ := filepath.Glob(filepath.Join(dir, ".*")); len(temps) > 0 {
				t.Errorf("left behind: %q", temps)
			}
		})
	}
}

func mkdir(t *testing.T, path string) string {
	t.Helper()
	if err := os.Mkdir(path, 0o755); err != nil {
		t.Fatal(err)
	}
	return path
}

func TestSaveWhereNoFileCanBe(t *testing.T) {
	dir := t.TempDir()
	err := file.Save(filepath.Join(dir, "none", "loom.toml"), titled("a"))
	if !errors.Is(err, fs.ErrNotExist) {
		t.Errorf("folder that is not there: %v", err)
	}
	if err := file.Save(dir, titled("a")); err == nil || !strings.Contains(err.Error(), "it is a folder") {
		t.Errorf("folder: %v", err)
	}
	circle := filepath.Join(dir, "circle")
	if err := os.Symlink(circle, circle); err == nil {
		if err := file.Save(circle, titled("a")); err == nil || !strings.Contains(err.Error(), "circle") {
			t.Errorf("link to itself: %v", err)
		}
	}
}

func TestLoadSaysWhatIsWrong(t *testing.T) {
	dir := t.TempDir()
	if _, err := file.Load(filepath.Join(dir, "none.toml")); !errors.Is(err, fs.ErrNotExist) {
		t.Errorf("missing file: %v", err)
	}
	if _, err := file.Load(dir); err == nil || !strings.Contains(err.Error(), "is a folder") {
		t.Errorf("folder: %v", err)
	}
}
