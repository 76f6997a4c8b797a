package printed

import (
	"regexp"
	"slices"
	"strings"

	"contralay/model/wirelist/table"
)

// told is what scripts and spreadsheets put behind a heading that stands there already: ".1", "_1", "2", " (2)", "...5", "_y".
var told = regexp.MustCompile(`^(.*[^\s\d._(])(?:\.{1,3}\d{1,2}|_\d{1,2}|_[xy]| ?\(\d\)|\d)$`)

// base is a heading without such a sign.
func base(heading string) string {
	if m := told.FindStringSubmatch(heading); m != nil {
		return m[1]
	}
	return heading
}

// headings takes the sign off a heading that stands in its row before it without one, or with another one, and is known: two columns
// "Pin" become "Pin" and "Pin.1", or "Pin_x" and "Pin_y". "Pin 1" and "Pin 2" are what somebody wrote.
func (p *plain) headings() {
	for i, r := range p.t.Rows {
		if len(r.Cells) < 3 || p.t.Marked && !r.Ruled || !p.t.Marked && !p.isApart(i) || slices.ContainsFunc(r.Cells, isNumber) {
			continue
		}
		n := map[string]int{}
		for _, c := range r.Cells {
			if c != "" {
				n[table.Fold(base(c))]++
			}
		}
		var what []string
		for k, c := range r.Cells {
			b := base(c)
			if b == c || n[table.Fold(b)] < 2 || p.kept(c) || !p.signed(r, b) {
				continue
			}
			if m, known := p.known[table.Fold(b)]; !known || m.Weak {
				continue // "A1" beside "A" are cavities
			}
			p.set(i, k, b)
			what = append(what, c)
		}
		if len(what) > 0 {
			p.signs = p.signs || strings.Contains(strings.Join(what, " "), ".")
			p.say("headings that a script told apart", strings.Join(what, ", "), "taken for the words before their signs", []int{r.Line})
		}
	}
}

// isNumber reports whether a cell is a number, as no heading is: "U" and "U1" beside one are terminals.
func isNumber(cell string) bool { return cell != "" && strings.Trim(cell, "0123456789.,") == "" }

// signed reports whether a heading stands in a row both without a sign and with one, or with "_x" and "_y".
func (p *plain) signed(r table.Row, heading string) bool {
	bare, x, y := false, false, false
	for _, c := range r.Cells {
		switch {
		case strings.EqualFold(c, heading):
			bare = true
		case strings.EqualFold(c, heading+"_x"):
			x = true
		case strings.EqualFold(c, heading+"_y"):
			y = true
		}
	}
	return bare || x && y
}

// isApart reports whether a row stands where headings do: near the top, behind an empty row, or below a text.
func (p *plain) isApart(i int) bool {
	const top = 10 // rows (no source)
	if i < top || p.t.Rows[i].Line > p.t.Rows[i-1].Line+1 {
		return true
	}
	n, _ := p.t.Rows[i-1].Filled()
	return n == 1
}
