package markup

import (
	"slices"
	"strings"
)

// Tables that are drawn with lines round each cell. A cell may take several lines, columns and rows.
//
//	+-----+-----------+-------+     ┌─────┬───────┐
//	| Pin | Lamp      | Wire  |     │ Pin │ Lamp  │
//	+=====+===========+=======+     ├─────┼───────┤
//	| 1   | plus,     | red   |     │ 1   │ plus  │
//	|     | long side |       |     │ 2   │ minus │
//	+-----+-----------+-------+     └─────┴───────┘

func gridTable(t *reader, i int) (rows []Row, n int) {
	if !isEdge(t.lines[i]) || i > 0 && strings.HasPrefix(strings.TrimSpace(t.lines[i-1]), "|") {
		return nil, 0
	}
	g := grid{line: i + 1}
	for i+n < len(t.lines) {
		l := strings.TrimSpace(t.lines[i+n])
		if l == "" || l[0] != '+' && l[0] != '|' || l[len(l)-1] != '+' && l[len(l)-1] != '|' {
			break
		}
		g.rows = append(g.rows, []rune(l))
		n++
	}
	for n > 0 && !isEdge(string(g.rows[n-1])) {
		n--
	}
	if g.rows = g.rows[:n]; n < 3 {
		return nil, 0
	}
	all := g.read()
	if len(all) < 2 || len(all[0].cells) == 0 {
		return nil, 0
	}
	return spread(all, "", 0), n
}

// isEdge reports whether a line is drawn from the first to the last column of a table with two or more.
func isEdge(l string) bool {
	l = strings.TrimSpace(l)
	return len(l) > 4 && l[0] == '+' && l[len(l)-1] == '+' && strings.Trim(l, "+-=:") == "" && strings.Count(l, "+") > 2 &&
		!strings.Contains(l, "++")
}

// grid is a drawing.
type grid struct {
	line int
	rows [][]rune
}

func restMarks() marks {
	return marks{words: []string{"``", "**", "*", "`"}, whole: []string{"|"}}
}

// read makes rows of the drawing: by its bars where every line has as many as there are columns, else by the places of its lines.
func (g *grid) read() []drawn {
	edges := barsOf(g.rows[0], '+')
	var bands [][]int // the lines of text between two lines that are drawn all over
	head, from := 0, 1
	parts := true
	for k := 1; k < len(g.rows); k++ {
		if !isEdge(string(g.rows[k])) {
			if strings.Trim(string(g.rows[k]), "|- ") == "" && strings.Contains(string(g.rows[k]), "--") {
				return nil // a script says below each heading what kind its values are of
			}
			parts = parts && g.rows[k][0] == '|' && len(barsOf(g.rows[k], '|')) == len(edges)
			continue
		}
		if from < k {
			bands = append(bands, []int{from, k})
		}
		if slices.Contains(g.rows[k], '=') && head == 0 && k+1 < len(g.rows) {
			head = len(bands)
		}
		from = k + 1
	}
	if !parts {
		return g.places(head, bands)
	}
	if head == 0 && len(bands) > 1 && !g.wraps(bands) {
		head = 1
	}
	wraps := g.wraps(bands[min(head, len(bands)):])
	var all []drawn
	for b, band := range bands {
		for k := band[0]; k < band[1]; k++ {
			cells := g.cellsOf(k)
			if k > band[0] && (wraps || b < head) {
				last := all[len(all)-1].cells
				for c := range last {
					last[c].text = strings.TrimSpace(last[c].text + " " + cells[c].text)
				}
				continue
			}
			all = append(all, drawn{line: g.line + k, cells: cells, head: b < head})
		}
	}
	for i := range all {
		for c := range all[i].cells {
			all[i].cells[c].text = restMarks().plain(all[i].cells[c].text)
		}
	}
	return all
}

