package titleline

import (
	"slices"
	"strings"

	"contralay/model/wirelist/value"
)

// NamesWithMore reports whether a line is a designator, or a few words of which one is for a connector, with more of it in brackets behind:
// "J4 (front left wheel)", "Nose bulkhead (8 pin)". Right above a table it names its connector, whatever heading the paper has.
func NamesWithMore(text string) bool {
	front, rest, ok := strings.Cut(text, " (")
	if !ok || !strings.HasSuffix(rest, ")") || strings.ContainsAny(front, ".:;") {
		return false
	}
	w := bareWords(front)
	if len(w) == 0 || len(w) > mostName {
		return false
	}
	return len(w) == 1 && value.IsDesignator(front) || namesAtEnd(w) || countsPins(rest)
}

// countsPins reports whether what stands in brackets begins with how many cavities there are, "8 pin)", "6-way, grey)".
func countsPins(rest string) bool {
	w := fieldsOf(strings.ReplaceAll(rest, "-", " "))
	return len(w) > 1 && strings.Trim(w[0], "0123456789") == "" && slices.Contains([]string{"pin", "pins", "pole", "pos", "position",
		"positions", "way", "ways", "polig", "pol", "voies", "vie", "vias", "cavity", "cavities", "contact", "contacts"}, w[1])
}
