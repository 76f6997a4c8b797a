package titleline

import (
	"cmp"
	"slices"
	"strings"
	"unicode"

	"contralay/model/wirelist/plugword"
	"contralay/model/wirelist/prose"
	"contralay/model/wirelist/table"
)

// mostName is how many words the name of a connector has (no source).
const mostName = 5

// Names reports whether a line names a connector: it begins or ends with the word for one, alone or with its designator, and has a word
// more that says which: "mast base plug", "prise feux arrière", "Pasamuros P1". "12 way grey connector" says only what it is like.
func Names(text string) bool {
	text, _ = beforeDate(text)
	w := bareWords(text)
	if n := len(w); n < 2 || n > mostName || IsSentence(text) || strings.HasSuffix(text, ".") {
		return false
	}
	if SaysHarness(text) {
		return false
	}
	return namesAtEnd(w) || IsPlug(w[0]) && !isEnglish[w[0]] && !isDesignator(w[len(w)-1]) && more(w[1:])
}

// namesAtEnd reports whether some folded words end with that for a connector, alone or with its designator, behind a word that says which.
func namesAtEnd(w []string) bool {
	n := len(w)
	if n > 1 && isDesignator(w[n-1]) && IsPlug(w[n-2]) {
		return true
	}
	return n > 1 && IsPlug(w[n-1]) && more(w[:n-1])
}

// SaysHarness reports whether a line has a word for a whole harness: it is the name of the paper, not of a connector.
func SaysHarness(text string) bool {
	for _, w := range wordsOf(text) {
		if isHarness[w] {
			return true
		}
	}
	return false
}

// IsPlug reports whether a folded word is one for a connector, or for one in a wall.
func IsPlug(w string) bool { return plugword.Is(w) || isPlug[w] || isWall[w] }

// IsWall reports whether a folded word is for a connector in a wall, "bulkhead".
func IsWall(w string) bool { return isWall[w] }

// more reports whether some of these words says which connector it is.
func more(words []string) bool {
	for _, w := range words {
		if !isPlain[w] && !isPlug[w] && strings.Trim(w, "0123456789") != "" {
			return true
		}
	}
	return false
}

// bareWords are the folded words of a text up to its first bracket, comma, semicolon or colon.
func bareWords(text string) []string {
	if at := strings.IndexAny(text, "([,;:"); at > 0 {
		text = text[:at]
	}
	return fieldsOf(text)
}

// fieldsOf are the folded words of a text without the signs round them.
func fieldsOf(text string) (all []string) {
	for w := range strings.FieldsSeq(table.Fold(text)) {
		if w = strings.Trim(w, ".,:;!?()[]\"*_"); w != "" {
			all = append(all, w)
		}
	}
	return all
}

// isDesignator reports whether a folded word is letters and a number as connectors are called, "p1", "x12".
func isDesignator(w string) bool {
	letters := strings.TrimRight(w, "0123456789")
	const most = 3 // letters, and digits (no source)
	return letters != "" && letters != w && len(letters) <= most && len(w)-len(letters) <= most &&
		strings.Trim(letters, "abcdefghijklmnopqrstuvwxyz") == ""
}

// BeforeRemark parts the sentences behind the first one off a line whose first one names a connector; remark is "" where it does not.
// The side that the plug is seen from and the date are such remarks as well.
func BeforeRemark(text string) (front, remark string) {
	if front, remark = beforeView(text); remark != "" {
		return front, remark
	}
	if front, remark = beforeDate(text); remark != "" {
		return front, remark
	}
	for at := 0; ; {
		k := strings.Index(text[at:], ". ")
		if k < 0 {
			return text, ""
		}
		at += k + 1
		if front = text[:at-1]; !Names(front) {
			continue
		}
		if remark = strings.TrimSpace(text[at:]); remark == "" || !unicode.IsUpper([]rune(remark)[0]) {
			return text, ""
		}
		return front, remark
	}
}

// Piece is the piece of a line that says which connector it is of, where a dash, a colon, a stroke or a comma parts it from what it is in:
// "rate controller plug" of "SPRAYER - rate controller plug (the round one)", "Schott P1" of "Rally car - Schott P1", "dash plug" of "Works
// tram, dash plug". Behind it comes the piece that says how many ways it has, "Kombi" of "Unimog - Kombi (16-polig)". "" where no piece
// does, or several.
func Piece(text string) (plug string) {
	if !strings.ContainsAny(text, "-–—:/|,") {
		return "" // most titles
	}
	text = asDashes.Replace(strings.TrimSpace(text))
	if first, _, _ := strings.Cut(text, " "); isDesignator(table.Fold(strings.TrimRight(first, ":,"))) || isDashed(first) ||
		BehindThing(text) != "" {
		return ""
	}
	return cmp.Or(pieceOf(text, strings.Split(withoutBrackets(text), " - "), true), pieceOf(text, piecesOf(text), false),
		countedPiece(text))
}

