package name

import "contralay/model/wirelist/table"

// IsDrainWord reports whether a folded word names the bare lead that takes a shield to ground,
// or the shield itself where a cavity is named after it.
func IsDrainWord(w string) bool {
	switch w {
	case "drain", "drainwire", "shld", "scrn", "beilauf", "beilaufdraht", "beilauflitze", "shield", "screen", "schirm", "schirmung",
		"blindage", "ecran", "pantalla", "schermo":
		return true
	}
	return false
}

// DrainOf is what a signal says its shield is of, "CRANK" of "CRANK shield"; ok is false
// where the signal is of no drain.
func DrainOf(signal string) (of []string, ok bool) {
	all := Words(table.Fold(signal))
	for i, w := range all {
		switch {
		case IsDrainWord(w):
			ok = true
		case w == "wire" && i > 0:
		default:
			of = append(of, w)
		}
	}
	return of, ok && (IsDrainWord(all[len(all)-1]) || all[len(all)-1] == "wire" || IsDrainWord(all[0]))
}
