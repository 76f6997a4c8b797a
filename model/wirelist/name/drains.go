package name

// DrainWord: a folded word of the bare lead that takes a shield to ground, or of the shield
// itself where a cavity is named after it.
func DrainWord(w string) bool {
	switch w {
	case "drain", "drainwire", "shld", "scrn", "beilauf", "beilaufdraht", "beilauflitze", "shield", "screen", "schirm", "schirmung",
		"blindage", "ecran", "pantalla", "schermo":
		return true
	}
	return false
}
