package noted

import (
	"strings"

	"contralay/model/wirelist/point"
)

// What wire it is stands in brackets behind its far end, and behind the brackets a remark.
//
//   - Stern lamp: panel 9 -> lamp 1 (18 AWG red) - ask first
//   - Horn: panel 4 -> horn 2 (18 AWG red), new
//
// remarks writes the values before the brackets, and the remark in them, where that is no value itself.
func (n *notes) remarks() {
	n.texts(func(i int, text string) bool {
		open := strings.Index(text, " (")
		if open < 0 || strings.HasSuffix(text, ")") && strings.Count(text, "(") == 1 {
			return true
		}
		front, back, ok := farSide(text)
		open = strings.Index(back, " (")
		if !ok || open < 1 {
			return true
		}
		in, behind, closed := strings.Cut(back[open+2:], ")")
		behind = strings.Trim(behind, " ,;:-–—.")
		_, values := point.ValuesBehind("x (" + in + ")")
		if !closed || behind == "" || len(values) == 0 || strings.Contains(in, "(") || strings.ContainsAny(back[:open], ",;") {
			return true
		}
		if colour, size := point.WireValues(behind); colour != "" || size != "" || isSize(behind) {
			return true
		}
		n.set(i, front+back[:open]+", "+in+" ("+strings.NewReplacer("(", "", ")", "").Replace(behind)+")")
		return true
	})
}
