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

// helpPages are the key table and the pages of the guide, in their order.
var helpPages = append([]string{"keys"}, guide.Names()...)

// openHelp opens the help at a topic; at the keys where there is no such topic.
func openHelp(m *desk.Model, topic string) {
	m.Open(desk.Screen{Kind: helpKind, Turn: max(0, slices.Index(helpPages, topic))})
}

// helpPage is one page of the guide, or the key table; + and - turn the pages.
func helpPage(m *desk.Model, w int, _ string) desk.Page {
	at := m.Front().Turn
	turn := func(m *desk.Model, by int) {
		m.Front().Turn = (at + by + len(helpPages)) % len(helpPages)
		m.Unput()
	}
	title, lines := "keys", []string(nil)
	if t, is := guide.Find(helpPages[at]); is {
		title, lines = t.Title, t.Lines(max(20, w-4))
	} else {
		lines = keyLines(w - 4)
	}
	p := desk.Page{Lines: []string{fmt.Sprintf("%s   page %d of %d, + - turns", title, at+1, len(helpPages))}}
	for _, l := range lines {
		p.Rows = append(p.Rows, desk.Row{Text: l, Step: turn})
	}
	return p
}

// keyLines is the key table in lines of at most w cells.
func keyLines(w int) []string {
	var out []string
	for _, b := range keyTable {
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
