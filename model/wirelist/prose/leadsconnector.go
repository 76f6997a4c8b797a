package prose

import "strings"

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

// IsOrdinal reports whether what follows the word for a connector begins with a letter or a number alone, which is no name without that
// word: "A", "1:", "2 - dash".
func IsOrdinal(name string) bool {
	first, _, _ := strings.Cut(name, " ")
	first = strings.TrimRight(first, ":,.")
	return len(name) == 1 || first != "" && len(first) < 3 && strings.Trim(first, "0123456789") == ""
}
