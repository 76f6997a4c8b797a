package block

import (
	"strings"

	"contralay/model/wirelist/point"
)

// takeValues takes a text behind the ends of a run for its colour, or its colour and size, where the colour is written in the short
// forms that the list has a key to; false where the text is anything else, or the run has a colour.
//
//	N brown  U blue  W white
//
//	- battery + -> fuse 1 : N
//	- fuse 1 -> lamp : U/W 1.0 mm²
func (f *finder) takeValues(text string, rest []string) bool {
	if text == "" || rest[0] != "" || len(f.h.Colours) == 0 {
		return false
	}
	if f.h.Colours.Written(text) {
		rest[0] = text
		return true
	}
	colour, size := point.ValuesByKey(strings.ReplaceAll(text, "; ", " "), f.h.Colours)
	if colour == "" || size != "" && rest[1] != "" {
		return false
	}
	if rest[0] = colour; size != "" {
		rest[1] = size
	}
	return true
}
