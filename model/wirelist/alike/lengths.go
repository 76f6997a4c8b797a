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
			bare, remark := t, ""
			if open := strings.Index(t, " ("); open > 0 && strings.HasSuffix(t, ")") { // "16 m (through the mast)"
				bare, remark = t[:open], t[open+2:len(t)-1]
			}
			if _, ok := value.ParseLength(bare, "", value.MarkUnknown); ok && strings.Contains(bare, " ") {
				lengths = append(lengths, bare)
				if remark != "" {
					lengths = append(lengths, remark)
				}
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

// nameBeforeEnd parts what a wire is called off its near end, where the other lines have nothing before it: "spare, panel breaker 8".
// end is "" where what is behind the comma is a cavity, "Panel, 8".
func nameBeforeEnd(text string) (called, end string) {
	called, end, ok := strings.Cut(text, ", ")
	called, end = strings.TrimSpace(called), strings.TrimSpace(end)
	if !ok || called == "" || len(end) < 5 || strings.Contains(end, ", ") || saysPin(end) || saysEnd(called) {
		return "", ""
	}
	return called, end
}
