package markup

import "strings"

// Tables of a wiki between {| and |}.
//
//	{| class="wikitable"
//	|+ Lid plug
//	! Pin !! colspan="2" | Lamp
//	|-
//	| 1 || plus || style="color:red" | red
//	|}

func mediaWiki(t *reader, i int) (rows []Row, n int) {
	if !strings.HasPrefix(strings.TrimLeft(t.lines[i], ": \t"), "{|") {
		return nil, 0
	}
	var all []drawn
	caption, said, depth := "", 0, 0
	for n = 1; i+n < len(t.lines); n++ {
		l := strings.TrimSpace(t.lines[i+n])
		switch {
		case strings.HasPrefix(l, "{|"):
			depth++
		case strings.HasPrefix(l, "|}") && depth > 0:
			depth--
		case strings.HasPrefix(l, "|}"):
			for k := range all {
				for c := range all[k].cells {
					all[k].cells[c].text = wikiMarks().plain(all[k].cells[c].text)
				}
			}
			return spread(all, wikiMarks().plain(caption), said), n + 1
		case depth > 0:
		case strings.HasPrefix(l, "|+"):
			caption, said = wikiCell(l[2:]).text, i+n+1
		case strings.HasPrefix(l, "|-"):
			all = append(all, drawn{})
		case strings.HasPrefix(l, "|"), strings.HasPrefix(l, "!"):
			if len(all) == 0 {
				all = append(all, drawn{})
			}
			d := &all[len(all)-1]
			if d.line == 0 {
				d.line = i + n + 1
			}
			d.cells = append(d.cells, wikiCells(l[1:], l[0] == '!')...)
		case l != "" && len(all) > 0 && len(all[len(all)-1].cells) > 0: // a cell goes on
			c := &all[len(all)-1].cells[len(all[len(all)-1].cells)-1]
			c.text += " " + strings.TrimLeft(l, "*#:; ")
		}
	}
	t.spent += n
	return nil, 0
}

func wikiMarks() marks { return marks{words: []string{"'''''", "'''", "''"}} }

// wikiCells parts the cells of one line, at || and, between headings, at !!.
func wikiCells(s string, head bool) (all []drawnCell) {
	depth, from := 0, 0
	add := func(text string) {
		c := wikiCell(text)
		c.head = head
		all = append(all, c)
	}
	for k := 0; k+1 < len(s); k++ {
		switch two := s[k : k+2]; {
		case two == "[[" || two == "{{":
			depth++
			k++
		case (two == "]]" || two == "}}") && depth > 0:
			depth--
			k++
		case depth == 0 && (two == "||" || two == "!!" && head):
			add(s[from:k])
			from = k + 2
			k++
		}
	}
	add(s[from:])
	return all
}

// wikiCell takes what is said of a cell before a single bar off it.
func wikiCell(s string) (c drawnCell) {
	c.text = s
	if bar := strings.IndexByte(s, '|'); bar > 0 {
		front := strings.TrimSpace(s[:bar])
		name, _, said := strings.Cut(front, "=")
		if said && !strings.Contains(front, "[[") && !strings.Contains(front, "{{") && strings.Trim(strings.TrimSpace(name),
			"abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ-") == "" {
			return drawnCell{text: s[bar+1:], cols: span(front, "colspan"), rows: span(front, "rowspan")}
		}
		if front == "nowrap" {
			c.text = s[bar+1:]
		}
	}
	return c
}
