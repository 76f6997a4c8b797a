package codedwires

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// least is how many such cells make a column one of them (no source).
const least = 3

// Rows are the rows of a sheet, such columns of its tables parted.
func Rows(h shape.Headings, t *table.Table) []table.Row {
	if h.HeadLine() > 0 || h.Numbered() {
		return t.Rows // a person has said what the columns are
	}
	rows := t.Rows
	for i := 0; i < len(rows); i++ {
		at := wireColumn(h, rows[i])
		if at < 0 {
			continue
		}
		end, wide := i+1, len(rows[i].Cells)
		for end < len(rows) && !h.IsHead(rows[end]) && len(rows[end].Cells) > 1 {
			wide = max(wide, len(rows[end].Cells))
			end++
		}
		if areCoded(rows[i+1:end], at) {
			rows = slices.Clone(rows)
			for k := i; k < end; k++ {
				rows[k].Cells = parted(rows[k].Cells, at, wide, k == i)
			}
		}
		i = end - 1
	}
	return rows
}

// wireColumn is the column that some headings call wire, where no other is of colours or sizes; −1 where there is none.
func wireColumn(h shape.Headings, r table.Row) int {
	at := -1
	for i, c := range r.Cells {
		switch h.Words[strings.Join(name.Words(table.Fold(c)), " ")].Field {
		case name.FieldColour, name.FieldGauge:
			return -1
		case name.FieldWire:
			if at >= 0 {
				return -1
			}
			at = i
		}
	}
	if at < 0 || !h.IsHead(r) {
		return -1
	}
	return at
}

// areCoded reports whether every cell of a column is such, three of them or more.
func areCoded(rows []table.Row, at int) bool {
	n, sure := 0, false
	for _, r := range rows {
		if at >= len(r.Cells) || value.IsNothing(r.Cells[at]) || name.StateOf(r.Cells[at]) != name.Used {
			continue
		}
		code, size := cut(r.Cells[at])
		if code == "" {
			return false
		}
		sure = sure || strings.ContainsAny(code, "/-") || strings.ContainsAny(size, ".,")
		n++
	}
	return n >= least && sure
}

// cut parts a cell into the short forms of colours and the size, in whatever order; both "" where it is no such cell.
func cut(cell string) (code, size string) {
	front, back, ok := strings.Cut(cell, " ")
	if !ok || front == "" {
		return "", ""
	}
	if front[0] <= '9' {
		front, back = back, front
	}
	if !isCode(front) || back == "" || strings.Trim(back, "0123456789.,") != "" || len(back) > 4 ||
		!strings.ContainsAny(back, ".,") && !shape.IsMadeSize(back) {
		return "", ""
	}
	return front, back
}

// isCode reports whether a text is one or two words of three letters at the most, with a slash or a dash between them.
func isCode(text string) bool {
	parts := strings.FieldsFunc(text, func(r rune) bool { return r == '/' || r == '-' })
	if len(parts) == 0 || len(parts) > 2 || len(strings.Join(parts, "/")) != len(text) {
		return false
	}
	return !slices.ContainsFunc(parts, func(p string) bool {
		return len(p) > 3 || strings.Trim(strings.ToUpper(p), "ABCDEFGHIJKLMNOPQRSTUVWXYZ") != ""
	})
}

// parted is the cells of a row, the size of the wire in a column of its own behind them.
func parted(cells []string, at, wide int, head bool) []string {
	all := make([]string, wide+1)
	copy(all, cells)
	if head {
		all[at], all[wide] = "Colour", "Size"
		return all
	}
	if at < len(cells) && !value.IsNothing(cells[at]) {
		if code, size := cut(cells[at]); code != "" {
			all[at], all[wide] = code, size
		}
	}
	return all
}
