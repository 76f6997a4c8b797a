package name

import (
	"strings"

	"contralay/model/wirelist/table"
)

// isKeyWithoutPin reports whether a cell says that a cavity keys its connector and that no pin is in it: "Key (no pin)", "no pin -
// key", "keyed, pin removed". A key alone can be the name of a net.
func isKeyWithoutPin(cell string) bool {
	key, none := false, false
	for _, piece := range strings.FieldsFunc(strings.ReplaceAll(table.Fold(cell), " - ", ";"), func(r rune) bool {
		return strings.ContainsRune("()[];,:/", r)
	}) {
		switch piece = strings.TrimSpace(piece); {
		case piece == "":
		case IsKey(piece) || isWeakWord(piece) || piece == "key position" || piece == "polarisation":
			key = true
		case stateWord(piece) == Blank:
			none = true
		default:
			switch strings.TrimPrefix(piece, "pin ") {
			case "removed", "missing", "cut", "cut off", "omitted", "pulled", "absent", "missing pin":
				none = true
			default:
				return false
			}
		}
	}
	return key && none
}
