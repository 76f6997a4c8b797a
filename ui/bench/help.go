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

// helping is which page of the help is open.
type helping struct{ at int }

// helpPages are the key table and the pages of the guide, in their order.
var helpPages = append([]string{"keys"}, guide.Names()...)

// openHelp opens the help at a topic; at the keys where there is no such topic.
func openHelp(m *desk.Model, topic string) {
	desk.State[helping](m).at = max(0, slices.Index(helpPages, topic))
	m.Show(helpKind, "")
}

// helpPage is one page of the guide, or the key table; + and - turn the pages.
func helpPage(m *desk.Model, w int, _ string) desk.Page {
	at := desk.State[helping](m).at
	turn := func(m *desk.Model, by int) {
		desk.State[helping](m).at = (at + by + len(helpPages)) % len(helpPages)
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
