package bothends

import (
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// PlugOf is the plug that a heading of cavities names and says nothing else: "M" of "Plug M", all of "Main plug"; "" where it names none,
// as the word for a plug alone does.
func PlugOf(head string) string {
	w := strings.Fields(head)
	if len(w) != 2 {
		return ""
	}
	switch first, last := table.Fold(w[0]), table.Fold(w[1]); {
	case name.IsConnectorWord(first) && last != "a" && w[1] == strings.ToUpper(w[1]) &&
		(len(w[1]) == 1 && last >= "a" || name.IsDesignator(w[1])):
		return w[1]
	case name.IsConnectorWord(last) && !name.IsConnectorWord(first) && isMain(first):
		return head
	}
	return ""
}

// isMain reports whether a folded word before one for a plug says that all wires start there.
func isMain(w string) bool {
	switch w {
	case "main", "bulkhead", "ecu", "loom", "harness", "control", "dash", "firewall", "engine", "central":
		return true
	}
	return false
}
