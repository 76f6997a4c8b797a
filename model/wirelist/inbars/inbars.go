package inbars

import (
	"strings"

	"contralay/model/wirelist/columned"
)

// leastRows is how many rows stand below the headings where that is no chance (no source).
const leastRows = 3

// Text is a text with such tables written so; ok is false where it has none.
func Text(text string) (barred string, ok bool) {
	if !strings.Contains(text, "*") && !strings.Contains(text, "--") && !strings.Contains(text, "  ") {
		return text, false
	}
	lines := strings.Split(text, "\n")
	fence := false
	for i := 0; i+leastRows < len(lines); i++ {
		if t := strings.TrimSpace(lines[i]); strings.HasPrefix(t, "```") || strings.HasPrefix(t, "~~~") {
			fence = !fence
		}
		if fence {
			continue
		}
		made := starred(lines[i:])
		if made == nil {
			made = dashed(lines[i:])
		}
		if made == nil {
			made = boxed(lines[i:])
		}
		if made == nil {
			continue
		}
		copy(lines[i:], made)
		i, ok = i+len(made)-1, true
	}
	return strings.Join(lines, "\n"), ok
}

// paragraph are the cells of the lines up to the next empty one; nil where a bar stands in one, or a line has no cell below a heading.
func paragraph(lines []string, heads []columned.Field) (rows [][]string) {
	for _, l := range lines {
		cells := columned.Gapped(l)
		if len(cells) == 0 {
			break
		}
		row := make([]string, len(heads))
		for _, c := range cells {
			k := under(heads, c)
			if k < 0 || row[k] != "" || strings.Contains(c.Text, "|") {
				return nil
			}
			row[k] = c.Text
		}
		rows = append(rows, row)
	}
	return rows
}

// under is the heading that a cell begins below, as near as the sign before a heading is wide; −1 where none does.
func under(heads []columned.Field, c columned.Field) int {
	for k, h := range heads {
		if c.From == h.From || c.From == h.From+1 {
			return k
		}
	}
	return -1
}

// barred is a line of a table with bars.
func barred(cells ...string) string { return "| " + strings.Join(cells, " | ") + " |" }

// isPin reports whether a cell is the number of a pin, with what it is called in brackets or without: "2", "2 (GND)".
func isPin(cell string) bool {
	pin, called, _ := strings.Cut(cell, " ")
	return pin != "" && len(pin) < 4 && strings.Trim(pin, "0123456789") == "" &&
		(called == "" || strings.HasPrefix(called, "(") && strings.HasSuffix(called, ")"))
}
