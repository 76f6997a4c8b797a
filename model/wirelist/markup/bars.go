package markup

import (
	"slices"
	"strings"
)

// Tables whose rows are lines with bars, in languages that have other signs for headings than Markdown.
//
//	^ Pin ^ Lamp  ^      ||Pin||Lamp||      |_. Pin |_. Lamp |      |= Pin |= Lamp      | Pin | Lamp |
//	| 1   | plus  |      |1|plus|           | 1 |\2. plus |         | 1    | plus       |-----+------|
//	| 2   | :::   |      ||2||minus||       | 2 |/2. minus |        | 2    | minus      | 1   | plus |

func barred(t *reader, i int) (rows []Row, n int) {
	if !startsBarred(t.lines, i) {
		return nil, 0
	}
	var all []drawn
	rules, outline := []int(nil), false // how many rows stand above each rule
	for ; i+n < len(t.lines); n++ {
		l := strings.TrimSpace(t.lines[i+n])
		if l == "" || strings.IndexByte("|^", l[0]) < 0 || strings.HasPrefix(l, "|==") || n > 0 && strings.HasPrefix(l, "{|") {
			break
		}
		if strings.Trim(l, "|-+: ") == "" && strings.Contains(l, "--") {
			rules, outline = append(rules, len(all)), outline || strings.Contains(l, "+")
			continue
		}
		d := drawn{line: i + n + 1, cells: barredCells(l)}
		if isAlignment(d.cells) {
			continue
		}
		all = append(all, d)
	}
	if outline {
		heads := slices.DeleteFunc(rules, func(r int) bool { return r == 0 || r == len(all) })
		if len(heads) > 0 && (len(heads) == 1 || heads[0] < 3) {
			for k := range all[:heads[0]] {
				all[k].head = true
			}
			overNext(all[:heads[0]])
		}
	}
	over(all)
	if !outline {
		doubled(all, t.lines)
	}
	if len(all) < 2 || len(all[0].cells) < 2 {
		return nil, 0
	}
	return spread(all, "", 0), n
}

// doubled takes two bars before each cell for the sign of headings only where other rows of the table have one: else a language has them
// in every row, and an equality sign before its headings.
func doubled(all []drawn, lines []string) {
	two, signs := 0, false
	for _, d := range all {
		l := strings.TrimSpace(lines[d.line-1])
		if strings.HasPrefix(l, "||") {
			two++
		}
		signs = signs || strings.HasPrefix(l, "||=")
	}
	if two < len(all) {
		return
	}
	for _, d := range all {
		for c := range d.cells {
			d.cells[c].head = signs && strings.HasPrefix(strings.TrimSpace(lines[d.line-1]), "||=")
		}
	}
}

// startsBarred reports whether a line opens such a table: its cells are headings by the signs of a language, or a rule with crosses stands
// below it.
func startsBarred(lines []string, i int) bool {
	l := strings.TrimSpace(lines[i])
	switch {
	case len(l) < 5 || strings.HasPrefix(l, "|=="):
		return false
	case l[0] == '^':
		return strings.Count(l, "^") > 2 || strings.Count(l, "^") == 2 && strings.HasSuffix(l, "|")
	case strings.HasPrefix(l, "||"):
		return strings.HasSuffix(l, "||") && strings.Count(l, "||") > 2
	case strings.HasPrefix(l, "|_.") || strings.HasPrefix(l, "|="):
		return strings.Count(l, "|") > 1
	case l[0] == '|' && strings.Trim(l, "|-+ ") == "" && strings.Contains(l, "-+-"):
		return true
	case l[0] == '|':
		for k := i + 1; k < min(len(lines), i+4); k++ {
			below := strings.TrimSpace(lines[k])
			if !strings.HasPrefix(below, "|") {
				return false
			}
			if strings.Trim(below, "|-+ ") == "" && strings.Contains(below, "-+-") {
				return true
			}
		}
	}
	return false
}

// barredCells parts a row at its bars and reads the signs before each cell.
func barredCells(l string) (all []drawnCell) {
	sign, wide := l[0], 1
	if strings.HasPrefix(l, "||") && strings.HasSuffix(l, "||") {
		wide = 2 // each row with two bars, as headings and as cells
	}
	twice := wide == 2
	rest := l[wide:]
	for rest != "" {
		end, next := barAt(rest, twice)
		c := barredCell(rest[:end], sign == '^' || twice && !strings.HasPrefix(rest, "="))
		if twice && strings.HasPrefix(rest, "=") {
			c = barredCell(strings.Trim(strings.TrimSpace(rest[:end]), "="), true)
		}
		all = append(all, c)
		if end == len(rest) {
			break
		}
		sign, rest = rest[end], rest[end+next:]
	}
	return all
}

