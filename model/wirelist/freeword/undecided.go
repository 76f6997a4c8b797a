package freeword

// IsUndecided reports whether a folded text says that nobody has decided yet where a wire goes, or what it is: a mark, and no name.
func IsUndecided(folded string) bool {
	switch folded {
	case "tbd", "tba", "tbc", "to be decided", "to be confirmed", "undecided", "not decided", "not decided yet", "unknown", "not known",
		"to be allocated", "to be assigned",
		"see note", "see notes", "nothing yet", "nowhere", "nowhere yet", "goes nowhere", "goes nowhere yet", "not yet", "none yet",
		"offen", "noch offen", "unbekannt", "a definir", "por definir", "da definire", "do ustalenia", "nog niet bekend", "ej bestamt":
		return true
	}
	return false
}
