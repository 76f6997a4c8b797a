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

// stateOf reads a whole cell, or one piece of it, as the word of a state. The word must
// be all there is: "spare injector 3" is a signal.
func stateOf(cell string) state {
	switch strings.Trim(fold(cell), " .:()[]*") {
	case "n/c", "nc", "n.c", "not connected", "no connection", "no connect", "blank", "empty", "unused", "not used", "none", "plug", "plugged", "seal plug", "-", "--", "---",
		"nicht belegt", "unbelegt", "frei", "leer", "blindstopfen", "libre", "vide", "non connecte", "non utilise", "bouchon", "sin conexion", "no conectado", "sin usar", "vacio", "tapon",
		"libero", "non connesso", "non usato", "vuoto", "tappo":
		return blank
	case "reserved", "reserved for future use", "for future use", "future use", "future", "reserviert", "vorgehalten", "reservee", "reservado", "reservada", "riservato", "riservata":
		return reserved
	case "spare", "spare wire", "wired spare", "reserve", "reserveader", "reserveleitung", "rechange", "fil de reserve", "repuesto", "de repuesto", "riserva", "di riserva":
		return spare
	}
	// "réserve" is French for a spare; "réservé", which folds to the same, for reserved.
	if strings.EqualFold(strings.TrimSpace(cell), "réservé") {
		return reserved
	}
	return used
}

// splitPins parts a cell that names several cavities of one net: "L,M", "L & M",
// "L/M", "1+2", "L and M". One cavity gives itself, "+" and "B+" too. A range such as "1-4" is one
// name: it may be one.
func splitPins(cell string) []string {
	for _, word := range []string{" and ", " und ", " et ", " e ", " y "} {
		cell = strings.ReplaceAll(cell, word, ",")
	}
	var pins []string
	for _, p := range strings.FieldsFunc(cell, func(r rune) bool { return r == ',' || r == ';' || r == '&' }) {
		from := 0
		for i := 1; i+1 < len(p); i++ {
			// + and / are names of cavities too: they part only what stands on both sides.
			if (p[i] == '+' || p[i] == '/') && strings.Trim(p[from:i], " +-/") != "" && strings.Trim(p[i+1:], " +-/") != "" {
				pins = append(pins, strings.TrimSpace(p[from:i]))
				from = i + 1
			}
		}
		if p = strings.TrimSpace(p[from:]); p != "" {
			pins = append(pins, p)
		}
	}
	return pins
}

// looksLikeRange: two numbers or two single letters with a dash between, rising.
func looksLikeRange(pin string) bool {
	a, b, ok := strings.Cut(strings.ReplaceAll(pin, "–", "-"), "-")
	a, b = strings.TrimSpace(a), strings.TrimSpace(b)
	switch {
	case !ok || a == "" || b == "":
		return false
	case strings.Trim(a+b, "0123456789") == "":
		return len(a) < len(b) || len(a) == len(b) && a < b
	}
	return len(a) == 1 && len(b) == 1 && isLetter(a[0]) && isLetter(b[0]) && a < b
}

// splitEnd parts one cell that names a connector and a cavity: "X1:3", "P1-A",
// "P1/A", "P1.A", "P1 pin A". ok is false where it names no cavity.
func splitEnd(cell string) (connector, pin string, ok bool) {
	if i := strings.LastIndexByte(cell, ':'); i > 0 {
		connector, pin = cell[:i], cell[i+1:]
	} else if i := strings.LastIndex(fold(cell), " pin "); i > 0 && len(fold(cell)) == len(cell) {
		connector, pin = cell[:i], cell[i+5:]
	} else if i := strings.LastIndexAny(cell, "-/."); i > 0 && len(cell)-i-1 <= 3 {
		connector, pin = cell[:i], cell[i+1:]
	}
	connector, pin = strings.TrimSpace(connector), strings.TrimSpace(pin)
	if connector == "" || pin == "" || strings.ContainsAny(pin, " ") {
		return strings.TrimSpace(cell), "", false
	}
	return connector, pin, true
}
