package name

import (
	"strings"

	"contralay/model/wirelist/table"
)

// Key is a name without case and signs, but for the one that tells the two poles apart.
func Key(name string) string {
	return strings.Join(append(Words(table.Fold(name)), PlusMinus(name)...), " ")
}

// PlusMinus keeps what tells the two sides of a pair apart, which words drop; a remark in brackets may stand behind it.
func PlusMinus(signal string) []string {
	s := strings.TrimSpace(signal)
	if strings.HasSuffix(s, ")") && strings.ContainsAny(s, "+-−") {
		s = strings.TrimSpace(WithoutBrackets(s)) // "Battery + (M8 ring)"
	}
	switch {
	case strings.HasSuffix(s, "+"), strings.Contains(strings.ReplaceAll(s, "-", " "), " + "): // "bar + of the chest" is not its bar -
		return []string{"+"}
	case strings.HasSuffix(s, "-") || strings.HasSuffix(s, "−"):
		return []string{"-"}
	}
	return nil
}
