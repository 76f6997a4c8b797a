package saidonce

import (
	"regexp"

	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// sizeRange is two sizes with one unit, of which a wire has one or another: "20-24 AWG", "AWG 20 or 22", "0,5 bis 1 mm²"; sizeLimit is
// a word behind or before a size that sets a bound.
var (
	sizeRange = regexp.MustCompile(`\d\s*(?:-|–|—|\.\.+|…|/|\b(?:to|or|bis|oder|ou|a|y|o|of|tot|till|til|do)\b)\s*\d[\d.,]*\s*(?:awg|ga\b|mm|qmm|sq)` +
		`|\b(?:awg|ga)\s*\d+\s*(?:-|–|—|\.\.+|…|/|\b(?:to|or|bis|oder|ou|a|y|o)\b)\s*\d`)
	sizeLimit = regexp.MustCompile(`\b(?:min|max|mini|maxi|minimum|maximum|minimal|maximal|least|up to|or (?:more|thicker|thinner|larger|bigger|smaller)|` +
		`mindestens|hochstens|minimo|maximo|massimo|ten minste|hoogstens)\b`)
)

// oneSize is the one size that a text about all wires says; "" where it says none, or which ones will do.
func oneSize(text string, mark value.Mark) string {
	size := value.SizeWithin(text, mark)
	if size == "" {
		return ""
	}
	if folded := table.Fold(text); sizeRange.MatchString(folded) || sizeLimit.MatchString(folded) {
		return ""
	}
	return size
}

// withoutStops is a text without the full stops of words that set a bound: "max. 22 AWG" is one piece.
func withoutStops(text string) string { return stopped.ReplaceAllString(text, "$1 ") }

var stopped = regexp.MustCompile(`(?i)\b(max|min|mind|approx|ca|nom)\. `)
