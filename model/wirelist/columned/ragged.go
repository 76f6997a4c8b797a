package columned

import "strings"

// Order says how the cells of a text go to its columns where they do not stand under their headings: each line has one for each, in
// the order of the headings.
type Order struct {
	Heads    []Field           // without a word with a colon that leads them in, "read:  no.  from -> to"
	Brackets bool              // the cells of the last column stand in brackets, each
	looks    []look            // what the cells of each column are made of, where not every line has one for each
	figures  []map[string]bool // the cells of each column, beside looks
}

// Strange reports whether a line of several cells has none for each column, in a table where the place of a cell says nothing.
func (o *Order) Strange(line string) bool {
	return o.looks != nil && len(Gapped(line)) > 2 && o.byLooks(line) == nil
}

// Ragged finds out whether the cells of a text stand so; it is nil where they stand under their headings.
//
//	no.  from -> to   gauge, colour   (what)
//	 1  BATTERY + -> FUSE IN    2 AWG, red    (battery cable)
//	 2  PANEL B -> WIPER MOTOR 1    12 AWG, blue/white    (wiper)
func Ragged(heads []Field, at int, text string) *Order {
	if len(heads) > 3 && strings.HasSuffix(heads[0].Text, ":") {
		if o := inOrder(heads[1:], at, text); o != nil {
			return o
		}
	}
	if o := inOrder(heads, at, text); o != nil {
		return o
	}
	return byShape(heads, at, text)
}

func inOrder(heads []Field, at int, text string) *Order {
	lines, full, bracketed, n := 0, 0, 0, 0
	edges := [2]map[int]int{{}, {}} // where the cells of the last column but one begin and end
	for line := range strings.SplitSeq(text, "\n") {
		n++
		cells := Gapped(line)
		if n <= at || len(cells) < 3 || strings.Trim(line, "-=_ ") == "" {
			continue
		}
		if lines++; len(cells) != len(heads) {
			continue
		}
		full++
		c := cells[len(cells)-2]
		edges[0][c.From]++
		edges[1][c.To]++
		if isBracketed(cells[len(cells)-1].Text) {
			bracketed++
		}
	}
	if full < 3 || full < lines {
		return nil
	}
	for _, at := range edges {
		for _, lined := range at {
			if 2*lined >= full {
				return nil
			}
		}
	}
	return &Order{Heads: heads, Brackets: bracketed == full && len(heads) > 3}
}

// isBracketed reports whether one pair of brackets holds a text.
func isBracketed(text string) bool {
	return len(text) > 2 && text[0] == '(' && strings.IndexByte(text, ')') == len(text)-1
}

// Cells gives the cells of a line in their order; nil where it does not have one for each column.
func (o *Order) Cells(line string) (cells []string) {
	if o.looks != nil {
		return o.byLooks(line)
	}
	all := Gapped(line)
	if len(all) != len(o.Heads) {
		return nil
	}
	for _, c := range all {
		cells = append(cells, c.Text)
	}
	return o.bare(cells)
}

// Names gives the headings.
func (o *Order) Names() (cells []string) {
	for _, h := range o.Heads {
		cells = append(cells, h.Text)
	}
	return o.bare(cells)
}

// bare takes the brackets off the last cell.
func (o *Order) bare(cells []string) []string {
	if last := len(cells) - 1; o.Brackets && isBracketed(cells[last]) {
		cells[last] = strings.TrimSpace(cells[last][1 : len(cells[last])-1])
	}
	return cells
}
