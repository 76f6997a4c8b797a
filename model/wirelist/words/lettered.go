package words

import (
	"slices"
	"strings"

	"contralay/model/wirelist/table"
)

// lettered are things that have letters or short words on their terminals, beside those of things. Common words, from memory, no source.
var lettered = setOf(`regulator generator dynamo magneto ignition distributor ammeter voltmeter rectifier dimmer cutout contact
	regler zundschloss zundung zundschalter gleichrichter spule magnetzunder dinamo generatrice regulateur
	contacteur bobine redresseur regolatore bobina raddrizzatore regulador contactor rectificador
	spanningsregelaar contactslot gelijkrichter tandningslas laddningsregulator spole tandspole likriktare
	laderegulator stacyjka pradnica cewka prostownik zapalovani civka`)

// HasLetters reports whether a text is the name of a thing whose terminals are called by letters or short words, "Ignition switch",
// "Regulator".
func HasLetters(text string) bool {
	text = strings.Trim(text, "*_`#: ")
	all := strings.Fields(table.Fold(text))
	const most = 4 // words of the name of a thing (no source)
	return len(all) > 0 && len(all) <= most &&
		(IsThing(text) || slices.ContainsFunc(all, func(w string) bool { return lettered()[w] }))
}
