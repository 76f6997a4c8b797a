package alike

import (
	"strings"

	"contralay/model/wirelist/arrow"
	"contralay/model/wirelist/table"
)

// DrawnPads parts the rows from one on that draw an arrow from a pad of one device to a pad of another, with the values of the wire in
// columns behind, where the line above them, or the first of them, names the two devices; headed: the first does. A row without values
// is parted by run. nil where they are none.
//
//	UNO        MOTOR BOARD
//	D3   ->    PWMA          blue
//	GND  ->    GND           black
func DrawnPads(rows []table.Row, at int, run func(table.Row) (from, to string, rest []string)) (lines []Line, headed bool) {
	if at > 0 && rows[at-1].Line+1 == rows[at].Line && drawnPair(rows[at-1], run) != nil {
		return nil, false // within such lines: looked at from the first
	}
	var cells [][]string
	drawn := false
	for k, r := range rows[at:] {
		c := drawnPair(r, run)
		if c == nil || k > 0 && r.Line != rows[at+k-1].Line+1 {
			break
		}
		cells, drawn = append(cells, c), drawn || len(c) > 2
	}
	if !drawn || len(cells) < 2 {
		return nil, false
	}
	headed = headsDrawn(cells)
	if !headed && (at == 0 || rows[at-1].Drawn != nil || rows[at-1].Level == 0 && rows[at-1].Line+3 < rows[at].Line) {
		return nil, false
	}
	if !headed {
		if near, far := arrow.DevicesAbove(rows[at-1]); near == "" || far == "" || !areDrawnPads(cells) {
			return nil, false
		}
	}
	for _, c := range cells {
		line := Line{From: c[0], To: c[1]}
		var pieces []piece
		for _, text := range c[2:] {
			pieces = append(pieces, refine(asPiece(text))...)
		}
		line.Remark = strings.Join(line.take(pieces), "; ")
		lines = append(lines, line)
	}
	return lines, headed
}

// drawnPair are the cells of a row that draws an arrow, its two ends the first; nil of any other.
func drawnPair(r table.Row, run func(table.Row) (from, to string, rest []string)) []string {
	if !r.Prose || r.Level > 0 || len(r.Cells) != 1 || r.Drawn != nil {
		return r.Drawn
	}
	from, to, rest := run(r)
	if from == "" || to == "" || strings.Join(rest, "") != "" {
		return nil
	}
	return []string{from, to}
}

// areDrawnPads reports whether both ends of some lines are pads, and what stands right behind them is a value of the wire in some and in
// three of four.
func areDrawnPads(cells [][]string) bool {
	values, behind := 0, 0
	for _, c := range cells {
		if !arrow.IsPadText(c[0]) || !arrow.IsPadText(c[1]) || arrow.IsDeviceName(c[0]) && arrow.IsDeviceName(c[1]) {
			return false
		}
		if len(c) > 2 {
			behind++
			if asPiece(c[2]).isValue() {
				values++
			}
		}
	}
	return values > 0 && 4*values >= 3*behind
}

// headsDrawn reports whether the first of some lines names the devices of the pads in the others, "UNO -> MOTOR BOARD   wire".
func headsDrawn(cells [][]string) bool {
	first := cells[0]
	if len(cells) < 3 || !areDrawnPads(cells[1:]) {
		return false
	}
	for _, text := range first[2:] {
		if asPiece(text).isValue() {
			return false
		}
	}
	return len(first) > 2 || strings.Contains(first[1], " ") || arrow.IsDeviceName(first[0]) && arrow.IsDeviceName(first[1])
}
