package value

import (
	"strconv"
	"strings"

	"contralay/model/wirelist/squareword"
	"contralay/model/wirelist/table"
)

// IsSizeRange reports whether a text is all sizes between two, or all up to one: what a terminal takes, and no size of a wire.
//
//	0.5 - 4 mm²    26-12 AWG    AWG 12 ... 26    max. 2.5 mm²    bis 4 mm²
//
// "4-0.5 mm²" falls as no range in mm² does, and is four cores.
func IsSizeRange(text string) bool {
	folded := strings.TrimRight(table.Fold(squareword.Plain(text)), " .")
	if !strings.Contains(folded, "mm") && !strings.Contains(folded, "awg") && !strings.Contains(folded, "ga") {
		return false // no unit of sizes
	}
	for _, dots := range []string{"...", "..", "…", "÷", "~"} {
		folded = strings.ReplaceAll(folded, dots, " - ")
	}
	var in room
	all := scan(in[:0], folded)
	var sizes []float64
	between, upTo := false, false
	units, awg, metric := [3]bool{}, false, false // behind as many sizes
	for i, t := range all {
		switch {
		case t.Kind == '0':
			v, err := strconv.ParseFloat(strings.ReplaceAll(t.Text, ",", "."), 64)
			if err != nil || len(sizes) == 2 {
				return false
			}
			sizes = append(sizes, v)
		case t.Text == "awg" || t.Text == "ga" || t.Text == "gauge":
			awg, units[len(sizes)] = true, true
		case t.Text == "mm2" || t.Text == "mm" || t.Text == "sqmm" || t.Text == "sq" || t.Text == "qmm" || t.Text == "mmq":
			metric, units[len(sizes)] = true, true
		case t.Kind == '.':
		case len(sizes) == 1 && (t.Kind == '-' || isUntil(t.Text)):
			between = true
		case len(sizes) == 0 && (i == 0 && isUpTo(t.Text) || upTo && isUntil(t.Text) || t.Text == "=" || isFrom(t.Text)):
			upTo = upTo || isUpTo(t.Text)
		case isUpTo(t.Text) && i == len(all)-1:
			upTo = true
		default:
			return false
		}
	}
	if awg && metric || len(sizes) == 2 && units[1] && !units[0] && !units[2] {
		return false // "20 AWG - 0.5 mm²" is one size, "18 AWG - 2" is none of two
	}
	switch len(sizes) {
	case 1:
		return upTo
	case 2:
		return between && (awg && sizes[0] != sizes[1] || sizes[0] < sizes[1])
	}
	return false
}

// FaultOfRange is what a report says of a range of sizes in the place of one; "" where a text is none.
func FaultOfRange(text string) string {
	if IsSizeRange(text) {
		return "a range of sizes"
	}
	return ""
}

// isUntil reports whether a word or sign parts the least from the largest of a range.
func isUntil(w string) bool {
	switch w {
	case "to", "bis", "zu", "a", "al", "tot", "do", "til", "till", "ate", "until", "up", "and", "и", "до":
		return true
	}
	return false
}

// isUpTo reports whether a word or sign says that a size is the largest.
func isUpTo(w string) bool {
	switch w {
	case "max", "maximum", "maximal", "up", "bis", "jusqu", "hasta", "fino", "tot", "do", "upto", "maks", "<", "≤", "до", "largest":
		return true
	}
	return false
}

// isFrom reports whether a word stands before the least of a range.
func isFrom(w string) bool {
	switch w {
	case "from", "von", "de", "da", "van", "od", "fra", "fran", "between", "от":
		return true
	}
	return false
}
