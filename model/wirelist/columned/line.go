package columned

import (
	"slices"
	"strings"
)

// Field is one cell of a line and where it stands, in characters.
type Field struct {
	Text     string
	From, To int
}

// Gapped parts a line at two blanks and more, and at tabs.
func Gapped(line string) (all []Field) {
	runes := []rune(line)
	blank := func(i int) bool { return i >= len(runes) || runes[i] == ' ' || runes[i] == '\t' }
	for i := 0; i < len(runes); {
		if blank(i) {
			i++
			continue
		}
		end := i
		for end < len(runes) && !(blank(end) && blank(end+1)) {
			end++
		}
		all = append(all, Field{strings.TrimSpace(string(runes[i:end])), i, end})
		i = end
	}
	return all
}

// WithoutArrows leaves out the cells between others that draw the wire, "1 ------- 9".
func WithoutArrows(cells []Field) []Field {
	for i, c := range cells { // "----> X1-4"
		if text := strings.TrimLeft(c.Text, "-=<>—–→─ "); i > 0 && text != "" && (strings.HasPrefix(c.Text, "--") ||
			strings.HasPrefix(c.Text, "->") || strings.HasPrefix(c.Text, "→")) {
			if strings.HasSuffix(text, "--") { // a frame, "--- nothing ---"
				text = strings.TrimRight(text, "- ")
			}
			cells[i].Text = text
		}
	}
	drawn := func(c Field) bool { return len(c.Text) > 2 && strings.Trim(c.Text, "-=<>—–→─") == "" }
	other := 0
	for _, c := range cells {
		if !drawn(c) {
			other++
		}
	}
	if other < 2 {
		return cells
	}
	return slices.DeleteFunc(cells, drawn)
}

// Under gives each cell its column: that from whose head to the next it has most of its
// characters. What stands in one column is joined.
func Under(heads, cells []Field) []string {
	out := make([]string, len(heads))
	for _, c := range cells {
		best, most := 0, -1
		for k, h := range heads {
			from, to := h.From, c.To
			if k == 0 {
				from = 0
			}
			if k+1 < len(heads) {
				to = heads[k+1].From
			}
			if in := min(c.To, to) - max(c.From, from); in > most {
				best, most = k, in
			}
		}
		out[best] = strings.TrimSpace(out[best] + " " + c.Text)
	}
	return out
}
