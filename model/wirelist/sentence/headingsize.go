package sentence

import (
	"strings"

	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// SizeOfHeading is the size of wire that a heading says between two commas or in brackets, with nothing beside it but a word for
// wires: "FAN (relay coil, 2 way, 20 AWG)", "J4, 0.75 mm²"; "" where it says none, or two.
func SizeOfHeading(heading string, mark value.Mark) (size string) {
	if strings.HasSuffix(heading, ".") {
		return ""
	}
	for piece := range strings.FieldsFuncSeq(separated(heading), func(r rune) bool { return strings.ContainsRune("()[];|", r) }) {
		var words []string
		for _, w := range strings.Fields(piece) {
			switch strings.Trim(table.Fold(w), ":") {
			case "wire", "wires", "wired", "in", "leitung", "leitungen", "adern", "litze", "fil", "fils", "cable", "cables", "cavo", "cavi":
			default:
				words = append(words, w)
			}
		}
		text := strings.Join(words, " ")
		g, ok := value.ParseGauge(text, value.BareAWG, mark)
		if !ok || g.Size == "" || g.Spec != "" || g.IsCable() || strings.Trim(text, "0123456789., ") == "" {
			continue
		}
		if size != "" && size != g.Size {
			return ""
		}
		size = g.Size
	}
	return size
}

// separated writes the commas between two pieces, and the dashes between blanks, as semicolons: those within a number stay.
func separated(text string) string {
	for _, sep := range []string{", ", " - ", " – ", " — "} {
		text = strings.ReplaceAll(text, sep, ";")
	}
	return text
}
