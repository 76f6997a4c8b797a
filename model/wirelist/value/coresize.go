package value

import "strings"

// CoreSize is the size of the cores that the type of a cable says within it, "LIYCY 4x0.5", "YSLY 3 G 1,5", "2x2x0.25 mm²",
// "4x22 AWG", "1 pair 24 AWG". "" where it says none, or more than one. A number without unit is a cross section where wire is made
// in it.
func CoreSize(text string, mark Mark) (size string) {
	if g, ok := ParseGauge(text, BareAWG, mark); ok && g.IsCable() && g.Size != "" && !isNumbered(text) {
		return g.Size // "4C 22 AWG shielded"
	}
	text = strings.ToLower(strings.NewReplacer("×", "x", " x ", "x", " X ", "x", "*", "x", "²", "2", " G ", "G", " g ", "g").Replace(text))
	all := strings.FieldsFunc(text, func(r rune) bool { return r == ' ' || r == ';' || r == '(' || r == ')' })
	for i, w := range all {
		w = strings.TrimRight(w, ",.")
		count, of, ok := cutCores(w)
		if !ok || strings.Trim(count, "0123456789x") != "" {
			continue
		}
		unit := ""
		if i+1 < len(all) {
			unit = strings.Trim(all[i+1], ",.")
		}
		one := coreSize(of, unit, mark)
		if one == "" {
			continue
		}
		if size != "" && size != one {
			return ""
		}
		size = one
	}
	return size
}

// isNumbered reports whether a text can be the name of a cable as well, with the number behind it that tells it from others: "TP1",
// "STP 2". A size has its unit, or two digits apart from the word.
func isNumbered(text string) bool {
	low := strings.ToLower(text)
	if strings.ContainsAny(text, ".,#/²") || strings.Contains(low, "awg") || strings.Contains(low, "mm") {
		return false
	}
	word := strings.TrimRight(text, "0123456789")
	return word != "" && IsLetter(word[0]) && (!strings.HasSuffix(word, " ") || len(text)-len(word) < 2)
}

// cutCores parts a word into the number of cores, "4" or "2x2", and the size behind the sign.
func cutCores(w string) (count, of string, ok bool) {
	i := strings.LastIndexAny(w, "xg")
	if i > 0 && strings.HasSuffix(w, "awg") {
		i = strings.LastIndexAny(w[:len(w)-len("awg")], "xg")
	}
	if i < 1 || i > 5 || w[0] < '1' || w[0] > '9' || i+1 == len(w) {
		return "", "", false
	}
	return w[:i], w[i+1:], true
}

// coreSize reads what stands behind the sign, with the word behind it that may be its unit.
func coreSize(of, unit string, mark Mark) string {
	switch {
	case strings.HasPrefix(of, "awg"), strings.HasSuffix(of, "awg"), strings.HasSuffix(of, "mm2"), strings.HasSuffix(of, "mm"):
	case unit == "awg" || unit == "mm2" || unit == "qmm" || unit == "sqmm":
		of += " " + unit
	case isOtherUnit(unit) && unit != "mm" || !isMadeSection(strings.ReplaceAll(of, ",", ".")) && !isMadeSection(of+".0"):
		return ""
	default:
		of += " mm2"
	}
	if rest, ok := strings.CutSuffix(of, "mm"); ok {
		of = rest + "mm2" // the two is often left out
	}
	if g, ok := ParseGauge(of, BareMM2, mark); ok && !g.IsCable() {
		return g.Size
	}
	return ""
}
