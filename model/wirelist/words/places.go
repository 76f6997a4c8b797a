package words

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/stripname"
	"contralay/model/wirelist/table"
)

// Words of headings about the far end of a wire. From memory, no source.

// IsPlace reports whether a word is one for a place where a wire is landed on something that has no plug.
func IsPlace(w string) bool {
	switch w {
	case "lug", "lugs", "tab", "tag", "leg", "post", "blade", "screw", "pad", "spot", "fahne", "ose", "lotfahne", "cosse":
		return true
	}
	return false
}

// SaysOtherSide reports whether a word before one for a cavity says that it is of the other side, "their pin".
func SaysOtherSide(w string) bool {
	switch w {
	case "their", "its", "far", "other", "remote", "mate", "mating", "opposite", "dest", "there", "device", "deren", "dessen", "leur",
		"sa", "son", "su", "suo", "loro", "hun", "zijn":
		return true
	}
	return false
}

// IsPassage reports whether a folded word of a heading is of a connector that wires go through: of a wall, or one that parts two looms.
func IsPassage(w string) bool {
	switch w {
	case "bulkhead", "firewall", "feedthrough", "passthrough", "penetrator", "interconnect", "disconnect", "break", "inline", "wall",
		"coupling", "through", "via", "gland", "bulk", "interface", "trennstelle", "trennstecker", "durchfuhrung", "schottwand",
		"schott", "spritzwand", "kupplung", "cloison", "traversee", "mamparo", "pasamuros", "paratia", "passaparete", "przepust",
		"prepazka", "pruchodka", "schot", "doorvoer", "skott", "genomforing", "lapivienti", "skot", "gjennomforing":
		return true
	}
	return false
}

// SaysPassage reports whether a heading is of a connector that wires go through.
func SaysPassage(head string) bool {
	w := name.Words(name.WithoutBrackets(table.Fold(head)))
	return len(w) > 0 && len(w) < 5 && slices.ContainsFunc(w, IsPassage)
}

// TellsWall reports whether a text above a table says that wires go through what it names, and whether it names a strip of terminals
// or a junction box, where they are landed.
func TellsWall(text string) (wall, strip bool) {
	called, _ := stripname.In(text)
	return slices.ContainsFunc(name.Words(table.Fold(text)), IsPassage), called != "" || NamesBox(text)
}

// NamesBox reports whether a title is of a box in which wires are joined. From memory, no source.
func NamesBox(title string) bool {
	f := table.Fold(title)
	return slices.ContainsFunc([]string{"junction box", "terminal box", "connection box", "kopplingslada", "kopplingsdosa",
		"klemmenkast", "klemmkasten", "abzweigdose", "anschlusskasten", "verteilerdose", "boite de jonction",
		"boite de raccordement", "caja de conexiones",
		"caja de bornes", "scatola di derivazione", "cassetta di derivazione", "koblingsboks", "samledase", "kytkentarasia", "puszka",
		"caixa de ligacao"}, func(w string) bool { return strings.Contains(f, w) })
}

// IsDirect reports whether a folded cell of the cavities of a bulkhead says that the wire does not pass it.
func IsDirect(cell string) bool {
	switch strings.Trim(cell, " .()") {
	case "direct", "none", "no", "n/a", "na", "not through", "does not pass", "direkt", "keine", "nein", "entfallt", "aucun",
		"aucune", "non", "ninguno", "directo", "diretto", "nessuno", "geen", "brak":
		return true
	}
	return false
}

// IsOutput reports whether a folded word is for an output of a unit, which has a name beside that of its cavity.
func IsOutput(w string) bool {
	switch w {
	case "output", "out", "channel", "ch", "port", "ausgang", "kanal", "sortie", "salida", "uscita", "canale", "canal", "uitgang", "kanaal",
		"utgang", "wyjscie", "saida", "lahto", "vystup":
		return true
	}
	return false
}

// AsksWhere reports whether a folded heading is nothing but the question where.
func AsksWhere(head string) bool {
	switch head {
	case "where", "where?", "wo", "wo?", "dove", "donde", "waar", "gdzie", "kde", "var", "hvor":
		return true
	}
	return false
}
