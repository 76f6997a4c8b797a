package table

import (
	"html"
	"strings"
)

// htmlRow reads a line, or the lines that were gathered, of one row of an HTML table: its cells, and whether they are
// headings. ok is false where it is none.
//
//	<tr><th>Pin</th><th>What</th></tr>
func htmlRow(line string) (cells []string, head, ok bool) {
	lower := strings.ToLower(line)
	if !strings.Contains(lower, "<tr") || !strings.Contains(lower, "</tr") || len(lower) != len(line) {
		return nil, false, false
	}
	for at := 0; ; {
		open := strings.Index(lower[at:], "<t")
		if open < 0 {
			break
		}
		open += at
		tag := lower[open:min(len(lower), open+3)]
		end := strings.IndexByte(lower[open:], '>')
		if end < 0 {
			break
		}
		at = open + end + 1
		if tag != "<td" && tag != "<th" || strings.HasPrefix(lower[open:], "<thead") {
			continue
		}
		shut := strings.Index(lower[at:], "</"+tag[1:])
		if shut < 0 {
			shut = strings.Index(lower[at:], "<t")
		}
		if shut < 0 {
			shut = len(lower) - at
		}
		cells = append(cells, marked(html.UnescapeString(withoutTags(line[at:at+shut]))))
		head = head || tag == "<th"
		at += shut
	}
	return cells, head, len(cells) > 0
}

// withoutTags takes the tags off a text.
func withoutTags(s string) string {
	var b strings.Builder
	for s != "" {
		front, rest, found := strings.Cut(s, "<")
		b.WriteString(front)
		if !found {
			break
		}
		_, rest, found = strings.Cut(rest, ">")
		if !found {
			b.WriteString("<" + rest)
			break
		}
		b.WriteByte(' ')
		s = rest
	}
	return b.String()
}
