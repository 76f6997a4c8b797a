package endtext

import "slices"

// saysWireOpen reports whether some folded words begin with a word for a wire or its end and say further on that it is put away:
// "wire loose, insulated in the box", "filo sciolto, isolato". A device is called "Wire feeder".
func saysWireOpen(words []string) bool {
	if len(words) < 2 || !isWire(words[0]) {
		return false
	}
	return slices.ContainsFunc(words[1:], func(w string) bool {
		switch w {
		case "insulated", "coiled", "capped", "taped", "stowed", "sleeved", "sealed", "loose", "isoliert", "abisoliert", "aufgerollt",
			"lose", "abgeklebt", "isole", "isolee", "enroule", "replie", "libre", "aislado", "enrollado", "isolato", "isolati",
			"arrotolato", "libero", "nastrato", "geisoleerd", "opgerold", "isolerad", "upprullad", "isoleret", "isolert", "oprullet",
			"zaizolowany", "zwiniety", "isolado", "enrolado":
			return true // from memory, no source
		}
		return false
	})
}

// isWire reports whether a folded word is one for a wire or its end.
func isWire(w string) bool {
	switch w {
	case "wire", "core", "conductor", "lead", "end", "tail", "ader", "leitung", "draht", "ende", "litze", "fil", "conducteur", "bout",
		"hilo", "cable", "filo", "cavo", "capo", "conduttore", "draad", "ledning", "leder", "przewod", "zyla", "fio":
		return true // from memory, no source
	}
	return false
}
