package point

import (
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/pinword"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// SaysPin reports whether a point begins with a word for a cavity.
func SaysPin(text string) bool { return WithoutPinWord(text) != text }

// WithoutPinWord takes the word for a cavity off the front of a point.
func WithoutPinWord(text string) string {
	first, rest, ok := strings.Cut(text, " ")
	if w := table.Fold(first); ok && rest != "" && !strings.HasSuffix(w, ":") && (pinword.Is(w) || pinword.IsWith(w)) {
		return strings.TrimSpace(rest)
	}
	return text
}

// Cut parts "3 - Horn", "3: Horn", "3. Horn", "Pin 3 Horn" and "3 Horn" into the cavity and its name.
func Cut(text string) (pin, rest string, ok bool) {
	text = WithoutPinWord(strings.TrimSpace(text))
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
	case strings.HasPrefix(rest, "x ") || strings.HasPrefix(rest, "× "): // 2 x M4 screws
		return "", "", false
	case signs != "" && strings.ContainsAny(signs[:1], ".-") && len(rest) > 0 && len(signs) > 1 && value.IsDigit(signs[1]): // 3-4 m, 2.5 mm
		return "", "", false
	}
	return pin, inRound(rest), true
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
