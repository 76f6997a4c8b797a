package words

import (
	"slices"
	"strings"
)

// Words of headings that say where all the wires below them go. From memory, no source.

// IsWires reports whether a folded word is for wires of one kind or for all of them: "returns", "grounds", "feeds", "leads".
func IsWires(w string) bool {
	switch w {
	case "return", "returns", "ground", "grounds", "earth", "earths", "negative", "negatives", "feeds", "supplies", "wires", "leads",
		"cores", "cables", "all", "everything", "commons", "lines", "drains", "screens", "shields", "links",
		"ruckleiter", "ruckleitungen", "masse",
		"massen", "masseleitungen",
		"minusleitungen", "leitungen", "adern", "kabel", "alle", "erdungen", "schirme", "retours", "masses",
		"fils", "conducteurs", "tous", "ritorni", "fili", "cavi", "tutti", "negativi", "retornos", "masas", "hilos",
		"conductores", "todos", "negativos", "massa", "retouren", "draden", "aders":
		return true
	}
	return false
}

// GoesTo reports whether a folded word stands before the place where wires go.
func GoesTo(w string) bool {
	switch w {
	case "to", "into", "onto", "->", "→", "zu", "zur", "zum", "an", "nach", "auf", "vers", "au", "a", "al", "alla", "verso", "hacia",
		"hasta", "naar":
		return true
	}
	return false
}

// ComesFrom reports whether a folded word stands before the place where wires start, and begins no name.
func ComesFrom(w string) bool { return slices.Contains(FromWords(), w) }

// FromWords are these words. Common words of each language, from memory, no source.
func FromWords() []string {
	return []string{"from", "von", "vom", "depuis", "desde", "dal", "dalla", "fran", "fra"}
}

// RefersTo reports whether a folded text begins with words that refer to another row, and names nothing itself: "same as 5", "see X3",
// "wie Pin 4".
func RefersTo(text string) bool {
	for _, lead := range []string{"same as ", "see ", "as pin ", "as above", "like pin ", "shared with ",
		"share with ", "common with ",
		"wie ", "siehe ", "s. pin ", "dito ", "gleich wie ", "voir ", "comme ", "idem ", "igual que ", "ver pin ", "come pin ", "vedi ",
		"zie ", "same ", "ditto ", "also on ", "together with "} {
		if strings.HasPrefix(text, lead) && len(text) > len(lead) {
			return true
		}
	}
	return false
}

// IsArticle reports whether a folded word is one that stands before a name and is none of it.
func IsArticle(w string) bool {
	switch w {
	case "the", "a", "an", "der", "die", "das", "den", "dem", "le", "la", "les", "el", "los", "las", "il", "lo", "i", "gli", "de", "het":
		return true
	}
	return false
}

// IsPaper reports whether a folded word is of what wires are made by and not taken to: "to drawing 4411", "to length".
func IsPaper(w string) bool {
	switch w {
	case "drawing", "dwg", "length", "lengths", "size", "spec", "specification", "standard", "order", "customer", "plan", "sheet", "list",
		"schematic", "diagram", "builder", "suit", "follow", "come", "do", "be", "check", "iec", "iso", "din", "en", "mil", "zeichnung",
		"lange",
		"norm", "kunde", "liste", "plans", "longueur", "schema", "norme", "disegno", "lunghezza", "norma", "plano", "longitud", "esquema":
		return true
	}
	return false
}
