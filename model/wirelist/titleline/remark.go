package titleline

import (
	"slices"
	"strings"

	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// IsRemark reports whether a line above a table says something of the paper, of the day or of all rows, or tells a person to do
// something: it never names the connector. A line that names one is none.
//
//	printed for Nigel        Stand 04.02., gez. Brandl        Lista para el montaje del sábado
//	ring dave re crimps      Sat. Rain again.                 all awg
//	All white, grounds black
func IsRemark(text string) bool {
	if strings.Contains(text, "....") || IsPageMark(table.Fold(text)) {
		return true // "Protection .......... IP67", "Blatt 7 von 12"
	}
	w := fieldsOf(text)
	if len(w) == 0 || Names(text) || Piece(text) != "" || slices.ContainsFunc(w, isDesignator) {
		return false
	}
	first, behind := w[0], w[1:]
	switch {
	case isPaper[first] && len(behind) > 0 && !isThingBuilt[first+" "+behind[0]] &&
		(isForWhom[behind[0]] || strings.Contains(table.Fold(text), first+".") || isDated(behind)):
	case isDate[first] && isDated(behind):
	case isRevision[first] && len(behind) > 0 && len(behind) < 3 && len(behind[0]) < 3:
	case isList[first] && len(behind) > 1 && isUse[behind[0]] && !slices.ContainsFunc(w, IsPlug):
	case isDay[first] && saysDay(text, first, behind):
	case isAll[first] && len(behind) > 0 && slices.ContainsFunc(behind, func(s string) bool {
		return isUnit[s] || len(s) > 2 && value.NamesColour(s)
	}):
	case isOrder[first] && saysOrder(text, first, behind):
	case isDateAlone(w):
	default:
		return false
	}
	return true
}

// saysDay reports whether a day of the week that begins a text is one: a full stop or a comma stands behind it, a time of the day or a
// date. "Sun roof" and "Sat nav" are things.
func saysDay(text, day string, behind []string) bool {
	rest := strings.TrimPrefix(table.Fold(text), day)
	long := len(day) > 4 || len(behind) > 0
	return len(behind) == 0 && len(day) > 4 || strings.HasPrefix(rest, ".") && long || strings.HasPrefix(rest, ",") && long ||
		len(behind) > 0 && (isTime[behind[0]] || isDated(behind[:1]))
}

// saysOrder reports whether the text behind a word that tells a person to do something is what is to be done: a small word stands in it,
// or a colon behind the first.
func saysOrder(text, word string, behind []string) bool {
	if strings.HasPrefix(strings.TrimPrefix(table.Fold(text), word), ":") {
		return len(behind) > 1
	}
	look := 3 // words behind (no source)
	if isThing[word] {
		look = 1
	}
	return len(behind) > 1 && slices.ContainsFunc(behind[:min(look, len(behind))], func(s string) bool { return isSmall[s] })
}

// isDated reports whether one of the first words is a date.
func isDated(behind []string) bool {
	return slices.ContainsFunc(behind[:min(2, len(behind))], isDateWord)
}

// isDateWord reports whether a word is a date in figures: "04.02", "12/03/24", "2024-03-12".
func isDateWord(w string) bool {
	parts := strings.FieldsFunc(w, func(r rune) bool { return r == '.' || r == '/' || r == '-' })
	if len(parts) < 2 || len(parts) > 3 {
		return false
	}
	for _, p := range parts {
		if len(p) > 4 || strings.Trim(p, "0123456789") != "" {
			return false
		}
	}
	return len(parts) == 3 || len(parts[0]) < 3 && len(parts[1]) == 2
}

// isDateAlone reports whether a date is all that a line says, but for who wrote it.
func isDateAlone(w []string) bool {
	const most = 3 // words with the author (no source)
	return len(w) <= most && slices.ContainsFunc(w, func(s string) bool {
		const signs = ".-/"
		return isDateWord(s) && strings.Count(s, s[strings.IndexAny(s, signs):][:1]) == 2
	})
}
