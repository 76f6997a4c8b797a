package alike

import (
	"slices"
	"strings"
)

// bareBefore parts a colour and a number beside it, which is its size without a unit, off the front of a text, "red 18 fuel pump"; a
// number with a unit behind it is none.
func bareBefore(text string) (rest string, v piece) {
	w := strings.Fields(text)
	for n := min(mostWords, len(w)-1); n > 1; n-- {
		if colour, size := colourAndNumber(strings.Join(w[:n], " ")); size != "" && !(w[n-1] == size && isUnit(w[n])) {
			return strings.TrimLeft(strings.Join(w[n:], " "), "-–—:, "), piece{text: strings.Join(w[:n], " "), colour: colour, size: size}
		}
	}
	return text, piece{}
}

// bareBehind parts them off the end of a text, "fuel pump red 18".
func bareBehind(text string) (rest string, v piece) {
	w := strings.Fields(text)
	for n := min(mostWords, len(w)-1); n > 1; n-- {
		at := len(w) - n
		if colour, size := colourAndNumber(strings.Join(w[at:], " ")); size != "" {
			return withLamp(withoutEndSigns(strings.Join(w[:at], " ")),
				piece{text: strings.Join(w[at:], " "), colour: colour, size: size})
		}
	}
	return text, piece{}
}

// isUnit reports whether a word is a unit, which a bare number has not.
func isUnit(w string) bool {
	switch strings.ToLower(strings.TrimRight(w, ".,;:")) {
	case "v", "vdc", "vac", "volt", "volts", "a", "amp", "amps", "w", "watt", "ma", "mm", "cm", "m", "ft", "in", "ohm", "hz",
		"awg", "ga", "gauge", "mm2", "mm²", "qmm", "mmq", "sqmm", "sq",
		"pin", "pins", "way":
		return true
	}
	return false
}

// areVolts reports whether each of some values has a size that is as likely a voltage.
func areVolts(made [][]piece) bool {
	for _, all := range made {
		if n := len(all); n > 0 && all[n-1].size != "" && all[n-1].size != "12" && all[n-1].size != "24" {
			return false
		}
	}
	return true
}

// colourBefore takes the colour off the front of the texts that stand before the size of each line, "red fuel pump 18 ga", where four of
// five have one.
func colourBefore(made [][]piece) [][]piece {
	out := make([][]piece, len(made))
	filled, found := 0, 0
	for i, all := range made {
		out[i] = all
		if len(all) < 2 || all[len(all)-1].colour != "" {
			continue
		}
		filled++
		if rest, v := valueBefore(all[0].text); v.colour != "" && v.size == "" && !all[0].isValue() {
			out[i] = append([]piece{asPiece(rest), v}, all[1:]...)
			found++
		}
	}
	if found < 2 || 5*found < 4*filled {
		return made
	}
	return out
}

// withNamed parts the colour and the size of those few lines that have a name right beside them, where the others have values alone:
// "1 red 18", "2 blue 18 tail lamp".
func withNamed(texts []string, all [][]piece, mark string) [][]piece {
	for i, t := range texts {
		if t == "" || slices.ContainsFunc(all[i], piece.isValue) {
			continue
		}
		for _, from := range []func(string) (string, piece){bareBefore, valueBefore, bareBehind, valueBehind} {
			if rest, v := from(t); v.colour != "" && v.size != "" {
				all[i] = append(pieces(rest, mark), v)
				break
			}
		}
	}
	return all
}
