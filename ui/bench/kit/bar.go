package kit

import (
	"slices"
	"strings"

	"github.com/charmbracelet/bubbles/help"
	"github.com/charmbracelet/bubbles/key"

	"contralay/ui/draw"
)

// Shown is how a keycap is printed, where names of keys are those of the terminal
// library: arrows where they are understood, ^ v < > in plain characters.
func (t *Theme) Shown(keys ...string) string {
	var out []string
	for _, k := range keys {
		switch k {
		case "up":
			k = t.Signs.Up
		case "down":
			k = t.Signs.Down
		case "left":
			k = t.Signs.Left
		case "right":
			k = t.Signs.Right
		case "backspace":
			k = t.Signs.Backspace
		case "-":
			k = t.minus()
		case "enter":
			k = "Enter"
		case "esc":
			k = "Esc"
		default:
			if len(k) == 1 {
				k = strings.ToUpper(k)
			}
		}
		out = append(out, k)
	}
	gap := " "
	if len(keys) == 2 && strings.Contains("up down left right", keys[0]) && !t.ASCII {
		gap = "" // ↑↓ is read as one
	}
	return strings.Join(out, gap)
}

func (t *Theme) minus() string {
	if t.ASCII {
		return "-"
	}
	return "−"
}

// BarKey is a key on the bar.
type BarKey struct {
	key.Binding
	Worth int // the least is left out first where there is no room; Never is not
}

// Never is the worth of a key that is never left out.
const Never = 1 << 30

// NewKey is a key of the key table as the library holds it: what it hears, what is
// printed on the keycap, what it does.
func NewKey(keys []string, shown, says string) key.Binding {
	return key.NewBinding(key.WithKeys(keys...), key.WithHelp(shown, says))
}

// barGap parts two keys on the bar.
const barGap = "  "

// Bar draws the keys that work now in one line of at most w cells, in the order given.
// The library draws what is left after the least needed were left out; by itself it
// would cut off the end, where the help is.
func (t *Theme) Bar(keys []BarKey, w int) string {
	keys = slices.Clone(keys)
	wide := func(k BarKey) int {
		h := k.Help()
		return draw.Width(t.Plain(h.Key)) + 1 + draw.Width(t.Plain(h.Desc))
	}
	total := -len(barGap)
	for _, k := range keys {
		total += wide(k) + len(barGap)
	}
	for total > w && len(keys) > 0 {
		least := 0
		for k := range keys {
			if keys[k].Worth < keys[least].Worth {
				least = k
			}
		}
		if keys[least].Worth >= Never {
			break
		}
		total -= wide(keys[least]) + len(barGap)
		keys = slices.Delete(keys, least, least+1)
	}
	shown := make([]key.Binding, len(keys))
	for k := range keys {
		h := keys[k].Help()
		shown[k] = NewKey(keys[k].Keys(), t.Plain(h.Key), t.Plain(h.Desc))
	}
	m := t.help(0)
	return draw.Cut(m.ShortHelpView(shown), max(w, 0), t.ASCII)
}

// Keys is the page of keys in lines of at most w cells: keycap, then what it does,
// wrapped under itself.
func (t *Theme) Keys(keys []key.Binding, w int) []string {
	cap := 0
	for _, k := range keys {
		cap = max(cap, draw.Width(t.Plain(k.Help().Key)))
	}
	room := max(w-cap-1, 1)
	var group []key.Binding
	for _, k := range keys {
		shown := t.Plain(k.Help().Key)
		for _, line := range Wrap(t.Plain(k.Help().Desc), room) {
			// The library joins columns and wraps nothing: a line that goes on is a key
			// without a cap.
			group = append(group, NewKey([]string{"x"}, shown, line))
			shown = ""
		}
	}
	out := strings.Split(t.help(0).FullHelpView([][]key.Binding{group}), "\n")
	for k := range out {
		out[k] = draw.Cut(strings.TrimRight(out[k], " "), max(w, 0), t.ASCII)
	}
	return out
}

// help is the library's widget in our looks.
func (t *Theme) help(w int) help.Model {
	return help.Model{Width: w, ShortSeparator: barGap, FullSeparator: barGap, Styles: help.Styles{
		ShortKey: t.styles[Key], ShortDesc: t.styles[Quiet], ShortSeparator: t.styles[Text],
		FullKey: t.styles[Key], FullDesc: t.styles[Text], FullSeparator: t.styles[Text],
	}}
}

// Wrap breaks text at blanks into lines of at most w cells; a word that is longer is
// broken where it has to be. Lines that go on begin as far in as the first.
func Wrap(text string, w int) []string {
	w = max(w, 1)
	if draw.Width(text) <= w {
		return []string{text}
	}
	indent := text[:len(text)-len(strings.TrimLeft(text, " "))]
	if len(indent) >= w {
		indent = ""
	}
	var out []string
	line, begun := indent, false
	for _, word := range strings.Fields(text) {
		if begun && draw.Width(line)+1+draw.Width(word) > w {
			out = append(out, line)
			line, begun = indent, false
		}
		if begun {
			line += " "
		}
		for _, c := range clusters(word) {
			if draw.Width(line)+draw.Width(c) > w && strings.TrimSpace(line) != "" {
				out = append(out, line)
				line = indent
			}
			line += c
		}
		begun = true
	}
	return append(out, line)
}
