package name

import (
	"strings"

	"contralay/model/wirelist/pinword"
	"contralay/model/wirelist/table"
)

// The word for a cavity before its name, in cells: "Motor stift 3". From memory, no source.

// IsPinWord reports whether a folded word says that the name of a cavity follows.
func IsPinWord(w string) bool { return pinword.Is(w) }

// splitAtPinWord parts "Motor stift 3" into the connector and its cavity; ok is false where no such word stands before the
// last word.
func splitAtPinWord(cell string) (connector, pin string, ok bool) {
	words := strings.Fields(cell)
	n := len(words)
	if n > 3 && IsPinWord(table.Fold(words[0])) && (IsCavity(words[1]) || words[1] == "+" || words[1] == "-") &&
		JoinsDevice(table.Fold(words[2])) {
		if rest := words[3:]; !strings.EqualFold(rest[0], "the") || len(rest) > 1 { // "pin 3 of the radio"
			if strings.EqualFold(rest[0], "the") {
				rest = rest[1:]
			}
			return strings.Join(rest, " "), words[1], true
		}
	}
	if n < 3 || !pinword.Is(table.Fold(words[n-2])) && (n > 3 || !IsDesignator(words[0]) || !pinword.IsWith(table.Fold(words[1]))) {
		return "", "", false
	}
	at := strings.LastIndex(cell, words[n-2])
	connector = strings.TrimRight(strings.TrimSpace(cell[:at]), ",;:- ")
	return connector, words[n-1], connector != ""
}

// IsPinCell reports whether a cell is a word for a cavity and its name, "pin 4".
func IsPinCell(cell string) bool {
	words := strings.Fields(cell)
	return len(words) == 2 && IsPinWord(table.Fold(words[0])) && IsCavity(words[1])
}

// SaysPin reports whether a word for a cavity stands before the last word of an end, and something before it, "Motor stift 3".
func SaysPin(cell string) bool {
	_, _, ok := splitAtPinWord(cell)
	return ok
}

// JoinsDevice reports whether a folded word stands between a cavity and its device, "pin 3 of the radio".
func JoinsDevice(w string) bool {
	switch w {
	case "of", "on", "at", "in", "von", "der", "des", "am", "de", "du", "del", "della", "di", "van", "på", "pa":
		return true
	}
	return false
}
