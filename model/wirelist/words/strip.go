package words

import (
	"slices"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/stripname"
	"contralay/model/wirelist/table"
)

// NamesStrip reports whether a title is of a connector, or of a strip of terminals.
func NamesStrip(title string) bool {
	if name.SaysConnector(title) {
		return true
	}
	return slices.ContainsFunc(name.Words(table.Fold(title)), func(w string) bool {
		switch w {
		case "strip", "terminal", "terminals", "block", "klemleiste", "bornes":
			return true
		case "harness", "loom", "wiring", "cable", "lead":
			return false
		}
		return stripname.Is(w) || name.IsPinTitle(w)
	})
}