// barAt is where the next bar of a row stands, outside links, and how wide it is.
func barAt(s string, twice bool) (at, wide int) {
	depth := 0
	for k := range len(s) {
		switch {
		case strings.HasPrefix(s[k:], "[["):
			depth++
		case strings.HasPrefix(s[k:], "]]") && depth > 0:
			depth--
		case depth > 0 || k > 0 && s[k-1] == '\\':
		case twice && strings.HasPrefix(s[k:], "||"):
			return k, 2
		case !twice && (s[k] == '|' || s[k] == '^' && (k+1 == len(s) || s[k+1] == ' ' || s[k+1] == '^')):
			return k, 1
		}
	}
	return len(s), 0
}

// barredCell reads the signs at the front of a cell: "_." and "=" of a heading, "\2." and "/2." of one over several columns or rows,
// "<-2>" and "<|2>" the same.
func barredCell(s string, head bool) drawnCell {
	c := drawnCell{head: head}
	s = strings.TrimSpace(s)
	for strings.HasPrefix(s, "<") {
		in, rest, ok := strings.Cut(s[1:], ">")
		switch {
		case ok && strings.HasPrefix(in, "-") && number(in[1:]) > 0:
			c.cols = number(in[1:])
		case ok && strings.HasPrefix(in, "|") && number(in[1:]) > 0:
			c.rows = number(in[1:])
		default:
			ok = false
		}
		if !ok {
			break
		}
		s = strings.TrimSpace(rest)
	}
	if lead, rest, ok := strings.Cut(s, "."); ok && len(lead) < 9 && lead != "" && strings.IndexByte(`_\/<>=^~`, lead[0]) >= 0 &&
		strings.Trim(lead, `_\/<>=^~0123456789`) == "" && (rest == "" || rest[0] == ' ') {
		c.head = c.head || strings.Contains(lead, "_")
		c.cols = numberBehind(lead, '\\')
		c.rows = numberBehind(lead, '/')
		s = rest
	} else if strings.HasPrefix(s, "=") && len(s) > 1 && !strings.HasSuffix(s, "=") {
		c.head, s = true, s[1:]
	}
	c.text = barMarks().plain(strings.ReplaceAll(withoutBraces(s), `\|`, "|"))
	return c
}

func barMarks() marks {
	return marks{words: []string{"**", "'''", "''", "*", "`", "__"}, whole: []string{"//", "_", "=", "~", "@"}}
}

// withoutBraces takes "{color:red}" and its like off a text.
func withoutBraces(s string) string {
	for {
		open := strings.IndexByte(s, '{')
		if open < 0 {
			return s
		}
		in, back, ok := strings.Cut(s[open+1:], "}")
		word, _, said := strings.Cut(in, ":")
		if !ok || in == "" || strings.Trim(word, "{abcdefghijklmnopqrstuvwxyz") != "" {
			return s
		}
		if strings.HasPrefix(in, "{") || !said && word != "color" && word != "quote" && word != "noformat" {
			return strings.NewReplacer("{{", "", "}}", "").Replace(s)
		}
		s = s[:open] + back
	}
}

// numberBehind is the number behind a sign, 0 where none is.
func numberBehind(s string, sign byte) int {
	i := strings.IndexByte(s, sign)
	if i < 0 {
		return 0
	}
	end := i + 1
	for end < len(s) && isFigure(s[end]) {
		end++
	}
	return number(s[i+1 : end])
}

// isAlignment reports whether a row of an outline says alone how its columns are set: "<l>", "<r10>".
func isAlignment(cells []drawnCell) bool {
	some := false
	for _, c := range cells {
		in, ok := strings.CutPrefix(c.text, "<")
		in, closed := strings.CutSuffix(in, ">")
		if c.text != "" && c.text != "/" && (!ok || !closed && in != "" || strings.Trim(in, "lrc0123456789") != "") {
			return false
		}
		some = some || ok
	}
	return some
}

// over takes the cells that go on from the row above, ":::", and those of two bars together, for what they are.
func over(all []drawn) {
	for i := 1; i < len(all); i++ {
		for c := range all[i].cells {
			if all[i].cells[c].text == ":::" && c < len(all[i-1].cells) {
				all[i].cells[c].text = all[i-1].cells[c].text
			}
		}
	}
}
