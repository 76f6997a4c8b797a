package wirelist

import "strings"

// state is what a row says its cavity is for.
type state int

const (
	used     state = iota
	blank          // nothing in it: a seal plug
	reserved       // kept free for something
	spare          // a wire for later
)

// stateOf reads a cell as what its cavity is for. The word of a state must be all there
// is, but for what is done with an empty place, "N/C (plug)", for a number behind a spare,
// "spare 2", and for what a place is kept for, "reserved for the pump": "spare injector 3"
// is a signal. Of several words the one that says more counts.
func stateOf(cell string) state {
	f := strings.Trim(fold(cell), " .:()[]*")
	if s := stateWord(cell); s != used {
		return s
	}
	if isKeptFor(f) {
		return reserved
	}
	if !strings.ContainsAny(f, "()[];,:") && !strings.Contains(f, " - ") {
		return used
	}
	most := used
	for k, piece := range strings.FieldsFunc(strings.ReplaceAll(f, " - ", ";"), func(r rune) bool { return strings.ContainsRune("()[];,:", r) }) {
		switch s := stateWord(piece); {
		case s != used:
			most = max(most, s)
		case k == 0 || !isClosing(strings.TrimSpace(piece)):
			return used
		}
	}
	return most
}

// isKeptFor: the words of a place that is kept for something, which is said behind them.
func isKeptFor(folded string) bool {
	for _, lead := range []string{"reserved for ", "reserve for ", "reserved - ", "reserved: ", "held for ", "future ", "reserviert fur ", "reserviert fuer ", "reserve pour ", "reserve au ", "reservado para ", "reservada para ", "riservato a ", "riservato per "} {
		if strings.HasPrefix(folded, lead) {
			return true
		}
	}
	return false
}

// onlyState reports whether a cell says its state and nothing else.
func onlyState(cell string) bool {
	return stateOf(cell) != used && (stateWord(cell) != used || !isKeptFor(strings.Trim(fold(cell), " .:()[]*")))
}

// onlyFree: a name of a net that says no more than that there is none yet.
func onlyFree(signal string) bool { return stateOf(signal) == used && stateOfSignal(signal) != used }

// stateOfSignal reads the name of a net: a place that nobody has decided on is kept free.
func stateOfSignal(cell string) state {
	switch f := strings.Trim(fold(cell), " .:()[]*"); {
	case f == "open":
		return blank
	case f != "" && isUnknown(f):
		return reserved
	}
	return stateOf(cell)
}

// stateOfNote reads a note: what it says first counts, "Spare. 200 mm tail", "SPARE - coil and
// stow".
func stateOfNote(note string) state {
	if s := stateOf(note); s != used {
		return s
	}
	if i := strings.IndexAny(note, ".,;:-–("); i > 0 && stateWord(note[:i]) == spare {
		return spare
	}
	return used
}

// stateWord is the state that one word or phrase names; used where it names none.
func stateWord(cell string) state {
	f := strings.Trim(fold(cell), " .:()[]*")
	switch f {
	case "n/c", "nc", "n.c", "n/a", "n.a", "not connected", "no connection", "no connect", "do not connect", "dnc", "blank", "blanked", "empty", "vacant", "unused", "not used", "do not use", "none", "no wire", "no contact", "no pin", "free",
		"not fitted", "unfitted", "not populated", "unpopulated", "do not populate", "dnp", "-", "--", "---",
		"plug", "plugged", "seal plug", "sealing plug", "blanking plug", "blank plug", "dummy plug", "filler plug", "cavity plug",
		"nicht belegt", "nicht bestuckt", "nicht verbunden", "nicht verwenden", "nicht benutzt", "unbelegt", "unbenutzt", "frei", "leer", "blindstopfen",
		"libre", "vide", "non connecte", "non utilise", "ne pas utiliser", "non monte", "inutilise", "bouchon", "obturateur",
		"sin conexion", "no conectado", "no usado", "no usar", "sin usar", "vacio", "tapon",
		"libero", "non connesso", "non usato", "non usare", "vuoto", "tappo":
		return blank
	case "reserved", "reserved for future use", "for future use", "future use", "future", "reserviert", "vorgehalten", "reservee", "reservado", "reservada", "riservato", "riservata":
		return reserved
	}
	// "réserve" is French for a spare; "réservé", which folds to the same, for reserved.
	if strings.EqualFold(strings.TrimSpace(cell), "réservé") {
		return reserved
	}
	switch strings.TrimRight(f, " -_#0123456789") {
	case "spare", "spares", "spare wire", "spare tail", "spare end", "spare lead", "wired spare", "reserve", "reserveader", "reserveleitung", "rechange", "fil de reserve", "repuesto", "de repuesto", "reserva", "de reserva", "riserva", "di riserva", "scorta", "di scorta":
		return spare
	}
	return used
}

// isClosing: what is done with a place that has no wire, or with the end of a spare.
func isClosing(piece string) bool {
	switch piece {
	case "plug", "plugged", "fit plug", "cap", "capped", "seal", "sealed", "fit seal", "leave empty", "leave open", "leave blank", "cap and stow", "capped and stowed", "stow", "stowed", "coiled", "coiled back", "insulate", "insulated",
		"verschlossen", "leer lassen", "isoliert", "laisser vide", "isole", "dejar vacio", "lasciare vuoto":
		return true
	}
	return stateWord(piece) != used
}
