package bench_test

import (
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// The README shows the Layers step as it is drawn.
func TestReadmePicture(t *testing.T) {
	readme, err := os.ReadFile("../../README.md")
	if err != nil {
		t.Fatal(err)
	}
	want, err := os.ReadFile(filepath.Join("testdata", "layers-80x24.golden"))
	if err != nil {
		t.Fatal(err)
	}
	if !strings.Contains(string(readme), "```text\n"+string(want)+"```") {
		t.Errorf("the README's picture of the bench is stale; it should be:\n%s", want)
	}
}
