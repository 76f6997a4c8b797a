package words

import (
	"contralay/model/unit"
	"contralay/ui/draw"
)

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

// Grams is a mass, or a dash where part of it is not known.
func Grams(g unit.Gram, known bool) string {
	if !known {
		return "-"
	}
	return unit.Fixed(g, 0) + " g"
}
