package prose

import (
	"strconv"
	"strings"
	"unicode"

	"contralay/model/wirelist/table"
)

// Count is the one number of a text that says how many of something a list has and nothing else, "Wires this conn 13", "14 wires",
// "Adern gesamt: 12", "nombre de fils 9", and whether those are wires. "Terminal 5" and "Pin 5 spare" are places.
func Count(text string) (n int, wires, ok bool) {
	number, nouns, leads, many := "", 0, 0, false
	this := false // the word before was "this"
	for w := range strings.FieldsFuncSeq(table.Fold(text), func(r rune) bool { return !unicode.IsLetter(r) && !unicode.IsDigit(r) }) {
		switch {
		case strings.Trim(w, "0123456789") == "":
			if number != "" {
				return 0, false, false
			}
			number = w
		case isCounted(w):
			nouns++
			wires = wires || isWires(w)
			many = many || number != "" || isMany(w)
		case isSum(w), isLink(w), isPart(w) && this, isWhole(w):
			leads++
		case isThis(w), isUse(w):
		default:
			return 0, false, false
		}
		this = isThis(w) || this && isLink(w)
	}
	n, err := strconv.Atoi(number)
	first, _ := strings.CutPrefix(strings.TrimSpace(text), number)
	before := number != "" && len(first) < len(strings.TrimSpace(text)) // the number is the first word
	return n, wires, err == nil && nouns == 1 && many && (before || leads > 0 || wires)
}

// isMany reports whether a folded word for what is counted is of several: "pin" and "terminal" lead to the number of one.
func isMany(w string) bool {
	switch w {
	case "pin", "contact", "cavity", "way", "wire", "terminal", "position":
		return false
	}
	return true
}

// isWires reports whether a folded word that is counted is for wires.
func isWires(w string) bool {
	switch w {
	case "wire", "wires", "adern", "leitungen", "drahte", "fils", "hilos", "fili", "draden", "aders", "ledare", "fios", "przewody":
		return true
	}
	return false
}

// isThis reports whether a folded word points at what the list is of.
func isThis(w string) bool {
	switch w {
	case "this", "these", "dieser", "diesem", "dieses", "diese", "ce", "cet", "cette", "este", "esta", "questo", "questa", "deze", "dit",
		"denna", "detta", "denne", "dette", "ten", "tego", "tej", "tahan", "tassa":
		return true
	}
	return false
}

// isPart reports whether a folded word is for what a list is of, behind "this".
func isPart(w string) bool {
	switch w {
	case "conn", "connector", "plug", "socket", "list", "sheet", "page", "loom", "harness", "cable", "table", "side", "box", "unit",
		"stecker", "buchse", "liste", "blatt", "seite", "kabel", "baum", "kabelbaum", "tabelle", "connecteur", "fiche", "prise", "feuille",
		"faisceau", "tableau", "conector", "lista", "hoja", "mazo", "tabla", "connettore", "spina", "foglio", "cablaggio", "tabella",
		"stekker", "lijst", "blad", "tabel", "kontakt", "stik", "ark", "wtyczka", "wtyczki", "zlacza", "liitin":
		return true
	}
	return false
}

// isWhole reports whether a folded word says that all of something are counted.
func isWhole(w string) bool {
	switch w {
	case "all", "altogether", "together", "overall", "here", "insgesamt", "zusammen", "hier", "tout", "ensemble", "todo", "tutto",
		"insieme", "samen", "tillsammans", "sammanlagt", "razem", "yhteensa", "totals", "totaux", "totaal", "totalt", "sum", "somme",
		"suma", "somma":
		return true
	}
	return false
}
