package nameaside

import (
	"strings"

	"contralay/model/wirelist/cable"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// Made parts a name from what it says in brackets of how the wire is made, "Knock (screened)", "CAN H (TP1)"; says is "" where it says
// nothing of it. A shield alone is a wire itself: "CAN (shield)".
func Made(called string) (bare, says string) {
	open := strings.LastIndexByte(called, '(')
	if open < 1 || !strings.HasSuffix(called, ")") {
		return called, ""
	}
	in, bare := strings.TrimSpace(called[open+1:len(called)-1]), strings.TrimSpace(called[:open])
	if mark, _, _ := cable.Marked(in); mark != "" && bare != "" {
		return bare, in
	}
	g := cable.Words(in)
	for _, w := range name.Words(table.Fold(in)) {
		if !g.Cable(w) || name.IsDrainWord(w) {
			return called, ""
		}
	}
	if bare == "" || !g.Twisted && !g.Shielded {
		return called, ""
	}
	return bare, in
}
