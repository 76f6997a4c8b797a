package nameaside

import (
	"strings"

	"contralay/model/wirelist/doingword"
	"contralay/model/wirelist/name"
)

// cutSpare parts the name of a spare wire from what is said of its loose end: "spare, cut back at the board". What it is kept for is no
// such remark, "spare, second pump".
func cutSpare(called string) (bare, remark string) {
	for _, mark := range []string{", ", "; ", ": ", " - ", " – ", " — ", " ("} {
		front, back, ok := strings.Cut(called, mark)
		if back = strings.TrimSpace(back); mark == " (" {
			if back, ok = strings.CutSuffix(back, ")"); strings.ContainsAny(back, "()") {
				continue
			}
		}
		if front = strings.TrimSpace(front); ok && back != "" && name.StateOf(front) == name.Spare && doingword.SaysOfLooseEnd(back) {
			return front, back
		}
	}
	return called, ""
}
