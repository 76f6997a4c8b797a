package main

import (
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"

	"contralay/model/shorttest"
)

func TestMisuse(t *testing.T) {
	dir := t.TempDir()
	syntax := fileOf(t, "syntax.toml", "format = 1\n\n[harness]\nname =\n")
	unknown := fileOf(t, "unknown.toml", "format = 1\n\n[harness]\nname = \"x\"\nfrob = 1\n")
	twice := fileOf(t, "twice.toml", "format = 1\n\n[harness]\nfrob = 1\n\n[[wire]]\nid = \"7\"\nspec = \"AS22759/32\"\n")
	binary := fileOf(t, "binary.toml", "\xff\xfe\x00f\x00o")
	empty := fileOf(t, "empty.toml", "")
	for _, c := range []struct {
		name  string
		args  []string
		lines int
		words []string
	}{
		{"unknown flag", []string{"--frob"}, 1, []string{"--frob"}},
		{"unknown flag of a command", []string{"check", "--frob", "x"}, 1, []string{"--frob"}},
		{"unknown command", []string{"frobnicate", "x"}, 1, []string{"frobnicate", "check", "figures", "plan", "new"}},
		{"the name that measured had", []string{"learn", "x.toml"}, 1, []string{"measured"}},
		{"flag without value", []string{"plan", "6x22", "--spares"}, 1, []string{"--spares"}},
		{"value that is no number", []string{"plan", "6x22", "--spares", "many"}, 1, []string{"many", "0 to 100"}},
		{"spares below none", []string{"plan", "6x22", "--spares=-1"}, 1, []string{"0 to 100"}},
		{"lay ratio out of range", []string{"plan", "6x22", "--lay-ratio", "900"}, 1, []string{"4 to 40"}},
		{"centres of no kind", []string{"plan", "6x22", "--centres", "round"}, 1, []string{"equal, unequal, built"}},
		{"pages of no kind", []string{"sheet", "x.toml", "--add", "loads,frob"}, 1, []string{"loads,frob", "loads, flags, loops"}},
		{"value for a flag that has none", []string{"plan", "6x22", "--json=1"}, 1, []string{"--json"}},
		{"plan of nothing", []string{"plan"}, 1, []string{"32x22 4x20 2x2.9mm"}},
		{"size that is not there", []string{"plan", "3x99"}, 1, []string{"3x99", "22"}},
		{"size without quantity", []string{"plan", "x22"}, 1, []string{"x22"}},
		{"quantity without size", []string{"plan", "22"}, 1, []string{"22"}},
		{"quantity zero", []string{"plan", "0x22"}, 1, []string{"0x22"}},
		{"quantity beyond any bundle", []string{"plan", "99999x22"}, 1, []string{"500"}},
		{"diameter below none", []string{"plan", "3x-1mm"}, 1, []string{"3x-1mm"}},
		{"diameter that is no number", []string{"plan", "3xNaNmm"}, 1, []string{"3xNaNmm"}},
		{"diameter without end", []string{"plan", "3xInfmm"}, 1, []string{"3xInfmm"}},
		{"check of nothing", []string{"check"}, 1, []string{"FILE"}},
		{"check of two", []string{"check", "a", "b"}, 1, []string{"FILE"}},
		{"missing file", []string{"check", filepath.Join(dir, "none.toml")}, 1, []string{"none.toml"}},
		{"missing file of figures", []string{"figures", filepath.Join(dir, "none.toml")}, 1, []string{"none.toml"}},
		{"folder for a file", []string{"check", dir}, 1, []string{dir}},
		{"folder for a file of figures", []string{"figures", dir}, 1, []string{dir}},
		{"new where a folder stands", []string{"new", dir}, 1, []string{dir}},
		{"new in no folder", []string{"new", filepath.Join(dir, "none", "x.toml")}, 1, []string{"x.toml"}},
		{"not TOML", []string{"check", syntax}, 1, []string{"syntax.toml:4"}},
		{"unknown key", []string{"figures", unknown}, 1, []string{"unknown.toml:5", "frob", "revision"}},
		{"two things at once", []string{"check", twice}, 2, []string{"twice.toml:4", "frob", "twice.toml:6", "size"}},
		{"not text", []string{"check", binary}, 1, []string{"binary.toml"}},
		{"empty", []string{"check", empty}, 1, []string{"format"}},
		{"missing catalogue", []string{"check", example, "--catalogue", filepath.Join(dir, "shop.toml")}, 1, []string{"shop.toml"}},
		{"catalogue that is none", []string{"check", example, "--catalogue", unknown}, 2, []string{"unknown.toml"}},
	} {
		t.Run(c.name, func(t *testing.T) { call(t, "", c.args...).refused(t, c.lines, c.words...) })
	}
}

// Where there is no terminal the bench says what to use instead; nothing else
// needs one.
func TestWithoutTerminal(t *testing.T) {
	shorttest.Turn(t)
	for _, args := range [][]string{nil, {example}, {"--ascii"}, {"-"}, {example, "--colour", "always"}} {
		callBuilt(t, args...).refused(t, 1, "check", "figures")
	}
	for _, args := range [][]string{
		{"help"}, {"--help"}, {"-h"}, {"version"}, {"check", example}, {"figures", example}, {"plan", "16x22"},
		{"plan", "16x22", "--colour", "always"}, {"check", example, "--colour=always"},
	} {
		// callBuilt looks for escape codes and stack traces in all of it.
		if o := callBuilt(t, args...); o.code != 0 || o.out == "" || o.err != "" {
			t.Errorf("%q: exit %d, stderr %q", args, o.code, o.err)
		}
	}
	if o := callIn(t, environ(t, "TERM=dumb", "NO_COLOR=1"), "", "check", example); o.code != 0 {
		t.Errorf("check on a dumb terminal: exit %d, %s", o.code, o.err)
	}
}

// A reader that goes away, as head does, is no error to talk about.
func TestReaderGoesAway(t *testing.T) {
	r, w, err := os.Pipe()
	if err != nil {
		t.Fatal(err)
	}
	r.Close()
	defer w.Close()
	cmd := exec.Command(built, "figures", example)
	cmd.Env, cmd.Stdout = environ(t), w
	var errs strings.Builder
	cmd.Stderr = &errs
	_ = cmd.Run() // ended by the signal of the pipe, or in peace
	if errs.Len() > 0 {
		t.Errorf("stderr: %s", errs.String())
	}
}