// asDashes makes hyphens of the longer dashes.
var asDashes = strings.NewReplacer(" – ", " - ", " — ", " - ", " | ", " - ", " / ", " - ")

// pieceOf is the one of some pieces that names a connector. What tells plugs of one device apart and no more, "plug A", "left plug", is
// one only where a dash parts the pieces.
func pieceOf(text string, pieces []string, dashed bool) (plug string) {
	if len(pieces) < 2 {
		return ""
	}
	for k, p := range pieces {
		p, _, _ = strings.Cut(withoutBrackets(p), ", ") // "ECU plug B, grey"
		p = withoutWays(p)
		w := fieldsOf(p)
		if n := len(w); n < 2 || n > mostName || IsSentence(p) || !IsPlug(w[n-1]) && (!isPlug[w[0]] || isEnglish[w[0]]) &&
			!(IsPlug(w[n-2]) && (isDesignator(w[n-1]) || isCounted(p))) || sharesOut(w[n-2]) {
			continue
		}
		if !dashed && (k == 0 && !strings.Contains(text, pieces[0]+":") || !saysWhich(w)) {
			return "" // "Deck plug, grey" is its own name, "Hub, left plug" one only as a whole
		}
		if plug != "" {
			return ""
		}
		plug = strings.TrimRight(strings.TrimSpace(p), ".,:;")
	}
	return plug
}

// sharesOut reports whether a word before the word for a connector speaks of each of them: "one table per connector".
func sharesOut(w string) bool {
	switch w {
	case "per", "each", "every", "pro", "je", "jeder", "jeden", "par", "chaque", "por", "cada", "ogni", "elke":
		return true
	}
	return false
}

// saysWhich reports whether some words of a name tell more than the side and the letter of a plug.
func saysWhich(w []string) bool {
	return slices.ContainsFunc(w, func(s string) bool {
		return len(s) > 2 && !isPlain[s] && !plugword.Is(s) && !isPlug[s] && !prose.IsSideWord(s) || isWall[s] && len(w) > 1
	})
}

// withoutWays takes the number of its ways off the end of a name, "Floor bulkhead 12 way", "Kombi (16-polig)".
func withoutWays(p string) string {
	if at := strings.IndexAny(p, "0123456789"); at > 2 && CountsWays(strings.Trim(p[at:], "() ,")) {
		return strings.Trim(p[:at], " (,-")
	}
	return p
}

// Within is what a line says the connector stands in that a piece of it names: "Port davit" of "Port davit - control plug".
func Within(text, plug string) string {
	if plug == "" || Piece(text) != plug {
		return ""
	}
	front, behind, _ := strings.Cut(text, plug)
	front, _, _ = strings.Cut(strings.Trim(front, " -–—:/|,"), ", ")
	if front == "" {
		front = withoutWays(withoutBrackets(strings.Trim(behind, " -–—:/|,")))
	}
	return front
}

// countedPiece is the piece of two that says how many ways it has, without them, "Kombi" of "Unimog - Kombi (16-polig)".
func countedPiece(text string) (called string) {
	pieces := strings.Split(strings.Replace(text, ": ", " - ", 1), " - ")
	if len(pieces) != 2 || strings.ContainsAny(pieces[0], ",(") || CountsWays(pieces[1]) {
		return ""
	}
	if called = withoutWays(pieces[1]); called == pieces[1] {
		return ""
	}
	if w := fieldsOf(called); len(w) == 0 || len(w) > mostName || !more(w) {
		return ""
	}
	return called
}

// isCounted reports whether a text ends with a capital letter or a number alone, as connectors of one device are told apart: "ECU plug B".
func isCounted(text string) bool {
	w := strings.Fields(text)
	last := strings.TrimRight(w[len(w)-1], ".,:;")
	return last == strings.ToUpper(last) && prose.IsOrdinal(last)
}

// withoutBrackets takes what stands in brackets out of a text.
func withoutBrackets(text string) string {
	for {
		open := strings.IndexAny(text, "([")
		if open < 0 {
			return text
		}
		end := strings.IndexAny(text[open:], ")]")
		if end < 0 {
			return text
		}
		text = strings.TrimRight(text[:open], " ") + text[open+end+1:]
	}
}

// IsSentence reports whether a line of text is prose and no name.
func IsSentence(text string) bool {
	const most = 8 // words of a name (no source)
	n := len(strings.Fields(text))
	if strings.HasSuffix(text, ".") && n > 2 || strings.HasSuffix(text, "!") || strings.HasSuffix(text, "?") || n > most {
		return true
	}
	for _, w := range wordsOf(text) {
		if isVerb[w] {
			return true
		}
	}
	return false
}

// wordsOf are the folded words of a text, of letters and digits.
func wordsOf(text string) []string {
	return strings.FieldsFunc(table.Fold(text), func(r rune) bool { return !unicode.IsLetter(r) && !unicode.IsDigit(r) })
}
