package cable

// isNone reports whether the folded name of a cable says that a wire is in none: "single", "einzeln". From memory, no source.
func isNone(folded string) bool {
	switch folded {
	case "single", "singles", "single wire", "single core", "loose", "loose wire", "individual", "separate", "discrete", "wire", "no cable",
		"einzeln", "einzelader", "einzelleiter", "einzelleitung", "einzeldraht", "lose", "seul", "fil seul", "fil libre", "isole", "suelto",
		"hilo suelto", "unifilar", "singolo", "filo singolo", "sciolto", "los", "losse draad", "enkel", "enkelt", "enkelledare",
		"sem cabo", "solto", "fio solto", "pojedynczy", "luzny", "irto", "irtojohdin", "jednotlivy":
		return true
	}
	return false
}
