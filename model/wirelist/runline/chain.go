package runline

import (
	"slices"
	"strings"

	"contralay/model/wirelist/arrow"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/point"
	"contralay/model/wirelist/table"
)

// Chain parts a line that runs on from one device to the next into a line for each wire, with the name before it and the values behind it:
// "feed: fuse 1 → switch 2 → lamp + (red)". A piece of two ends, "K1/30, K1/87", ends one wire and begins the next. nil where the line has
// fewer than two arrows, or says neither a value of a wire nor a cavity in most of its pieces: a way through menus is written so, too.
func Chain(text string) (lines []string) {
	var pieces []string
	rest := text
	for {
		from, to := arrow.In(rest)
		if to == 0 {
			break
		}
		pieces = append(pieces, strings.TrimSpace(rest[:from]))
		rest = rest[to:]
	}
	if len(pieces) < 2 {
		return nil
	}
	last, values := point.ValuesBehind(strings.TrimSpace(rest))
	pieces = append(pieces, last)
	label := ""
	if front, back, ok := strings.Cut(pieces[0], ": "); ok {
		label, pieces[0] = front+": ", strings.TrimSpace(back)
	}
	ends := 0
	for k := range pieces[1:] {
		from, to := lastEnd(pieces[k]), firstEnd(pieces[k+1])
		if from == "" || to == "" || !point.IsShortName(from) || !point.IsShortName(to) {
			return nil
		}
		if saysCavity(to) {
			ends++
		}
		line := label + from + " -> " + to
		if values != nil {
			line += " (" + strings.Join(values, ", ") + ")"
		}
		lines = append(lines, line)
	}
	if values == nil && 2*ends <= len(lines) {
		return nil
	}
	return lines
}

// Chained gives each wire of a line that runs on from device to device a row, all of that line.
//
//   - fuse 1 → switch 2 → lamp + (red)
func Chained(rows []table.Row) []table.Row {
	var out []table.Row
	for i, r := range rows {
		var lines []string
		if len(r.Cells) == 1 && r.Level == 0 {
			lines = Chain(r.Cells[0])
		}
		if lines != nil && out == nil {
			out = slices.Clone(rows[:i])
		}
		for _, l := range lines {
			one := r
			one.Cells = []string{l}
			out = append(out, one)
		}
		if lines == nil && out != nil {
			out = append(out, r)
		}
	}
	if out == nil {
		return rows
	}
	return out
}

// lastEnd is the end that the next wire begins with: the second of two.
func lastEnd(piece string) string {
	_, back, ok := strings.Cut(piece, ", ")
	if !ok {
		return piece
	}
	return strings.TrimSpace(back)
}

// firstEnd is the end of the wire before: the first of two.
func firstEnd(piece string) string {
	front, _, _ := strings.Cut(piece, ", ")
	return strings.TrimSpace(front)
}

// saysCavity reports whether an end is a connector and its cavity, or ends with a cavity or a pole.
func saysCavity(end string) bool {
	at := strings.LastIndexByte(end, ' ')
	return IsPlainEnd(end) || IsLooseEnd(end) || name.SaysPin(end) || at > 0 && (name.IsCavity(end[at+1:]) || end[at+1:] == "+" ||
		end[at+1:] == "-")
}
