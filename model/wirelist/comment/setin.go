package comment

import (
	"slices"
	"strings"

	"contralay/model/wirelist/columned"
)

// A table in columns often stands in a comment with one blank alone behind the sign, and with tabs between its cells. Its cells stand
// under each other on the page, so the sign and the tabs become blanks: the reader of documents takes lines that are set in for a table.
// A tab goes on to the next stop; stops are 8 characters apart, or 4, whichever puts the cells under each other.
//
//	# Num   Colour   Name
//	# 1     red      SUPPLY
//	# 2     yellow   LIMIT

// mostSetIn is how many lines one such table has at the most; a longer one is no remark (no source).
const mostSetIn = 400

// setIn sets the tables in some comments in, each line where it stands on the page; plain are the same lines without their signs.
func setIn(lines, plain []string, program []bool) {
	for i := 0; i < len(plain); i++ {
		if program[i] || strings.TrimSpace(plain[i]) == "" {
			continue
		}
		to := i
		for to < len(plain) && to < i+mostSetIn && !program[to] && strings.TrimSpace(plain[to]) != "" {
			to++
		}
		tabs := slices.ContainsFunc(plain[i:to], func(l string) bool { return strings.Contains(l, "\t") })
		if !setInPart(lines[i:to], plain[i:to], 8) && tabs && !setOut(plain[i:to]) {
			setInPart(lines[i:to], plain[i:to], 4)
		}
		i = to - 1
	}
}

// setInPart sets the lines of one paragraph in that have their cells under those of the line that heads them; done: there are some.
func setInPart(lines, plain []string, stop int) (done bool) {
	shown, cells := make([]string, len(lines)), make([][]columned.Field, len(lines))
	for i, l := range lines {
		shown[i] = onPage(l, plain[i], stop)
		if !strings.ContainsAny(plain[i], "|→") && !strings.Contains(plain[i], "->") && !strings.Contains(plain[i], "=>") {
			cells[i] = columned.Gapped(shown[i])
		}
	}
	for i := 0; i < len(cells); i++ {
		if len(cells[i]) < 3 {
			continue
		}
		to := i + 1
		for to < len(cells) && len(cells[to]) > 1 {
			to++
		}
		head := i
		if to > i+1 && len(cells[i+1]) > len(cells[i]) {
			head = i + 1 // the first line names the parts alone
		}
		if to-head > 2 && standUnder(cells[head], cells[head+1:to]) && !numbersAlone(cells[head]) {
			copy(plain[i:to], shown[i:to])
			done = true
		}
		i = to - 1
	}
	return done
}

// setOut puts the cells of lines under each other that have as many pieces between tabs each, three or more; the first may name the parts
// alone. done: they are such lines.
func setOut(plain []string) (done bool) {
	pieces := make([][]string, len(plain))
	for i, l := range plain {
		pieces[i] = strings.FieldsFunc(l, func(r rune) bool { return r == '\t' })
	}
	if len(pieces) > 3 && len(pieces[0]) != len(pieces[1]) {
		pieces, plain = pieces[1:], plain[1:]
	}
	n := len(pieces[0])
	if n < 3 || len(pieces) < 3 || slices.ContainsFunc(pieces, func(p []string) bool { return len(p) != n }) {
		return false
	}
	for k := range n {
		wide := 0
		for _, p := range pieces {
			p[k] = strings.TrimSpace(p[k])
			wide = max(wide, len([]rune(p[k])))
		}
		for _, p := range pieces {
			p[k] += strings.Repeat(" ", wide-len([]rune(p[k])))
		}
	}
	for i, p := range pieces {
		plain[i] = "  " + strings.Join(p, "  ")
	}
	return true
}

// onPage is a line with blanks for its sign and for its tabs, whose stops are so many characters apart, set in.
func onPage(line, plain string, stop int) string {
	front := strings.TrimSuffix(strings.TrimRight(line, " \t\r"), strings.TrimRight(plain, " \t\r"))
	var b strings.Builder
	at := 0
	for _, r := range strings.Repeat(" ", len(front)) + strings.TrimRight(plain, " \t\r") {
		n := 1
		if r == '\t' {
			n, r = stop-at%stop, ' '
		}
		b.WriteString(strings.Repeat(string(r), n))
		at += n
	}
	return "  " + b.String()
}

// standUnder reports whether most cells of some lines begin where a heading does, and each line has two that do.
func standUnder(heads []columned.Field, lines [][]columned.Field) bool {
	all, under := 0, 0
	for _, cells := range lines {
		n := 0
		for _, c := range cells {
			if slices.ContainsFunc(heads, func(h columned.Field) bool { return h.From == c.From }) {
				n++
			}
		}
		if n < 2 {
			return false
		}
		all, under = all+len(cells), under+n
	}
	return 4*under > 3*all
}

// numbersAlone reports whether no cell of a line has a letter: it names no column.
func numbersAlone(cells []columned.Field) bool {
	return !slices.ContainsFunc(cells, func(c columned.Field) bool {
		return strings.ContainsFunc(c.Text, func(r rune) bool { return r > 127 || r|0x20 >= 'a' && r|0x20 <= 'z' })
	})
}
