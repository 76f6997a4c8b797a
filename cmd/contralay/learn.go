package main

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"strings"

	"contralay/calc"
	"contralay/calc/learn"
	"contralay/model/catalogue"
	"contralay/model/file"
	"contralay/ui/paper"
)

// learnFrom compares what was measured of many harnesses with what was predicted, and
// accepts what it is told to.
func learnFrom(names []string, o options, w world) (int, error) {
	if len(names) == 0 {
		return usage, misuse{"learn takes one FILE or more, with what was measured in them (contralay --help)"}
	}
	cat, err := entries(o, w)
	if err != nil {
		return usage, err
	}
	var all []learn.Reading
	for _, name := range names {
		d, err := file.Load(name)
		if err != nil {
			return usage, err
		}
		s := slowly(w, "working out lay-ups", func() *calc.Sheet { return calc.Complete(&d.Harness, cat, nil) })
		all = append(all, s.Measured(filepath.Base(name))...)
	}
	lessons := learn.Lessons(all, learn.Options{Without: o.without})
	var b strings.Builder
	if len(lessons) == 0 {
		b.WriteString("nothing was measured in these: readings of layers, of tubes, of wire used\n")
	}
	for _, l := range lessons {
		fmt.Fprintln(&b, strings.Join(paper.Lesson(l), "\n"))
	}
	if o.accept != "" {
		says, err := accept(lessons, names, o, w)
		if err != nil {
			return usage, err
		}
		b.WriteString(says)
	}
	return ok, print(w.out, b.String())
}

// accept writes one lesson, or all that may be, into the shop's corrections.
func accept(lessons []learn.Lesson, names []string, o options, w world) (string, error) {
	var groups, base []string
	for _, n := range names {
		base = append(base, filepath.Base(n))
	}
	text := ""
	for _, l := range lessons {
		groups = append(groups, l.Group)
		if o.accept != "all" && o.accept != l.Group {
			continue
		}
		c, may := paper.Accepted(l, w.now().Format("2006-01-02"), strings.Join(base, ", "))
		switch {
		case may:
			text += c.Text()
		case o.accept == l.Group:
			return "", fmt.Errorf("%s has %d readings and %d are wanted: nothing was written", l.Group, l.N, l.Least)
		}
	}
	if text == "" {
		return "", fmt.Errorf("there is nothing to accept as %q; there is: %s", o.accept, strings.Join(groups, "; "))
	}
	name, err := correctionsFile(o, w)
	if err != nil {
		return "", err
	}
	if err := appendCorrections(name, text); err != nil {
		return "", err
	}
	return fmt.Sprintf("written to %s: every sheet of this shop goes by it from now on\n", name), nil
}

// correctionsFile is where the shop keeps what it has learned.
func correctionsFile(o options, w world) (string, error) {
	if o.folder != "" { // -o
		return o.folder, nil
	}
	dir := configDir(w)
	if dir == "" {
		return "", errors.New("there is no configuration folder to keep corrections in: -o FILE names a file")
	}
	return filepath.Join(dir, "contralay", correctionsName), nil
}

const correctionsName = "corrections.toml"

const correctionsHead = "# What this shop has learned from what it measured: the last entry of each kind is in use,\n# those before it are its history. Written by contralay.\n"

// appendCorrections adds to the shop's corrections; a file that could not be read back is
// left as it was.
func appendCorrections(name, text string) error {
	old, err := os.ReadFile(name)
	switch {
	case errors.Is(err, fs.ErrNotExist):
		old = []byte(correctionsHead)
	case err != nil:
		return err
	}
	whole := string(old) + text
	if _, err := catalogue.Read(strings.NewReader(whole), name); err != nil {
		return fmt.Errorf("nothing was written: %w", err)
	}
	if err := os.MkdirAll(filepath.Dir(name), 0o755); err != nil {
		return fmt.Errorf("nothing was written: %w", err)
	}
	return swapIn(name, []byte(whole))
}
