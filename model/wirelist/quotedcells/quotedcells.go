package quotedcells

import (
	"strings"
	"unicode/utf8"

	"contralay/model/wirelist/columned"
)

// leastLines is how many such lines stand together where that is no chance (no source).
const leastLines = 3

// Plain is a text with the tables of quoted cells in it made plain.
func Plain(text string) string {
	if !strings.ContainsAny(text, `'"`+"`‘’“”„«»") {
		return text
	}
	lines := strings.Split(text, "\n")
	changed := false
	for i := 0; i < len(lines); {
		first, ok := lineOf(lines[i])
		if !ok {
			i++
			continue
		}
		rows, end := []line{first}, i+1
		for ; end < len(lines); end++ {
			next, ok := lineOf(lines[end])
			if !ok || len(next.cells) != len(first.cells) || next.sep != first.sep || next.mark != first.mark {
				break
			}
			rows = append(rows, next)
		}
		if len(rows) >= leastLines && !(first.mark == '"' && first.sep != ' ') {
			from := i
			if head := columned.Gapped(lines[max(i-1, 0)]); i > 0 && first.sep == ' ' && len(head) == len(first.cells) {
				above := line{} // headings without marks
				for _, c := range head {
					above.cells = append(above.cells, c.Text)
				}
				rows, from = append([]line{above}, rows...), i-1
			}
			copy(lines[from:end], written(rows, first.sep))
			changed = true
		}
		i = end
	}
	if !changed {
		return text
	}
	return strings.Join(lines, "\n")
}

// line is the cells of a line, each between the same marks, and the sign between them: a blank for one or more.
type line struct {
	cells []string
	sep   byte
	mark  rune
}

// closing is the mark that closes what another opens.
func closing(open rune) (shut rune, ok bool) {
	switch open {
	case '\'', '"', '`':
		return open, true
	case '‘':
		return '’', true
	case '’':
		return '’', true
	case '“':
		return '”', true
	case '”':
		return '”', true
	case '„':
		return '“', true
	case '«':
		return '»', true
	case '»':
		return '«', true
	}
	return 0, false
}

// lineOf parts a line; ok is false where a cell of it has no marks, or there is one alone.
func lineOf(text string) (l line, ok bool) {
	const longest = 400 // bytes (no source)
	rest := strings.TrimSpace(text)
	if len(rest) > longest {
		return l, false
	}
	for rest != "" {
		open, n := utf8.DecodeRuneInString(rest)
		shut, is := closing(open)
		if !is || l.mark != 0 && open != l.mark {
			return l, false
		}
		end := strings.IndexRune(rest[n:], shut)
		if end < 0 {
			return l, false
		}
		l.mark, l.cells = open, append(l.cells, strings.TrimSpace(rest[n:n+end]))
		rest = rest[n+end+utf8.RuneLen(shut):]
		behind := strings.TrimLeft(rest, " ")
		switch {
		case behind == "":
			return l, len(l.cells) > 1 && l.sep != 0
		case strings.IndexByte(",;\t|", behind[0]) >= 0:
			if l.sep != 0 && l.sep != behind[0] {
				return l, false
			}
			l.sep, rest = behind[0], strings.TrimLeft(behind[1:], " ")
			if rest == "" { // a sign behind the last
				return l, len(l.cells) > 1
			}
		case rest == behind || l.sep != 0 && l.sep != ' ':
			return l, false
		default:
			l.sep, rest = ' ', behind
		}
	}
	return l, false
}

// written are the lines of a table without such marks.
func written(rows []line, sep byte) (out []string) {
	wide := make([]int, len(rows[0].cells))
	for _, r := range rows {
		for k, c := range r.cells {
			wide[k] = max(wide[k], utf8.RuneCountInString(c))
		}
	}
	for _, r := range rows {
		var b strings.Builder
		for k, c := range r.cells {
			switch {
			case sep == ' ' && k+1 < len(r.cells):
				b.WriteString(c + strings.Repeat(" ", wide[k]-utf8.RuneCountInString(c)+4))
			case sep == ' ':
				b.WriteString(c)
			default:
				if k > 0 {
					b.WriteByte(sep)
				}
				b.WriteString(`"` + strings.ReplaceAll(c, `"`, `""`) + `"`)
			}
		}
		out = append(out, b.String())
	}
	return out
}
