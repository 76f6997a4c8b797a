package name

import (
	"strings"

	"contralay/model/wirelist/table"
	"contralay/model/wirelist/titleline"
	"contralay/model/wirelist/value"
)

// Designator is the id of a connector: its name up to a comma, a bracket or a dash
// between blanks, without colons, blanks as dashes.
func Designator(name string) string {
	if first, _, more := strings.Cut(name, " "); more && IsDesignator(strings.TrimRight(first, ":,;-")) {
		return strings.TrimRight(first, ":,;-") // "P7 Dash plug" is P7, and so is "P7: dash"
	}
	if id := inBracketsBehind(name); id != "" {
		return id
	}
	words := strings.Fields(name)
	if bare := strings.Fields(WithoutBrackets(name)); len(bare) > 2 {
		words = bare // "Body plug K4 (6 way)"
	}
	if len(words) > 1 && IsDesignator(words[len(words)-1]) {
		if w := table.Fold(words[len(words)-2]); w == "conn" || titleline.IsPlug(w) {
			return words[len(words)-1] // "Playfield connector J133" is J133
		}
	}
	for _, stop := range []string{",", "(", " - ", " – ", ";", "/"} {
		if i := strings.Index(name, stop); i > 0 {
			name = name[:i]
		}
	}
	name = strings.Join(strings.Fields(strings.ReplaceAll(name, ":", " ")), "-")
	const most = 24 // what a label holds (no source)
	if r := []rune(name); len(r) > most {
		name = strings.TrimRight(string(r[:most]), "-")
	}
	if name == "" {
		return "X"
	}
	return name
}

// IsDesignator reports whether s is one to four letters, then one to three digits: "P7", "CONN12".
func IsDesignator(s string) bool { return value.IsDesignator(s) }
