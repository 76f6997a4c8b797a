package cable

import (
	"regexp"
	"strings"

	"contralay/model/wirelist/value"
)

// coresOfSize is a number of cores and their section with its unit.
var coresOfSize = regexp.MustCompile(`[0-9]\s*[xX×]\s*[0-9.,]+\s*(?:mm|qmm|sqmm)`)

// bareCores is such a text without the unit, which is all that the cell of a make-up says: "4 G 2.5", "3 x 0,75".
var bareCores = regexp.MustCompile(`^[0-9]{1,2}\s*[xX×gG]\s*[0-9]{1,2}(?:[.,][0-9]{1,2})?$`)

// Twist is what the kind of a cable says of its cores together: "2 x 1.5mm2" says how many they are and their section, and no twist.
func Twist(kind string, g value.Gauge) value.Gauge {
	if !g.Twisted && !g.Shielded && coresOfSize.MatchString(kind) {
		return value.Gauge{}
	}
	return g
}

// pairs is the sign of a cable that is made of pairs or other groups, "2x2x0.25", and the words for them.
var pairs = regexp.MustCompile(`(?i)[0-9]\s*[x×]\s*[0-9]+\s*[x×]|pair|paar|par\b|twist|verseil|tors`)

// SaysPairs reports whether a heading or the name or the kind of a cable says that its cores are made up in pairs or other groups, or
// twisted.
func SaysPairs(text string) bool { return pairs.MatchString(text) || coppia.MatchString(text) }

// coppia are words for pairs that are part of others in some languages.
var coppia = regexp.MustCompile(`(?i)\b(?:tp|twp|par|pares|coppi[ae]|doppin[io]|para|pary)[0-9]*\b`)

// IsPlain reports whether the kind of a cable is how many cores it has and their section, and says of no pairs, no twist and no shield.
func IsPlain(kind string) bool {
	g := Words(kind)
	return !g.Twisted && !g.Shielded && (coresOfSize.MatchString(kind) || bareCores.MatchString(kind)) && !pairs.MatchString(kind)
}

// IsOnlySize reports whether the name of a cable is a size of wire with its unit, and nothing that a cable has.
func IsOnlySize(text string) bool {
	g, ok := value.ParseGauge(text, value.BareAWG, value.MarkUnknown)
	_, numbered, _ := cutNumbered(text) // "cable 1" has a number
	return ok && numbered == "" && g.Size != "" && !g.IsCable() && strings.Trim(text, "0123456789., ") != ""
}
