package pieces

import (
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// The lines between those that tell a wire.

// mayTell reports whether a line that is not understood is of the kind that tells a wire: short, with a number in it, and
// no heading.
func mayTell(text string) bool {
	const most = 14 // words (no source)
	n := len(strings.Fields(text))
	return strings.ContainsAny(text, "0123456789") && n > 2 && n <= most && !strings.HasSuffix(text, ":") && !name.SaysConnector(text) &&
		!countsWays(text) &&
		groupOf(text) == "" && !ofAll(text)
}

// ofAll reports whether a line says something of all wires, "all 1.5mm2 unless it says otherwise".
func ofAll(text string) bool {
	for w := range strings.FieldsSeq(strings.ToLower(text)) {
		switch strings.Trim(w, ",.:;()") {
		case "all", "everything", "unless", "otherwise", "every", "alle", "alles", "sonst", "tous", "toutes", "todos", "todas", "tutti",
			"tutte":
			return true
		}
	}
	return false
}

// groupOf is the size of a line that says one of the lines below it and nothing else, "--- 2.5 mm² ---", "1mm2:"; "" of any other.
func groupOf(text string) string {
	text = strings.Trim(text, "-=*_#~:. \t")
	if g, ok := value.ParseGauge(text, value.BareAWG, value.MarkUnknown); ok && g.Size != "" && !g.IsCable() &&
		strings.Trim(text, "0123456789.,") != "" {
		return text
	}
	return ""
}

// countsWays reports whether a line begins with how many ways a plug has, "9 way block, seen from the wire side".
func countsWays(text string) bool {
	w := strings.FieldsFunc(text, func(r rune) bool { return r == ' ' || r == '-' || r == '\t' })
	if len(w) < 2 || strings.Trim(w[0], "0123456789") != "" {
		return false
	}
	of := table.Fold(w[1])
	return name.IsPinWord(of) || name.CountWord(of) != ""
}
