package spokenpins

import (
	"strconv"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/stamped"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/toldcells"
)

const (
	least      = 3   // pins (no source)
	mostLines  = 500 // lines of a letter or a chat (no source)
	mostLooked = 20  // lines that say whether a text is a chat (no source)
)

// Chat makes rows of the messages of a chat that begin with a cavity each, the cavities rising.
//
//	[10:41] Una: 1 brown supply
//	[10:42] Ole: sure?
//	[10:42] Una: 2 gn/ye earth
//	[10:44] Una: 3 empty
func Chat(h shape.Headings, t *table.Table) []table.Row {
	if h.HeadLine() > 0 || h.Numbered() || len(t.Rows) < least || len(t.Rows) > mostLines {
		return t.Rows
	}
	stamps, last := 0, 0
	var lines []toldcells.Line
	for i, r := range t.Rows {
		if r.Ruled || i == mostLooked && 2*stamps < i {
			return t.Rows
		}
		says, ok := stamped.Behind(toldcells.Text(r.Cells))
		if !ok {
			continue
		}
		stamps++
		pin, rest, _ := strings.Cut(says, " ")
		pin = strings.TrimRight(pin, ":.)-=")
		n, err := strconv.Atoi(pin)
		if err != nil || n <= last || n > last+6 || strings.HasSuffix(rest, "?") || name.CountWord(table.Fold(rest)) != "" {
			continue
		}
		last = n
		lines = append(lines, toldcells.Line{Row: i, Cells: []string{pin, strings.TrimLeft(rest, "-–:= ")}})
	}
	if len(lines) < least || 2*stamps < len(t.Rows) {
		return t.Rows
	}
	told := toldcells.Tell(lines, toldcells.Unit(t.Rows), true)
	good, coloured, free := told.Good()
	if 4*good < 3*len(told.Wires) || 2*coloured < len(told.Wires) || free == 0 && !saysPlug(t.Rows[:lines[0].Row]) {
		return t.Rows
	}
	told.Below(t.Rows)
	rows, _ := told.Spread(t, nil)
	return rows
}

// saysPlug reports whether a message before the first pin says that pins follow: else anything may be numbered, "1 white coffee".
func saysPlug(rows []table.Row) bool {
	for _, r := range rows {
		text := toldcells.Text(r.Cells)
		if says, ok := stamped.Behind(text); ok {
			text = says
		}
		if toldcells.NamesPlug(text) {
			return true
		}
	}
	return false
}
