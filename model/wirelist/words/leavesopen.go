package words

// LeavesOpen reports whether a folded cell of a value says that nobody has stated it, or that it is what it was. From memory, no source.
func LeavesOpen(folded string) bool {
	switch folded {
	case "none", "na", "tbd", "tba", "tbc", "unknown", "not known", "existing", "original", "as fitted", "as found", "as is", "as was",
		"any", "various", "see", "same", "ditto", "supplied", "with device", "to suit", "open",
		"unbekannt", "offen", "vorhanden", "bestand", "wie vorhanden", "beliebig", "diverse", "siehe", "inconnu",
		"inconnue", "existant",
		"existante", "d origine", "desconocido", "existente", "sconosciuto", "esistente", "onbekend", "bestaand",
		"okand", "okant", "befintlig", "ukendt", "ukjent", "eksisterende", "tuntematon", "nykyinen", "nieznany",
		"istniejacy", "neznamy", "stavajici", "desconhecido",
		"ismeretlen", "meglevo", "bilinmiyor", "mevcut", "necunoscut":
		return true
	}
	return false
}
