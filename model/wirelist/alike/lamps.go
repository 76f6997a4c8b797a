package alike

import (
	"strings"

	"contralay/model/wirelist/point"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/words"
)

// withLamp gives the name of a lamp its last word back, which was taken for the shade of the colour behind it: "shift light grn 22" is a
// shift light in green. A name that stands without it leaves it with the colour, "fuel pump light blue".
func withLamp(rest string, v piece) (string, piece) {
	word, colour, ok := strings.Cut(v.colour, " ")
	of := table.Fold(rest[strings.LastIndexByte(rest, ' ')+1:])
	if !ok || !words.IsLight(table.Fold(word)) || !words.IsOfLamp(of) || !point.IsColour(colour) {
		return rest, v
	}
	v.text, v.colour = strings.Replace(v.text, v.colour, colour, 1), colour
	return rest + " " + word, v
}
