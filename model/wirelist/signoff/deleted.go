package signoff

import (
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// IsDeleted reports whether a cell says that its row is not to be built: "DELETED", "deleted
// rev C", "obsolete", "entfällt". "Removed" alone, as it is also said of sleeves and seals.
func IsDeleted(cell string) bool {
	const signs = " .:!*()[]"
	if !name.BeginsWith(cell, signs, "dcosegar") {
		return false
	}
	f := strings.Trim(table.Fold(cell), signs)
	if strings.Contains(f, " if ") || strings.Contains(f, " unless ") {
		return false // somebody is to decide
	}
	word, _, _ := name.CutWord(f)
	switch word {
	case "deleted", "delete", "cancelled", "canceled", "obsolete", "superseded", "entfallt", "entfallen", "gestrichen", "geloscht",
		"supprime", "supprimee", "annule", "annulee", "eliminado", "eliminada", "anulado", "eliminato", "eliminata", "annullato":
		return true
	}
	return f == "removed" || strings.HasPrefix(f, "removed rev") || strings.HasPrefix(f, "removed in rev") || f == "del"
}
