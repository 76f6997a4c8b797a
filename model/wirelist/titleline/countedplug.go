package titleline

import (
	"strings"

	"contralay/model/wirelist/plugword"
	"contralay/model/wirelist/prose"
	"contralay/model/wirelist/table"
)

// CountedPlug is the plug of a line that is the word for one, the letter or the number that it has among others, and at most something in
// brackets behind: "Plug A (8 way)" of "Plug A (8 way):", "Prise 2"; "" of other lines.
func CountedPlug(text string) string {
	text = strings.TrimRight(text, " :")
	first, behind, ok := strings.Cut(strings.TrimRight(withoutBrackets(text), " :"), " ")
	if !ok || !prose.IsOrdinal(behind) {
		return ""
	}
	if f := table.Fold(first); !plugword.Is(f) && !isPlug[f] && f != "conn" {
		return ""
	}
	return text
}
