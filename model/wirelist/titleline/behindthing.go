package titleline

import (
	"slices"
	"strings"
)

// BehindThing is the designator of the connector in a title that names the thing that has it first, X4 of "Tidal Mk 3 recorder: X4 - deck
// connector (6 pins)": a piece behind a comma, a colon or a dash begins with it, and goes on with a word for a connector, or is it alone
// where its letters are those of connectors. "" where no piece does, or several.
//
//	Winch drive, X3            Hoist 4 - J2 (8 way)            Panel: K7 control plug
func BehindThing(title string) (designator string) {
	if box := namedBox(title); box != "" {
		return box
	}
	if !strings.ContainsAny(title, "0123456789") || !strings.ContainsAny(title, ",:;/") && !strings.Contains(title, " - ") &&
		!strings.Contains(title, " – ") && !strings.Contains(title, " — ") {
		return "" // most names
	}
	pieces := piecesOf(title)
	if len(pieces) < 2 || isOwnDesignator(pieces[0]) {
		return ""
	}
	first, _, _ := strings.Cut(pieces[0], " ")
	for k, p := range pieces[1:] {
		w := strings.Fields(withoutBrackets(p))
		if len(w) == 0 || !isOwnDesignator(w[0]) {
			continue
		}
		says := slices.ContainsFunc(fieldsOf(strings.Join(pieces[k+1:], " ")), IsPlug)
		if !says && (len(w) > 1 || !isConnectorLetters(w[0]) || isOwnDesignator(first) && isConnectorLetters(first)) {
			continue
		}
		if designator != "" && designator != w[0] {
			return ""
		}
		designator = w[0]
	}
	return designator
}

// asCommas makes commas of the other signs.
var asCommas = strings.NewReplacer(" – ", ", ", " — ", ", ", " - ", ", ", " / ", ", ", ": ", ", ", "; ", ", ")

// piecesOf parts a title at its commas, colons and dashes between blanks, those in brackets left alone.
func piecesOf(title string) (all []string) {
	for _, p := range CommaParts(asCommas.Replace(title)) {
		if p = strings.TrimSpace(p); p != "" {
			all = append(all, p)
		}
	}
	return all
}

// isOwnDesignator reports whether a text is capital letters and a number behind them, as a connector is called.
func isOwnDesignator(w string) bool {
	return w == strings.ToUpper(w) && isDesignator(strings.ToLower(w))
}

// isConnectorLetters reports whether a designator has the letters of a connector: X and those with it in IEC 81346-2, J, P and TB in IEEE
// 315, others by common practice. From memory, no source.
func isConnectorLetters(designator string) bool {
	switch strings.TrimRight(designator, "0123456789") {
	case "X", "XP", "XS", "XT", "XD", "XB", "J", "P", "TB", "CN", "CON", "PL", "SK", "ST", "BU", "JP", "PLG", "SKT":
		return true
	}
	return false
}
