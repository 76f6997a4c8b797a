package words

import (
	"strings"
	"unicode"

	tea "github.com/charmbracelet/bubbletea"

	"contralay/model/visible"
)

// Key is one key as the bench sees it: "up", "enter", "+", "5", "q". Letters are
// without case; text holds the rune as typed, for a field that takes text.
type Key struct {
	Name  string
	Text  string
	Paste bool
}

// Cap is the key as its cap shows it.
func (k Key) Cap() string {
	if len([]rune(k.Name)) == 1 {
		return strings.ToUpper(k.Name)
	}
	return k.Name
}

// Split turns a message into single keys. The terminal library merges what is
// typed fast, or sent by a calliper, into one message of many runes; here each
// becomes a key of its own. A paste stays whole: only an open field takes it.
// A terminal sends Alt as Escape before the key, and the bench knows no key with Alt: what
// comes so is Escape with the next key close behind it, and counts as two keys.
func Split(msg tea.KeyMsg) []Key {
	if msg.Paste {
		return []Key{{Name: "paste", Text: clean(string(msg.Runes)), Paste: true}}
	}
	var out []Key
	if msg.Alt {
		out = append(out, Key{Name: "esc"})
		msg.Alt = false // or its name would say so
	}
	switch msg.Type {
	case tea.KeyRunes, tea.KeySpace:
		for _, r := range msg.Runes {
			out = append(out, Key{Name: runeName(r), Text: string(r)})
		}
		return out
	case tea.KeyCtrlC:
		return append(out, Key{Name: "ctrl+c"})
	case tea.KeyDelete:
		return append(out, Key{Name: "delete"})
	}
	return append(out, Key{Name: strings.ToLower(msg.String())})
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
	s = visible.Plain(s)
	if rs := []rune(s); len(rs) > longestPaste {
		return string(rs[:longestPaste])
	}
	return s
}
