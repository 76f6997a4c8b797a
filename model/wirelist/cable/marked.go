package cable

import (
	"slices"
	"strings"

	"contralay/model/wirelist/commas"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// Marked reads a remark that is the name of a pair or a cable and says how it is made, and nothing else but what commas part from it:
// "TP1", "twisted pair 1", "pair A", "TP2 shielded", "TP1; 40 turns/m". The number is no size; called is "" where the remark is none, and
// where its number can be a gauge, "pair 22", or the wire that this one goes with, "twisted 3".
func Marked(remark string) (called string, kind value.Gauge, rest string) {
	if !mayMark(remark) {
		return "", kind, "" // most remarks
	}
	pieces := commas.Parts(remark, ",;")
	for i, piece := range pieces {
		if called, kind = markOf(strings.TrimSpace(piece)); called != "" {
			rest = strings.Join(append(slices.Clone(pieces[:i]), pieces[i+1:]...), ";")
			return called, kind, strings.TrimSpace(rest)
		}
	}
	return "", value.Gauge{}, ""
}

// mayMark reports whether a remark has a digit, or a capital that stands alone, as the name of a pair has.
func mayMark(remark string) bool {
	for i := 0; i < len(remark); i++ {
		c := remark[i]
		if c >= '0' && c <= '9' {
			return true
		}
		if c >= 'A' && c <= 'Z' && (i == 0 || !value.IsLetter(remark[i-1])) && (i+1 == len(remark) || !value.IsLetter(remark[i+1])) {
			return true
		}
	}
	return false
}

// markOf is Marked of a text without commas.
func markOf(front string) (called string, kind value.Gauge) {
	const most = 5 // words (no source)
	words := strings.FieldsFunc(front, func(r rune) bool { return strings.ContainsRune(" ()[]#", r) })
	if len(words) > most {
		return "", kind
	}
	mark, letter, number := "", "", ""
	for _, w := range words {
		f := table.Fold(w)
		of := Words(w)
		switch {
		case IsMark(w) && of.IsCable() && mark == "":
			mark = w
			kind.Twisted, kind.Shielded = kind.Twisted || of.Twisted, kind.Shielded || of.Shielded
			kind.Conductors = max(kind.Conductors, of.Conductors)
		case len(w) == 1 && w[0] >= 'A' && w[0] <= 'Z' && letter+number == "":
			letter = w
		case strings.Trim(w, "0123456789") == "" && letter+number == "":
			number = w
		case f == "wire" || f == "leitung" || !kind.Cable(f):
			return "", value.Gauge{}
		}
	}
	group := kind.Conductors > 1 && number != "" && len(number) < 3 && (len(number) < 2 || (number[1]-'0')%2 == 1)
	switch {
	case !kind.IsCable():
	case mark != "" && letter+number == "":
		return mark, kind
	case mark == "" && (letter != "" || group):
		return strings.Trim(front, " ()[]"), kind
	}
	return "", value.Gauge{}
}

// SizeIn is the size that was read in a remark about a cable; "" where it is a small or an odd number without a unit, "twisted 1": that
// counts the pairs, or is a wire's.
func SizeIn(remark, size string) string {
	if size == "" || len(size) > 2 || strings.Trim(size, "0123456789") != "" || len(size) == 2 && (size[1]-'0')%2 == 0 {
		return size
	}
	if low := strings.ToLower(remark); strings.Contains(low, "awg") || strings.Contains(low, "ga") {
		return size
	}
	return ""
}