// wraps reports whether the lines of a band are one row: most lines behind the first of their band hold less than that. Where all rows
// stand in one band each line is a row.
func (g *grid) wraps(bands [][]int) bool {
	more, less := 0, 0
	for _, b := range bands {
		first := filled(g.cellsOf(b[0]))
		for k := b[0] + 1; k < b[1]; k++ {
			if cells := g.cellsOf(k); filled(cells) < first || cells[0].text == "" {
				less++
			} else {
				more++
			}
		}
	}
	if len(bands) == 1 {
		return false
	}
	return less > more || more == 0
}

func filled(cells []drawnCell) (n int) {
	for _, c := range cells {
		if c.text != "" {
			n++
		}
	}
	return n
}

// cellsOf are the texts between the bars of a line.
func (g *grid) cellsOf(k int) (cells []drawnCell) {
	bars := barsOf(g.rows[k], '|')
	for c := 0; c+1 < len(bars); c++ {
		cells = append(cells, drawnCell{text: strings.TrimSpace(string(g.rows[k][bars[c]+1 : bars[c+1]]))})
	}
	return cells
}

// barsOf is where a sign stands in a line, but one behind a backslash.
func barsOf(l []rune, sign rune) (at []int) {
	for k, r := range l {
		if r == sign && (k == 0 || l[k-1] != '\\') {
			at = append(at, k)
		}
	}
	return at
}

// places reads a drawing with cells over several columns or rows, by the lines round each of them.
func (g *grid) places(head int, bands [][]int) (all []drawn) {
	var xs, ys []int
	for y, l := range g.rows {
		crosses := barsOf(l, '+')
		if len(crosses) > 1 {
			ys = append(ys, y)
		}
		xs = append(xs, crosses...)
	}
	slices.Sort(xs)
	xs = slices.Compact(xs)
	if len(xs) < 3 || len(ys) < 3 || len(xs) > mostSpan {
		return nil
	}
	headEnd := 0
	if head > 0 {
		headEnd = bands[head-1][1]
	}
	taken := map[[2]int]bool{}
	for r := 0; r+1 < len(ys); r++ {
		d := drawn{line: g.line + ys[r] + 1, head: ys[r] < headEnd}
		for c := 0; c+1 < len(xs); c++ {
			if taken[[2]int{r, c}] {
				continue
			}
			cols, down := 1, 1
			for c+cols < len(xs)-1 && !g.upright(xs[c+cols], ys[r], ys[r+1]) {
				cols++
			}
			for r+down < len(ys)-1 && !g.level(ys[r+down], xs[c], xs[c+cols]) {
				down++
			}
			for y := r; y < r+down; y++ {
				for x := c; x < c+cols; x++ {
					taken[[2]int{y, x}] = true
				}
			}
			d.cells = append(d.cells, drawnCell{text: g.text(xs[c], xs[c+cols], ys[r], ys[r+down]), cols: cols, rows: down})
		}
		all = append(all, d)
	}
	return all
}

// at is the letter at a place, a blank where the line is shorter.
func (g *grid) at(x, y int) rune {
	if x < len(g.rows[y]) {
		return g.rows[y][x]
	}
	return ' '
}

// upright reports whether a line is drawn from one height to another.
func (g *grid) upright(x, from, to int) bool {
	for y := from + 1; y < to; y++ {
		if r := g.at(x, y); r != '|' && r != '+' {
			return false
		}
	}
	return true
}

// level reports whether a line is drawn from one side to another.
func (g *grid) level(y, from, to int) bool {
	for x := from + 1; x < to; x++ {
		if r := g.at(x, y); r != '-' && r != '=' && r != '+' {
			return false
		}
	}
	return true
}

// text is what stands between four lines.
func (g *grid) text(x, toX, y, toY int) string {
	var b strings.Builder
	for k := y + 1; k < toY; k++ {
		if l := g.rows[k]; x+1 < len(l) {
			b.WriteString(string(l[x+1:min(toX, len(l))]) + " ")
		}
	}
	return restMarks().plain(b.String())
}
