package join

import (
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// isLink reports whether what a wire is called says that it joins two cavities, and of no net: "link", "jumper 2", "Brücke". What it
// joins has its name from the other wires in these cavities.
func isLink(signal string) bool {
	w := name.Words(table.Fold(signal))
	if len(w) > 1 && strings.Trim(w[len(w)-1], "0123456789") == "" {
		w = w[:len(w)-1]
	}
	switch strings.Join(w, " ") {
	case "link", "wire link", "jumper", "jumper wire", "bridge", "strap", "loop", "brucke", "drahtbrucke", "pont", "cavalier", "puente",
		"ponte", "ponticello", "brug", "doorverbinding", "bygel", "lask", "mostek", "zworka", "propojka":
		return true
	}
	return false
}
