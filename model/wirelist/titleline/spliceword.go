package titleline

import "strings"

// SpliceWords are the words for a splice that stand before its number.
func SpliceWords() []string {
	return []string{"splice", "spleiss", "spleiß", "epissure", "épissure", "empalme", "giunzione", "giunto", "skarv", "stossverbinder"}
}

// WithoutSplice takes such a word off a name, where more than a number stands behind it: "Splice S1".
func WithoutSplice(name string) string {
	f := strings.ToLower(name)
	for _, w := range SpliceWords() {
		rest, ok := strings.CutPrefix(f, w)
		if rest = strings.TrimLeft(rest, " -#.:"); ok && len(rest)+len(w) < len(f) && len(f) == len(name) &&
			strings.TrimLeft(rest, "0123456789") != "" && strings.TrimRight(rest, "0123456789") != rest && !strings.Contains(rest, " ") {
			return name[len(name)-len(rest):]
		}
	}
	return name
}
