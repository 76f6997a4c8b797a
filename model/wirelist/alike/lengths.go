package alike

import (
	"strings"

	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// withoutLengths takes the lengths with their unit out of the texts of both sides of a line: "600 mm" names no wire and no end.
func withoutLengths(near, far []string) (names, behind, lengths []string) {
	keep := func(texts []string) (kept []string) {
		for _, t := range texts {
			if _, ok := value.ParseLength(t, "", value.MarkUnknown); ok && strings.Contains(t, " ") {
				lengths = append(lengths, t)
			} else {
				kept = append(kept, t)
			}
		}
		return kept
	}
	names, behind = keep(near), keep(far)
	return names, behind, lengths
}

// withoutFrom takes a word off a near end that says that it is one, "from Relay 87".
func withoutFrom(end string) string {
	word, rest, ok := strings.Cut(end, " ")
	if folded := table.Fold(word); ok && (folded == "from" || folded == "von" || folded == "vom") {
		return strings.TrimSpace(rest)
	}
	return end
}
