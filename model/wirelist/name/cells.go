package name

import (
	"slices"
	"strings"

	"contralay/model/wirelist/table"
)

// What a cell can be by its signs alone.

// IsCavities reports whether a cell is the name of a cavity, or of several.
func IsCavities(cell string) bool {
	if IsCavity(cell) || len(cell) <= 2 && !(len(cell) == 2 && strings.ContainsAny(cell[1:], "+-")) {
		return true
	}
	pins := SplitPins(cell)
	if len(pins) == 0 {
		return false
	}
	return !slices.ContainsFunc(pins, func(p string) bool { return !IsCavity(p) && !LooksLikeRange(p) })
}

// IsEnd reports whether a cell names a connector and, behind a colon, a cavity of it.
func IsEnd(cell string) bool {
	connector, pin, ok := SplitEnd(cell)
	if _, pin, said := splitAtPinWord(cell); said && IsCavity(pin) {
		return true
	}
	return ok && strings.Contains(cell, ":") && pin != "" && len(pin) <= 8 && strings.ContainsFunc(connector, func(r rune) bool {
		return r >= 'A' && r <= 'Z' || r >= 'a' && r <= 'z' || r > 0x7f
	})
}

// IsContactSize reports whether a cell is a size of contacts: "#20", "22D", "size 16", "20".
func IsContactSize(cell string) bool {
	f := strings.TrimSpace(strings.TrimPrefix(strings.TrimPrefix(table.Fold(cell), "size"), "#"))
	return slices.Contains([]string{"22", "22d", "22m", "23", "20", "20hd", "16", "12", "10", "8", "4", "0"}, strings.TrimLeft(f, "# "))
}

// IsThread reports whether a cell is the thread of a bolt that a lug fits, "M8".
func IsThread(cell string) bool {
	return slices.Contains([]string{"m3", "m4", "m5", "m6", "m8", "m10", "m12"}, table.Fold(cell))
}
