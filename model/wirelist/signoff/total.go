package signoff

import (
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// IsTotal reports whether the first text of a row says that the row sums the list up.
func IsTotal(cell string) bool {
	if !name.BeginsWith(cell, "", "tszgicryu") {
		return false
	}
	word, _, _ := name.CutWord(table.Fold(cell))
	switch word {
	case "total", "totals", "subtotal", "subtotals", "zwischensumme", "subtotale", "sum", "summe", "gesamt", "insgesamt", "somme", "totaux",
		"totaal", "totalt", "celkem", "razem", "yhteensa", "ukupno", "suma", "totale", "totali", "somma":
		return true
	}
	return false
}
