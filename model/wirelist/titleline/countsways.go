package titleline

import (
	"strings"

	"contralay/model/wirelist/pinword"
	"contralay/model/wirelist/table"
)

// CountsWays reports whether a text is how many cavities a plug has, and no name: "3 way", "12-pin, sealed".
func CountsWays(text string) bool {
	w := strings.FieldsFunc(table.Fold(text), func(r rune) bool { return r == ' ' || r == '-' || r == ',' })
	if len(w) < 2 || strings.Trim(w[0], "0123456789") != "" {
		return false
	}
	switch w[1] {
	case "way", "ways", "polig", "pole", "poles", "poli", "polos", "voies", "vias", "vie":
		return true
	}
	return pinword.Is(w[1])
}
