package columned

import (
	"slices"
	"strings"
)

// Titles finds the lines, counted from 1, that stand between an empty line and headings that come again: they name the table below, and
// their gaps are no columns.
//
//	7    not used
//
//	C2   6-way plug, wheel sensors
//	------------------------------
//	Pin  Signal   AWG  Colour
func Titles(heads []Field, at int, text string) map[int]bool {
	const most = 3 // lines of a title (no source)
	found, lines := map[int]bool{}, strings.Split(text, "\n")
	for i := at; i < len(lines); i++ {
		if !isAgain(heads, lines[i]) {
			continue
		}
		end := i
		for end > at && strings.Trim(lines[end-1], "-=_ \t") == "" {
			end--
		}
		from := end
		for from > at && strings.TrimSpace(lines[from-1]) != "" && !isAgain(heads, lines[from-1]) {
			from--
		}
		if from == at || from == end || end-from > most || strings.TrimSpace(lines[from-1]) != "" ||
			rowLike(lines, at, from, end) {
			continue
		}
		for k := from; k < end; k++ {
			found[k+1] = true
		}
	}
	return found
}

// rowLike reports whether some lines have one that is like a row and no title above the headings once more.
func rowLike(lines []string, at, from, end int) bool {
	for n := from; n < end; n++ {
		if isRowLike(lines[n]) && !isTitleAgain(lines, at, n) {
			return true
		}
	}
	return false
}

// isAgain reports whether a line has the headings once more.
func isAgain(heads []Field, line string) bool {
	return slices.EqualFunc(WithoutArrows(Gapped(line)), heads, func(c, h Field) bool { return c.Text == h.Text })
}

// isRowLike reports whether a line begins with a number alone, as a row does, or has more cells than a title.
func isRowLike(line string) bool {
	cells := Gapped(line)
	return len(cells) > 3 || len(cells) > 1 && holdsNumber(cells[:1])
}
