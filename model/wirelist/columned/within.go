package columned

import (
	"slices"
	"strings"
)

// Within finds the line of the headings, counted from 1, of a table in columns that stands among lines of other kinds, as those of a data
// sheet are: the first of a paragraph, or the second below a title, with three words or more that are no values, and two lines or more
// below whose cells stand under them. 0 where no paragraph is one.
//
//	Range ......... 0 - 6 m
//	Housing ....... IP68, bronze
//
//	Pin   Signal     Core colour
//	1     Supply +   BROWN
//	2     Loop       WHITE
func Within(text string) (line int) {
	const looked = 200 // lines, from the top (no source)
	lines := strings.SplitN(text, "\n", looked+1)
	lines = lines[:min(len(lines), looked)]
	for from := 0; from < len(lines); {
		to := endOfParagraph(lines, from)
		if at := headsOfParagraph(lines, from, to); at >= 0 {
			return at + 1
		}
		from = to + 1
	}
	return 0
}

// Gaps reports whether most lines of a text have two gaps or more, as rows in columns have; and whether half of them have signs that part
// cells.
func Gaps(text string) (most, signs bool) {
	const looked = 200 // lines, from the top (no source)
	lines, gapped, parted := 0, 0, 0
	for l := range strings.SplitSeq(text, "\n") {
		if lines == looked {
			break
		}
		if strings.Trim(l, "-=_ \t\r") == "" {
			continue // a rule says nothing for either
		}
		lines++
		if len(Gapped(l)) > 2 {
			gapped++
		}
		if Commas(l) > 1 {
			parted++
		}
	}
	return gapped > 1 && 2*gapped > lines, 2*parted >= lines
}

// Squeezed is a text in which such a table stands, with one blank for each gap in the lines that are of none: their gaps part no columns.
// A paragraph that goes on with the table above it, all in its columns, is of it. A text that is a table for the most part stays as it is.
func Squeezed(text string) string {
	if most, _ := Gaps(text); most || Within(text) == 0 || BelowRule(text) {
		return text
	}
	lines := strings.Split(text, "\n")
	var heads []Field
	for from := 0; from < len(lines); {
		to := endOfParagraph(lines, from)
		at := headsOfParagraph(lines, from, to)
		switch {
		case at >= 0:
			heads = WithoutArrows(Gapped(lines[at]))
		case standUnder(heads, lines[from:to], 1):
			at = from
		default:
			at = to
		}
		for n := from; n < at; n++ {
			lines[n] = strings.Join(strings.Fields(lines[n]), " ")
		}
		from = to + 1
	}
	return strings.Join(lines, "\n")
}

// endOfParagraph is the next empty line, or the end.
func endOfParagraph(lines []string, from int) int {
	for from < len(lines) && strings.TrimSpace(lines[from]) != "" {
		from++
	}
	return from
}

// headsOfParagraph is the line of a paragraph that has the headings of a table, −1 where none has. Where an empty line stands right behind
// them or behind the first row, what follows is looked at too.
func headsOfParagraph(lines []string, from, to int) int {
	for at := from; at < min(from+2, to); at++ {
		heads := WithoutArrows(Gapped(lines[at]))
		if len(heads) < 3 || slices.ContainsFunc(heads, func(c Field) bool { return !isHeadWord(c.Text) }) {
			continue
		}
		rows := slices.Clone(lines[at+1 : to])
		for end := to; len(rows) < 2 && end < len(lines); {
			next := endOfParagraph(lines, end+1)
			rows, end = append(rows, lines[end+1:next]...), next
		}
		if standUnder(heads, rows, 2) {
			return at
		}
	}
	return -1
}

// standUnder reports whether some lines are rows below headings: nearly all of their cells stand under one, as many as fewest have several,
// and half of them, and none has a first cell that goes on below the second heading.
func standUnder(heads []Field, lines []string, fewest int) bool {
	if len(heads) == 0 {
		return false
	}
	several, fit, all := 0, 0, 0
	for _, l := range lines {
		cells := WithoutArrows(Gapped(l))
		if len(cells) > len(heads) || cells[0].From < heads[0].To && cells[0].To > heads[1].From || Commas(l) > 1 {
			return false
		}
		if len(cells) > 1 && cells[0].From < heads[0].To {
			several++
		}
		for _, c := range cells {
			if all++; slices.ContainsFunc(heads, func(h Field) bool { return isBelow(h, c) }) {
				fit++
			}
		}
	}
	return several >= fewest && 2*several >= len(lines) && 10*fit >= 9*all
}

// isBelow reports whether a cell begins or ends where a heading does, or stands within its width.
func isBelow(h, c Field) bool {
	return c.From == h.From || c.To == h.To || h.From <= c.From && c.To <= h.To
}

// isHeadWord reports whether a text could be the heading of a column: it is short, and has no figure but that of a plug before a word for
// its cavities, "J1 pin".
func isHeadWord(text string) bool {
	const longest = 24 // bytes (no source)
	if len(text) > longest || strings.ContainsAny(text, ":=") {
		return false
	}
	if plug, last, ok := strings.Cut(text, " "); ok && len(plug) < 5 {
		switch strings.ToLower(last) {
		case "pin", "pins", "way", "ways", "cavity", "contact", "terminal", "pol", "klemme", "kontakt", "broche", "borne", "pino", "polo":
			return true
		}
	}
	return !strings.ContainsAny(text, "0123456789")
}
