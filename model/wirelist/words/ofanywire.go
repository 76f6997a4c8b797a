package words

// Words of a sentence that says a size of all wires, "Tutti i fili 0,5 mm²", "Thin network cable, all solid 24 AWG". From memory, no
// source.

// IsOfAnyWire reports whether a folded word of a text about a size leaves open which wires it is of.
func IsOfAnyWire(w string) bool {
	switch w {
	case "harness", "loom", "is", "are", "in", "of", "a", "size", "sizes", "gauge", "awg", "ga", "mm2", "mm", "sq", "qmm", "mmq",
		"otherwise", "sind", "ist", "mit", "sont", "est", "en", "sono", "da", "di", "son", "es", "zijn", "van", "av", "ar", "er", "section",
		"de", "du", "des", "querschnitt", "sezione", "seccion", "doorsnede", "przekroj", "area", "with", "my", "used", "throughout", "avec",
		"con", "met", "med":
		return true
	}
	return IsWireWord(w) || IsWireKind(w) || IsArticle(w) || isHere(w)
}

// isHere reports whether a folded word means the list in hand: "everything here is 22 AWG".
func isHere(w string) bool {
	switch w {
	case "here", "hier", "ici", "aqui", "her", "har", "throughout":
		return true
	}
	return false
}

// IsWireWord reports whether a folded word is for the wires of a list.
func IsWireWord(w string) bool {
	switch w {
	case "wire", "wires", "wiring", "core", "cores", "conductor", "conductors", "lead", "leads", "cable", "cables", "adern", "ader",
		"leitungen", "leitung", "kabel", "kabeln", "litze", "litzen", "drahte", "fils", "fil", "conducteurs", "cablage", "cavi", "cavo",
		"fili", "filo", "conduttori", "hilos", "hilo", "conductores", "cableado", "draden", "draad", "aders", "ledningar", "ledning",
		"ledninger", "przewody", "przewodow", "vodice", "johtimet", "johdot", "fios", "cabos", "condutores":
		return true
	}
	return false
}

// IsWireKind reports whether a folded word says how a wire is made, and not where it goes.
func IsWireKind(w string) bool {
	switch w {
	case "thin", "thick", "thinwall", "solid", "stranded", "flexible", "flex", "soft", "stiff", "silicone", "tinned", "copper", "network",
		"coily", "coiled", "curly", "spiral", "twisted", "screened", "shielded", "marine", "automotive", "grade", "ptfe", "pvc", "txl",
		"gxl", "sxl", "flry", "h07v", "h05v", "liyy", "dunn", "flexibel", "verzinnt", "silikon", "souple", "souples", "etame",
		"etames", "fine", "sottile", "sottili", "flessibile", "flessibili", "stagnato", "stagnati", "silicona", "estanado", "estanados",
		"soepel", "vertind", "dun", "mjuk", "fortennt":
		return true
	}
	return false
}

// IsExcept reports whether a folded word leads to what a sentence does not speak of, "all 18 AWG, except for the motor leads".
func IsExcept(w string) bool {
	switch w {
	case "except", "excepting", "excluding", "excl", "but", "apart", "unless", "ausser", "ausgenommen", "bis", "sauf", "hormis",
		"excepte", "excepto", "salvo", "menos", "tranne", "eccetto", "meno", "behalve", "uitgezonderd", "utom", "undantag", "undtagen",
		"unntatt", "oprocz", "poza", "krome", "paitsi", "exceto":
		return true
	}
	return false
}

// IsSizes reports whether a folded word is for the sizes of the wires of a list.
func IsSizes(w string) bool {
	switch w {
	case "size", "sizes", "gauge", "gauges", "section", "sections", "csa", "querschnitt", "querschnitte", "querschnitten", "seccion",
		"secciones", "sezione", "sezioni", "doorsnede", "doorsneden", "bitola", "bitolas", "seccao", "seccoes", "przekroj", "przekroje",
		"prurez", "prurezy", "area", "areor", "tvarsnitt", "tverrsnitt", "tvaersnit", "poikkipinta", "poikkipinnat":
		return true
	}
	return false
}
