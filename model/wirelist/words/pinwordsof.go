package words

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// IsWordsOf reports whether the words before the last of a heading of cavities are the first letters of another heading, "F/D pin"
// beside "Far device", or words of it, the last one among them: "Device terminal" beside "Field device".
func IsWordsOf(pins []string, of string) bool {
	w, far, letters := pins[:max(len(pins)-1, 0)], name.Words(name.WithoutBrackets(table.Fold(of))), ""
	for _, f := range far {
		letters += f[:1]
	}
	switch {
	case len(w) == 0 || len(far) == 0:
		return false
	case len(letters) > 1 && strings.Join(w, "") == letters:
		return true
	case len(far) == 1 && len(w) == 1 && len(far[0]) > 2 && strings.HasPrefix(w[0], far[0]) && len(w[0]) < len(far[0])+3:
		return true // with the letter that joins two words, "Geräteklemme"
	}
	return len(w) <= len(far) && slices.Equal(w, far[len(far)-len(w):])
}
