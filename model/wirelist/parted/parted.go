package parted

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

// signs are what parts the words of such lines.
func signs() []string {
	return []string{" - ", " – ", " — ", " | ", " / ", " // ", " : ", " > ", " · ", ", ", "; "}
}

// Rows are the rows of a sheet, the lines below a line of such headings in cells. What stands behind the last line that is parted as they
// are stays text. Where no lines below are, the headings say what those are, and are no name of anything.
func Rows(h shape.Headings, t *table.Table) []table.Row {
	if h.HeadLine() > 0 || h.Numbered() {
		return t.Rows
	}
	rows := t.Rows
	for i := 0; i+1 < len(rows); i++ {
		sign, cols := headings(h, rows[i])
		if sign == "" {
			continue
		}
		if &rows[0] == &t.Rows[0] {
			rows = slices.Clone(rows)
		}
		lines := below(rows[i+1:], sign, cols)
		if len(lines) < 2 {
			rows[i].Taken = true
			continue
		}
		rows[i] = inCells(rows[i], cut(rows[i].Cells[0], sign))
		rows[i].First, rows[i].Ruled = true, true
		for k, cells := range lines {
			rows[i+1+k] = inCells(rows[i+1+k], cells)
		}
		i += len(lines)
	}
	return rows
}

// headings parts a line that is headings and nothing else, three or more of which each is known; "" for any other line.
func headings(h shape.Headings, r table.Row) (sign string, cols []shape.Column) {
	const fewest = 3 // headings (no source)
	if len(r.Cells) != 1 || strings.ContainsAny(r.Cells[0], "0123456789") {
		return "", nil
	}
	for _, sign := range signs() {
		heads := cut(r.Cells[0], sign)
		if len(heads) < fewest || slices.Contains(heads, "") {
			continue
		}
		row := table.Row{Line: r.Line, Cells: heads}
		cols, _ := h.Columns([]table.Row{row}, len(heads))
		if h.IsHead(row) && isEach(cols, shape.Column.Known) && (&shape.Block{Cols: cols}).Has(name.FieldPin, name.FieldFrom,
			name.FieldFromPin) {
			return sign, cols
		}
	}
	return "", nil
}

// below are the cells of the lines right below such headings, as far as they are parted as those are: half of them have as many pieces or
// one less. Where a name has the sign within, a line may have more.
func below(rows []table.Row, sign string, cols []shape.Column) (lines [][]string) {
	wide := len(cols)
	full := 0
	line := 0
	for _, r := range rows {
		if len(r.Cells) != 1 || r.Level > 0 || line > 0 && r.Line > line+1 {
			break
		}
		cells := cut(r.Cells[0], sign)
		if more := len(cells) - wide; more > 0 && more <= mostWithin && name.IsCavity(cells[0]) {
			cells = joined(cells, nameColumn(cols), more, sign)
		}
		if len(cells) < 2 || len(cells) > wide {
			break
		}
		if line = r.Line; len(cells) >= wide-1 {
			full++
		}
		lines = append(lines, spread(cells, cols))
	}
	if 2*full < len(lines) {
		return nil
	}
	return lines
}

// spread gives each column a cell: those behind the last piece are empty, and "6 - not used" says it in the place of the name.
func spread(cells []string, cols []shape.Column) []string {
	out := make([]string, len(cols))
	copy(out, cells)
	at := nameColumn(cols)
	if len(cells) == 2 && at > 1 && name.StateOf(cells[1]) != name.Used {
		out[1], out[at] = "", cells[1]
	}
	return out
}

// mostWithin is how often a name may have the sign within (no source).
const mostWithin = 2

// nameColumn is the column of the names; −1 where there is none.
func nameColumn(cols []shape.Column) int {
	return slices.IndexFunc(cols, func(c shape.Column) bool { return c.Field == name.FieldSignal })
}

// joined puts some pieces more than there are columns into the name, "CAN - H"; without a column of names they stay.
func joined(cells []string, at, more int, sign string) []string {
	if at < 0 {
		return cells
	}
	return slices.Concat(cells[:at], []string{strings.Join(cells[at:at+more+1], sign)}, cells[at+more+1:])
}

// isEach reports whether something is so of every column.
func isEach(cols []shape.Column, is func(shape.Column) bool) bool {
	return !slices.ContainsFunc(cols, func(c shape.Column) bool { return !is(c) })
}

// cut parts a text at a sign.
func cut(text, sign string) (all []string) {
	for p := range strings.SplitSeq(text, sign) {
		all = append(all, strings.TrimSpace(p))
	}
	return all
}

// inCells is a line with cells of its own, which is text no more.
func inCells(r table.Row, cells []string) table.Row {
	r.Cells, r.Prose, r.Point, r.Deep = cells, false, false, 0
	return r
}
