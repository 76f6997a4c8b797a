package markup

import "strings"

// Tables of HTML, in a page of it or within Markdown, however their tags are set on lines.
//
//	<table><tr><th>Pin<th colspan=2>Lamp
//	<tr><td>1<td>plus<td>red<br>thick</table>

// hasHTML reports whether a text has a tag that parts texts.
func hasHTML(text string) bool {
	for {
		i := strings.IndexByte(text, '<')
		if i < 0 {
			return false
		}
		text = text[i:]
		if t := tagAt(text); t.len > 0 && t.name != "br" && breaksText[t.name] {
			return true
		}
		text = text[1:]
	}
}

// IsPage reports whether a text is a page of HTML as a whole.
func IsPage(name, text string) bool {
	lower := strings.ToLower(text[:min(len(text), 400)])
	name = strings.ToLower(name)
	return strings.Contains(lower, "<!doctype html") || strings.Contains(lower, "<html") || strings.HasSuffix(name, ".html") ||
		strings.HasSuffix(name, ".htm")
}

// withoutUnseen empties what a page of HTML does not show: remarks, scripts, styles, what it says of itself. The lines stay.
func withoutUnseen(text string) string {
	for _, pair := range [][2]string{{"<!--", "-->"}, {"<script", "</script>"}, {"<style", "</style>"}, {"<!doctype", ">"},
		{"<!DOCTYPE", ">"}, {"<?xml", "?>"}} {
		if !strings.Contains(text, pair[0]) {
			continue
		}
		var b strings.Builder
		for {
			front, rest, found := strings.Cut(text, pair[0])
			in, back, closed := strings.Cut(rest, pair[1])
			if !found || !closed {
				b.WriteString(text)
				break
			}
			b.WriteString(front + strings.Repeat("\n", strings.Count(in, "\n")))
			text = back
		}
		text = b.String()
	}
	return text
}

// html takes the tags off a line, or off the lines of the table that opens on it; n is how many lines it took.
func (r *reader) html(i int) (n int) {
	line := r.lines[i]
	if strings.IndexByte(line, '<') < 0 {
		return 0
	}
	var rows []Row
	last, front := i, line
	for {
		at := tableAt(front)
		if at < 0 {
			break
		}
		rows = append(rows, texts(front[:at], last+1)...)
		p := htmlTable{lines: r.lines, at: last, from: len(r.lines[last]) - len(front) + at}
		rows = append(rows, p.read()...)
		last, front = p.at, p.lines[p.at][p.from:]
	}
	pieces := texts(front, last+1)
	if rows != nil || len(pieces) > 1 {
		r.tables[i] = Table{last - i + 1, append(rows, pieces...)}
		return last - i + 1
	}
	switch {
	case len(pieces) == 1 && strings.TrimSpace(pieces[0].Cells[0]) != strings.TrimSpace(line):
		p := pieces[0]
		if r.plain[i] = p.Cells[0]; p.Level > 0 {
			r.plain[i] = strings.Repeat("#", p.Level) + " " + p.Cells[0]
		}
	case len(pieces) == 0:
		r.plain[i] = ""
	}
	return 1
}

// tableAt is where the first table of a text opens; −1 where none does.
func tableAt(s string) int {
	for at := 0; ; at++ {
		i := strings.IndexByte(s[at:], '<')
		if i < 0 {
			return -1
		}
		at += i
		if t := tagAt(s[at:]); t.len > 0 && t.name == "table" && !t.close {
			return at
		}
		of := strings.TrimSpace(strings.ToLower(s[at:min(len(s), at+len("<table "))]))
		if of == "<table" && !strings.Contains(s[at:min(len(s), at+mostTag)], ">") {
			return at // the tag goes on in the next line
		}
	}
}

// texts are the pieces that a line of HTML shows one below the other; one that has no tags is one piece, as it is.
func texts(s string, line int) (rows []Row) {
	if strings.TrimSpace(s) == "" {
		return nil
	}
	level, lead, tags := 0, "", false
	row := strings.HasPrefix(strings.TrimSpace(s), "|") // of Markdown: what breaks a line there breaks that of a cell
	var b strings.Builder
	flush := func() {
		text := Shown(b.String())
		if !tags {
			text = strings.TrimRight(b.String(), " \t")
		}
		if b.Reset(); strings.TrimSpace(text) != "" {
			rows = append(rows, Row{Line: line, Cells: []string{lead + text}, Prose: true, Level: level})
		}
		lead = ""
	}
	for s != "" {
		i := strings.IndexByte(s, '<')
		if i < 0 {
			i = len(s)
		}
		b.WriteString(s[:i])
		if s = s[i:]; s == "" {
			break
		}
		t := tagAt(s)
		if t.len == 0 {
			b.WriteByte('<')
			s = s[1:]
			continue
		}
		tags = true
		if row && t.name == "br" {
			b.WriteByte(' ')
		} else if breaksText[t.name] {
			flush()
			if level = 0; len(t.name) == 2 && t.name[0] == 'h' && isFigure(t.name[1]) && !t.close {
				level = int(t.name[1] - '0')
			}
			if t.name == "li" && !t.close {
				lead = "- "
			}
		} else {
			b.WriteString(s[:t.len])
		}
		s = s[t.len:]
	}
	flush()
	return rows
}

