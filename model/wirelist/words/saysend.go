package words

import (
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// SaysEnd reports whether a heading says where a wire ends: "Termination at stern", "Stern end".
func SaysEnd(head string) bool {
	w := name.Words(table.Fold(head))
	if len(w) < 2 {
		return false
	}
	switch w[0] {
	case "termination", "terminated", "connects", "connected", "landed", "end":
		return w[1] == "at" || w[1] == "on" || w[1] == "to" && len(w) > 2
	}
	return w[len(w)-1] == "end" || w[len(w)-1] == "termination"
}
