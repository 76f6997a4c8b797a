package name

import (
	"slices"
	"strings"

	"contralay/model/wirelist/value"
)

// SaysConnector: a text with the word for one, or a designator at its head.
func SaysConnector(text string) bool {
	first, _, _ := strings.Cut(text, " ")
	return ConnectorName(text) != text || IsDesignator(strings.TrimRight(first, ":,"))
}

// PlainSheet: the name a sheet has when nobody named it.
func PlainSheet(name string) bool {
	f := strings.TrimRight(value.Fold(name), "0123456789 ")
	return slices.Contains([]string{"sheet", "tabelle", "feuil", "feuille", "hoja", "foglio", "table"}, f)
}

// BaseName is a file name without folders and ending.
func BaseName(file string) string {
	file = file[strings.LastIndexAny(file, `/\`)+1:]
	if i := strings.LastIndexByte(file, '.'); i > 0 {
		file = file[:i]
	}
	return strings.ReplaceAll(file, ":", "-")
}
