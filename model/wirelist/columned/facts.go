package columned

import (
	"maps"
	"strings"
	"unicode/utf8"
)

// NoRows finds the lines below a table in columns, counted from 1, that are none of its rows: those that count parts, and facts.
func NoRows(heads []Field, at int, text string) map[int]bool {
	found := Counted(heads, at, text)
	maps.Copy(found, facts(heads, at, text))
	return found
}

// facts finds the paragraphs that say something of the thing and nothing of a cavity, in columns of their own: each line has as many cells
// as the others, fewer than there are headings, most begin with words, where the rows of the table begin with short names, and have a
// figure behind them, and some cell stands elsewhere.
//
//	Pin   Signal   Wire
//	A     OPEN     red
//
//	Voltage         18 - 32 V
//	Duty            30 %
func facts(heads []Field, at int, text string) map[int]bool {
	found := map[int]bool{}
	lines := strings.Split(text, "\n")
	first := endOfParagraph(lines, at)
	for _, l := range lines[at:first] {
		if cells := Gapped(l); len(cells) > 1 && isWords(cells[0].Text) {
			return found
		}
	}
	for from := first; from < len(lines); {
		to := endOfParagraph(lines, from)
		rows := from
		for rows < to && len(Gapped(lines[rows])) < 2 {
			rows++ // a title
		}
		if areFacts(heads, lines[rows:to]) {
			for n := rows; n < to; n++ {
				found[n+1] = true
			}
		}
		from = to + 1
	}
	return found
}

// areFacts reports whether some lines are such ones.
func areFacts(heads []Field, lines []string) bool {
	if len(lines) < 2 {
		return false
	}
	words, figures, apart, each := 0, 0, false, len(Gapped(lines[0]))
	for _, l := range lines {
		cells := Gapped(l)
		if len(cells) != each || each < 2 || each >= len(heads) {
			return false
		}
		if isWords(cells[0].Text) {
			words++
		}
		if strings.ContainsAny(cells[each-1].Text, "0123456789") {
			figures++
		}
		apart = apart || cells[0].To > heads[1].From
		for _, c := range cells[1:] {
			apart = apart || !standsUnder(heads, c)
		}
	}
	return apart && 2*words > len(lines) && 2*figures > len(lines)
}

// isWords reports whether a cell is more than the short name of a cavity.
func isWords(text string) bool {
	const longest = 5 // letters of a cavity (no source)
	return utf8.RuneCountInString(text) > longest || strings.Contains(text, " ")
}
