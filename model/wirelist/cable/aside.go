package cable

import "strings"

// CutAside parts a remark in brackets off the end of a cell with a size, "22 / white (twisted with E07)"; aside is "" where it has none.
// sizeless reports whether the remark cannot be another size: it has no figure, or names the wires that this one goes with.
func CutAside(cell string) (front, aside string, sizeless bool) {
	at := strings.Index(cell, " (")
	if at < 1 || !strings.HasSuffix(cell, ")") {
		return cell, "", false
	}
	aside = cell[at+2 : len(cell)-1]
	return cell[:at], aside, !strings.ContainsAny(aside, "0123456789") || len(ReadWith(aside).Of) > 0
}
