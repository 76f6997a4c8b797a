package huelines

import (
	"strings"

	"contralay/model/wirelist/point"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// The wires of each colour stand below its name, one a line, each with both its ends.
//
//	## Brown
//	- ignition switch to fuse box
//	- fuse box to brake switch

// UnderColours makes rows of a table of such lines; they are as they were where a line below a colour is another.
func UnderColours(h shape.Headings, t *table.Table) (rows []table.Row, told map[int][]int) {
	if h.HeadLine() > 0 || h.Numbered() {
		return t.Rows, nil
	}
	var all []group
	n := 0
	for i := 1; i < len(t.Rows); i++ {
		colour, size, ok := hueHead(t.Rows, i-1)
		if !ok {
			continue
		}
		g := group{at: i - 1, first: i}
		for ; i < len(t.Rows); i++ {
			if _, _, next := hueHead(t.Rows, i); next || t.Rows[i].Level > 0 || g.n > 0 && t.Rows[i].Line > t.Rows[i-1].Line+1 {
				break
			}
			text, note := textOf(t.Rows[i]), ""
			if open := strings.LastIndex(text, " ("); open > 0 && strings.HasSuffix(text, ")") {
				text, note = strings.TrimSpace(text[:open]), text[open+2:len(text)-1]
			}
			from, to, ok := bothEnds(text)
			if !ok {
				return t.Rows, nil
			}
			g.wires = append(g.wires, wire{colour: colour, size: size, from: from, to: to, note: note})
			g.n++
		}
		n += g.n
		if g.n > 0 {
			all = append(all, g)
		}
	}
	if len(all) < 2 || n < 3 {
		return t.Rows, nil
	}
	return spread(t, all)
}

// hueHead reports whether a row is a colour alone, with a size or without, above such lines.
func hueHead(rows []table.Row, i int) (colour, size string, ok bool) {
	r := rows[i]
	text := strings.Trim(strings.TrimRight(strings.Trim(textOf(r), "*_ "), ": "), "*_ ")
	if len(r.Cells) != 1 || text == "" || !value.IsLetter(text[0]) || len(text) < 3 {
		return "", "", false
	}
	colour, size = point.WireValues(text)
	return colour, size, colour != ""
}

// bothEnds parts a line at the one word or arrow between its two ends.
func bothEnds(text string) (from, to string, ok bool) {
	text = strings.TrimSpace(strings.TrimLeft(strings.TrimSpace(text), "-*•·"))
	for _, sign := range []string{" to ", " → ", " -> ", " zu ", " zum ", " zur ", " nach ", " naar ", " vers ", " till ", " > ", " => ",
		" - ", " – "} {
		if from, to, ok = strings.Cut(text, sign); ok {
			return from, to, point.IsShortName(from) && point.IsShortName(to) && !strings.Contains(to, sign) &&
				!strings.ContainsAny(from+to, ",;:=")
		}
	}
	return "", "", false
}
