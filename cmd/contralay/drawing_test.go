package main

import (
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// A drawing is three files, the same on every run of a day; what is wrong is said in one sentence.
func TestDrawing(t *testing.T) {
	dir := filepath.Join(t.TempDir(), "out")
	o := call(t, "", "drawing", example, "-o", dir, "--on", "2026-05-31")
	if o.code != ok || o.err != "" || !strings.HasPrefix(o.out, filepath.Join(dir, "HC2-INJ-01-A-drawing-a4.pdf")+", ") {
		t.Fatalf("%d %q %q", o.code, o.out, o.err)
	}
	first := map[string]string{}
	for name, head := range map[string]string{"HC2-INJ-01-A-drawing-a4.pdf": "%PDF-1.", "HC2-INJ-01-A-drawing.svg": "<?xml",
		"HC2-INJ-01-A-drawing.dxf": "  0\nSECTION\n"} {
		first[name] = readFile(t, filepath.Join(dir, name))
		if !strings.HasPrefix(first[name], head) {
			t.Errorf("%s begins with %.20q", name, first[name])
		}
	}
	if again := call(t, "", "drawing", example, "-o", dir, "--on", "2026-05-31"); again.out != o.out {
		t.Errorf("another answer: %s", again.out)
	}
	for name, text := range first {
		if readFile(t, filepath.Join(dir, name)) != text {
			t.Errorf("%s is another one the second time", name)
		}
	}
	if o := call(t, "", "drawing", example, "-o", dir, "--paper", "Roll914"); o.code != ok {
		t.Errorf("%d %s", o.code, o.err)
	} else if _, err := os.Stat(filepath.Join(dir, "HC2-INJ-01-A-drawing-roll914.pdf")); err != nil {
		t.Error(err)
	}
	empty := filepath.Join(t.TempDir(), "x.toml")
	if err := os.WriteFile(empty, []byte("format = 1\n"), 0o600); err != nil {
		t.Fatal(err)
	}
	for _, c := range []struct {
		args []string
		want string
	}{
		{[]string{example}, "drawing needs a folder to write to"},
		{[]string{"-o", dir}, "drawing needs one FILE"},
		{[]string{example, "-o", dir, "--paper", "a5"}, `--paper "a5": give one of a4, a3, letter, roll610, roll914, roll1067`},
		{[]string{empty, "-o", dir}, "it has no branch yet, so there is nothing to draw"},
	} {
		if o := call(t, "", append([]string{"drawing"}, c.args...)...); o.code != usage || !strings.Contains(o.err, c.want) {
			t.Errorf("%v: %d %q", c.args, o.code, o.err)
		}
	}
}
