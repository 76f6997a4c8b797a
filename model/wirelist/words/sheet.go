package words

import (
	"slices"
	"strings"

	"contralay/model/wirelist/table"
)

// IsPlainSheet reports whether a sheet has the name that it gets when nobody names it.
func IsPlainSheet(name string) bool {
	f := strings.TrimRight(table.Fold(name), "0123456789 ")
	return slices.Contains([]string{"sheet", "tabelle", "feuil", "feuille", "hoja", "foglio", "table"}, f)
}
