package wirelist

import (
	"slices"
	"strings"
)

// What stands among the rows of a list and is none: who drew it, which page it is, what
// was changed in which revision.

// isSignOff: a row whose first cell says who made or released the paper, or which page it
// is: "Drawn by: K. M. | Date: 12/03", "Sheet 1 of 2".
func isSignOff(r Row) bool {
	n, first := r.Filled()
	if n == 0 || !isLetter(first[0]) || !strings.ContainsAny(first, " :") && strings.ContainsAny(first, "0123456789") {
		return false // most rows
	}
	f := fold(first)
	if isPageMark(f) {
		return true
	}
	word, rest, _ := cutWord(f)
	if !slices.Contains([]string{"prepared", "drawn", "checked", "approved", "designed", "released", "issued", "author", "signed", "date", "rev", "revision", "issue", "drawing", "dwg", "drg", "by",
		"gezeichnet", "gez", "gepruft", "gepr", "freigegeben", "erstellt", "datum", "bearbeiter", "zeichnung", "stand",
		"dessine", "verifie", "approuve", "etabli", "indice", "dibujado", "revisado", "aprobado", "fecha", "plano", "disegnato", "verificato", "approvato", "data", "disegno"}, word) {
		return false
	}
	rest = strings.TrimLeft(rest, " .")
	for _, w := range []string{"by", "no", "nr", "number", "date", "von", "am", "par", "le", "por", "da", "il"} {
		if after, ok := strings.CutPrefix(rest, w); ok && (after == "" || strings.ContainsAny(after[:1], " .:")) {
			rest = strings.TrimLeft(after, " .")
		}
	}
	// "Date:" and what it is in one cell or in two.
	return strings.HasPrefix(rest, ":") || rest == "" && n > 1 || rest == "" && strings.Contains(f, " ")
}

// isPageMark: "Page 2", "Sheet 1 of 3", "Blatt 2/3", "continued".
func isPageMark(folded string) bool {
	word, rest, _ := cutWord(strings.Trim(folded, " .:()-*"))
	switch word {
	case "page", "sheet", "blatt", "seite", "feuille", "hoja", "pagina", "foglio", "folio":
		return rest != "" && strings.Trim(rest, "0123456789 /.:-efinorsuvd") == "" && strings.ContainsAny(rest, "0123456789")
	case "continued", "cont", "contd", "fortsetzung", "suite", "continuacion", "segue":
		return len(rest) <= 2 || strings.HasPrefix(rest, " from") || strings.HasPrefix(rest, " on")
	}
	return false
}

// isRevisionHead: the headings of a table of changes: a revision and a day.
func isRevisionHead(r Row) bool {
	rev, day := false, false
	for _, c := range r.Cells {
		if len(c) < 2 || len(c) > 12 || strings.ContainsAny(c, "0123456789") {
			continue
		}
		switch f := strings.Trim(fold(c), " .:"); f {
		case "rev", "revision", "issue", "index", "ind", "indice", "anderung", "ausgabe", "revisione", "ver", "version":
			rev = true
		case "date", "datum", "fecha", "data", "day", "tag":
			day = true
		}
	}
	return rev && day
}
