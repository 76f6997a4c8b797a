// Package stripname finds the name of a strip of terminals in a title: behind the word for one, in many languages, or alone behind a
// dash at the end.
//
//	Pump panel - regletero X1        Terminal strip TB2 (coop)        Pumpenschrank, Klemmenleiste -X1        Pump panel - X1
//
// It knows words and the shape of names; which table the title is of is for others to say.
package stripname

import (
	"slices"
	"strings"

	"contralay/model/wirelist/table"
)

// mostBefore is how many words may stand before the word for a strip that no mark sets off: what has more is a sentence (no source).
const mostBefore = 4

// In gives the name of the strip that a title names, and what else the title says; "" where it names none, or several.
func In(title string) (called, more string) {
	for _, sep := range []string{" - ", " – ", " — ", " / ", ": ", ", ", "("} {
		i := strings.LastIndex(title, sep)
		if i <= 0 || isNamed(title[:i]) {
			continue
		}
		last := strings.TrimRight(title[i+len(sep):], ") ")
		called, behind := ofPiece(last)
		if called == "" && sep != ", " && sep != "(" && sep != ": " && isAlone(last) {
			called = strings.TrimLeft(last, "-=")
		}
		if called != "" {
			return called, joined(title[:i], behind)
		}
	}
	if called, more = ofPiece(title); called != "" {
		return called, joined("", more)
	}
	return ofEnd(title)
}

// joined is what stands before and behind the name, without the signs that set it off.
func joined(front, behind string) string {
	front, behind = strings.TrimRight(front, " -–—/:,"), strings.Trim(behind, " -–—/:,()")
	if front == "" || behind == "" {
		return front + behind
	}
	return front + ", " + behind
}

// ofPiece reads a text that begins with the word for a strip, or with its name and then the word: "regletero X1", "X1 terminals". behind
// is what follows.
func ofPiece(text string) (called, behind string) {
	all := strings.Fields(text)
	n := leads(all)
	if n == 0 {
		if len(all) > 1 && isName(all[0]) && (leads(all[1:]) == len(all)-1 || len(all) == 2 && terminals[table.Fold(all[1])]) {
			return clean(all[0]), ""
		}
		return "", ""
	}
	for k := n; k < len(all); k++ {
		switch w := all[k]; {
		case isName(w) || k+1 == len(all) && isLetters(w):
			if !isPlaced(all[k+1:]) && slices.ContainsFunc(all[k+1:], isName) ||
				leadsAny(all[k+1:]) || strings.HasSuffix(w, ",") && k+1 < len(all) {
				return "", "" // "regleta X1, X2" names two
			}
			if isSaid(all[k+1:]) {
				return "", ""
			}
			return clean(w), strings.Join(all[k+1:], " ")
		case isOrdinal(w) && k+1 == len(all):
			return strings.Join(all, " "), "" // a number alone is no name without the word
		case !between[table.Fold(w)]:
			return "", ""
		}
	}
	return "", ""
}

// ofEnd reads a short text that ends with the word for a strip and its name: "Pump panel terminal strip X1".
func ofEnd(title string) (called, more string) {
	all := strings.Fields(title)
	for k := 1; k < len(all) && k <= mostBefore; k++ {
		w := table.Fold(strings.TrimRight(all[k-1], ":,"))
		if before[w] || isName(all[k-1]) {
			return "", ""
		}
		if leads(all[k:]) > 0 {
			called, behind := ofPiece(strings.Join(all[k:], " "))
			if called == "" || behind != "" && behind[0] != '(' {
				return "", ""
			}
			return called, joined(strings.Join(all[:k], " "), behind)
		}
	}
	return "", ""
}

// leads is how many words of those that a text begins with are the word for a strip.
func leads(all []string) int {
	for _, p := range phrases {
		n := strings.Count(p, " ") + 1
		if len(all) >= n && strings.TrimRight(table.Fold(strings.Join(all[:n], " ")), ":.") == p {
			return n
		}
	}
	if len(all) > 0 && Is(strings.TrimRight(table.Fold(all[0]), ":.")) {
		return 1
	}
	return 0
}

func leadsAny(all []string) bool {
	for k := range all {
		if leads(all[k:]) > 0 {
			return true
		}
	}
	return false
}

// isSaid reports whether what stands behind a name makes a sentence of it: "terminal strip X1 is gone".
func isSaid(behind []string) bool {
	const most = 6 // words (no source)
	return len(behind) > most || slices.ContainsFunc(behind, func(w string) bool { return verbs[table.Fold(strings.Trim(w, ".,;!?"))] })
}

// isPlaced reports whether a dash and several words stand behind a name, "- cabinet SM3": what is named there is where the strip is.
func isPlaced(behind []string) bool {
	const least = 2 // words behind the dash (no source)
	return len(behind) > least && strings.Trim(behind[0], "-–—") == "" && !isName(behind[1])
}

func clean(w string) string { return strings.Trim(w, "-=+:,.;()[]") }

// isName reports whether a word is one to four capitals and one to three digits, "X1", "-XM2", "TB10".
func isName(w string) bool {
	w = clean(w)
	letters := strings.TrimRight(w, "0123456789")
	return len(letters) > 0 && len(letters) <= 4 && len(w)-len(letters) > 0 && len(w)-len(letters) <= 3 &&
		strings.Trim(letters, "ABCDEFGHIJKLMNOPQRSTUVWXYZ") == ""
}

// isLetters reports whether a word is one of two or three capitals, "XB".
func isLetters(w string) bool {
	w = clean(w)
	return len(w) > 1 && len(w) < 4 && strings.Trim(w, "ABCDEFGHIJKLMNOPQRSTUVWXYZ") == ""
}

// isOrdinal reports whether a word is a number or a capital alone.
func isOrdinal(w string) bool {
	w = clean(w)
	return w != "" && len(w) < 3 && strings.Trim(w, "0123456789") == "" || len(w) == 1 && w >= "A" && w <= "Z"
}

// isAlone reports whether a text is a name that drawings give to strips and plugs alone: "X1", "-XT2", "TB1", "J3".
func isAlone(text string) bool {
	if !isName(text) || strings.Contains(text, " ") {
		return false
	}
	switch w := strings.TrimRight(clean(text), "0123456789"); w {
	case "X", "J", "P", "TB", "TS", "CN", "PL", "SK", "CON", "CONN":
		return true
	default:
		return len(w) == 2 && w[0] == 'X'
	}
}

// isNamed reports whether a text begins with a name: "J1 - X1" says where a cable goes.
func isNamed(text string) bool {
	first, _, _ := strings.Cut(text, " ")
	return isName(first)
}
