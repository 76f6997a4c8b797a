package main

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strings"

	"contralay/calc"
	"contralay/calc/formula/learn"
	runquery "contralay/calc/query/run"
	"contralay/calc/sheet"
	"contralay/model/catalogue"
	"contralay/model/file"
	"contralay/ui/hours"
	"contralay/ui/paper"
)

// measuredOf compares what was measured of many harnesses with what was predicted, and
// accepts what it is told to.
func measuredOf(names []string, o options, w world) (int, error) {
	if len(names) == 0 && o.withdraw == "" {
		return usage, misuse{"measured needs one FILE or more that holds what was measured (contralay --help)"}
	}
	cat, err := entries(o, w)
	if err != nil {
		return usage, err
	}
	if o.accept != "" && o.withdraw != "" {
		return usage, misuse{"--accept and --withdraw do not go together: give one after the other"}
	}
	var all []learn.Reading
	var sheets []*sheet.Sheet
	lost := 0
	for _, name := range names {
		d, err := readTicked(name, w)
		if err != nil {
			return usage, err
		}
		s := slowly(w, "working out lay-ups", func() *sheet.Sheet { return calc.Complete(&d.Harness, cat, nil) })
		sheets = append(sheets, s)
		all = append(all, runquery.Measured(s, called(name))...)
		lost += runquery.MeasuredNowhere(s)
	}
	all, twice := once(all)
	for _, name := range o.without {
		if !slices.ContainsFunc(all, func(r learn.Reading) bool { return r.Of == name }) {
			return usage, fmt.Errorf("--without %q: no reading has that name. Write the name as the list prints it: %s", name, namesOf(all))
		}
	}
	lessons := learn.Lessons(all, learn.Options{Without: o.without})
	var b strings.Builder
	if len(lessons) == 0 && len(names) > 0 {
		b.WriteString("these files hold no readings: nothing was measured of layers, tubes or wire used\n")
	}
	paces, pauses := pacesOf(sheets, names)
	for _, l := range lessons {
		fmt.Fprintln(&b, strings.Join(paper.Lesson(l), "\n"))
		if _, in := cat.Correction(l.Group); in {
			fmt.Fprintln(&b, "  in use: "+hours.InUse(cat, l.Group))
		}
		if c, may := paper.Accepted(l, w.now().Format("2006-01-02"), ""); may {
			b.WriteString(actsSays(acts(sheets, names, cat, c), "accepting it changes"))
		}
	}
	if twice > 0 {
		fmt.Fprintf(&b, "readings that these files hold more than once, counted once: %d\n", twice)
	}
	if lost > 0 {
		fmt.Fprintf(&b, "readings of a branch or layer that their harness does not have, not counted: %d\n", lost)
	}
	b.WriteString(pacesSay(paces, pauses, cat, sheets, names))
	if o.withdraw != "" {
		says, err := withdraw(o, cat, sheets, names, w)
		if err != nil {
			return usage, err
		}
		b.WriteString(says)
	}
	if o.accept != "" {
		says, err := accept(lessons, paces, names, o, w)
		if err != nil {
			return usage, err
		}
		b.WriteString(says)
	}
	return ok, print(w.out, b.String())
}

// once leaves out what stands there twice: a file given twice, a copy of it, its .bak.
func once(all []learn.Reading) (kept []learn.Reading, twice int) {
	seen := map[learn.Reading]bool{}
	for _, r := range all {
		_, what, _ := strings.Cut(r.Of, " ") // whatever the file is called
		key := learn.Reading{Group: r.Group, Of: what, Predicted: r.Predicted, Measured: r.Measured}
		if seen[key] {
			twice++
			continue
		}
		seen[key] = true
		kept = append(kept, r)
	}
	return kept, twice
}

// namesOf is a few names of readings.
func namesOf(all []learn.Reading) string {
	var out []string
	for _, r := range all {
		if !slices.Contains(out, r.Of) && len(out) < 4 {
			out = append(out, r.Of)
		}
	}
	return strings.Join(out, "; ")
}

