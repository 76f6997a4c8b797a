package words

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// NamedPlug writes the designator of a title first that says of a plug how it is called, "plug on tiller = TL1 (8 way)": "TL1 (8 way) plug
// on tiller". Any other text is given as it is.
func NamedPlug(text string) string {
	what, called, ok := strings.Cut(text, " = ")
	first, _, _ := strings.Cut(called, " ")
	first = strings.TrimRight(first, ".,:;")
	if !ok || strings.Contains(called, " = ") || !name.IsDesignator(first) || first != strings.ToUpper(first) ||
		!slices.ContainsFunc(name.Words(table.Fold(what)), name.IsConnectorWord) {
		return text
	}
	return strings.TrimRight(called, ".,:; ") + " " + what
}
