package table

import (
	"contralay/model/wirelist/columned"
	"strings"
	"unicode"
)

// setIn is a table in the text of a document that nothing but its place on the page shows: lines that are set in, with their
// cells under each other.
//
//	The pins of the lamp board:
//
//	    pin 4  BELL   PORT B3
//	    pin 7  LAMP   PORT B4
type setIn struct {
	rows []Row
	n    int // lines
}

// tablesSetIn finds these tables, each at its first line, between those that are found already.
func tablesSetIn(name string, lines []string, l Limits, all map[int]setIn) map[int]setIn {
	if all == nil {
		all = map[int]setIn{}
	}
	for i := 0; i < len(lines); i++ {
		n := 0
		if in, found := all[i]; found {
			i += in.n - 1
			continue
		}
		for i+n < len(lines) && isSetIn(lines[i+n]) {
			n++
		}
		if n < 2 {
			continue
		}
		part := lines[i : i+n]
		if rows := pinPoints(part, i+1); rows != nil {
			all[i] = setIn{rows, n}
		} else if rows := twoColumns(part, i+1); rows != nil {
			all[i] = setIn{rows, n}
		} else if text := strings.Join(part, "\n"); inColumns(text) {
			if rows := fenced(name, part, i, l); rows != nil {
				all[i] = setIn{rows, n}
			}
		}
		i += n - 1
	}
	return all
}

// isSetIn reports whether a line is set in, has a gap between two texts, and is no point of a list and no row of Markdown.
func isSetIn(line string) bool {
	trimmed := strings.TrimSpace(line)
	in := strings.HasPrefix(line, "  ") || strings.HasPrefix(line, "\t") || strings.HasPrefix(line, " \t")
	arrow := strings.Contains(trimmed, "->") || strings.Contains(trimmed, "=>")
	return in && trimmed != "" && !strings.ContainsAny(trimmed, "|→") && !arrow && !isPoint(trimmed) && len(columned.Gapped(line)) > 1
}

// twoColumns makes a table of lines of two cells under each other, where a rule of dashes parts the first from the others; nil where
// they are none. line is that of the first.
func twoColumns(lines []string, line int) (rows []Row) {
	if len(lines) < 4 || strings.Trim(lines[1], "-= \t") != "" {
		return nil
	}
	at := columned.Gapped(lines[0])
	for i, l := range lines {
		cells := columned.Gapped(l)
		if len(at) != 2 || len(cells) != 2 || cells[1].From != at[1].From {
			return nil
		}
		if i != 1 {
			parts := []string{marked(cells[0].Text), marked(cells[1].Text)}
			rows = append(rows, Row{Line: line + i, Cells: parts, First: i == 0, Ruled: i == 0})
		}
	}
	return rows
}

// pinPoints makes the points of a list of lines that begin with a cavity each, "pin 4  BELL   PORT B3", as that is what they
// are; nil where some line is none. line is that of the first.
func pinPoints(lines []string, line int) (rows []Row) {
	if len(lines) < 3 {
		return nil
	}
	word := ""
	for i, l := range lines {
		cells := columned.Gapped(l)
		f := strings.Fields(cells[0].Text)
		lead := ""
		if len(f) > 1 && strings.IndexFunc(f[0], func(r rune) bool { return !unicode.IsLetter(r) }) < 0 {
			lead, f = f[0], f[1:]
		}
		if i == 0 {
			word = lead
		}
		if pin := strings.TrimRight(f[0], ".:)"); lead != word || pin == "" || len(pin) > 3 || strings.Trim(pin, "0123456789") != "" {
			return nil
		}
		var texts []string
		for _, c := range cells {
			texts = append(texts, marked(c.Text))
		}
		rows = append(rows, Row{Line: line + i, Cells: []string{strings.Join(texts, " - ")}, Prose: true, Point: true, Raw: rawOf(l)})
	}
	return rows
}
