package guide

import (
	"strings"
	"testing"
)

// A page stands on one screen of 80 x 24, in plain characters, and says something.
func TestPagesFitOneScreen(t *testing.T) {
	seen := map[string]bool{}
	for _, topic := range Topics() {
		lines := topic.Lines(76)
		most := 17
		if topic.Name == "file" { // an example that is whole; it scrolls
			most = 40
		}
		if len(lines) > most || len(lines) < 2 {
			t.Errorf("%s: %d lines, want 2 to %d", topic.Name, len(lines), most)
		}
		for _, l := range lines {
			if len(l) > 76 {
				t.Errorf("%s: a line of %d characters: %q", topic.Name, len(l), l)
			}
			for _, r := range l {
				if r < ' ' || r > '~' {
					t.Errorf("%s: %q is not plain", topic.Name, r)
				}
			}
		}
		if seen[topic.Name] || topic.Name != strings.ToLower(topic.Name) || strings.Contains(topic.Name, " ") {
			t.Errorf("topic %q", topic.Name)
		}
		seen[topic.Name] = true
		if got, ok := Find(strings.ToUpper(topic.Name)); !ok || got.Title != topic.Title {
			t.Errorf("%s is not found by its name", topic.Name)
		}
	}
	if len(Welcome()) != 3 {
		t.Errorf("a welcome of %d lines", len(Welcome()))
	}
}
