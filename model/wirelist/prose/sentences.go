package prose

import (
	"slices"
	"strings"
	"unicode"

	"contralay/model/wirelist/table"
)

// TakeSentences parts some texts of the rows above a table in the rows that are a whole sentence, with a full stop behind it, or a line
// of a drawing, or tells a cavity, and the texts that describe what stands below.
func TakeSentences(titles []table.Row, texts []string) (sentences []table.Row, others []string) {
	const least = 4 // words of a sentence (no source)
	for _, t := range texts {
		at := slices.IndexFunc(titles, func(r table.Row) bool { _, text := r.Filled(); return text == t })
		drawn := strings.IndexFunc(t, unicode.IsLetter) < 0 // a line of a plug's face
		if at >= 0 && (drawn || TellsCavity(t) || strings.HasSuffix(t, ".") && len(strings.Fields(t)) >= least) {
			sentences = append(sentences, titles[at])
		} else {
			others = append(others, t)
		}
	}
	return sentences, others
}
