package words

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// sides are the words for the two sides of a wall that wires go through, the near one first. Common practice, no source.
var sides = [][2]string{
	{"inside", "outside"}, {"inner", "outer"}, {"internal", "external"}, {"cabin", "engine"}, {"cockpit", "engine"}, {"dry", "wet"},
	{"interior", "exterior"}, {"innen", "aussen"}, {"innen", "außen"}, {"interieur", "exterieur"}, {"intérieur", "extérieur"},
	{"interno", "esterno"}, {"interno", "externo"}, {"dentro", "fuera"}, {"dentro", "fora"}, {"binnen", "buiten"}, {"inne", "ute"},
	{"intern", "extern"}, {"interne", "externe"}, {"sisa", "ulko"}, {"vnitrni", "vnejsi"},
	{"inside", "engine bay"}, {"inside device", "outside device"}, {"inside to", "outside to"},
}

// SideOfWall is 0 where a heading begins or ends with a word for the near side of a wall, 1 where with one for the far side, −1 for
// neither: "Inside (terminal)", "Outside plug", "Stecker außen".
func SideOfWall(head string) int {
	w := name.Words(table.Fold(head))
	if len(w) == 0 {
		return -1
	}
	for _, word := range []string{w[0], w[len(w)-1]} {
		for _, s := range sides {
			if k := slices.Index(s[:], word); k >= 0 {
				return k
			}
		}
	}
	return -1
}

// BeforeSide takes the word for a side off the end of a folded word of one piece with it: "motor" of "motorseite".
func BeforeSide(w string) (of string, ok bool) {
	const least = 2 // letters before it (no source)
	for _, side := range []string{"seite", "seitig", "zijde", "kant", "sidan", "siden", "sida", "side"} {
		if of, ok = strings.CutSuffix(w, side); ok && len(of) >= least {
			return of, true
		}
	}
	return "", false
}

// IsShortPlug reports whether a folded word is short for a connector, in a heading: "Cab side conn".
func IsShortPlug(w string) bool {
	return slices.Contains([]string{"conn", "con", "cn", "conec", "connr", "steckv", "stv", "conett"}, w)
}
