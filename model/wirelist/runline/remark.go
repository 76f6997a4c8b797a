package runline

import (
	"strings"

	"contralay/model/wirelist/point"
)

// remarkAmongValues parts a remark in brackets out of the values behind a far end, wherever it stands among them: "lamp, 1.5 mm2 red (buy
// a switch!)", "lamp, red (new), 1.5 mm2". remark is "" where what stands in brackets is a value itself, or no value stands beside it.
func remarkAmongValues(to string) (bare, remark string) {
	comma := strings.Index(to, ", ")
	if comma < 1 || strings.Count(to, "(") != 1 {
		return to, ""
	}
	front, behind, in := brackets(to[comma:])
	if in == "" || point.IsColourOrLetters(in) || isSize(in) {
		return to, ""
	}
	if _, values := point.ValuesBehind("x (" + in + ")"); values != nil {
		return to, ""
	}
	bare = to[:comma] + strings.TrimSpace(front+" "+behind)
	if behind != "" && strings.ContainsAny(behind[:1], ",;") {
		bare = to[:comma] + front + behind
	}
	if !saysValues(bare) {
		return to, ""
	}
	return bare, strings.TrimSpace(in)
}

// saysValues reports whether the last of some pieces behind a comma is a value of a wire, or two of them.
func saysValues(text string) bool {
	if _, values := point.ValuesBehind(text); values != nil {
		return true
	}
	colour, size := point.WireValues(strings.TrimSpace(text[strings.LastIndex(text, ", ")+1:]))
	return colour != "" || size != ""
}
