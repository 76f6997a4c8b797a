package paper

import (
	"crypto/sha256"
	"flag"
	"fmt"
	"os"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"contralay/ui/paper/figure"
	"contralay/ui/paper/origin"
)

var update = flag.Bool("update", false, "raise the release where a figure or a printed word has changed")

// Where the release is written, and what its pages were.
const (
	releaseSource = "origin/release.go"
	releasePages  = "testdata/release.golden"
)

// pagesOfToday is a hash of every figure and every printed word of the files of testdata, but
// for what the release itself changes.
func pagesOfToday(t *testing.T) string {
	t.Helper()
	h := sha256.New()
	for _, name := range []string{"demo", "whole", "feeds", "example", "trunk", "every-key"} {
		s := sheetFile(t, name)
		out, err := Make(s, Meta{On: "2026-05-11", File: name + ".toml"})
		if err != nil {
			t.Fatal(err)
		}
		o := origin.Of(s)
		blank := strings.NewReplacer(out.Identity, "", "release "+origin.Release, "", "release\u00a0"+origin.Release, "", o.Catalogue, "",
			o.Harness, "")
		fmt.Fprint(h, blank.Replace(string(out.HTML)))
		for _, l := range out.Lists {
			l.Sheet = ""
			text, err := CSV(l)
			if err != nil {
				t.Fatal(err)
			}
			h.Write(text)
		}
		figures, err := figure.All(s)
		if err != nil {
			t.Fatal(err)
		}
		h.Write(figures)
		fmt.Fprint(h, Check(s))
	}
	return fmt.Sprintf("%x", h.Sum(nil))[:24]
}

// A figure or a printed word that changes raises the release: a sheet of before and one of
// after say that two programs made them. With -update the last number of the release is raised
// where it has to be, and its pages are remembered beside it.
func TestReleaseIsRaised(t *testing.T) {
	if testing.Short() {
		t.Skip("the release is raised once for all that lands together")
	}
	text, err := os.ReadFile(releasePages)
	if err != nil && !*update {
		t.Fatal(err)
	}
	release, pages, _ := strings.Cut(strings.TrimSpace(string(text)), " ")
	today := pagesOfToday(t)
	switch {
	case pages == today && release == origin.Release:
		return
	case !*update && release == origin.Release:
		t.Fatalf("a figure or a printed word is another than in release %s, but its name is the same. Look at the change; then\n"+
			"go test ./ui/paper -run Release -update\nraises the release in ui/paper/%s", release, releaseSource)
	case !*update:
		t.Fatalf("the release is %s, and the pages remembered are those of %s:\ngo test ./ui/paper -run Release -update", origin.Release,
			release)
	}
	name := origin.Release
	if name == release { // not raised by hand
		name = raised(t, name)
		source, err := os.ReadFile(releaseSource)
		if err != nil {
			t.Fatal(err)
		}
		source = regexp.MustCompile(`(?m)^const Release = .*$`).ReplaceAll(source, []byte("const Release = "+strconv.Quote(name)))
		if err := os.WriteFile(releaseSource, source, 0o644); err != nil {
			t.Fatal(err)
		}
	}
	if err := os.WriteFile(releasePages, []byte(name+" "+today+"\n"), 0o644); err != nil {
		t.Fatal(err)
	}
}

// raised is the next name of a release: its last number, one more.
func raised(t *testing.T, name string) string {
	t.Helper()
	dot := strings.LastIndex(name, ".")
	n, err := strconv.Atoi(name[dot+1:])
	if err != nil {
		t.Fatalf("release %q does not end in a number: raise it by hand in ui/paper/%s", name, releaseSource)
	}
	return name[:dot+1] + strconv.Itoa(n+1)
}

func TestRaised(t *testing.T) {
	for was, want := range map[string]string{"0.2": "0.3", "0.9": "0.10", "1.4.19": "1.4.20", "7": "8"} {
		if got := raised(t, was); got != want {
			t.Errorf("after %s comes %s, want %s", was, got, want)
		}
	}
}
