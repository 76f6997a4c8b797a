package titleline

import (
	"strings"

	"contralay/model/wirelist/commas"
)

// CommaParts parts a text at its commas, those in brackets and those of decimals left alone.
func CommaParts(text string) (all []string) {
	from, deep := 0, 0
	for i := range len(text) {
		switch text[i] {
		case '(', '[':
			deep++
		case ')', ']':
			deep--
		case ',':
			if deep <= 0 && !commas.IsDecimal(text, i) {
				all = append(all, text[from:i])
				from = i + 1
			}
		}
	}
	return append(all, text[from:])
}

// InFrontOf is what a title says before its last comma of the thing that has the connector named behind: "Boîtier ABS" of "Boîtier ABS,
// connecteur X5"; "" where the name has it.
func InFrontOf(text, name string) string {
	if i := strings.LastIndex(text, ", "); i > 0 && !strings.Contains(name, text[:i]) && strings.HasSuffix(text, name) {
		return text[:i]
	}
	return ""
}
