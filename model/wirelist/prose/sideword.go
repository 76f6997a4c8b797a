package prose

// IsSideWord reports whether a folded word says on which side of a machine a thing sits, as an adjective that many languages put behind
// the noun: "connecteur arrière" is no connector called "arrière". Common words, no source.
func IsSideWord(w string) bool {
	switch w {
	case "rear", "front", "left", "right", "upper", "lower", "hinten", "vorne", "links", "rechts", "oben", "unten", "arriere", "avant",
		"gauche", "droit", "droite", "superieur", "inferieur", "central", "principal", "trasero", "trasera", "delantero", "delantera",
		"izquierdo", "izquierda", "derecho", "derecha", "traseiro", "traseira", "dianteiro", "dianteira", "esquerdo", "esquerda",
		"direito", "direita", "posteriore", "anteriore", "sinistro", "sinistra", "destro", "destra", "superiore", "inferiore",
		"principale", "centrale", "superior", "inferior", "achter", "voor", "bak", "fram", "tylny", "tylna", "przedni", "przednia":
		return true
	}
	return false
}
