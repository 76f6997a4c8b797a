package words

import (
	"strings"

	"contralay/model/wirelist/table"
)

// IsForLater reports whether what a cavity is called ends with a sign and a word that says it is not wired yet, "Flex fuel, later".
func IsForLater(called string) bool {
	f := strings.TrimRight(table.Fold(called), ".) ")
	at := strings.LastIndexAny(f, ",;(-")
	if at < 1 {
		return false
	}
	switch strings.TrimSpace(f[at+1:]) {
	case "later", "for later", "maybe later", "later on", "future", "in future", "not yet", "spater", "noch nicht", "plus tard",
		"pas encore",
		"mas tarde", "todavia no", "piu tardi", "non ancora", "nog niet", "pozniej", "senere", "senare":
		return true
	}
	return false
}
