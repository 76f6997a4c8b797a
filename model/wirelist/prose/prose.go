package prose

import (
	"strings"

	"contralay/model/wirelist/table"
)

// GoesOn reports whether a line of prose goes on with the sentence of the line before it: what it begins with names nothing.
func GoesOn(before, r table.Row) bool {
	_, last := before.Filled()
	prose := r.Prose && before.Prose && r.Level == 0 && before.Level == 0 && !r.Point
	return prose && r.Line == before.Line+1 && len(strings.Fields(last)) > 7 && !strings.ContainsAny(last[len(last)-1:], ".:;!?")
}

// HeaderTo is the word for a connector that a line begins with, before what its cavities go to and a colon: "Header to port of
// the chip:".
func HeaderTo(text string) string {
	if !strings.HasSuffix(text, ":") {
		return ""
	}
	front, _, ok := strings.Cut(text, " to ")
	all := strings.Fields(front)
	if !ok || len(all) == 0 || len(all) > 4 {
		return ""
	}
	switch table.Fold(all[len(all)-1]) {
	case "header", "connector", "plug", "socket", "terminals", "strip":
		return front
	}
	return ""
}
