package value

import (
	"strings"

	"contralay/model/wirelist/table"
)

// BareSection is the cross section that a text says without its unit, "all of it is 0.75 thinwall": the one number in it, with
// decimals, as wire is made. "" where there is none.
func BareSection(text string, mark Mark) (size string) {
	all := strings.Fields(text)
	for i, w := range all {
		w = strings.Trim(w, ",;:()")
		if !strings.ContainsAny(w, "0123456789") {
			continue
		}
		if size != "" || !isMadeSection(strings.ReplaceAll(strings.TrimRight(w, "."), ",", ".")) ||
			i+1 < len(all) && isOtherUnit(all[i+1]) {
			return ""
		}
		if g, ok := ParseGauge(strings.TrimRight(w, "."), BareMM2, mark); ok {
			size = g.Size
		}
	}
	return size
}

// IsSection reports whether a number without unit is a cross section as wire is made, with decimals: "0,5", "2.5", and no "3.3".
func IsSection(text string) bool {
	return strings.ContainsAny(text, ".,") && isMadeSection(strings.ReplaceAll(strings.TrimSpace(text), ",", "."))
}

// isMadeSection reports whether a number with decimals is a cross section in mm² that wire is made in. Common practice, no source.
func isMadeSection(w string) bool {
	switch w {
	case "0.14", "0.22", "0.25", "0.34", "0.35", "0.5", "0.50", "0.75", "0.85", "1.0", "1.25", "1.5", "2.0", "2.5", "3.0", "4.0",
		"6.0", "10.0":
		return true
	}
	return false
}

// isOtherUnit reports whether a word behind a number is a unit of something else than a cross section.
func isOtherUnit(w string) bool {
	w = table.Fold(strings.Trim(w, ",.;:()"))
	switch w {
	case "v", "a", "w", "kv", "ma", "bar", "kg", "nm", "turns", "times", "percent", "%", "mm", "ohm", "ohms", "s", "h", "hours", "days":
		return true
	}
	return LengthWord(w) != ""
}
