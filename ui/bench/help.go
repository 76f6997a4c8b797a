package bench

import (
	"fmt"
	"slices"
	"strings"

	"contralay/ui/draw"
	"contralay/ui/guide"
)

// helpScreen is one page of the guide for what is in front, or the key table; + and
// - turn the pages.
func helpScreen(name string) screen {
	pages := append([]string{"keys"}, guide.Names()...)
	at := max(0, slices.Index(pages, name))
	return screen{name: "help", page: func(m *Model, w int) page {
		turn := func(m *Model, by int) {
			at = (at + by + len(pages)) % len(pages)
			delete(m.cursor, m.cursorKey())
			delete(m.on, m.cursorKey())
		}
		p := page{}
		var lines []string
		if pages[at] == "keys" {
			lines = keyLines(w - 4)
			p.lines = []string{fmt.Sprintf("keys   page %d of %d, + - turns", at+1, len(pages))}
		} else {
			t, _ := guide.Find(pages[at])
			lines = t.Lines(max(20, w-4))
			p.lines = []string{fmt.Sprintf("%s   page %d of %d, + - turns", t.Title, at+1, len(pages))}
		}
		for _, l := range lines {
			p.rows = append(p.rows, row{text: l, step: turn})
		}
		return p
	}}
}

// helpFor is the page about what is in front.
func (m *Model) helpFor() string {
	switch m.top() {
	case "why", "figures":
		return "why"
	case "unsaved work", "file changed":
		return "recovery"
	case "branches", "menu", "quit":
		return "start"
	case "layer", "compare":
		return "layers"
	case "run", "learned":
		return "run"
	case "import", "told":
		return "lists"
	case "ends", "end", "splices", "splice", "lists":
		return "ends"
	case "cover", "add cover", "boot", "threading", "margins":
		return "sheath"
	case "feeds", "feed":
		return "protection"
	}
	if len(m.stack) > 0 {
		return "wires" // a wire, or a list to choose from for one
	}
	return strings.ToLower(stepNames[m.step])
}

// keyLines is the key table in lines of at most w cells.
func keyLines(w int) []string {
	var out []string
	for _, b := range table() {
		for k, t := range wrap(b.help, max(20, w-12)) {
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
