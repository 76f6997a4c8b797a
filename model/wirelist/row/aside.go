package row

import (
	"strings"

	"contralay/model/wirelist/cable"
)

// cutAside parts a remark in brackets off the end of a cell; aside is "" where it has none.
func cutAside(cell string) (front, aside string) {
	at := strings.Index(cell, " (")
	if at < 1 || !strings.HasSuffix(cell, ")") {
		return cell, ""
	}
	return cell[:at], cell[at+2 : len(cell)-1]
}

// saysNoSize reports whether a remark behind a size cannot be another size: it has no figure, or names the wires that this one goes with.
func saysNoSize(aside string) bool {
	return !strings.ContainsAny(aside, "0123456789") || len(cable.ReadWith(aside).Of) > 0
}
