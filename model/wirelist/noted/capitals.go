package noted

import (
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// The cavities of many plugs are letters. In a note nothing but a blank stands behind them.
//
//	Damper pot (4 pin)
//	A 5V -> logger 12
//	B signal -> logger 15

// capitals writes a colon behind the letters that lines below the name of a plug begin with, where they go on from A and are two or more.
func (n *notes) capitals() {
	for i := 1; i+1 < len(n.rows); i++ {
		if !n.isLettered(i, 'A') || !n.isLettered(i+1, 'B') || len(n.rows[i-1].Cells) != 1 || !headsPins(n.rows[i-1].Cells[0]) {
			continue
		}
		last := byte(0)
		for ; i < len(n.rows) && n.isLettered(i, 0); i++ {
			text := n.rows[i].Cells[0]
			if text[0] <= last || last > 0 && n.rows[i].Line > n.rows[i-1].Line+1 {
				break
			}
			last = text[0]
			n.set(i, text[:1]+": "+text[2:])
		}
	}
}

// isLettered reports whether a row is a text that begins with a capital alone, the one asked for where it is not 0, and a blank.
func (n *notes) isLettered(i int, asked byte) bool {
	r := n.rows[i]
	if len(r.Cells) != 1 || r.Level > 0 || r.Struck || len(r.Cells[0]) < 3 {
		return false
	}
	c := r.Cells[0]
	return c[0] >= 'A' && c[0] <= 'Z' && c[1] == ' ' && !strings.ContainsAny(c[2:3], "-–:=.)") && (asked == 0 || c[0] == asked)
}

// headsPins reports whether a line is the name of a plug, or says how many cavities there are, "Damper pot (4 pin, 3 used)".
func headsPins(text string) bool {
	if name.SaysConnector(text) {
		return true
	}
	_, in, ok := strings.Cut(text, "(")
	w := strings.Fields(table.Fold(strings.NewReplacer("-", " ", ",", " ", ")", " ").Replace(in)))
	return ok && len(w) > 1 && strings.Trim(w[0], "0123456789") == "" && name.IsPinWord(w[1])
}
