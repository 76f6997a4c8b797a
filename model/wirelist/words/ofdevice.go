package words

// Words of sentences that say what a connector is of. From memory, no source.

// IsOfDevice reports whether a folded word joins the word for a connector with the device that it is of.
func IsOfDevice(w string) bool {
	switch w {
	case "of", "vom", "von", "der", "des", "am", "de", "du", "del", "della", "dello", "do", "da", "van", "av", "fra":
		return true
	}
	return false
}

// IsOwner reports whether a folded word says whose a thing is or which of several, or is for what carries the wiring as a whole: it names
// no device.
func IsOwner(w string) bool {
	switch w {
	case "mine", "my", "our",
		"his", "her", "their", "your", "this", "that", "each", "every", "all", "one", "new", "old", "other", "same", "mein",
		"meinem", "meiner", "meines", "unser", "unserem", "unserer", "dieser", "diesem", "jeder", "mon", "ma", "mes", "notre", "cette",
		"cet", "chaque", "tous", "mi", "mis", "nuestro", "nuestra", "este", "esta", "cada", "todo", "mio", "mia", "nostro", "nostra",
		"questo",
		"questa", "ogni", "mijn", "onze", "deze", "dit", "elke", "meu", "minha", "nosso", "car", "bike", "boat", "loom", "harness",
		"wiring", "wires", "cable", "type", "kind", "auto", "motorrad", "boot", "kabelbaum", "voiture", "moto", "bateau", "faisceau",
		"coche", "barco", "mazo", "cableado", "macchina", "barca", "cablaggio", "tipo", "typ":
		return true
	}
	return false
}
