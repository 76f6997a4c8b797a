package markup

import (
	"html"
	"strconv"
	"strings"
)

// Table reads a table that Markdown has as HTML, from the line of its first sign on, and says how many lines it takes; 0
// where none begins. The text of a cell that goes over several rows is that of each of them.
//
//	<table>
//	  <tr><th>Pin</th><th>Signal</th></tr>
//	  <tr><td>1</td><td>Horn</td></tr>
//	</table>
func Table(lines []string, l Limits) (rows []Row, n int) {
	if !strings.HasPrefix(strings.ToLower(strings.TrimSpace(lines[0])), "<table") {
		return nil, 0
	}
	p := htmlRows{l: l, spans: map[int]span{}}
	for n < len(lines) {
		done := p.line(lines[n], n)
		n++
		if done || len(p.rows) > l.Rows {
			break
		}
	}
	if len(p.rows) <= l.Rows { // one more than allowed is enough to say so
		p.endRow()
	}
	return p.rows, n
}

// Limits are how much is read of one table.
type Limits struct{ Rows, Columns, CellBytes, Bytes int }

// Row is one row: the line that it begins on, from 0 at the first line of the table, and its cells as they stand there.
type Row struct {
	Line   int
	Cells  []string
	First  bool // of the table
	Headed bool // its cells are headings
}

// span is a cell that goes over rows below.
type span struct {
	rows int
	text string
}

// htmlRows is the way through the lines of such a table.
type htmlRows struct {
	l          Limits
	rows       []Row
	row        *Row
	cell       *strings.Builder
	wide, tall int // of the cell in hand
	headed     bool
	spans      map[int]span // by column
	bytes      int          // of the texts that were put into rows below
}

// line takes in one line and reports whether the table ends on it.
func (p *htmlRows) line(line string, at int) bool {
	for line != "" {
		open := strings.IndexByte(line, '<')
		if open < 0 {
			p.text(line)
			break
		}
		p.text(line[:open])
		end := strings.IndexByte(line[open:], '>')
		if end < 0 {
			p.text(line[open:])
			break
		}
		tag := strings.ToLower(line[open+1 : open+end])
		line = line[open+end+1:]
		word, attributes, _ := strings.Cut(strings.TrimRight(tag, "/ "), " ")
		switch word {
		case "tr":
			p.endRow()
			p.row = &Row{Line: at, First: len(p.rows) == 0}
		case "/tr":
			p.endRow()
		case "td", "th":
			if p.endCell(); p.row == nil {
				p.row = &Row{Line: at, First: len(p.rows) == 0}
			}
			p.cell, p.wide, p.tall = &strings.Builder{}, number(attributes, "colspan"), number(attributes, "rowspan")
			p.headed = p.headed || word == "th"
		case "/td", "/th":
			p.endCell()
		case "br", "p", "/p", "li":
			p.text(" ")
		case "/table":
			return true
		}
	}
	p.text(" ")
	return false
}

// text takes in what stands between two tags.
func (p *htmlRows) text(s string) {
	if p.cell != nil && p.cell.Len() <= p.l.CellBytes {
		p.cell.WriteString(html.UnescapeString(s))
	}
}

// endCell puts the cell in hand into its row.
func (p *htmlRows) endCell() {
	if p.cell == nil || p.row == nil {
		p.cell = nil
		return
	}
	p.fill()
	text := strings.TrimSpace(p.cell.String())
	if p.tall > 1 {
		p.spans[len(p.row.Cells)] = span{p.tall - 1, text}
	}
	p.row.Cells = append(p.row.Cells, text)
	for k := 1; k < p.wide && len(p.row.Cells) <= p.l.Columns; k++ {
		p.row.Cells = append(p.row.Cells, "")
	}
	p.cell = nil
}

// fill puts the texts of cells from rows above into the columns that come next.
func (p *htmlRows) fill() {
	for {
		s, ok := p.spans[len(p.row.Cells)]
		if !ok || s.rows < 1 {
			return
		}
		if p.bytes += len(s.text); p.bytes > p.l.Bytes {
			s.text = ""
		}
		s.rows--
		p.spans[len(p.row.Cells)] = s
		p.row.Cells = append(p.row.Cells, s.text)
	}
}

// endRow keeps the row in hand, where something stands in it.
func (p *htmlRows) endRow() {
	p.endCell()
	if p.row == nil {
		return
	}
	p.fill()
	if strings.Join(p.row.Cells, "") != "" {
		p.row.Headed = p.row.First && p.headed
		p.rows = append(p.rows, *p.row)
	}
	p.row = nil
}

// number is the number of an attribute, 1 where it has none.
func number(attributes, name string) int {
	_, rest, ok := strings.Cut(attributes, name+"=")
	if !ok {
		return 1
	}
	rest = strings.TrimLeft(rest, `"' `)
	end := strings.IndexFunc(rest, func(r rune) bool { return r < '0' || r > '9' })
	if end < 0 {
		end = len(rest)
	}
	n, err := strconv.Atoi(rest[:end])
	if err != nil {
		return 1
	}
	return n
}

// WithoutTags takes the HTML off a line of Markdown; level is that of a heading among it, 0 where there is none.
func WithoutTags(line string) (text string, level int) {
	if !strings.HasPrefix(line, "<") || !strings.Contains(line, ">") {
		return line, 0
	}
	var b strings.Builder
	for line != "" {
		open := strings.IndexByte(line, '<')
		end := -1
		if open >= 0 {
			end = strings.IndexByte(line[open:], '>')
		}
		if end < 0 {
			b.WriteString(line)
			break
		}
		if tag := strings.ToLower(line[open+1 : open+end]); len(tag) > 1 && tag[0] == 'h' && tag[1] >= '1' && tag[1] <= '6' &&
			(len(tag) == 2 || tag[2] == ' ') {
			level = int(tag[1] - '0')
		}
		b.WriteString(line[:open])
		line = line[open+end+1:]
	}
	return strings.TrimSpace(html.UnescapeString(b.String())), level
}
