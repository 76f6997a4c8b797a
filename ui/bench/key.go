package bench

import (
	"strings"
	"unicode"

	tea "github.com/charmbracelet/bubbletea"
)

// key is one key as the bench sees it: "up", "enter", "+", "5", "q". Letters are
// without case; text holds the rune as typed, for a field that takes text.
type key struct {
	name  string
	text  string
	paste bool
}

// split turns a message into single keys. The terminal library merges what is
// typed fast, or sent by a calliper, into one message of many runes; here each
// becomes a key of its own. A paste stays whole: only an open field takes it.
// Escape that came together with a rune counts as escape, then the rune.
func split(msg tea.KeyMsg) []key {
	if msg.Paste {
		return []key{{name: "paste", text: clean(string(msg.Runes)), paste: true}}
	}
	var out []key
	if msg.Alt {
		out = append(out, key{name: "esc"})
	}
	switch msg.Type {
	case tea.KeyRunes, tea.KeySpace:
		for _, r := range msg.Runes {
			out = append(out, key{name: runeName(r), text: string(r)})
		}
		return out
	case tea.KeyCtrlC:
		return append(out, key{name: "ctrl+c"})
	case tea.KeyDelete:
		return append(out, key{name: "delete"})
	}
	return append(out, key{name: strings.ToLower(msg.String())})
}

func runeName(r rune) string {
	switch r {
	case '−', '–':
		return "-"
	case '×':
		return "*"
	case '÷':
		return "/"
	case ',':
		return "."
	case '=':
		return "+" // the same key without Shift
	case ' ':
		return "space"
	}
	return string(unicode.ToLower(r))
}

// longestPaste bounds what a field takes from the clipboard.
const longestPaste = 200

func clean(s string) string {
	s = strings.Map(func(r rune) rune {
		if unicode.IsControl(r) {
			return -1
		}
		return r
	}, s)
	if rs := []rune(s); len(rs) > longestPaste {
		return string(rs[:longestPaste])
	}
	return s
}
