package columned

import (
	"strconv"
	"strings"
)

// Printed gives a tab between the cells of a table that a script printed at a terminal: its rows are numbered from 0 at the front of the
// line, below nothing, and every column ends where its heading ends. One blank is between two columns where the cells are long, so
// gaps say nothing; the ends of the cells do.
//
//	     From  Pin   To Pin.1 Colour
//	0   Box A    1 Horn     A    red
//	1     NaN    2 Horn     B    NaN
func Printed(text string) (parted string, ok bool) {
	if strings.ContainsAny(text, ";\t|") {
		return text, false
	}
	lines := strings.Split(strings.ReplaceAll(text, "\r\n", "\n"), "\n")
	for i := range lines {
		if n := numbered(lines[i:]); n >= leastPrinted {
			if ends := endsOf(lines[i : i+n+1]); len(ends) > 2 {
				for k := i; k <= i+n; k++ {
					lines[k] = cutAtEnds(lines[k], ends)
				}
				return strings.Join(lines, "\n"), true
			}
		}
	}
	return text, false
}

// leastPrinted is how many rows count from 0 where that is no chance (no source).
const leastPrinted = 3

// numbered is how many lines below the first begin with a number, from 0 on, where the first begins with blanks.
func numbered(lines []string) (n int) {
	if !strings.HasPrefix(lines[0], " ") || strings.TrimSpace(lines[0]) == "" {
		return 0
	}
	for n+1 < len(lines) && strings.HasPrefix(lines[n+1], strconv.Itoa(n)+" ") {
		n++
	}
	return n
}

// endsOf is where, in letters, every line has the end of a word: the ends of the columns.
func endsOf(lines []string) (ends []int) {
	all := make([][]rune, len(lines))
	for i, l := range lines {
		all[i] = []rune(strings.TrimRight(l, " "))
	}
	for at := 1; at <= len(all[0]); at++ {
		every := true
		for _, l := range all {
			every = every && at <= len(l) && l[at-1] != ' ' && (at == len(l) || l[at] == ' ')
		}
		if every {
			ends = append(ends, at)
		}
	}
	for _, l := range all {
		if len(ends) > 0 && len(l) != ends[len(ends)-1] {
			return nil // a cell goes on behind the last column
		}
	}
	return ends
}

// cutAtEnds is a line with a tab between its cells, of which the first is the number of the row.
func cutAtEnds(line string, ends []int) string {
	letters := []rune(strings.TrimRight(line, " "))
	number := 0
	for number < len(letters) && letters[number] != ' ' {
		number++
	}
	cells := []string{strings.TrimSpace(string(letters[:number]))}
	from := number
	for _, end := range ends {
		cells = append(cells, strings.TrimSpace(string(letters[from:end])))
		from = end
	}
	return strings.Join(cells, "\t")
}
