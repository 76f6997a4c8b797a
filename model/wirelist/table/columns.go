package table

import "strings"

// Lists that were copied out of a letter or a terminal have no sign between their cells:
// columns stand under each other, two blanks or more apart.

// field is one cell of such a line and where it stands, in characters.
type field struct {
	text     string
	from, to int
}

// gapped parts a line at two blanks and more, and at tabs.
func gapped(line string) (all []field) {
	runes := []rune(line)
	blank := func(i int) bool { return i >= len(runes) || runes[i] == ' ' || runes[i] == '\t' }
	for i := 0; i < len(runes); {
		if blank(i) {
			i++
			continue
		}
		end := i
		for end < len(runes) && !(blank(end) && blank(end+1)) {
			end++
		}
		all = append(all, field{strings.TrimSpace(string(runes[i:end])), i, end})
		i = end
	}
	return all
}
