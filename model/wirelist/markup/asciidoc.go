package markup

import (
	"slices"
	"strings"
)

// Tables of AsciiDoc: cells behind a bar each, any number of them on a line; a row is as many as there are columns.
//
//	.Lid plug
//	[cols="1,2*",options="header"]
//	|===
//	| Pin | Lamp 2+| Wire
//
//	| 1
//	| plus
//	| red
//	|===

func asciiDoc(t *reader, i int) (rows []Row, n int) {
	fence := strings.TrimSpace(t.lines[i])
	sign := fence[:min(1, len(fence))]
	if len(fence) < 4 || strings.Trim(fence[1:], "=") != "" || sign != "|" && sign != "," && sign != ":" {
		return nil, 0
	}
	end := i + 1
	for end < len(t.lines) && strings.TrimSpace(t.lines[end]) != fence {
		end++
	}
	if end == len(t.lines) {
		t.spent += end - i
		return nil, 0
	}
	said, caption, at := above(t, i)
	a := asciiTable{columns: columnsOf(said), lines: t.lines, first: i + 1, end: end}
	var all []drawn
	if format := saidOf(said, "format"); sign != "|" || format == "csv" || format == "dsv" {
		all = a.parted(sign == ":" || format == "dsv")
	} else {
		all = a.rows()
	}
	if len(all) == 0 {
		return nil, 0
	}
	if isSaid(said, "header") || !isSaid(said, "noheader") && a.headed(all) {
		all[0].head = true
	}
	if at > 0 {
		t.plain[at-1] = ""
	}
	return spread(all, asciiMarks().plain(caption), at), end - i + 1
}

func asciiMarks() marks {
	return marks{words: []string{"**", "__", "``", "*", "_", "`"}, whole: []string{"+", "#"}}
}

// above is what the lines right above a table say of it, in square brackets and behind a dot; at is the line of the latter.
func above(t *reader, i int) (said, caption string, at int) {
	for k := i - 1; k >= 0 && k > i-5; k-- {
		l := strings.TrimSpace(t.lines[k])
		switch {
		case strings.HasPrefix(l, "[") && strings.HasSuffix(l, "]"):
			said += l[1:len(l)-1] + ","
			t.plain[k] = ""
		case len(l) > 1 && l[0] == '.' && l[1] != '.' && l[1] != ' ':
			return said, l[1:], k + 1
		default:
			return said, "", 0
		}
	}
	return said, "", 0
}

// saidOf is the value of a word that is said of a table, between quotation marks or not.
func saidOf(said, word string) string {
	i := strings.Index(said, word+"=")
	if i < 0 || i > 0 && strings.IndexByte(", %\"", said[i-1]) < 0 {
		return ""
	}
	rest := said[i+len(word)+1:]
	if rest != "" && (rest[0] == '"' || rest[0] == '\'') {
		in, _, _ := strings.Cut(rest[1:], rest[:1])
		return in
	}
	in, _, _ := strings.Cut(rest, ",")
	return in
}

// isSaid reports whether an option is said of a table: "%header", or among the options.
func isSaid(said, option string) bool {
	for _, o := range []string{saidOf(said, "options"), saidOf(said, "opts")} {
		if slices.Contains(strings.FieldsFunc(o, func(r rune) bool { return r == ',' || r == ' ' }), option) {
			return true
		}
	}
	for part := range strings.SplitSeq(said, ",") {
		if slices.Contains(strings.Split(strings.TrimSpace(part), "%")[1:], option) {
			return true
		}
	}
	return false
}

// columnsOf is how many columns are said of a table: "1,2,1", "3*", "2*,1"; 0 where nothing is.
func columnsOf(said string) (n int) {
	cols := saidOf(said, "cols")
	if cols == "" {
		return 0
	}
	if k := number(cols); k > 0 {
		return k
	}
	for part := range strings.FieldsFuncSeq(cols, func(r rune) bool { return r == ',' || r == ';' }) {
		times, _, many := strings.Cut(strings.TrimSpace(part), "*")
		if k := number(times); many && k > 0 {
			n += k
		} else {
			n++
		}
	}
	return n
}

// asciiTable is the way through one table.
type asciiTable struct {
	columns    int
	lines      []string
	first, end int   // its lines, the fences not
	busy       []int // for how many rows a column is taken from above
	at         int   // the column in hand
}

// rows puts the cells of all lines into rows.
func (a *asciiTable) rows() (all []drawn) {
	for k := a.first; k < a.end; k++ {
		l := strings.TrimSpace(a.lines[k])
		if strings.HasPrefix(l, "//") {
			continue
		}
		lead, cells := asciiCells(l)
		if lead != "" && len(all) > 0 && len(all[len(all)-1].cells) > 0 {
			c := &all[len(all)-1].cells[len(all[len(all)-1].cells)-1]
			c.text = strings.TrimSuffix(c.text, " +") + " " + lead
		}
		if a.columns == 0 && len(cells) > 0 {
			for _, c := range cells {
				a.columns += max(1, c.cols)
			}
		}
		for _, c := range cells {
			a.put(&all, c, k+1)
		}
	}
	for i := range all {
		for c := range all[i].cells {
			all[i].cells[c].text = asciiMarks().plain(all[i].cells[c].text)
		}
	}
	return all
}

