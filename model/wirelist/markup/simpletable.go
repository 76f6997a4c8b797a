package markup

import "strings"

// Tables of reStructuredText between rules of equality signs. A line with an empty first cell goes on with the row above it.
//
//	=====  ===============  ======
//	Pin    Lamp             Wire
//	=====  ===============  ======
//	1      plus, on the     red
//	       long side
//	2      minus            black
//	=====  ===============  ======

func simpleTable(t *reader, i int) (rows []Row, n int) {
	rule := strings.TrimRight(untabbed(t.lines[i]), " ")
	cols := piecesOf(rule, "=")
	if len(cols) < 2 {
		return nil, 0
	}
	rules := []int{i}
	for k := i + 1; k < len(t.lines); k++ {
		t.spent++
		if l := strings.TrimRight(untabbed(t.lines[k]), " "); l == rule {
			if rules = append(rules, k); len(rules) == 3 || k+1 == len(t.lines) || strings.TrimSpace(t.lines[k+1]) == "" {
				break
			}
		} else if strings.TrimSpace(l) == "" && k+1 < len(t.lines) && strings.TrimSpace(t.lines[k+1]) == "" {
			break // two empty lines end it
		}
	}
	last := rules[len(rules)-1]
	if len(rules) < 2 || len(rules) == 2 && last < i+3 {
		return nil, 0
	}
	s := simple{cols: cols}
	head := 0
	if len(rules) == 3 {
		if !s.add(t.lines[i+1:rules[1]], i+2, true) {
			return nil, 0
		}
		if head = len(s.all); head > 1 && !s.under {
			overNext(s.all)
		}
	}
	at := rules[len(rules)-2] + 1
	if !s.add(t.lines[at:last], at+1, false) || len(s.all) < 2 {
		return nil, 0
	}
	for k := range s.all[:head] {
		s.all[k].head = true
	}
	s.goOn(head)
	for k := range s.all {
		for c := range s.all[k].cells {
			text := &s.all[k].cells[c].text
			if *text = restMarks().plain(*text); *text == `\` {
				*text = ""
			}
		}
	}
	t.spent -= last - i
	return spread(s.all, "", 0), last - i + 1
}

// untabbed is a line with blanks in the place of its tabs, as many as reach the next stop.
func untabbed(l string) string {
	const stop = 8 // characters
	if strings.IndexByte(l, '\t') < 0 {
		return l
	}
	var b strings.Builder
	at := 0
	for _, r := range l {
		n := 1
		if r == '\t' {
			n, r = stop-at%stop, ' '
		}
		for range n {
			b.WriteRune(r)
		}
		at += n
	}
	return b.String()
}

// piecesOf are the pieces of a rule, by their places; nil where a line is something else.
func piecesOf(l, sign string) (cols [][2]int) {
	if strings.Trim(l, sign+" ") != "" || l == "" {
		return nil
	}
	for k := 0; k < len(l); k++ {
		if l[k] == ' ' {
			continue
		}
		end := k
		for end < len(l) && l[end] != ' ' {
			end++
		}
		cols = append(cols, [2]int{k, end})
		k = end
	}
	return cols
}

// simple is the way through such a table.
type simple struct {
	cols  [][2]int
	all   []drawn
	under bool // a rule below the headings says which stand over several columns
}

// add cuts some lines at the columns; ok is false where a text stands across a gap between two of them.
func (s *simple) add(lines []string, line int, head bool) (ok bool) {
	for k, l := range lines {
		if strings.TrimSpace(l) == "" {
			continue
		}
		l = untabbed(l)
		if over := piecesOf(strings.TrimRight(l, " "), "-"); len(over) > 1 || len(over) == 1 && over[0][1]-over[0][0] > 3 {
			s.span(over)
			continue
		}
		r := []rune(l)
		d := drawn{line: line + k}
		across := 0
		for c, col := range s.cols {
			end := len(r)
			if c+1 < len(s.cols) {
				end = min(len(r), s.cols[c+1][0])
				for x := col[1]; x < end; x++ {
					if r[x] != ' ' {
						across++
					}
				}
			}
			text := ""
			if col[0] < end {
				text = strings.TrimSpace(string(r[col[0]:end]))
			}
			d.cells = append(d.cells, drawnCell{text: text})
		}
		if across > 0 && !head && !(k+1 < len(lines) && piecesOf(strings.TrimRight(lines[k+1], " "), "-") != nil) {
			return false
		}
		if across > 0 {
			d.cells[0].text = strings.Join(strings.Fields(l), " ") // until the rule below it says more
		}
		s.all = append(s.all, d)
		if across > 0 {
			s.all[len(s.all)-1].cells = s.cut(r, lines, k)
		}
	}
	return true
}

// cut cuts a line at the pieces of the rule below it.
func (s *simple) cut(r []rune, lines []string, k int) (cells []drawnCell) {
	var over [][2]int
	if k+1 < len(lines) {
		over = piecesOf(strings.TrimRight(lines[k+1], " "), "-")
	}
	if over == nil {
		return []drawnCell{{text: strings.Join(strings.Fields(string(r)), " "), cols: len(s.cols)}}
	}
	return s.cellsOver(r, over)
}

// span cuts the row above a rule of dashes anew: each piece of it is a cell over the columns that it stands below.
func (s *simple) span(over [][2]int) {
	s.under = true
	if len(s.all) == 0 || len(s.all[len(s.all)-1].cells) != len(s.cols) {
		return
	}
	var r []rune
	last := &s.all[len(s.all)-1]
	for c, col := range s.cols {
		for len(r) < col[0] {
			r = append(r, ' ')
		}
		r = append(r, []rune(last.cells[c].text)...)
	}
	last.cells = s.cellsOver(r, over)
}

func (s *simple) cellsOver(r []rune, over [][2]int) (cells []drawnCell) {
	for c := 0; c < len(s.cols); {
		n, end := 1, s.cols[c][1]
		for _, o := range over {
			if o[0] == s.cols[c][0] {
				for end = o[1]; c+n < len(s.cols) && s.cols[c+n][0] < o[1]; {
					n++
				}
			}
		}
		if c+n == len(s.cols) {
			end = len(r)
		}
		text := ""
		if s.cols[c][0] < len(r) && s.cols[c][0] < end {
			text = strings.TrimSpace(string(r[s.cols[c][0]:min(end, len(r))]))
		}
		cells = append(cells, drawnCell{text: text, cols: n})
		c += n
	}
	return cells
}

// goOn puts the lines with an empty first cell to the row above them, but where such lines are as full as the others: then they are rows.
func (s *simple) goOn(from int) {
	more, full := 0, 0
	for k := from + 1; k < len(s.all); k++ {
		if s.all[k].cells[0].text == "" {
			more++
			if n := len(s.cols); n > 2 && filled(s.all[k].cells) >= n-1 {
				full++
			}
		}
	}
	if 2*full > more {
		return
	}
	kept := s.all[:min(from+1, len(s.all))]
	for k := from + 1; k < len(s.all); k++ {
		d := s.all[k]
		last := &kept[len(kept)-1]
		if d.cells[0].text != "" || len(d.cells) != len(last.cells) {
			kept = append(kept, d)
			continue
		}
		for c := range d.cells {
			last.cells[c].text = strings.TrimSpace(last.cells[c].text + " " + d.cells[c].text)
		}
	}
	s.all = kept
}
