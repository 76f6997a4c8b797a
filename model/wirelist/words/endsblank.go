package words

import (
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// EndsBlank reports whether a name says last, in words, that nothing is connected there: "Feed - leave open", "Fan speed (not connected)".
// A short form is none: "door switch (NC)" is closed at rest.
func EndsBlank(called string) bool {
	at := -1
	for _, sign := range []string{" - ", " – ", " — ", ", ", "; ", " ("} {
		at = max(at, strings.LastIndex(called, sign))
	}
	if at < 1 {
		return false
	}
	last := strings.Trim(table.Fold(called[at:]), " -–—,;().!")
	return strings.Contains(last, " ") && (name.StateOf(last) == name.Blank || leftOpen[last])
}

// leftOpen are phrases that ask for nothing to be connected. From memory, no source.
var leftOpen = func() map[string]bool {
	all := map[string]bool{}
	for _, phrase := range []string{"leave open", "left open", "leave it open", "leave unconnected", "leave disconnected", "do not connect",
		"don't connect", "do not wire", "offen lassen", "nicht anschliessen", "nicht verbinden", "laisser ouvert", "ne pas connecter",
		"ne pas raccorder", "dejar abierto", "no conectar", "lasciare aperto", "non collegare", "open laten", "niet aansluiten",
		"anslut ej", "nie podlaczac", "nezapojovat"} {
		all[phrase] = true
	}
	return all
}()
