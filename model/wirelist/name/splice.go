package name

import (
	"slices"
	"strings"

	"contralay/model/wirelist/table"
	"contralay/model/wirelist/titleline"
	"contralay/model/wirelist/value"
)

// IsSpliceName reports whether a name is one of a splice: "S1", "SP 3", "SP-2", "Splice 12",
// "Spleiß 2", "Splice S1".
func IsSpliceName(name string) bool {
	if name == "" || !value.IsDigit(name[len(name)-1]) || !BeginsWith(name, "", "seg") {
		return false // no number behind it, or none of the words
	}
	whole := titleline.WithoutSplice(table.Fold(name))
	f := strings.TrimRight(whole, "0123456789")
	if f == whole || f == "s-" {
		return false
	}
	return whole != table.Fold(name) || slices.Contains(append(titleline.SpliceWords(), "s", "sp", "spl"), strings.TrimRight(f, " -_#."))
}

// SpliceID takes the word off a splice that has the letter of one besides: "Splice S1" is S1; "Giunzione G1" and "Skarv S1" keep theirs.
func SpliceID(name string) string {
	rest := titleline.WithoutSplice(name)
	if !strings.HasPrefix(strings.ToLower(name), "spl") {
		return name
	}
	if at := strings.TrimRight(strings.ToLower(rest), "0123456789"); at == "s" || at == "sp" || at == "spl" {
		return rest
	}
	return name
}
