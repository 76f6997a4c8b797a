package connectto

import (
	"regexp"

	"contralay/model/wirelist/table"
)

// A program says of the thing that it serves which pins of the board it is wired to, and then which pin of the board has which of the
// thing. What the board is called it does not say: each board has these pins.
//
//	Tide gauge wired to pins 4, 5 and 9:
//	BEAT: pin 4
//	RUN: pin 5
//	LIFT: pin 9
var (
	wired   = regexp.MustCompile(`(?i)^(?:the |a |an )?(.+?) (?:is |are )?(?:attached|connected|wired|hooked up|soldered) to (?:the )?pins [^:]*:$`)
	pinLine = regexp.MustCompile(`^([\pL][\pL\d_/+-]{0,15}): (?i:pin|digital pin|analog pin) ([A-Z]?\d{1,2})$`)
)

// board is what a board without a name is called, as every connector that no list names.
const board = "Connector 1"

// attached are the rows of such lines from row i on, and how many they are; nil where they are none.
func attached(t *table.Table, rows []table.Row, i int) (made []table.Row, n int) {
	if len(rows[i].Cells) != 1 || !isText(rows[i-1]) || rows[i-1].Line+1 != rows[i].Line {
		return nil, 0
	}
	m := wired.FindStringSubmatch(rows[i-1].Cells[0])
	if m == nil || !isName(m[1]) {
		return nil, 0
	}
	seen := map[string]bool{}
	for ; i+n < len(rows) && rows[i+n].Line == rows[i].Line+n && len(rows[i+n].Cells) == 1; n++ {
		p := pinLine.FindStringSubmatch(rows[i+n].Cells[0])
		if p == nil || seen[p[1]] {
			return nil, 0
		}
		seen[p[1]] = true
		made = append(made, cellsOf(rows[i+n], m[1], p[1], board, p[2]))
	}
	if n < leastRows {
		return nil, 0
	}
	return append([]table.Row{head(t, rows[i].Line, "From", "From pin", "To", "To pin")}, made...), n
}