// htmlTable is the way through one table.
type htmlTable struct {
	lines    []string
	at, from int // the line in hand and where on it
	depth    int
	all      []drawn
	inCell   bool
	caption  strings.Builder
	captioned,
	inCaption bool
	cell   strings.Builder
	inHead bool
	opened tag
	said   int // the line of the caption
}

// read reads on to the end of the table, and leaves at and from behind it.
func (p *htmlTable) read() []Row {
	for p.at < len(p.lines) {
		line := p.lines[p.at]
		for p.from < len(line) {
			s := line[p.from:]
			i := strings.IndexByte(s, '<')
			if i < 0 {
				i = len(s)
			}
			p.write(s[:i])
			if p.from += i; i == len(s) {
				break
			}
			t, text := p.tag()
			if t.len == 0 {
				p.write("<")
				p.from++
				continue
			}
			at := p.at
			if p.skip(t.len); at != p.at {
				line = p.lines[p.at]
			}
			if p.take(t, text); p.depth == 0 {
				return p.rows()
			}
		}
		if p.at+1 == len(p.lines) {
			break
		}
		p.write("\n")
		p.at, p.from = p.at+1, 0
	}
	p.from = len(p.lines[p.at])
	return p.rows()
}

// tag is the tag at hand and its text, which may go on in the next lines.
func (p *htmlTable) tag() (tag, string) {
	const most = 8 // lines of one tag (no source)
	s := p.lines[p.at][p.from:]
	s = s[:min(len(s), mostTag)]
	t := tagAt(s)
	for k := p.at + 1; t.len == 0 && k < len(p.lines) && k < p.at+most && len(s) > 1 && len(s) < mostTag && !strings.Contains(s, ">"); k++ {
		s += "\n" + p.lines[k]
		t = tagAt(s)
	}
	return t, s[:t.len]
}

// skip goes on by so many letters, over the ends of lines.
func (p *htmlTable) skip(n int) {
	for n > len(p.lines[p.at])-p.from && p.at+1 < len(p.lines) {
		n -= len(p.lines[p.at]) - p.from + 1
		p.at, p.from = p.at+1, 0
	}
	p.from += n
}

// write puts a text where it belongs: into the cell in hand, or the caption.
func (p *htmlTable) write(s string) {
	switch {
	case p.inCell:
		p.cell.WriteString(s)
	case p.inCaption:
		p.caption.WriteString(s)
	}
}

// take does what a tag says.
func (p *htmlTable) take(t tag, text string) {
	switch {
	case t.name == "table":
		if p.depth++; t.close {
			p.depth -= 2
		}
		if p.depth > 1 || t.close {
			p.write(" ")
		}
	case p.depth > 1:
		p.write(text)
	case t.name == "caption":
		p.closeCell()
		p.inCaption, p.captioned, p.said = !t.close, true, p.at+1
	case t.name == "thead":
		p.inHead = !t.close
	case t.name == "tr", t.name == "tbody", t.name == "tfoot":
		p.closeCell()
		if t.name == "tr" && !t.close {
			p.all = append(p.all, drawn{head: p.inHead})
		}
	case t.name == "td" || t.name == "th":
		p.closeCell()
		if !t.close {
			if len(p.all) == 0 {
				p.all = append(p.all, drawn{head: p.inHead})
			}
			if d := &p.all[len(p.all)-1]; d.line == 0 {
				d.line = p.at + 1
			}
			p.inCell, p.inCaption, p.opened = true, false, t
		}
	case t.name == "img" && p.inCell && strings.TrimSpace(p.cell.String()) == "":
		p.write(attr(t.attrs, "alt"))
	default:
		p.write(text)
	}
}

// closeCell puts the cell in hand into its row.
func (p *htmlTable) closeCell() {
	if !p.inCell {
		return
	}
	d := &p.all[len(p.all)-1]
	d.cells = append(d.cells, drawnCell{Shown(p.cell.String()), span(p.opened.attrs, "colspan"), span(p.opened.attrs, "rowspan"),
		p.opened.name == "th"})
	p.inCell = false
	p.cell.Reset()
}

func (p *htmlTable) rows() []Row {
	p.closeCell()
	return spread(p.all, Shown(p.caption.String()), p.said)
}
