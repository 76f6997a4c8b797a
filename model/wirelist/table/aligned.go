package table

import "strings"

// aligned reads lines whose cells stand under each other, two blanks or more apart. A line of dashes below the headings, or gaps
// that all lines have, show where the columns are; where neither does, each cell is of the heading it stands under most. What
// draws a line from one column to the next is no cell.
//
//	Amplifier      Speaker   Wire
//	---------      -------   ----
//	   1    ------    2      white
//	   2    n.c.
func aligned(d *document, i int) int {
	n := d.alignedLines(i)
	if n == 0 {
		return 0
	}
	heads := 1 // lines of headings
	var cols []field
	rule := -1
	for k := 1; k < min(n, 4); k++ {
		if isRule(d.line(i + k)) {
			rule = k
			break
		}
	}
	if rule > 0 {
		heads = rule
		if runs := gapped(strings.ReplaceAll(d.lines[i+rule], " ", "  ")); len(runs) > 1 {
			cols = runsOf(d.lines[i+rule])
		}
	}
	if cols == nil {
		cols = d.columnsOf(i, heads, n)
	}
	if len(cols) < 2 {
		return 0
	}
	head := Row{First: true, Ruled: rule > 0}
	head.Cells = make([]string, len(cols))
	for k := range heads {
		for c, cell := range under(cols, gapped(d.lines[i+k])) {
			head.Cells[c] = oneBlank(head.Cells[c] + " " + cell)
		}
	}
	d.add(i+heads-1, head)
	for k := heads; k < n; k++ {
		line := d.line(i + k)
		if line == "" || isRule(line) {
			continue
		}
		row := Row{Cells: under(cols, parted(d.lines[i+k], cols))}
		if strings.Join(row.Cells, "|") == strings.Join(head.Cells, "|") {
			row.First, row.Ruled = true, head.Ruled
		}
		d.add(i+k, row)
	}
	return n
}

// alignedLines is how many lines from one on stand in columns; 0 where they do not. Behind an empty line the next may go on, where
// it has cells in the same columns and no title stands between.
func (d *document) alignedLines(i int) int {
	if first := gapped(d.lines[i]); len(first) < 2 || isPoint(d.line(i)) || hasLeader(d.line(i)) {
		return 0
	}
	n, with, wide, last := 0, 0, 0, 0
	starts := map[int]int{}
	for ; i+n < len(d.lines); n++ {
		line := d.line(i + n)
		if line == "" {
			after := d.line(i + n + 1)
			if len(gapped(after)) < 2 || isRule(d.line(i+n+2)) || n == 0 || !d.goesOn(i, i+n+1) {
				break
			}
			continue
		}
		if isRule(line) {
			last = n + 1
			continue
		}
		if isDrawnRule(line) || d.isBars(i+n) {
			break
		}
		fields := gapped(d.lines[i+n])
		if len(fields) < 2 && n > 0 && (len([]rune(line)) > 24 || d.line(i+n-1) == "" || fields[0].from > 0 && with < 2) {
			break
		}
		if len(fields) > 1 {
			with++
			wide = max(wide, len(fields))
			for _, f := range fields[1:] {
				starts[f.from]++
				starts[f.to+10_000]++
			}
		}
		last = n + 1
	}
	same := 0
	for _, k := range starts {
		same = max(same, k)
	}
	if with < 2 || wide < 3 && (same < 2 || 2*same < with) {
		return 0
	}
	return last
}

// goesOn reports whether a line behind an empty one is of the table that begins at first: its cells begin or end where cells of
// the table do, and it is no headings of a table of its own.
func (d *document) goesOn(first, i int) bool {
	at := map[int]bool{}
	for k := first; k < i; k++ {
		for _, f := range gapped(d.lines[k]) {
			at[f.from], at[-f.to] = true, true
		}
	}
	fields := gapped(d.lines[i])
	n := 0
	for _, f := range fields {
		if at[f.from] || at[-f.to] {
			n++
		}
	}
	digits := strings.ContainsAny(d.lines[i], "0123456789")
	return 2*n > len(fields) && (digits || i-first < 3)
}

