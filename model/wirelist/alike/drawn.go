package alike

import (
	"strings"

	"contralay/model/wirelist/arrow"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// drawnLines parts lines that draw an arrow from a cavity to a device, with its cavity and the values of the wire in columns behind:
// cells are near end, device, and the columns. A line of two cells says that its cavity is free. ok is false where the near ends are no
// cavities of one device, or no device has its cavity.
//
//	D2  -> arm encoder   A    white
//	D7  not used
func drawnLines(cells [][]string) (lines []Line, ok bool) {
	lines = make([]Line, len(cells))
	seen := map[string]bool{}
	first, wide := 0, 0 // lines whose first cell behind the device is no value; lines with two cells there
	for _, c := range cells {
		if !arrow.IsPadText(c[0]) || seen[c[0]] {
			return nil, false
		}
		seen[c[0]] = true
		if len(c) > 3 {
			if wide++; !asPiece(c[2]).isValue() && isPad(c[2]) {
				first++
			}
		}
	}
	if first == 0 || 5*first < 4*wide {
		return nil, false
	}
	for i, c := range cells {
		line := &lines[i]
		line.Pin = c[0]
		if len(c) == 2 {
			line.Signal = c[1]
			continue
		}
		line.To = c[1]
		rest := c[2:]
		if v := asPiece(rest[0]); isPad(rest[0]) && (len(rest) > 1 || !v.isValue()) {
			line.To, rest = withCavity(c[1], rest[0]), rest[1:]
		}
		var pieces []piece
		for _, text := range rest {
			pieces = append(pieces, refine(asPiece(text))...)
		}
		line.Remark = strings.Join(line.take(pieces), "; ")
	}
	return lines, true
}

// isPad reports whether a cell can be the cavity of a device: one short word, or a word for a cavity and its name.
func isPad(text string) bool {
	const most = 8 // letters (no source)
	return name.IsPinCell(text) || len(text) <= most && !strings.ContainsAny(text, " :,;")
}

// DrawnFrom is what the rows from one on say, which draw such arrows; nil where they do not, or a row like them stands right above.
func DrawnFrom(rows []table.Row, i int) (lines []Line) {
	if drawnCells(rows[i]) == nil || i > 0 && rows[i-1].Line == rows[i].Line-1 && drawnCells(rows[i-1]) != nil {
		return nil
	}
	var cells [][]string
	drawn := 0
	for k, r := range rows[i:] {
		c := drawnCells(r)
		if c == nil || k > 0 && r.Line != rows[i+k-1].Line+1 {
			break
		}
		if r.Drawn != nil {
			drawn++
		}
		cells = append(cells, c)
	}
	if drawn < 2 {
		return nil
	}
	lines, _ = drawnLines(cells)
	return lines
}

// drawnCells are the cells of such a row, or of one among them whose cavity is free, "D7  not used"; nil of any other.
func drawnCells(r table.Row) []string {
	if r.Drawn != nil || !r.Prose || r.Level > 0 || len(r.Cells) != 1 {
		return r.Drawn
	}
	pin, rest, ok := strings.Cut(r.Cells[0], " ")
	if !ok || name.StateOf(rest) == name.Used {
		return nil
	}
	return []string{pin, strings.TrimSpace(rest)}
}
