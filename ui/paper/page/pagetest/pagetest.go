// Package pagetest compares the shape of printed pages with one that a person has looked at: which tags stand where, in
// what class, how large and how far apart. Words are left out, so that a page may say something else in the same place;
// so are widths that follow from words.
package pagetest

import (
	"flag"
	"os"
	"regexp"
	"strings"
	"testing"

	"contralay/ui/paper/page"
)

var update = flag.Bool("shape", false, "write the shapes of pages anew; look at the pages before keeping them")

var (
	part = regexp.MustCompile(`<[^>]*>|[^<]+`)
	attr = regexp.MustCompile(`([a-z-]+)="([^"]*)"`)
	// a line of its own
	begins = regexp.MustCompile(`^<(tr|thead|tbody|table|svg|section|header|footer|h2|h3|div class="(block|beside|picture)"|circle|text|path|rect|polyline)`)
)

// Shape is what a page looks like without its words: each tag with its class, its style and its geometry, and a dot for
// a text. The widths of tables and of their columns, which follow from words, are left out.
func Shape(html string) string {
	var b strings.Builder
	for _, p := range part.FindAllString(html, -1) {
		switch {
		case strings.HasPrefix(p, "</"):
		case strings.HasPrefix(p, "<"):
			if begins.MatchString(p) {
				b.WriteString("\n")
			}
			b.WriteString(tag(p))
		case strings.TrimSpace(p) != "":
			b.WriteString("·")
		}
	}
	return strings.TrimSpace(b.String()) + "\n"
}

// unsaid are attributes that hold words, or follow from them.
var unsaid = map[string]bool{"aria-label": true, "data-of": true, "role": true, "xmlns": true, "font-family": true, "textLength": true}

func tag(p string) string {
	name := strings.Fields(strings.Trim(p, "<>/"))[0]
	out := "<" + name
	for _, a := range attr.FindAllStringSubmatch(p, -1) {
		switch {
		case unsaid[a[1]], a[1] == "style" && (name == "table" || name == "col"):
		case a[1] == "class":
			out += "." + strings.ReplaceAll(a[2], " ", ".")
		default:
			out += " " + a[1] + "=" + a[2]
		}
	}
	return out + ">"
}

// Compare lays blocks into pages and compares their shape with that of a file.
func Compare(t *testing.T, name string, blocks []page.Block) {
	t.Helper()
	ComparePages(t, name, page.Lay(blocks).Pages)
}

// ComparePages compares the shape of pages with that of a file.
func ComparePages(t *testing.T, name string, pages []page.Page) {
	t.Helper()
	var b strings.Builder
	for _, p := range pages {
		b.WriteString("== page\n" + Shape(string(p.HTML)))
	}
	got := b.String()
	if *update {
		if err := os.WriteFile(name, []byte(got), 0o600); err != nil {
			t.Fatal(err)
		}
		return
	}
	text, err := os.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	want := strings.Split(string(text), "\n")
	for n, line := range strings.Split(got, "\n") {
		if n >= len(want) || line != want[n] {
			t.Errorf("%s, line %d: the page is %s. Where that is meant, look at it, and write it anew with -shape", name, n+1, line)
			return
		}
	}
	if len(strings.Split(got, "\n")) != len(want) {
		t.Errorf("%s has more than the page", name)
	}
}
