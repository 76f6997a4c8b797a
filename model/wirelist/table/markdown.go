package table

import (
	"fmt"
	"strings"

	"contralay/model/wirelist/columned"
	"contralay/model/wirelist/comment"
	"contralay/model/wirelist/icons"
	"contralay/model/wirelist/inbars"
	"contralay/model/wirelist/markup"
)

// hasRuler reports whether a line of the text parts a Markdown header from its table.
func hasRuler(text string) bool {
	for line := range strings.SplitSeq(text, "\n") {
		if isRuler(line) {
			return true
		}
	}
	return false
}

// hasFences reports whether lines of the text stand between fences, as no other text has them.
func hasFences(text string) bool {
	return strings.Count("\n"+text, "\n```") == 2
}

// isRuler is a line of |:---:|---| alone, with two cells or more.
func isRuler(line string) bool {
	return strings.Count(line, "|") > 0 && strings.Contains(line, "--") && strings.Trim(line, "|:- \t") == ""
}

// readMarkdown gives the lines of a table as rows of cells and every other line as a
// row of one cell: a heading without its signs, a point of a list without its dot.
func readMarkdown(name, text string, l Limits) ([]Table, error) {
	t := Table{File: name, Marked: true}
	count := counter{l: l}
	n, before := 0, false // whether the line before is of a table
	open, first, at := false, 0, 0
	var fence []string // the lines since a fence, where one is open
	text, _ = inbars.Text(text)
	text, inset, err := markedUp(name, comment.InFences(text), l)
	if err != nil {
		return nil, err
	}
	all := strings.Split(text, "\n")
	inset = joinedPins(tablesSetIn(name, outsideFences(all), l, inset), all)
	ruled := false // whether the table in hand has a rule below its headings
	for n < len(all) {
		line := all[n]
		if in, ok := inset[n]; ok {
			for _, r := range in.rows {
				if says, allowed := count.row(len(r.Cells)); says != "" {
					return nil, &Error{Place{File: name, Row: r.Line}, says, allowed}
				}
			}
			t.Rows, before, n = append(t.Rows, in.rows...), false, n+in.n
			fence, first = nil, len(t.Rows)
			continue
		}
		n++
		row := Row{Line: n}
		trimmed := strings.TrimSpace(line)
		if behind, dot := strings.CutPrefix(trimmed, "• "); dot {
			trimmed = "- " + behind // typed, or pasted, among the others
		}
		if strings.HasPrefix(trimmed, "```") || strings.HasPrefix(trimmed, "~~~") {
			before = false
			if open = !open; open {
				fence, first, at = nil, len(t.Rows), n
			} else if rows := fenced(name, fence, at, l); rows != nil {
				t.Rows = append(t.Rows[:first], rows...)
			}
			continue
		}
		if open {
			fence = append(fence, line)
		}
		head := n < len(all) && isRuler(strings.TrimSpace(all[n]))
		switch {
		case trimmed == "":
			before = false
			continue
		case isRuler(trimmed), len(trimmed) > 2 && strings.Trim(trimmed, "=") == "" && !open: // below a heading, or across the page
			if last := len(t.Rows) - 1; before && last >= 0 {
				t.Rows[last].Ruled = t.Rows[last].First
			}
			continue
		case len(trimmed) > l.CellBytes:
			return nil, &Error{Place{File: name, Row: n}, fmt.Sprintf("has %d bytes", len(trimmed)),
				fmt.Sprintf("lines of up to %d", l.CellBytes)}
		case strings.HasPrefix(trimmed, "|"),
			strings.Count(trimmed, "|") > 1 && !isHeading(trimmed) && (before || !isBarredLine(trimmed)),
			strings.Contains(trimmed, "|") && (!before && head || before && ruled): // a rule below, or above, makes one bar enough
			row.Cells, row.First = tableCells(trimmed), !before
			if !before {
				ruled = head
			}
			row.strike()
		default:
			if hashes := trimmed[:len(trimmed)-len(strings.TrimLeft(trimmed, "#"))]; len(hashes) <= 6 && !open {
				row.Level = len(hashes)
			}
			if isBoldLine(trimmed) {
				row.Level = belowHeadings
			}
			if level := underlined(all, n-1); level > 0 && !open {
				row.Level = level
			}
			row.Prose, row.Point = true, isPoint(trimmed)
			if row.Level == 0 && !strings.Contains(line, "**") {
				row.Raw = rawOf(line)
			}
			if parts := columned.Gapped(line); len(parts) == 2 && parts[1].From-parts[0].To > 2 {
				row.Gap = &[2]string{marked(parts[0].Text), marked(parts[1].Text)}
			}
			if drawn := columned.Arrowed(line); drawn != nil {
				row.Drawn = allMarked(drawn)
			}
			if row.Point {
				row.Deep = len(line) - len(strings.TrimLeft(line, " \t"))
			}
			text := withoutDot(emphasis.Replace(trimmed))
			row.Cells = []string{marked(withoutBackslashes(strings.Trim(text, "*_# ")))}
		}
		before = !row.Prose
		if k, _ := row.Filled(); k == 0 {
			continue
		}
		if says, allowed := count.row(len(row.Cells)); says != "" {
			return nil, &Error{Place{File: name, Row: n}, says, allowed}
		}
		t.Rows = append(t.Rows, row)
	}
	return []Table{t}, nil
}

