package total

import (
	"slices"
	"strings"

	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

// isSentence reports whether a text is a short sentence, "Ferrules on every end.": no end of a wire has a full stop behind three words.
func isSentence(text string) bool {
	const least = 3 // words (no source)
	return strings.ContainsAny(text[max(0, len(text)-1):], ".!") && len(strings.Fields(text)) >= least
}

// saysSentences reports whether a row below the last wire is nothing but sentences, parted by wide gaps:
//
//	Ferrules on every end.   Motor side see maker's plate.
func saysSentences(b *shape.Block, i int) bool {
	filled, _ := b.Rows[i].Filled()
	return i > 0 && filled > 1 && allSentences(b.Rows[i]) &&
		!slices.ContainsFunc(b.Rows[i+1:], func(r table.Row) bool {
			_, _, counts := counted(b.Cols, r)
			return !counts && !shape.IsText(r) && !allSentences(r)
		})
}

// allSentences reports whether each cell of a row that says something is a sentence.
func allSentences(r table.Row) bool {
	return !slices.ContainsFunc(r.Cells, func(c string) bool { return c != "" && !isSentence(c) })
}
