package point

import (
	"strconv"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// BelowPlug reports whether numbered lines are the cavities of the plug that the line above them names, with its kind and how many ways it
// has in brackets: their numbers rise and are no more than it has ways, some say a name as nets have, or that the cavity is free, or
// a sign parts them from what they are.
//
//	KEYS (IDC16)
//	   1 = ROW0
//	   2 = ROW1
//	  11 = nc
//	  15 = +5V
func BelowPlug(heading string, points []table.Row) bool {
	ways := waysOf(heading)
	if ways == 0 || len(points) < 3 {
		return false
	}
	last, nets := 0, 0
	for _, r := range points {
		pin, text, _ := Cut(r.Cells[0])
		at := name.Ordinal(pin)
		if at <= last || at > ways {
			return false
		}
		last = at
		if _, behind, ok := strings.Cut(r.Cells[0], pin); IsNetLike(text) || ok && strings.HasPrefix(strings.TrimSpace(behind), "=") {
			nets++
		}
	}
	return 4*nets >= len(points)
}

// waysOf is how many ways a plug has by the brackets behind its name, "(IDC16)", "(10 way)", "(DB-9)"; 0 where they say nothing of it.
func waysOf(heading string) int {
	front, in, ok := strings.Cut(strings.TrimRight(heading, ": "), "(")
	in, closed := strings.CutSuffix(in, ")")
	words := strings.Fields(in)
	if !ok || !closed || strings.TrimSpace(front) == "" || len(words) == 0 || len(words) > 2 {
		return 0
	}
	letters := strings.TrimRight(words[0], "0123456789")
	number := words[0][len(letters):]
	switch kind := strings.Trim(letters, "-"); {
	case len(words) == 2 && letters == "": // "10 way"
		if w := strings.TrimRight(table.Fold(words[1]), "."); name.CountWord(w) == "" && w != "pin" && w != "pol" && w != "position" {
			return 0
		}
	case len(words) == 2, len(kind) < 2, kind != strings.ToUpper(kind), kind == "REV", kind == "VER", kind == "DWG", kind == "ISS":
		return 0
	}
	n, _ := strconv.Atoi(number)
	return n
}
