package prose

// LeadsConnector reports whether a folded word is one for a connector in a language that puts it first, "fiche commande". From memory,
// no source.
func LeadsConnector(w string) bool {
	switch w {
	case "fiche", "prise", "connecteur", "conector", "clavija", "enchufe", "connettore", "spina", "presa", "ficha", "wtyczka", "zlacze",
		"konektor":
		return true
	}
	return false
}
