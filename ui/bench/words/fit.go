package words

import (
	"strings"

	"contralay/ui/draw"
)

// Text that has to fit a width.

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

// Tail is the end of a text that is too long for its place: where the typing goes on.
func Tail(s string, w int) string {
	const least = 8
	runes := []rune(s)
	for len(runes) > least && draw.Width(string(runes)) > max(w, least) {
		runes = runes[1:]
	}
	if len(runes) < len([]rune(s)) {
		return "..." + string(runes[min(3, len(runes)):])
	}
	return s
}
