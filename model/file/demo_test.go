package file_test

import (
	"bytes"
	"os"
	"path/filepath"
	"testing"

	"contralay/model/file"
)

// The demonstration is read by people who learn the format from it, so it stands
// as a save would write it.
func TestDemonstrationIsCanonical(t *testing.T) {
	text, err := os.ReadFile(filepath.Join("..", "..", "testdata", "demo.toml"))
	if err != nil {
		t.Fatal(err)
	}
	d, err := file.Parse(text, "demo.toml")
	if err != nil {
		t.Fatal(err)
	}
	out := file.Encode(d)
	if bytes.Equal(out, text) {
		return
	}
	was, is := bytes.Split(text, []byte("\n")), bytes.Split(out, []byte("\n"))
	for k := range min(len(was), len(is)) {
		if !bytes.Equal(was[k], is[k]) {
			t.Fatalf("line %d holds %q; a save writes %q", k+1, was[k], is[k])
		}
	}
	t.Fatalf("it has %d lines; a save writes %d", len(was), len(is))
}
