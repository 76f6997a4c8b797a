package name

import (
	"strings"

	"contralay/model/wirelist/value"
)

// IsBracket: signs that are drawn beside rows to join them.
func IsBracket(text string) bool {
	return strings.Trim(text, "┐┘│├┤┌└─┼╮╯╭╰{}[]()⎫⎬⎭⎧⎨⎩⎤⎦⎡⎣|/<>") == ""
}

func YesOrNo(text string) string {
	switch strings.Trim(value.Fold(text), " .") {
	case "y", "yes", "x", "ja", "j", "oui", "si", "s", "true":
		return "yes"
	case "n", "no", "nein", "non", "false", "none", "keine", "aucun":
		return "no"
	}
	return ""
}

// CableNames parts "TP1, SH1" and "TP1/SH1"; any other text is one name.
func CableNames(text string) []string {
	all := strings.FieldsFunc(text, func(r rune) bool { return strings.ContainsRune(",;/+&", r) })
	for k := range all {
		if all[k] = strings.TrimSpace(all[k]); !IsMark(all[k]) {
			return []string{text}
		}
	}
	return all
}

// IsMark: letters and a number behind them: "TP1", "SH 3", "Pair-2".
func IsMark(name string) bool {
	letters := strings.TrimRight(name, "0123456789")
	return letters != name && len(name)-len(letters) <= 3 && strings.Trim(value.Fold(strings.TrimRight(letters, " -_#.")),
		"abcdefghijklmnopqrstuvwxyz") == "" && strings.Trim(letters, " -_#.") != ""
}