// accept writes one lesson, or all that may be, into the shop's corrections.
func accept(lessons []learn.Lesson, paces []learn.Pace, names []string, o options, w world) (string, error) {
	var groups, base []string
	for _, n := range names {
		base = append(base, called(n))
	}
	var odd []string
	text := ""
	for _, l := range lessons {
		groups = append(groups, l.Group)
		if o.accept != "all" && o.accept != l.Group {
			continue
		}
		if len(l.Outliers) > 0 && !o.keepOdd {
			odd = append(odd, fmt.Sprintf("%s: %s", l.Group, l.Outliers[0].Of))
			continue
		}
		c, may := paper.Accepted(l, w.now().Format("2006-01-02"), strings.Join(base, ", "))
		switch {
		case may:
			text += c.Text()
		case o.accept == l.Group:
			return "", fmt.Errorf("%s has %d readings and needs %d, so nothing was written", l.Group, l.N, l.Least)
		}
	}
	for _, p := range paces {
		groups = append(groups, p.Group)
		if o.accept != "all" && o.accept != p.Group {
			continue
		}
		c, may := hours.Accepted(p, w.now().Format("2006-01-02"), strings.Join(base, ", "))
		switch {
		case may:
			text += c.Text()
		case o.accept == p.Group:
			return "", fmt.Errorf("%s has %d steps and needs %d that took some time, so nothing was written", p.Group, p.N, p.Least)
		}
	}
	if len(odd) > 0 && (text == "" || o.accept != "all") {
		return "", fmt.Errorf("nothing was written, because there is an odd one out in %s. Leave it out with --without, or take it with "+
			"--keep-odd",
			strings.Join(odd, "; "))
	}
	if text == "" {
		return "", fmt.Errorf("there is no group %q to accept. The groups are %s", o.accept, strings.Join(groups, "; "))
	}
	name, err := correctionsFile(o, w)
	if err != nil {
		return "", err
	}
	if err := appendCorrections(name, text); err != nil {
		return "", err
	}
	says := fmt.Sprintf("The correction was written to %s. Every sheet of this shop uses it from now on.\n", shown(name))
	if len(odd) > 0 {
		says += "not accepted, because of an odd one out: " + strings.Join(odd, "; ") + "\n"
	}
	return says, nil
}

// correctionsFile is where the shop keeps what it has learned.
func correctionsFile(o options, w world) (string, error) {
	if o.folder != "" { // -o
		return o.folder, nil
	}
	dir := configDir(w)
	if dir == "" {
		return "", errors.New("there is no configuration folder for the corrections. Name a file with -o FILE")
	}
	return filepath.Join(dir, "contralay", correctionsName), nil
}

const correctionsName = "corrections.toml"

const correctionsHead = "# Corrections that this shop accepted from what it measured. The last entry of each kind is\n# in use, those " +
	"before it are its history. Written by contralay.\n"

// appendCorrections adds to the shop's corrections; a file that could not be read back is
// left as it was. Another program that adds to them waits, so that neither loses what the other
// adds.
func appendCorrections(name, text string) error {
	if err := os.MkdirAll(filepath.Dir(name), 0o755); err != nil {
		return fmt.Errorf("nothing was written: %w", err)
	}
	err := file.Alone(name, func() error {
		old, err := file.Bytes(name, "the corrections", catalogue.MostBytes)
		switch {
		case errors.Is(err, fs.ErrNotExist):
			old = []byte(correctionsHead)
		case err != nil:
			return err
		}
		if n := len(old); n > 0 && old[n-1] != '\n' {
			old = append(old, '\n') // somebody wrote the last line by hand
		}
		whole := string(old) + text
		if _, err := catalogue.Read(strings.NewReader(whole), name); err != nil {
			return err
		}
		return file.Write(name, []byte(whole))
	})
	if err != nil && !errors.As(err, new(file.NotOnDisk)) {
		return fmt.Errorf("nothing was written: %w", err)
	}
	return err
}
