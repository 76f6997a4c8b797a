package saidonce

import (
	"slices"
	"strings"

	"contralay/model/wirelist/table"
	"contralay/model/wirelist/words"
)

// clause is a piece of a sentence between two signs, or before or behind a word that leads to exceptions.
type clause struct {
	words []string
	aside bool // it stands in brackets: what follows goes on with what stood before
}

// clausesOf parts a text in its clauses.
func clausesOf(text string) (all []clause) {
	now := clause{}
	end := func(aside bool) {
		if len(now.words) > 0 {
			all = append(all, now)
		}
		now = clause{aside: aside}
	}
	for w := range strings.FieldsSeq(strings.NewReplacer("(", " ( ", ")", " ) ", ";", " , ", ":", " ").Replace(text)) {
		bare := strings.TrimRight(w, ",.!")
		switch {
		case w == "(":
			end(true)
		case w == ")":
			end(false)
		case words.IsExcept(table.Fold(bare)):
			end(now.aside)
		case bare != "":
			now.words = append(now.words, bare)
		}
		if bare != w {
			end(now.aside)
		}
	}
	end(false)
	return slices.Clip(all)
}
