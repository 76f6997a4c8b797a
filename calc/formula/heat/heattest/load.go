package heattest

import (
	"encoding/json"
	"os"
	"path/filepath"
	"testing"
)

// dataFile is calc/formula/heat/testdata/volumes.json, found from the package that is tested.
func dataFile(t testing.TB) string {
	t.Helper()
	dir, err := os.Getwd()
	if err != nil {
		t.Fatal(err)
	}
	for {
		if _, err := os.Stat(filepath.Join(dir, "go.mod")); err == nil {
			return filepath.Join(dir, "calc", "formula", "heat", "testdata", "volumes.json")
		}
		up := filepath.Dir(dir)
		if up == dir {
			t.Fatal("no go.mod above the package")
		}
		dir = up
	}
}

// Cases are the thirty cases of volumes.json with what finite volumes gave for them, cells of
// 0.04 mm. `go test -tags volumes ./calc/formula/heat/heattest` solves all of them again.
func Cases(t testing.TB) []Case {
	t.Helper()
	text, err := os.ReadFile(dataFile(t))
	if err != nil {
		t.Fatal(err)
	}
	var cases []Case
	if err := json.Unmarshal(text, &cases); err != nil {
		t.Fatal(err)
	}
	return cases
}
