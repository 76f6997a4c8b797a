package columned

import "strings"

// SpokenCommas reports whether the commas of a text part no cells: in most lines that have some each stands in brackets or in
// the decimals of a size, or behind an arrow or a word for it and before a blank, as in a sentence.
//
//	X1 (2) ..... X2 (01) (black/red, 14 AWG)        X1 pin 1->S101 (2,5mm2)        PW-11: Dash/1 --> ECU/4, green
func SpokenCommas(lines []string) bool {
	with, spoken, prose := 0, 0, 0
	for _, l := range lines {
		switch {
		case !strings.Contains(l, ","):
			continue
		case isSpoken(l):
			spoken++
		case strings.Count(l, ",") == strings.Count(l, ", ") && len(strings.Fields(l)) > 3:
			prose++ // a title, or a sentence: "Lights flicker at the start, maybe the fuse"
		}
		with++
	}
	return with > 0 && (4*spoken >= 3*with || spoken > 2 && spoken >= prose && 4*spoken >= 3*(with-prose))
}

// isSpoken reports whether each comma of a line is so.
func isSpoken(line string) bool {
	arrow := -1
	for _, sign := range []string{" to ", " nach ", " vers ", " naar ", " > ", "►", "▶", "...", "->", "=>", "→", "-->", "..>"} {
		if i := strings.Index(line, sign); i > 0 {
			arrow = i
		}
	}
	deep := 0
	for i := range len(line) {
		switch line[i] {
		case '"':
			return false
		case '(':
			deep++
		case ')':
			deep--
		case ',':
			unit := strings.TrimLeft(strings.TrimLeft(line[i+1:], "0123456789"), " ")
			digits := i > 0 && line[i-1] >= '0' && line[i-1] <= '9' && strings.HasPrefix(unit, "mm")
			behind := arrow > 0 && i > arrow && i+1 < len(line) && line[i+1] == ' '
			if deep < 1 && !digits && !behind {
				return false
			}
		}
	}
	return true
}

// Bulleted reports whether most lines that hold a sign begin with the dot of a list, or a dash and a blank: the sign parts no cells.
func Bulleted(lines []string, sep byte) bool {
	with, points := 0, 0
	for _, l := range lines {
		if sep == '\t' || strings.IndexByte(l, sep) < 0 {
			continue
		}
		with++
		l = strings.TrimLeft(l, " \t")
		for _, dot := range []string{"• ", "- ", "* ", "– ", "· ", "◦ "} {
			if strings.HasPrefix(l, dot) {
				points++
				break
			}
		}
	}
	return with > 0 && 5*points >= 4*with
}
