package runline

import (
	"strings"

	"contralay/model/wirelist/arrow"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/point"
	"contralay/model/wirelist/value"
)

// partNetLine parts a line of a run list: two ends, each a designator and a cavity, the word "to" between them, then a colour,
// a size and a name in any order.
//
//	C1-1 TO C7-1 RED 14GA MAIN FEED
func partNetLine(text string) (from, to string, rest []string) {
	f := strings.Fields(text)
	if len(f) < 3 || !IsPlainEnd(f[0]) || !IsPlainEnd(f[2]) {
		return "", "", nil
	}
	if start, end := arrow.In(f[1]); !strings.EqualFold(f[1], "to") && (start > 0 || end < len(f[1]) || strings.ContainsAny(text, ",;()")) {
		return "", "", nil // signs part what stands behind an arrow
	}
	colour, size, signal := "", "", ""
	for k := 3; k < len(f); k++ {
		w := f[k]
		g, sized := value.ParseGauge(w, value.BareAWG, value.MarkUnknown)
		if k+1 < len(f) && !point.IsColour(w) { // "20 AWG"
			if both, ok := value.ParseGauge(w+" "+f[k+1], value.BareAWG, value.MarkUnknown); ok && both.Size != "" && size == "" {
				g, sized, w = both, true, w+" "+f[k+1]
				k++
			}
		}
		switch {
		case colour == "" && signal == "" && point.IsColour(w):
			colour = w
		case size == "" && signal == "" && sized && g.Size != "" && strings.Trim(w, "0123456789.,") != "":
			size = w
		default:
			signal = value.JoinNonEmpty(" ", signal, w)
		}
	}
	return f[0], f[2], []string{colour, size, "", signal}
}

// IsPlainEnd reports whether a word is a designator and a cavity of it, "C1-1".
func IsPlainEnd(w string) bool {
	connector, pin, ok := name.SplitEnd(w)
	return ok && name.IsDesignator(connector) && name.IsCavity(pin)
}
