package words

import (
	"slices"
	"testing"

	tea "github.com/charmbracelet/bubbletea"
)

// Escape with a key close behind it is two keys, whichever key it is; a paste stays whole, and
// a burst of runes is a key each.
func TestSplit(t *testing.T) {
	for _, c := range []struct {
		name string
		msg  tea.KeyMsg
		want []string
	}{
		{"Enter", tea.KeyMsg{Type: tea.KeyEnter}, []string{"enter"}},
		{"Esc, Enter", tea.KeyMsg{Type: tea.KeyEnter, Alt: true}, []string{"esc", "enter"}},
		{"Esc, Esc", tea.KeyMsg{Type: tea.KeyEsc, Alt: true}, []string{"esc", "esc"}},
		{"Esc, down", tea.KeyMsg{Type: tea.KeyDown, Alt: true}, []string{"esc", "down"}},
		{"Esc, page down", tea.KeyMsg{Type: tea.KeyPgDown, Alt: true}, []string{"esc", "pgdown"}},
		{"Esc, Backspace", tea.KeyMsg{Type: tea.KeyBackspace, Alt: true}, []string{"esc", "backspace"}},
		{"Esc, Delete", tea.KeyMsg{Type: tea.KeyDelete, Alt: true}, []string{"esc", "delete"}},
		{"Esc, Ctrl C", tea.KeyMsg{Type: tea.KeyCtrlC, Alt: true}, []string{"esc", "ctrl+c"}},
		{"Esc, Ctrl Z", tea.KeyMsg{Type: tea.KeyCtrlZ, Alt: true}, []string{"esc", "ctrl+z"}},
		{"Esc, Q", tea.KeyMsg{Type: tea.KeyRunes, Runes: []rune("q"), Alt: true}, []string{"esc", "q"}},
		{"down", tea.KeyMsg{Type: tea.KeyDown}, []string{"down"}},
		{"a calliper", tea.KeyMsg{Type: tea.KeyRunes, Runes: []rune("1,2")}, []string{"1", ".", "2"}},
		{"a paste", tea.KeyMsg{Type: tea.KeyRunes, Runes: []rune("12\r3"), Paste: true}, []string{"paste"}},
	} {
		t.Run(c.name, func(t *testing.T) {
			var got []string
			for _, k := range Split(c.msg) {
				got = append(got, k.Name)
			}
			if !slices.Equal(got, c.want) {
				t.Errorf("%q, want %q", got, c.want)
			}
		})
	}
}
