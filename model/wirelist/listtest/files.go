package listtest

import (
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// Folder is the folder of the lists, testdata/lists of the module that the test runs in.
func Folder(t testing.TB) string {
	t.Helper()
	at, err := os.Getwd()
	if err != nil {
		t.Fatal(err)
	}
	for {
		if _, err := os.Stat(filepath.Join(at, "go.mod")); err == nil {
			return filepath.Join(at, "testdata", "lists")
		}
		up := filepath.Dir(at)
		if up == at {
			t.Fatal("no go.mod above the test")
		}
		at = up
	}
}

// Read gives the bytes of one of the lists.
func Read(t testing.TB, name string) []byte {
	t.Helper()
	data, err := os.ReadFile(filepath.Join(Folder(t), name))
	if err != nil {
		t.Fatal(err)
	}
	return data
}

// Seed gives a fuzz test every list whose name has one of some endings.
func Seed(f *testing.F, endings ...string) {
	f.Helper()
	entries, err := os.ReadDir(Folder(f))
	if err != nil {
		f.Fatal(err)
	}
	seeds := 0
	for _, e := range entries {
		for _, end := range endings {
			if strings.HasSuffix(e.Name(), end) {
				f.Add(Read(f, e.Name()))
				seeds++
			}
		}
	}
	if seeds == 0 {
		f.Fatalf("no list ends in %v", endings)
	}
}
