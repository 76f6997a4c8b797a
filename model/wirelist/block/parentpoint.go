package block

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/runline"
	"contralay/model/wirelist/table"
)

// parentPoint makes a heading of the point that some cavities are set in below, where it is a short name.
//
//	Keypad
//	  1 horn, red
//	  2 free
func parentPoint(titles, points []table.Row) []table.Row {
	const most = 4 // words of the name of a connector (no source)
	last := len(titles) - 1
	if last < 0 || !titles[last].Point || titles[last].Deep >= points[0].Deep || len(titles[last].Cells) != 1 {
		return titles
	}
	text := strings.TrimRight(titles[last].Cells[0], ":")
	if len(strings.Fields(text)) > most || strings.ContainsAny(text, ",;:=") || name.StateOf(text) != name.Used || name.IsGeneric(text) {
		return titles
	}
	titles = slices.Clone(titles)
	titles[last].Point, titles[last].Level, titles[last].Prose = false, runline.LowestHeading, false
	return titles
}
