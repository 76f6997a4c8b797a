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

// EndsUnneeded reports whether a note ends in two words or three that say that nothing is there, "jumper 22-23 not needed".
func EndsUnneeded(note string) bool {
	w := strings.Fields(strings.TrimRight(table.Fold(note), " .!)"))
	for n := 2; n <= min(3, len(w)); n++ {
		if last := strings.Join(w[len(w)-n:], " "); unneeded[last] || name.StateOf(last) == name.Blank {
			return true
		}
	}
	return false
}

// unneeded are phrases for what is left out. From memory, no source.
var unneeded = func() map[string]bool {
	all := map[string]bool{}
	for _, phrase := range []string{"not needed", "not required", "not necessary", "not wanted", "nicht notig", "nicht benotigt",
		"nicht erforderlich", "pas necessaire", "pas besoin", "non necessaire", "no necesario", "no hace falta", "non necessario",
		"non serve", "niet nodig", "behovs ej", "behovs inte", "ikke nodvendig", "niepotrzebne", "neni potreba", "nao necessario"} {
		all[phrase] = true
	}
	return all
}()
