package bench

import (
	"fmt"
	"slices"
	"strings"

	"github.com/charmbracelet/bubbles/key"

	"contralay/ui/bench/desk"
	"contralay/ui/bench/kit"
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
		title, lines = t.Title, t.Lines(max(20, w-1))
	} else {
		lines = m.Theme.Keys(keyBindings(), w-1)
	}
	return desk.Page{Lines: []string{fmt.Sprintf("%s   page %d of %d, + - turns pages", title, at+1, len(helpPages))},
		Widget: m.Read(append([]string{""}, lines...), w-1), Turn: turn}
}

// keyBindings are the lines of the key table as the library holds them.
func keyBindings() []key.Binding {
	var out []key.Binding
	for _, b := range keyTable {
		out = append(out, kit.NewKey(b.keys, b.name, b.help))
	}
	return out
}

// KeyText is the key table for the command line.
func KeyText(w int) string {
	var b strings.Builder
	for _, l := range kit.NewTheme(draw.Palette{}, true).Keys(keyBindings(), w) {
		b.WriteString(l + "\n")
	}
	return b.String()
}