// isHeading reports whether a line begins with the signs of a heading and words; a bar behind the sign makes it a column of
// numbers.
func isHeading(line string) bool {
	rest := strings.TrimLeft(line, "#")
	return len(rest) < len(line) && strings.HasPrefix(rest, " ") && !strings.HasPrefix(strings.TrimSpace(rest), "|")
}

// outsideFences are lines with those between two fences emptied: what stands there is read apart.
func outsideFences(lines []string) []string {
	out := make([]string, len(lines))
	open := false
	for i, l := range lines {
		if t := strings.TrimSpace(l); strings.HasPrefix(t, "```") || strings.HasPrefix(t, "~~~") {
			open = !open
		} else if !open {
			out[i] = l
		}
	}
	return out
}

// belowHeadings is the level of a line that is bold from its first letter to its last: it heads what follows, below every
// heading with its signs.
const belowHeadings = 7

// isBoldLine reports whether all of a line is bold, but for brackets at its end, and it is short and no sentence.
func isBoldLine(line string) bool {
	in, ok := strings.CutPrefix(columned.WithoutEndBrackets(line), "**")
	in, closed := strings.CutSuffix(strings.TrimRight(in, ":"), "**")
	return ok && closed && in != "" && !strings.Contains(in, "**") && len(in) <= 60 && !strings.HasSuffix(in, ".") &&
		!strings.Contains(in, ": ")
}

// fenced reads the lines between two fences as a table where they are one, in columns or parted by a sign; nil
// where they are not. at is the line of the first fence.
func fenced(name string, lines []string, at int, l Limits) []Row {
	text := strings.Join(lines, "\n")
	var all []Table
	var err error
	switch {
	case hasRuler(text):
		return nil
	case inColumns(text):
		all, err = readColumns(name, text, l)
	case mostParted(lines):
		all, err = readSeparated(name, text, l)
	}
	if err != nil || len(all) == 0 {
		return nil
	}
	rows := all[0].Rows
	for i := range rows {
		rows[i].Line += at
		rows[i].First, rows[i].Apart = i == 0, i == 0
	}
	return rows
}

// mostParted reports whether most lines have one sign between their cells, equally often, twice or more.
func mostParted(lines []string) bool {
	n, parted := 0, 0
	sep := separator(strings.Join(lines, "\n"))
	each := map[int]int{}
	for _, l := range lines {
		if strings.TrimSpace(l) != "" {
			n++
			each[outside(l, sep)]++
		}
	}
	for k, times := range each {
		if k > 1 {
			parted = max(parted, times)
		}
	}
	return n > 1 && 4*parted > 3*n
}

// strike marks a row all of whose cells are struck through, ~~so~~, and takes the signs off.
func (r *Row) strike() {
	plain := make([]string, len(r.Cells))
	some := false
	for i, c := range r.Cells {
		in, ok := strings.CutPrefix(c, "~~")
		in, closed := strings.CutSuffix(in, "~~")
		if c != "" && (!ok || !closed || in == "" || strings.Contains(in, "~~")) {
			return
		}
		plain[i], some = in, some || c != ""
	}
	if some {
		r.Cells, r.Struck = plain, true
	}
}

// emphasis is what a text is bold or code by.
var emphasis = strings.NewReplacer("**", "", "`", "")

