package value

import "strings"

// SaysSize reports whether a cell is a size of wire, alone or with its colour behind a blank, "2.5 red". "W-01" is the number of a wire.
func SaysSize(cell, lang string, mark Mark) bool {
	if g, ok := ParseGauge(cell, BareAWG, mark); ok && g.Size != "" {
		return true
	}
	return IsSizeAndColour(cell, lang, mark)
}

// IsSizeAndColour reports whether a cell is a size of wire and a colour with a blank between them.
func IsSizeAndColour(cell, lang string, mark Mark) bool {
	if !strings.Contains(cell, " ") {
		return false
	}
	_, both := SizeAndColour(cell, BareAWG, lang, mark)
	return both
}