// columnsOf finds the columns of some lines: between the gaps that all of them have, where those part as many as the headings
// or more, else from each heading on.
func (d *document) columnsOf(i, heads, n int) []field {
	var top []field
	for k := range heads {
		if f := gapped(d.lines[i+k]); len(f) > len(top) {
			top = f
		}
	}
	arrows := d.arrowsIn(i, n)
	var taken []bool
	for k := range n {
		if isRule(d.line(i + k)) {
			continue
		}
		for _, f := range gapped(d.lines[i+k]) {
			if isStroke(f.text) && !arrows {
				continue
			}
			for len(taken) < f.to {
				taken = append(taken, false)
			}
			for c := f.from; c < f.to; c++ {
				taken[c] = true
			}
		}
	}
	var cols []field
	for c := 0; c < len(taken); c++ {
		if !taken[c] {
			continue
		}
		from := c
		for c < len(taken) && taken[c] {
			c++
		}
		cols = append(cols, field{"", from, c})
	}
	if len(cols) >= len(top) {
		return cols
	}
	if len(top) < 2 {
		return nil
	}
	return top
}

// arrowsIn reports whether every line of some has an arrow among its cells: it stands between two ends, and no line is headings.
func (d *document) arrowsIn(i, n int) bool {
	for k := range n {
		if d.line(i+k) == "" {
			continue
		}
		found := false
		for _, f := range gapped(d.lines[i+k]) {
			found = found || isStroke(f.text) && strings.ContainsAny(f.text, "<>→←")
		}
		if !found {
			return false
		}
	}
	return true
}

// runsOf is the runs of a rule line, and where each stands.
func runsOf(line string) (all []field) {
	r := []rune(line)
	for i := 0; i < len(r); i++ {
		if r[i] == ' ' || r[i] == '\t' {
			continue
		}
		from := i
		for i < len(r) && r[i] != ' ' && r[i] != '\t' {
			i++
		}
		all = append(all, field{"", from, i})
	}
	return all
}

// parted parts a line at its gaps, and at one blank where a column begins behind it: the cell before fills its column.
//
//	Pin  Signal        Colour
//	1    window motor  red
//	2    window return black
func parted(line string, cols []field) (all []field) {
	runes := []rune(line)
	fields := gapped(line)
	if len(fields) < 2 {
		return fields
	}
	for _, f := range fields {
		for _, c := range cols[1:] {
			if at := c.from; at > f.from+1 && at < f.to && runes[at-1] == ' ' {
				all = append(all, field{strings.TrimSpace(string(runes[f.from : at-1])), f.from, at - 1})
				f = field{strings.TrimSpace(string(runes[at:f.to])), at, f.to}
			}
		}
		all = append(all, f)
	}
	return all
}

// isStroke reports whether a text draws a line or an arrow from one cell to the next.
func isStroke(s string) bool {
	return len(s) > 1 && strings.Trim(s, "-=─═━<>→←.·_~") == "" && (len(s) > 3 || strings.ContainsAny(s, "<>→←─═━"))
}

// hasLeader reports whether dots lead from one text of a line to the next.
func hasLeader(line string) bool {
	at := strings.Index(line, "....")
	return at > 0 && strings.Trim(line[at:], ". ") != ""
}

// under gives each cell its column: that from whose head to the next it has most of its characters. What stands beside all heads, and
// whose column is taken, is of the next. What stands in one column is joined.
func under(heads, cells []field) []string {
	out := make([]string, len(heads))
	for _, c := range cells {
		best, most, touches := 0, -1, false
		for k, h := range heads {
			from, to := h.from, c.to
			if k == 0 {
				from = 0
			}
			if k+1 < len(heads) {
				to = heads[k+1].from
			}
			if in := min(c.to, to) - max(c.from, from); in > most {
				best, most = k, in
			}
			touches = touches || min(c.to, h.to) > max(c.from, h.from)
		}
		if !touches && isStroke(c.text) {
			continue
		}
		if !touches && out[best] != "" && best+1 < len(heads) {
			best++
		}
		out[best] = marked(out[best] + " " + c.text)
	}
	return out
}
