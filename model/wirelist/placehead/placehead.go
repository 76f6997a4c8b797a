// Package placehead reads the heading of a column of cavities that is the designator of what they are of, with one word before it:
// "X1", "Klemme X1", "Motor M1".
//
// It knows the heading alone; what the cells below it are is for others to say.
package placehead

import (
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/pinword"
	"contralay/model/wirelist/plugword"
	"contralay/model/wirelist/stripname"
	"contralay/model/wirelist/table"
)

// Of is what the cavities below such a heading are of: the designator alone behind a word for a cavity, a plug or a strip, else the whole
// of the heading. "" where it is no such heading.
func Of(head string) string {
	w := strings.Fields(name.WithoutBrackets(head))
	if len(w) == 0 || len(w) > 2 {
		return ""
	}
	last := strings.TrimLeft(w[len(w)-1], "-=")
	if !name.IsDesignator(last) || last != strings.ToUpper(last) {
		return ""
	}
	if len(w) == 1 {
		return last
	}
	first := table.Fold(w[0])
	if strip, _ := stripname.In(head); strip != "" || pinword.Is(first) || plugword.Is(first) {
		return last
	}
	return strings.Join(w, " ")
}
