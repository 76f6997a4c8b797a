package words

import (
	"strings"

	"contralay/ui/draw"
)

// Wrap breaks text at spaces.
func Wrap(text string, w int) []string {
	if draw.Width(text) <= w {
		return []string{text}
	}
	var out []string
	lead := text[:len(text)-len(strings.TrimLeft(text, " "))]
	cur := lead
	for _, word := range strings.Fields(text) {
		switch {
		case strings.TrimSpace(cur) == "":
			cur = lead + word
		case draw.Width(cur)+1+draw.Width(word) <= w:
			cur += " " + word
		default:
			out = append(out, cur)
			cur = lead + word
		}
	}
	return append(out, cur)
}
