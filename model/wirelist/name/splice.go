package name

import (
	"slices"
	"strings"

	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// IsSpliceName reports whether a name is one of a splice: "S1", "SP 3", "SP-2", "Splice 12",
// "Spleiß 2", "Splice S1".
func IsSpliceName(name string) bool {
	if name == "" || !value.IsDigit(name[len(name)-1]) || !BeginsWith(name, "", "seg") {
		return false // no number behind it, or none of the words
	}
	whole := SpliceID(table.Fold(name))
	f := strings.TrimRight(whole, "0123456789")
	if f == whole || f == "s-" {
		return false
	}
	return whole != table.Fold(name) || slices.Contains(append(spliceWords(), "s", "sp", "spl"), strings.TrimRight(f, " -_#."))
}

func spliceWords() []string {
	return []string{"splice", "spleiss", "spleiß", "epissure", "épissure", "empalme", "giunzione", "giunto", "skarv", "stossverbinder"}
}

// SpliceID takes the word off a splice that has a name besides: "Splice S1" is S1.
func SpliceID(name string) string {
	f := strings.ToLower(name)
	for _, w := range spliceWords() {
		rest, ok := strings.CutPrefix(f, w)
		if rest = strings.TrimLeft(rest, " -#.:"); ok && len(rest)+len(w) < len(f) && len(f) == len(name) &&
			strings.TrimLeft(rest, "0123456789") != "" && strings.TrimRight(rest, "0123456789") != rest && !strings.Contains(rest, " ") {
			return name[len(name)-len(rest):]
		}
	}
	return name
}
