// Package cited puts what a source says in the place of its id, so that a source stands once in a file and a person reads it
// in full.
package cited

import "strings"

// deepest is how deep sources may refer to sources. What is left then stays as it is written: two that refer to each other
// end here.
const deepest = 4

// In is a text with what words says of each id in braces. An id that words does not know stays as it is written.
func In(text string, words func(id string) (says string, known bool)) string {
	for range deepest {
		if !strings.Contains(text, "{") {
			return text
		}
		var b strings.Builder
		for rest := text; rest != ""; {
			before, after, open := strings.Cut(rest, "{")
			id, behind, closed := strings.Cut(after, "}")
			b.WriteString(before)
			if !open {
				break
			}
			if says, known := words(id); closed && known {
				b.WriteString(says)
				rest = behind
			} else {
				b.WriteByte('{')
				rest = after
			}
		}
		if b.String() == text {
			break
		}
		text = b.String()
	}
	return text
}
