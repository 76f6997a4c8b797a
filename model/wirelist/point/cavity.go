package point

import (
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
	"contralay/model/wirelist/words"
)

// SaysPin reports whether a point begins with a word for a cavity.
func SaysPin(text string) bool {
	_, ok := words.BehindCavityWord(text)
	return ok
}

// Cut parts "3 - Horn", "3: Horn", "3. Horn", "Pin 3 Horn" and "3 Horn" into the cavity and its name.
func Cut(text string) (pin, rest string, ok bool) {
	text = strings.TrimSpace(text)
	text, _ = words.BehindCavityWord(text)
	if pin, rest, ok := CutRange(text); ok {
		return pin, rest, true
	}
	end := strings.IndexAny(text, " :=.)-–\t")
	if end < 0 {
		return text, "", name.IsCavity(text) && strings.ContainsAny(text, "0123456789")
	}
	pin, rest = text[:end], text[end:]
	if !name.IsCavity(pin) {
		return "", "", false
	}
	signs := strings.TrimLeft(rest, " \t")
	rest = strings.TrimSpace(strings.TrimLeft(signs, ":=.)-–→>"))
	next, _, _ := strings.Cut(rest, " ")
	switch {
	case signs == rest && name.JoinsDevice(table.Fold(next)): // "pin 1 of the radio"
		return "", "", false
	case isPinout(rest): // "J1 pinout" is a title
		return "", "", false
	case strings.HasPrefix(rest, "x ") || strings.HasPrefix(rest, "× "): // 2 x M4 screws
		return "", "", false
	case signs != "" && strings.ContainsAny(signs[:1], ".-") && len(rest) > 0 && len(signs) > 1 && value.IsDigit(signs[1]): // 3-4 m, 2.5 mm
		return "", "", false
	}
	return pin, inRound(colourBehind(rest)), true
}

// colourBehind writes the colour in brackets before a name behind it: "(red) VCC" is what "VCC (red)" says.
func colourBehind(text string) string {
	if text == "" || text[0] != '(' {
		return text
	}
	if in, behind, ok := strings.Cut(text[1:], ") "); ok && value.NamesColour(in) {
		return strings.TrimLeft(behind, ":=-– ") + " (" + in + ")"
	}
	return text
}

// isPinout reports whether a text is a word that says of a connector that its cavities follow.
func isPinout(text string) bool {
	switch strings.TrimRight(table.Fold(text), ":. ") {
	case "pinout", "pinouts", "pinning", "pin-out", "pin out", "pinbelegung", "belegung", "kontaktbelegung", "brochage", "pines",
		"piedinatura", "pinagem", "pins", "wiring":
		return true
	}
	return false
}

// inRound writes the brackets at the end of a text round, where they are square: "Horn [red]".
func inRound(text string) string {
	if open := strings.LastIndexByte(text, '['); open > 0 && strings.HasSuffix(text, "]") {
		return text[:open] + "(" + text[open+1:len(text)-1] + ")"
	}
	return text
}

// IsShortName reports whether a text is a name: a few words and no sentence.
func IsShortName(text string) bool {
	return len(text) <= mostName && !strings.HasSuffix(text, ".") && len(strings.Fields(text)) <= 6
}

// mostName is how long a name may be, in bytes (no source).
const mostName = 48
