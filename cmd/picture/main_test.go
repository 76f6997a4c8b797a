package main

import (
	"bytes"
	"os"
	"strings"
	"testing"

	"contralay/model/shorttest"
	"contralay/ui/draw"
)

// The README's picture is the bench as it is: what it says and how it looks.
func TestReadmePicture(t *testing.T) {
	shorttest.Turn(t)
	t.Chdir("../..")
	have, err := os.ReadFile("testdata/bench.svg")
	if err != nil {
		t.Fatal(err)
	}
	var want bytes.Buffer
	w := want120(draw.NewPalette(draw.TrueColour, true))
	if err := draws(&want, w); err != nil {
		t.Fatal(err)
	}
	if !bytes.Equal(have, want.Bytes()) {
		t.Error("testdata/bench.svg is stale: go run ./cmd/picture -keys right >testdata/bench.svg, and look at it")
	}
	readme, err := os.ReadFile("README.md")
	if err != nil {
		t.Fatal(err)
	}
	if !strings.Contains(string(readme), "(testdata/bench.svg)") {
		t.Error("the README shows no picture of the bench")
	}
}

// want120 is the picture of the README.
func want120(p draw.Palette) want {
	return want{path: "testdata/demo.toml", width: 120, height: 40, keys: []string{"right"}, palette: p}
}

// A size that is none and a file that is not there are refused; a screen of one size is drawn
// in its cells, whatever it shows.
func TestDraws(t *testing.T) {
	shorttest.Turn(t)
	t.Chdir("../..")
	var out bytes.Buffer
	if err := draws(&out, want{path: "nowhere.toml", width: 80, height: 24}); err == nil {
		t.Error("a file that is not there was drawn")
	}
	out.Reset()
	if err := draws(&out, want{path: "testdata/example.toml", width: 40, height: 12, ascii: true}); err != nil {
		t.Fatal(err)
	}
	if s := out.String(); !strings.HasPrefix(s, `<svg xmlns="http://www.w3.org/2000/svg" width="344" height="212"`) ||
		!strings.Contains(s, "WIRES") || strings.Contains(s, "▸") {
		t.Errorf("%.300s", s)
	}
}