// tableCells parts a line at each bar that no backslash stands before, and takes
// emphasis and code marks off.
func tableCells(line string) []string {
	line = strings.TrimPrefix(line, "|")
	if strings.HasSuffix(line, "|") && !strings.HasSuffix(line, `\|`) {
		line = line[:len(line)-1]
	}
	cells := make([]string, 0, strings.Count(line, "|")+1)
	for {
		end := 0
		for end < len(line) && (line[end] != '|' || end > 0 && line[end-1] == '\\') {
			end++
		}
		cell := withoutBackslashes(line[:end])
		if strings.IndexByte(cell, '<') >= 0 || strings.IndexByte(cell, '&') >= 0 {
			cell = markup.Shown(cell)
		}
		cell = icons.Without(marked(cell))
		for _, mark := range []string{"**", "`", "__"} {
			if len(cell) > 2*len(mark) && strings.HasPrefix(cell, mark) && strings.HasSuffix(cell, mark) {
				cell = oneBlank(cell[len(mark) : len(cell)-len(mark)])
			}
		}
		if n := strings.Count(cell, "**"); n > 0 && n%2 == 0 { // a part of it is bold
			cell = oneBlank(strings.ReplaceAll(cell, "**", ""))
		}
		cells = append(cells, icons.Without(icons.WithoutStars(cell)))
		if end >= len(line) {
			return cells
		}
		line = line[end+1:]
	}
}

// isPoint reports whether a line is a point of a list: a dot, a dash or a star, and a blank.
func isPoint(line string) bool {
	return len(line) > 2 && strings.ContainsRune("-*+", rune(line[0])) && line[1] == ' '
}

// isBarredLine reports whether a line with bars between its pieces is no row of a table: a point of a list, "- 3 | red | horn", or
// one with an arrow, or a word in its place, and no bar at its front, "3 | red | horn -> relay 87".
func isBarredLine(line string) bool {
	if isPoint(line) {
		return !strings.HasPrefix(strings.TrimSpace(line[2:]), "|")
	}
	return !strings.HasPrefix(line, "|") && (strings.Contains(line, "->") || strings.Contains(line, "=>") ||
		strings.Contains(line, "→") || toLine.MatchString(line))
}

// withoutDot takes the signs before a heading or a point off; that of a pole or a voltage behind the dot stays, "- +: red", "- +12V".
func withoutDot(line string) string {
	text := strings.TrimLeft(line, "#>-*+ ")
	sign := len(line) - len(text) - 1
	if isPoint(line) && sign > 1 && text != "" && (line[sign] == '+' || line[sign] == '-') && line[sign-1] == ' ' &&
		(text[0] == ':' || strings.ContainsRune("0123456789", rune(text[0]))) {
		return line[sign:]
	}
	return text
}

// isPoints reports whether most lines of a text are points of a list.
func isPoints(text string) bool { return most(text, isPoint) }

// isRuns reports whether most lines of a text have an arrow between two words, or another sign between the two ends of a wire: a comma
// in them is no sign between cells.
func isRuns(text string) bool {
	return most(text, func(line string) bool {
		if strings.Contains(line, "-> ") || strings.Contains(line, "=> ") || strings.Contains(line, " → ") {
			return true
		}
		before, _, _ := strings.Cut(line, ",")
		for _, word := range []string{" to ", " TO ", " -- ", " nach ", " vers ", " verso ", " hasta ", " naar ", " till ", " til "} {
			if at := strings.Index(before, word); at > 0 && strings.ContainsAny(before[:at], "0123456789") {
				return true
			}
		}
		return false
	})
}

// most reports whether most lines of a text that hold something, and two at least, are such.
func most(text string, is func(line string) bool) bool {
	such, lines := 0, 0
	for line := range strings.SplitSeq(text, "\n") {
		if line = strings.TrimSpace(line); line == "" {
			continue
		}
		if lines++; is(line) {
			such++
		}
	}
	return such > 1 && 2*such > lines
}

// withoutBackslashes takes off the signs that keep a mark of Markdown from being one: "\-" is a
// dash, "\|" a bar.
func withoutBackslashes(s string) string {
	if !strings.Contains(s, `\`) {
		return s
	}
	var b strings.Builder
	for i := 0; i < len(s); i++ {
		if s[i] == '\\' && i+1 < len(s) && strings.IndexByte("\\`*_{}[]()<>#+-.!|~", s[i+1]) >= 0 {
			i++
		}
		b.WriteByte(s[i])
	}
	return b.String()
}
