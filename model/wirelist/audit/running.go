package audit

import (
	"slices"
	"strconv"
	"strings"

	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/pinword"
	"contralay/model/wirelist/plugword"
	"contralay/model/wirelist/table"
)

// running names the points below a device that begin with running numbers and go on with what machines call their terminals: the
// terminal could be the cavity, and the number that of the point.
//
//	Dynamo
//	1. D+ to regulator, red
//	2. DF to regulator, green
//	3. 61 to charge lamp, blue
func (a *auditor) running(t *Table) {
	if !t.Points || len(t.Rows) < 2 {
		return
	}
	var rows []table.Row
	var what []string
	var of *draft.Term
	for _, r := range t.Rows {
		items := a.row(t, r).items
		if len(items) == 0 {
			continue
		}
		it := items[0]
		if of != nil && it.From.Term != of || it.From.Term == nil || it.From.Pin != strconv.Itoa(len(rows)+1) {
			return
		}
		terminal := terminalIn(r, it)
		if of = it.From.Term; terminal == "" || isOfPlug(of) || saysPin(r) {
			return
		}
		rows, what = append(rows, r), append(what, terminal)
	}
	if len(rows) > 1 {
		a.doubt("running numbers that could be no cavities", t.At, called(of)+": "+strings.Join(what, ", "),
			"the number is taken for the cavity; look whether the terminal is what stands behind it", rows)
	}
}

// isOfPlug reports whether a name is that of a plug, whose cavities are numbers.
func isOfPlug(t *draft.Term) bool {
	return slices.ContainsFunc(strings.Fields(table.Fold(called(t))), plugword.Is)
}

// saysPin reports whether a point calls its number a pin.
func saysPin(r table.Row) bool {
	return slices.ContainsFunc(r.Cells, func(c string) bool {
		first, _, more := strings.Cut(table.Fold(c), " ")
		return more && pinword.Is(first)
	})
}

// terminalIn is the terminal that a point names behind its number; "" where it names none.
func terminalIn(r table.Row, it *draft.Item) string {
	if isTerminal(it.Signal) {
		return it.Signal
	}
	for _, c := range r.Cells {
		if first, _, _ := strings.Cut(strings.TrimSpace(c), " "); first != it.From.Pin && isTerminal(first) {
			return first
		}
	}
	return ""
}

// isTerminal reports whether a text is what starters, dynamos, relays, coils and horns call a terminal: a letter or two with a pole or
// without, or the number that vehicles have for it. Common practice, from memory, no source.
func isTerminal(text string) bool {
	switch strings.ToUpper(text) {
	case "B", "D", "F", "L", "S", "W", "R", "N", "E", "A", "M", "G", "IG", "DF", "FR", "ST", "P", "H", "C", "NO", "NC", "COM", "GND", "ACC",
		"15", "30", "31", "49", "50", "53", "56", "58", "61", "85", "86", "87", "30A", "31B", "49A", "50A", "56A", "56B", "87A", "87B",
		"15A", "+", "-", "−":
		return true
	}
	letters := strings.TrimRight(strings.TrimSpace(text), "+-−")
	const most = 2 // letters (no source)
	return letters != text && letters != "" && len(letters) <= most && strings.Trim(letters, "ABCDEFGHIJKLMNOPQRSTUVWXYZ") == ""
}
