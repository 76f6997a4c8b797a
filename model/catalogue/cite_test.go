package catalogue

import (
	"regexp"
	"strings"
	"testing"
)

// TestSourcesStandOnce: no sentence of more than 60 letters about where figures come from
// stands in the tables twice; every source is referred to; and none that is referred to is
// lacking, so that what a person reads has no id in braces.
func TestSourcesStandOnce(t *testing.T) {
	files, err := data.ReadDir("data")
	if err != nil {
		t.Fatal(err)
	}
	seen, used := map[string]string{}, map[string]bool{}
	for _, f := range files {
		b, err := data.ReadFile("data/" + f.Name())
		if err != nil || !strings.HasSuffix(f.Name(), ".toml") {
			continue
		}
		for _, m := range regexp.MustCompile(`(?m)^(?:names_source|source|document) *= "(.*)"$`).FindAllStringSubmatch(string(b), -1) {
			if before, twice := seen[m[1]]; twice && len(m[1]) > 60 {
				t.Errorf("%s and %s say it twice: %s", before, f.Name(), m[1])
			}
			seen[m[1]] = f.Name()
			for _, id := range regexp.MustCompile(`\{([^}]*)\}`).FindAllStringSubmatch(m[1], -1) {
				used[id[1]] = true
			}
		}
	}
	c := mustDefault(t)
	for _, id := range sortedNames(c.Sources) {
		if device := 'A' <= id[0] && id[0] <= 'Z'; !device && !used[id] {
			t.Errorf("nothing refers to %s", id)
		}
	}
	for name, o := range origins(c) {
		if strings.ContainsAny(o.Source, "{}") {
			t.Errorf("%s: %s", name, o.Source)
		}
	}
	for _, id := range c.InsertIDs() {
		if s := c.Inserts[id].NamesSource; strings.ContainsAny(s, "{}") {
			t.Errorf("%s: %s", id, s)
		}
	}
}

// What a shop's file refers to: its own sources and the program's; what no file has, and two
// that refer to each other, stay as written. Neither argument of Merge is changed.
func TestCite(t *testing.T) {
	const shop = `
[[source]]
id       = "our-bench"
document = "measured on our bench, against {drawing-41}"
place    = "book 3"

[[source]]
id       = "one"
document = "{two}"

[[source]]
id       = "two"
document = "{one}"

[[splice]]
id        = "S1"
build     = "butt"
over_mm   = 3.0
length_mm = 20.0
cma_min   = 300
cma_max   = 1500
source    = "outside {our-bench}; length {nobody}; mils {one}; a brace { alone"
standing  = "house"
`
	over := mustRead(t, shop)
	s, _ := Merge(mustDefault(t), over).Splice("S1")
	const want = "outside measured on our bench, against a maker's drawing of the AS22759/41 class, rev S, 2017, table I, book 3; " +
		"length {nobody}; mils {one}; a brace { alone"
	if s.Source != want {
		t.Errorf("%s, want %s", s.Source, want)
	}
	if was, _ := over.Splice("S1"); !strings.Contains(was.Source, "{our-bench}") {
		t.Errorf("what was merged is changed: %s", was.Source)
	}
}
