package value

import (
	"strconv"
	"strings"

	"contralay/model/unit"
	"contralay/model/wirelist/table"
)

// largestA is the largest current that is read, in A (no source: starters of cars
// draw less).
const largestA = 2000

// ParseCurrent reads "1.0A", "20 mA", "0,02", "5 amps". A number without unit is in
// A, or in mA where the heading says so (milli). ok is false where anything is not
// understood, below 0 or over 2000 A.
func ParseCurrent(text string, milli bool, mark Mark) (unit.Ampere, bool) {
	var in room
	all := scan(in[:0], table.Fold(text))
	if len(all) == 0 || len(all) > 2 || all[0].Kind != '0' || strings.Contains(all[0].Text, "/") {
		return 0, false
	}
	v, ok := mark.number(all[0].Text)
	if len(all) == 2 {
		switch all[1].Text {
		case "a", "amp", "amps", "ampere", "amperes":
			milli = false
		case "ma":
			milli = true
		default:
			return 0, false
		}
	}
	if milli {
		v /= 1000
	}
	return unit.Ampere(v), ok && v <= largestA
}

// FormatCurrent prints a current in a way that ParseCurrent reads as the same.
func FormatCurrent(a unit.Ampere) string {
	return strconv.FormatFloat(float64(a), 'f', -1, 64) + " A"
}

// fuseWord reports whether a folded word names a protective device.
func fuseWord(word string) bool {
	switch word {
	case "fuse", "fused", "fuses", "sicherung", "abgesichert", "fusible", "fusibile", "breaker":
		return true
	}
	return false
}

// FuseIn finds "7.5A fuse", "fused 7.5 A" or "fuse: 7,5 A" in a note: the rating, and
// the note as a whole where it says something else too, else "". ok is false where
// the note names no fuse with a rating in amperes, or two.
func FuseIn(note string, mark Mark) (rating unit.Ampere, rest string, ok bool) {
	if f := table.Fold(note); !strings.Contains(f, "fus") && !strings.Contains(f, "sicher") && !strings.Contains(f, "breaker") {
		return 0, note, false // none of the words
	}
	for _, piece := range strings.FieldsFunc(note, func(r rune) bool { return r == ';' || r == '(' || r == ')' }) {
		for _, p := range splitComma(piece) {
			if strings.TrimSpace(p) == "" {
				continue
			}
			fuse, left := CutFuseWord(p)
			v, got := ParseCurrent(left, false, mark)
			switch {
			case !fuse || !got || !strings.ContainsAny(left, "aA"):
				rest = note
			case ok:
				return 0, note, false
			default:
				rating, ok = v, true
				if strings.Contains(table.Fold(p), "breaker") {
					rest = note // a breaker is no fuse: the words are kept
				}
			}
		}
	}
	if !ok {
		return 0, note, false
	}
	return rating, rest, true
}

// CutFuseWord takes the word of a device off a piece of a note.
func CutFuseWord(piece string) (found bool, rest string) {
	var left []string
	for _, w := range strings.Fields(piece) {
		if fuseWord(strings.Trim(table.Fold(w), ":,.=")) && !found {
			found = true
			continue
		}
		left = append(left, w)
	}
	return found, strings.Join(left, " ")
}

// splitComma parts a text at its commas, but for those between two digits.
func splitComma(s string) []string {
	var all []string
	from := 0
	for i := range len(s) {
		if s[i] == ',' && (i == 0 || i+1 == len(s) || !IsDigit(s[i-1]) || !IsDigit(s[i+1])) {
			all = append(all, s[from:i])
			from = i + 1
		}
	}
	return append(all, s[from:])
}
