package words

import (
	"strings"

	"contralay/model/wirelist/table"
)

// Instructs reports whether a text says what to do with a thing, "cut the red lead", by the article behind its first word: no wire is
// called so.
func Instructs(text string) bool {
	w := strings.Fields(table.Fold(text))
	return len(w) > 1 && articles()[w[1]] && !articles()[w[0]] && !things()[w[0]] && !romance()[w[0]] // "luz de ré" has no article
}

// articles are words that stand before a thing. Common words, from memory, no source.
var articles = setOf(`the a an each every both all der die das den dem ein eine einen alle beide jede jeden le la les l un une chaque el los
	las una cada todos il lo gli i ogni tutti de het een elke alla varje`)
