package table

import (
	"slices"
	"strings"

	"contralay/model/visible"
)

// Tidy makes one line of a cell: no break, no control character or other character that does
// not show, no blank at its ends or twice in a row. A hard space is a space.
func Tidy(s string) string {
	if isTidy(s) {
		return s
	}
	return oneBlank(strings.Map(func(r rune) rune {
		switch {
		case breaks(r):
			return ' '
		case odd(r), r == softHyphen:
			return -1
		}
		return r
	}, s))
}

func isTidy(s string) bool {
	for i := range len(s) {
		if c := s[i]; c < ' ' || c >= 0x7f || c == ' ' && (i == 0 || i == len(s)-1 || s[i-1] == ' ') {
			return false
		}
	}
	return true
}

func oneBlank(s string) string { return strings.Join(strings.Fields(s), " ") }

// softHyphen shows only where a line ends on it; it is no part of a name.
const softHyphen = 0xad

func breaks(r rune) bool {
	return r == '\t' || r == '\n' || r == '\r' || r == 0x85 || r == 0x2028 || r == 0x2029
}

// odd reports whether a character is left out and told. Joiners would make two ids look alike,
// and any cell may become an id.
func odd(r rune) bool {
	return visible.Command(r) || r == 0x200c || r == 0x200d || r == oddFrom || r == oddTo
}

// What is odd in a cell stands, as a sign, between these two until the whole file is read. They
// are no characters (Unicode 15, 23.7); where a file has them they are odd themselves.
const (
	oddFrom = '\uFDD0'
	oddTo   = '\uFDD1'
)

// marked is Tidy that keeps what is odd between its marks.
func marked(s string) string {
	if isTidy(s) {
		return s
	}
	var b strings.Builder
	for _, r := range s {
		switch {
		case breaks(r):
			b.WriteByte(' ')
		case r == softHyphen:
		case odd(r):
			b.WriteString(string(oddFrom) + visible.Sign(r) + string(oddTo))
		default:
			b.WriteRune(r)
		}
	}
	return oneBlank(b.String())
}

// rawOf is a line as it stands, "" where it holds something odd.
func rawOf(line string) string {
	if strings.IndexFunc(line, func(r rune) bool { return r != '\t' && (breaks(r) || r == softHyphen || odd(r)) }) >= 0 {
		return ""
	}
	return line
}

// unmarked takes what is odd out of a text; shown is the text with it, "" where nothing was.
func unmarked(s string) (plain, shown string) {
	front, rest, found := strings.Cut(s, string(oddFrom))
	if !found {
		return s, ""
	}
	for found {
		var back string
		_, back, _ = strings.Cut(rest, string(oddTo))
		var more string
		more, rest, found = strings.Cut(back, string(oddFrom))
		front += more
	}
	return Tidy(front), strings.NewReplacer(string(oddFrom), "", string(oddTo), "").Replace(s)
}

// settled takes what is odd out of tables and keeps where it stood. Rows of which nothing is
// left go.
func settled(all []Table) []Table {
	for i := range all {
		t := &all[i]
		t.Letter = settled(t.Letter)
		name, shown := unmarked(t.Sheet)
		if t.Sheet = name; shown != "" {
			t.Odd = append(t.Odd, Odd{Shown: shown})
		}
		before := len(t.Odd)
		for k := range t.Rows {
			r := &t.Rows[k]
			for c, cell := range r.Cells {
				plain, shown := unmarked(cell)
				if shown == "" {
					continue
				}
				r.Cells[c] = plain
				t.Odd = append(t.Odd, Odd{Row: r.Line, Col: c, Shown: shown})
			}
		}
		if len(t.Odd) > before {
			t.Rows = slices.DeleteFunc(t.Rows, func(r Row) bool { n, _ := r.Filled(); return n == 0 })
		}
	}
	return all
}
