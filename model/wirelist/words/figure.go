package words

// Words of a sentence that says what the figures of a table are, "figure = pin of P1", "Zahlen sind Stifte von X1". From memory, no source.

// IsFigure reports whether a folded word is for the figures that stand in a table.
func IsFigure(w string) bool {
	switch w {
	case "figure", "figures", "number", "numbers", "digit", "digits", "entry", "entries", "zahl", "zahlen", "ziffer", "ziffern", "nummer",
		"nummern", "chiffre", "chiffres", "numero", "numeros", "cifra", "cifre", "cifras", "numeri", "getal", "getallen", "cijfer",
		"cijfers", "siffra", "siffror", "tal", "liczba", "liczby", "cislo", "cisla":
		return true
	}
	return false
}

// ArePins reports whether a folded word is for several cavities.
func ArePins(w string) bool {
	switch w {
	case "pins", "ways", "cavities", "terminals", "contacts", "stifte", "kontakte", "klemmen", "kammern", "broches", "bornes", "voies",
		"pines", "contactos", "vias", "piedini", "contatti", "pinnen", "polen", "stift", "poler", "piny", "styki":
		return true
	}
	return false
}
