package value

import (
	"slices"
	"strings"

	"contralay/model/wirelist/signs"
	"contralay/model/wirelist/table"
)

// Signs that such a cell never has, and of which it has one.
var partsEnds, inMangled = signs.Of(": "), signs.Of("-+")

// IsMangled reports whether a cell is what a spreadsheet makes of "1-2" or "1E2" and shows in
// their place: a day,
// "01-Feb", "2025-02-01", or a number with a power of ten, "1E+02". No end is made of it.
func IsMangled(cell string) bool {
	if len(cell) < 5 || len(cell) > 11 || partsEnds.In(cell) || !inMangled.In(cell) {
		return false // most cells
	}
	f := table.Fold(cell)
	digits := func(s string, least, most int) bool {
		return len(s) >= least && len(s) <= most && strings.Trim(s, "0123456789") == ""
	}
	if a, b, ok := strings.Cut(f, "e+"); ok && digits(strings.Replace(a, ".", "", 1), 1, 6) && digits(b, 2, 3) {
		return true
	}
	parts := strings.Split(f, "-")
	switch len(parts) {
	case 2:
		return digits(parts[0], 1, 2) && isMonth(parts[1]) || isShown(cell[:len(parts[0])]) && digits(parts[1], 1, 2)
	case 3:
		return digits(parts[0], 4, 4) && digits(parts[1], 2, 2) && digits(parts[2], 2, 2) ||
			digits(parts[0], 1, 2) && isMonth(parts[1]) && digits(parts[2], 2, 4)
	}
	return false
}

// isShown reports whether s is a month as a spreadsheet shows it before a number, "Feb-25".
// GEN-1 and MAG-2 are ends.
func isShown(s string) bool {
	return slices.Contains([]string{"Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"}, s)
}

// isMonth reports whether s is the short name of a month in the five languages, as spreadsheets
// write it.
func isMonth(s string) bool {
	switch strings.Trim(s, ".") {
	case "jan", "feb", "mar", "mrz", "apr", "may", "mai", "jun", "jul", "aug", "sep", "sept", "oct", "okt", "nov", "dec", "dez",
		"janv", "fevr", "avr", "juin", "juil", "aout", "ene", "abr", "ago", "dic", "gen", "mag", "giu", "lug", "set", "ott":
		return true
	}
	return false
}

// IsErrorValue reports whether a cell is what a spreadsheet shows where a formula fails.
func IsErrorValue(c string) bool {
	return slices.Contains([]string{"#REF!", "#N/A", "#VALUE!", "#NAME?", "#DIV/0!", "#NULL!", "#NUM!", "#NV", "#BEZUG!", "#WERT!"}, c)
}
