package table

import (
	"contralay/model/wirelist/columned"
	"fmt"
	"strings"
)

// Lists that were copied out of a letter or a terminal have no sign between their cells:
// columns stand under each other, two blanks or more apart.

// inColumns reports whether no sign parts the cells of the text and most of its lines have gaps, or those of a table within it.
func inColumns(text string) bool {
	if strings.ContainsAny(text, ";\t|") && !columned.RuledBesideSigns(text) || columned.StartsArrowed(text) {
		return false
	}
	most, signs := columned.Gaps(text)
	return !signs && (most || columned.BelowRule(text) || columned.Within(text) > 0)
}

// readColumns reads such a text. The line of its headings gives the columns; a cell of another line is of the column that it
// stands under most, or between whose edges it stands where a rule gives them.
func readColumns(name, text string, l Limits) ([]Table, error) {
	t := Table{File: name, Comma: true}
	count := counter{l: l}
	text = columned.Squeezed(text)
	heads, at, ruled, tight := columned.Heads(text)
	if heads == nil {
		return readSeparated(name, text, l)
	}
	titles := columned.Titles(heads, at, text)
	var order *columned.Order
	if !ruled {
		order = columned.Ragged(heads, at, text)
	}
	heads = columned.Beyond(heads, at, text)
	n, starts, sections := 0, columned.Starts(heads, text), columned.Sections(heads, at, text)
	parts := columned.NoRows(heads, at, text)
	for line := range strings.SplitSeq(text, "\n") {
		n++
		if len(line) > l.CellBytes {
			return nil, &Error{Place{File: name, Row: n}, fmt.Sprintf("has %d bytes", len(line)),
				fmt.Sprintf("lines of up to %d", l.CellBytes)}
		}
		raw := line
		line, remark := columned.Pointed(heads, line, n > at)
		cells := columned.WithoutArrows(columned.Gapped(line))
		if len(cells) == 0 || strings.Trim(line, "-=_ ") == "" {
			continue // a rule under the headings
		}
		row := Row{Line: n, Raw: rawOf(raw)}
		own, apart := sections[n]
		switch cut := columned.CutAt(heads, line); {
		case order != nil && n == at:
			row.Cells = allMarked(order.Names())
		case order != nil && n > at && !titles[n] && order.Cells(line) != nil:
			row.Cells = allMarked(order.Cells(line))
		case parts[n], order != nil && n > at && order.Strange(line): // they tell no wire
			row.Cells, row.Prose = []string{marked(strings.Join(strings.Fields(line), " "))}, true
		case apart && own.IsHead:
			for _, c := range own.Heads {
				row.Cells = append(row.Cells, marked(c.Text))
			}
		case apart && !own.Title && len(cells) > 1:
			row.Cells = allMarked(columned.Under(own.Heads, columned.Parted(own.Heads, own.Starts, cells)))
		case apart && own.Title && len(cells) > 1: // a title with gaps in it
			row.Cells = []string{marked(strings.Join(strings.Fields(line), " "))}
		case n+1 == at && columned.AllUnder(heads, cells): // the upper row of headings in two
			row.Cells = allMarked(columned.Under(heads, cells))
		case len(cells) == 1 && (n < at || cells[0].From < heads[0].To), (n < at || titles[n]) && len(cells) == 2:
			row.Cells = []string{marked(cells[0].Text)}
			if len(cells) == 2 {
				row.Cells = append(row.Cells, marked(cells[1].Text))
			}
		case n < at || titles[n]: // a title with gaps in it
			row.Cells = []string{marked(strings.Join(strings.Fields(line), " "))}
		case n == at:
			for _, c := range heads {
				row.Cells = append(row.Cells, marked(c.Text))
			}
		case cut != nil && (tight || ruled && columned.Crosses(heads, cells)):
			row.Cells = allMarked(cut)
		default:
			row.Cells = allMarked(columned.Under(heads, columned.Parted(heads, starts, cells)))
		}
		if remark != "" {
			row.Cells = append(row.Cells, marked(remark))
		}
		if says, allowed := count.row(len(row.Cells)); says != "" {
			return nil, &Error{Place{File: name, Row: n}, says, allowed}
		}
		t.Rows = append(t.Rows, row)
	}
	return []Table{t}, nil
}

// allMarked marks each of some cells.
func allMarked(cells []string) []string {
	for i := range cells {
		cells[i] = marked(cells[i])
	}
	return cells
}