// put puts a cell into the row in hand, or begins the next one.
func (a *asciiTable) put(all *[]drawn, c drawnCell, line int) {
	if a.busy == nil {
		a.busy = make([]int, a.columns)
	}
	free := func() {
		for a.at < len(a.busy) && a.busy[a.at] > 0 {
			a.busy[a.at]--
			a.at++
		}
	}
	if len(*all) > 0 {
		free()
	}
	if len(*all) == 0 || a.at >= a.columns {
		a.at = 0
		*all = append(*all, drawn{line: line})
		free()
	}
	d := &(*all)[len(*all)-1]
	d.cells = append(d.cells, c)
	for range max(1, c.cols) {
		if a.at < len(a.busy) {
			a.busy[a.at] = max(0, c.rows-1)
		}
		a.at++
	}
}

// headed reports whether the first row stands on one line, right below the fence, with an empty line below.
func (a *asciiTable) headed(all []drawn) bool {
	if all[0].line != a.first+1 || a.first+1 >= a.end || strings.TrimSpace(a.lines[a.first+1]) != "" {
		return false
	}
	_, cells := asciiCells(strings.TrimSpace(a.lines[a.first]))
	return len(cells) == len(all[0].cells)
}

// parted reads the lines of a table whose cells have a comma, or a colon, between them.
func (a *asciiTable) parted(colons bool) (all []drawn) {
	for k := a.first; k < a.end; k++ {
		if l := strings.TrimSpace(a.lines[k]); l != "" {
			sep := byte(',')
			if colons {
				sep = ':'
			}
			all = append(all, drawn{line: k + 1, cells: partedCells(l, sep)})
		}
	}
	return all
}

// partedCells are the cells between a sign; one between quotation marks may hold it.
func partedCells(l string, sep byte) (cells []drawnCell) {
	from, in := 0, false
	add := func(s string) {
		s = strings.TrimSpace(s)
		if len(s) > 1 && s[0] == '"' && s[len(s)-1] == '"' {
			s = strings.ReplaceAll(s[1:len(s)-1], `""`, `"`)
		}
		cells = append(cells, drawnCell{text: strings.Join(strings.Fields(s), " ")})
	}
	for k := range len(l) {
		switch {
		case l[k] == '"':
			in = !in
		case l[k] == sep && !in:
			add(l[from:k])
			from = k + 1
		}
	}
	add(l[from:])
	return cells
}

// asciiCells parts a line at its bars; lead is what goes on from the cell before. What stands right before a bar says of the cell behind it
// over how many columns and rows it stands, how often it comes and how it is set.
func asciiCells(l string) (lead string, cells []drawnCell) {
	bar := asciiBar(l)
	if bar < 0 {
		return l, nil
	}
	lead, spec := asciiSpec(l[:bar])
	for bar >= 0 {
		l = l[bar+1:]
		bar = asciiBar(l)
		text, next := l, ""
		if bar >= 0 {
			text, next = asciiSpec(l[:bar])
		}
		c := drawnCell{text: strings.ReplaceAll(strings.TrimSpace(text), `\|`, "|")}
		times := 1
		if many, ok := strings.CutSuffix(strings.TrimRight(spec, "<>^.abcdefghijklmnopqrstuvwxyz"), "*"); ok {
			times = max(1, number(many))
		} else if over, _, ok := strings.Cut(spec, "+"); ok {
			cols, rows, _ := strings.Cut(over, ".")
			c.cols, c.rows = number(cols), number(rows)
		}
		for range times {
			cells = append(cells, c)
		}
		spec = next
	}
	return lead, cells
}

// asciiBar is where the next bar stands that no backslash is before; −1 where none is.
func asciiBar(s string) int {
	for k := range len(s) {
		if s[k] == '|' && (k == 0 || s[k-1] != '\\') {
			return k
		}
	}
	return -1
}

// asciiSpec takes what is said of the next cell off the end of a text: "2+", ".2+", "3*", "^.>s", "a".
func asciiSpec(s string) (text, spec string) {
	at := strings.LastIndexByte(s, ' ') + 1
	spec = s[at:]
	rest := strings.TrimLeft(spec, "0123456789.")
	if rest == spec || rest == "" || rest[0] != '+' && rest[0] != '*' {
		rest = " " + spec
	}
	rest = strings.TrimLeft(rest[1:], "<>^.")
	if spec == "" || len(rest) > 1 || rest != "" && strings.IndexByte("adehlmsv", rest[0]) < 0 || at == 0 && len(s) > 0 && s == rest {
		return s, ""
	}
	if at > 0 && strings.TrimSpace(s[:at]) != "" && spec == rest { // a letter alone may be the end of the cell before
		return s, ""
	}
	return s[:at], spec
}
