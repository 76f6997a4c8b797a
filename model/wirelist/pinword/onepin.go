package pinword

import (
	"slices"
	"strings"
)

// IsOne reports whether a cell with a stroke is one pin that has two names: a terminal of a vehicle's switch that feeds two circuits and
// is called after both, "15/54", or the line of a pair that sends and receives, "S/E+". The numbers are those of the terminals of vehicles
// (common practice, no source); those of relays are cavities of their own.
func IsOne(cell string) bool {
	a, b, ok := strings.Cut(cell, "/")
	if !ok {
		return false
	}
	terminals := []string{"15", "30", "31", "49", "50", "51", "53", "54", "55", "56", "57", "58", "61"}
	if slices.Contains(terminals, a) && slices.Contains(terminals, b) {
		return a != b
	}
	bare := strings.TrimRight(b, "+-")
	return len(b) == len(bare)+1 && areLetters(a) && areLetters(bare)
}

// areLetters reports whether a text is one to three capital letters.
func areLetters(text string) bool {
	return text != "" && len(text) < 4 && strings.Trim(text, "ABCDEFGHIJKLMNOPQRSTUVWXYZ") == ""
}
