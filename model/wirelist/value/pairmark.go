package value

import (
	"strconv"
	"strings"

	"contralay/model/wirelist/table"
)

// IsPairMark reports whether a text says nothing but which pair of its cable a core is in: "pair 1", "Paar 3". "Pair 22" is one of that
// size: wire is made in even sizes from 10 on.
func IsPairMark(text string) bool {
	if len(text) < 4 || text[0] != 'p' && text[0] != 'P' && text[0] != 'c' && text[0] != 'C' {
		return false // most texts
	}
	word, number, _ := strings.Cut(table.Fold(text), " ")
	switch word {
	case "pair", "pr", "paar", "paire", "par", "coppia", "para":
	default:
		return false
	}
	n, err := strconv.Atoi(number)
	return err == nil && n > 0 && (n < 10 || n%2 == 1)
}
