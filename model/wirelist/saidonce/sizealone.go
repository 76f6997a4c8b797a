package saidonce

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
	"contralay/model/wirelist/words"
)

// A line above the rows whose first sentence is a size of wire and nothing else but what kind of wire it is, is of all of them.
//
//	24 ga solid. Bl is blue, S is slate
//	Wire: 0.5 mm² stranded

// sizeAlone is the size that such a line says; "" where it says none.
func sizeAlone(text string, mark value.Mark) string {
	const longest = 200 // bytes (no source)
	if len(text) > longest || !strings.ContainsAny(text, "0123456789") {
		return ""
	}
	first, _, _ := strings.Cut(strings.TrimRight(text, ". "), ". ")
	size := oneSize(first, mark)
	if size == "" {
		return ""
	}
	kind := false
	for _, w := range name.Words(table.Fold(first)) {
		switch {
		case words.IsWireKind(w):
			kind = true
		case words.IsOfAnyWire(w) || slices.Contains(name.Words(table.Fold(size)), w) || strings.Trim(w, "0123456789") == "":
		case w != "size" && w != "gauge":
			return ""
		}
	}
	if !kind && !strings.Contains(first, ":") {
		return ""
	}
	return size
}
