package main

import (
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"contralay/model"
	"contralay/model/file"
	"contralay/model/unit"
)

// timed is the nineteen with one serial whose wires were cut by 7, one each three minutes, with a pause of
// an hour in the middle.
func timed() string {
	var b strings.Builder
	b.WriteString(nineteen() + "\n[[build]]\nserial = \"1\"\neach_test = true\n")
	for k := range 19 {
		at := 8*60 + 3*k
		if k > 9 {
			at += 60
		}
		fmt.Fprintf(&b, "\n  [[build.step]]\n  key = \"cut %d\"\n  at = \"2026-05-11 %02d:%02d\"\n  by = \"7\"\n", 101+k, at/60, at%60)
	}
	return b.String()
}

// What ticks teach is listed by kind of work, with the pauses that are in none; once it is accepted a harness has
// its hours to expect, with what they are without; withdrawn it has none. No figure of a sheet moves by it.
func TestMinutesAreLearned(t *testing.T) {
	t.Parallel()
	env := environ(t, "XDG_CONFIG_HOME="+t.TempDir())
	name, plain := fileOf(t, "loom.toml", timed()), fileOf(t, "plain.toml", nineteen())
	before := callIn(t, env, "", "figures", plain).out
	r := callIn(t, env, "", "measured", name, name)
	for _, want := range []string{"minutes, cut: 3.00 a piece, spread 0.00, from 17 pieces in 17 steps\n  enough to expect hours by",
		"pauses left out: 1. A pause is over 30 minutes, and over 2 minutes a piece"} {
		if !strings.Contains(r.out, want) {
			t.Errorf("no %q in\n%s%s", want, r.out, r.err)
		}
	}
	if strings.Contains(r.out, "to expect (") {
		t.Errorf("hours before anything is accepted:\n%s", r.out)
	}
	r = callIn(t, env, "", "measured", name, "--accept", "minutes, lay")
	if r.code != usage || !strings.Contains(r.err, "minutes, cut") {
		t.Errorf("%+v", r)
	}
	r = callIn(t, env, "", "measured", name, "--accept", "minutes, cut")
	if r.code != ok || !strings.Contains(r.out, "corrections.toml") {
		t.Errorf("%+v", r)
	}
	r = callIn(t, env, "", "measured", plain) // 19 wires of 3 minutes: 57 minutes
	if !strings.Contains(r.out, "plain.toml: 1.0 hours to expect (1.0 to 1.0), by the minutes of this shop; without ") ||
		!strings.Contains(r.out, "lay, ") {
		t.Errorf("%+v", r)
	}
	r = callIn(t, env, "", "measured", name)
	if !strings.Contains(r.out, "in use: minutes, cut: 3.00 a piece, spread 0.00, from 17 pieces") {
		t.Errorf("%+v", r)
	}
	if after := callIn(t, env, "", "figures", plain).out; after != before {
		t.Error("minutes move a figure of the sheet")
	}
	if r = callIn(t, env, "", "measured", "--withdraw", "minutes, cut"); r.code != ok {
		t.Errorf("%+v", r)
	}
	if r = callIn(t, env, "", "measured", plain); strings.Contains(r.out, "to expect (") {
		t.Errorf("%+v", r)
	}
	few := fileOf(t, "few.toml", timed()[:strings.Index(timed(), `key = "cut 106"`)-len("\n  [[build.step]]\n  ")])
	r = callIn(t, env, "", "measured", few, "--accept", "minutes, cut")
	if r.code != usage || !strings.Contains(r.err, "has 4 steps and needs 8") {
		t.Errorf("%+v", r)
	}
}

// What stands in the run log alone is counted by whoever reads the file, which is said once; the log stays
// as it is. One that cannot be read is said too, and the file counts as it is.
func TestCommandsReadTheRunLog(t *testing.T) {
	t.Parallel()
	name := fileOf(t, "loom.toml", nineteen())
	d, err := file.Load(name)
	if err != nil {
		t.Fatal(err)
	}
	log, err := file.OpenRunLog(name, file.Sum(name), d)
	if err != nil {
		t.Fatal(err)
	}
	h := d.Harness.EditBuild("1", func(b *model.Build) {
		b.EachTest = model.Some(true)
		b.Readings = []model.Reading{{Branch: "T1", Layer: 2, OverMM: []unit.Millimetre{6.9}}}
	})
	if err := log.Append(h.Builds, ""); err != nil {
		t.Fatal(err)
	}
	was := readFile(t, name+".run")
	for _, args := range [][]string{{"check", name}, {"figures", name}, {"measured", name}, {"sheet", name, "-o", t.TempDir()}} {
		r := call(t, "", args...)
		if r.code == usage || strings.Count(r.err, "of loom.toml.run that are not saved yet are counted too") != 1 {
			t.Errorf("%s: %+v", args[0], r)
		}
		if args[0] == "check" && !strings.Contains(r.out, "6.90") ||
			args[0] == "measured" && !strings.Contains(r.out, "over, 3 layers: 1 readings") {
			t.Errorf("%s: %s", args[0], r.out)
		}
		if args[0] == "sheet" {
			pages, _ := filepath.Glob(filepath.Join(args[3], "*.html"))
			if len(pages) != 1 || !strings.Contains(wordsOf(readFile(t, pages[0])), "UNSAVED") {
				t.Error("the sheet has a file it does not come from")
			}
		}
	}
	if readFile(t, name+".run") != was {
		t.Error("the log is another")
	}
	log.Close(false)
	if err := os.WriteFile(name+".run", []byte(was+"{\"laugh\":true}\n"), 0o644); err != nil {
		t.Fatal(err)
	}
	if r := call(t, "", "check", name); r.code != ok || !strings.Contains(r.err, "is not counted") || !strings.Contains(r.err, "line ") ||
		strings.Contains(r.out, "6.90") {
		t.Errorf("%+v", r)
	}
}
