package main

import (
	"encoding/xml"
	"errors"
	"io"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// The section of a branch as a drawing: well-formed, the same twice, with every piece named.
func TestSectionAsADrawing(t *testing.T) {
	dir := t.TempDir()
	name := filepath.Join(dir, "t1.svg")
	o := call(t, "", "section", example, "T1", "-o", name)
	if o.code != ok || o.err != "" || o.out != name+"\n" {
		t.Fatalf("%d %q %q", o.code, o.out, o.err)
	}
	first := readFile(t, name)
	d := xml.NewDecoder(strings.NewReader(first))
	for {
		if _, err := d.Token(); errors.Is(err, io.EOF) {
			break
		} else if err != nil {
			t.Fatal(err)
		}
	}
	for _, want := range []string{">HC2-INJ-01 A T1 Trunk, from P1, by wire colour<", ">OD 5.4 mm, in sheath 7.2 mm<", ">C1<", ">101<"} {
		if !strings.Contains(first, want) {
			t.Errorf("the drawing lacks %q", want)
		}
	}
	if strings.Contains(first, "<script") || strings.Contains(first, "href") {
		t.Error("the drawing reaches for something outside it")
	}
	if o := call(t, readFile(t, example), "section", "-", "T1", "-o", name); o.code != ok || readFile(t, name) != first {
		t.Errorf("standard input gives another drawing: %d %s", o.code, o.err)
	}
	one := call(t, "", "section", "--layer", "1", "--by", "size", example, "T1", "-o", filepath.Join(dir, "size.svg"))
	if text := readFile(t, filepath.Join(dir, "size.svg")); one.code != ok || !strings.Contains(text, "by size<") ||
		!strings.Contains(text, ">22 AWG<") || strings.Contains(text, ">C1<") || !strings.Contains(text, "layer 1") {
		t.Errorf("%d %s: %s", one.code, one.err, text)
	}
	if zero, centre := filepath.Join(dir, "0.svg"), filepath.Join(dir, "centre.svg"); call(t, "", "section", example, "T1", "--layer", "0",
		"-o", zero).code != ok || call(t, "", "section", example, "T1", "--layer", "centre", "-o", centre).code != ok ||
		readFile(t, zero) != readFile(t, centre) {
		t.Error("layer 0 is not the centre")
	}
}

// What is wrong is said in one sentence, and nothing is written.
func TestSectionRefuses(t *testing.T) {
	dir := t.TempDir()
	svg := filepath.Join(dir, "x.svg")
	mine := filepath.Join(dir, "mine.toml")
	if err := os.WriteFile(mine, []byte("mine"), 0o600); err != nil {
		t.Fatal(err)
	}
	empty := fileOf(t, "empty.toml", "format = 1\n[harness]\nnumber = \"E\"\n[[termination]]\nid = \"A\"\n[[termination]]\nid = \"B\"\n"+
		"[[branch]]\nid = \"T\"\nfrom = \"A\"\nto = \"B\"\nlength_mm = 100.0\n")
	for _, c := range []struct {
		args []string
		says []string
	}{
		{[]string{"section", example, "-o", svg}, []string{"one FILE and one BRANCH"}},
		{[]string{"section", example, "T1", "L1", "-o", svg}, []string{"one FILE and one BRANCH"}},
		{[]string{"section", example, "T1"}, []string{"a file to write to", "-o FILE.svg"}},
		{[]string{"section", example, "T1", "-o", mine}, []string{"must end in .svg"}},
		{[]string{"section", example, "NONE", "-o", svg}, []string{`no branch "NONE"`, "It has T1"}},
		{[]string{"section", example, "T1", "--layer", "9", "-o", svg}, []string{`--layer "9"`, "its centre (0) and layer 1 (1)"}},
		{[]string{"section", example, "T1", "--layer", "outer", "-o", svg}, []string{`--layer "outer"`, "its centre (0)"}},
		{[]string{"section", example, "T1", "--by", "weight", "-o", svg}, []string{`--by "weight"`, "colour, destination, size"}},
		{[]string{"section", empty, "T", "-o", svg}, []string{"branch T has nothing to draw", "no wire runs in it"}},
		{[]string{"section", filepath.Join(dir, "none.toml"), "T1", "-o", svg}, []string{"none.toml"}},
	} {
		call(t, "", c.args...).refused(t, 1, c.says...)
		if _, err := os.Lstat(svg); err == nil {
			t.Errorf("%v has written a drawing", c.args)
		}
	}
	if readFile(t, mine) != "mine" {
		t.Error("a file of somebody else was written over")
	}
}
