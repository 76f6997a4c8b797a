package titleline

import (
	"strings"
	"unicode"

	"contralay/model/wirelist/signs"
)

// roundPage are signs round what says which page it is.
var roundPage = signs.Of(" .:()-*")

// IsPageMark reports whether a text says which page it is: "Page 2", "Sheet 1 of 3", "Blatt
// 2/3", "continued".
func IsPageMark(folded string) bool {
	text := roundPage.Trim(folded)
	end := strings.IndexFunc(text, func(r rune) bool { return !unicode.IsLetter(r) })
	if end < 0 {
		end = len(text)
	}
	word, rest := text[:end], text[end:]
	switch word {
	case "page", "sheet", "blatt", "seite", "feuille", "hoja", "pagina", "foglio", "folio", "strona", "ark", "blad":
		some := false
		for _, w := range strings.FieldsFunc(rest, func(r rune) bool { return strings.ContainsRune(" /.:-", r) }) {
			switch {
			case strings.Trim(w, "0123456789") == "":
				some = true
			case w != "of" && w != "von" && w != "de" && w != "sur" && w != "di" && w != "van" && w != "av" && w != "z":
				return false
			}
		}
		return some
	case "continued", "cont", "contd", "fortsetzung", "suite", "continuacion", "segue":
		return len(rest) <= 2 || strings.HasPrefix(rest, " from") || strings.HasPrefix(rest, " on")
	}
	return false
}
