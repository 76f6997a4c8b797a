package bench

import (
	"fmt"
	"slices"
	"strings"

	"contralay/ui/bench/desk"
	"contralay/ui/bench/words"
	"contralay/ui/draw"
	"contralay/ui/guide"
)

// helpScreen is one page of the guide for what is in front, or the key table; + and
// - turn the pages.
func helpScreen(name string) desk.Screen {
	pages := append([]string{"keys"}, guide.Names()...)
	at := max(0, slices.Index(pages, name))
	return desk.Screen{Kind: helpKind, Page: func(m *desk.Model, w int) desk.Page {
		turn := func(m *desk.Model, by int) {
			at = (at + by + len(pages)) % len(pages)
			delete(m.Cursor, m.CursorKey())
			delete(m.On, m.CursorKey())
		}
		p := desk.Page{}
		var lines []string
		if pages[at] == "keys" {
			lines = keyLines(w - 4)
			p.Lines = []string{fmt.Sprintf("keys   page %d of %d, + - turns", at+1, len(pages))}
		} else {
			t, _ := guide.Find(pages[at])
			lines = t.Lines(max(20, w-4))
			p.Lines = []string{fmt.Sprintf("%s   page %d of %d, + - turns", t.Title, at+1, len(pages))}
		}
		for _, l := range lines {
			p.Rows = append(p.Rows, desk.Row{Text: l, Step: turn})
		}
		return p
	}}
}

// keyLines is the key table in lines of at most w cells.
func keyLines(w int) []string {
	var out []string
	for _, b := range table() {
		for k, t := range words.Wrap(b.help, max(20, w-12)) {
			name := b.name
			if k > 0 {
				name = ""
			}
			out = append(out, fmt.Sprintf("%-11s %s", name, t))
		}
	}
	return out
}

// KeyText is the key table for the command line.
func KeyText(w int) string {
	var b strings.Builder
	for _, l := range keyLines(w) {
		b.WriteString(draw.Plain(l) + "\n")
	}
	return b.String()
}
