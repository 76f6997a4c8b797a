package cable

import (
	"strings"

	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// IsBracket reports whether a text is nothing but signs that are drawn beside rows to join
// them.
func IsBracket(text string) bool {
	return strings.Trim(text, "┐┘│├┤┌└─┼╮╯╭╰{}[]()⎫⎬⎭⎧⎨⎩⎤⎦⎡⎣|/<>") == ""
}

// YesOrNo reads a mark in a column that asks a question: "yes", "no", or "" for anything else. "Single" in a column of cables is no.
func YesOrNo(text string) string {
	bare := strings.Trim(table.Fold(text), " .")
	if isNone(bare) {
		return "no"
	}
	switch bare {
	case "y", "yes", "x", "ja", "j", "oui", "si", "s", "true":
		return "yes"
	case "n", "no", "nein", "non", "false", "none", "keine", "aucun", "n/a", "n.a":
		return "no"
	}
	return ""
}

// Names parts "TP1, SH1" and "TP1/SH1"; any other text is one name.
func Names(text string) []string {
	all := strings.FieldsFunc(text, func(r rune) bool { return strings.ContainsRune(",;/+&", r) })
	for k := range all {
		if all[k] = strings.TrimSpace(all[k]); !IsMark(all[k]) {
			return []string{text}
		}
	}
	return all
}

// IsMark reports whether a name is letters and a number behind them: "TP1", "SH 3", "Pair-2".
func IsMark(name string) bool {
	letters := strings.TrimRight(name, "0123456789")
	return letters != name && len(name)-len(letters) <= 3 && strings.Trim(table.Fold(strings.TrimRight(letters, " -_#.")),
		"abcdefghijklmnopqrstuvwxyz") == "" && strings.Trim(letters, " -_#.") != ""
}

// Words finds the words shielded and twisted in any note.
func Words(note string) (g value.Gauge) {
	for _, t := range value.Scan(table.Fold(note)) {
		if t.Kind == 'a' {
			g.Cable(t.Text)
		}
	}
	return g
}
