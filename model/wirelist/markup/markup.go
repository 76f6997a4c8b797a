package markup

import "strings"

// Row is one row of a table, or a text that stands with it.
type Row struct {
	Line  int // of its first cell, from 1
	Cells []string
	First bool // a table begins here
	Head  bool // it is the headings, as the language says
	Prose bool // a text: Cells has it alone
	Level int  // of such a text that is a heading, from 1
}

// Table is what stands on some lines: a table, or several with the texts between them.
type Table struct {
	Lines int
	Rows  []Row
}

// Text is a text whose tables are found.
type Text struct {
	Lines  []string      // as Markdown has them; those of a table stay as they are
	Tables map[int]Table // by the line that each begins on, from 0
}

// Caption is the level of a text that heads one table, below every heading with its signs.
const Caption = 7

// A format finds the table that begins on a line: its rows, and how many lines it takes, 0 where none begins.
type format struct {
	sign string // that a text with such a table has
	line string // that the line has where one begins
	at   func(t *reader, i int) (rows []Row, n int)
}

// formats are those that are looked for on each line, in this order.
func formats() []format {
	return []format{
		{"{|", "{|", mediaWiki}, {"|===", "|===", asciiDoc}, {",===", ",===", asciiDoc}, {".. ", "::", directive}, {"+-", "+-", gridTable},
		{"+=", "+=", gridTable}, {"==", "==", simpleTable}, {"||", "||", barred}, {"|_.", "|_.", barred}, {"|=", "|=", barred},
		{"^ ", "^ ", barred}, {"-+-", "|", barred},
	}
}

// reader is the way through one text.
type reader struct {
	lines  []string
	plain  []string
	tables map[int]Table
	spent  int // the lines that were looked at for tables that do not end
}

// mostSpent is how often each line of a text may be looked at for a table that does not end (no source).
const mostSpent = 8

// Read finds the tables of a text; ok is false where it has none.
func Read(text string) (Text, bool) {
	given := text
	text = withoutBoxes(text)
	var all []format
	for _, f := range formats() {
		if strings.Contains(text, f.sign) {
			all = append(all, f)
		}
	}
	html := hasHTML(text)
	if len(all) == 0 && !html {
		return Text{}, false
	}
	r := &reader{lines: strings.Split(withoutUnseen(text), "\n"), plain: strings.Split(withoutUnseen(given), "\n"), tables: map[int]Table{}}
	kinds, fence := map[string]bool{}, false
	for i := 0; i < len(r.lines); i++ {
		if l := strings.TrimSpace(r.lines[i]); strings.HasPrefix(l, "```") || strings.HasPrefix(l, "~~~") && strings.Trim(l, "~") != "" {
			fence = !fence
		}
		if html && !fence {
			if n := r.html(i); n > 0 {
				i += n - 1
				continue
			}
		}
		for _, f := range all {
			if r.spent > mostSpent*len(r.lines) {
				break
			}
			if !strings.Contains(r.lines[i], f.line) {
				continue
			}
			if rows, n := f.at(r, i); n > 0 {
				r.tables[i], kinds[f.sign] = Table{n, rows}, true
				i += n - 1
				break
			}
		}
	}
	if len(r.tables) == 0 && !html {
		return Text{}, false
	}
	r.headings(kinds)
	return Text{r.plain, r.tables}, true
}

// headings writes the headings of the text as Markdown has them: "== Box ==" of a wiki, "== Box" of AsciiDoc, "h2. Box", and a text above a
// line of one sign.
func (r *reader) headings(kinds map[string]bool) {
	last := -1 // of the table above
	for i, line := range r.lines {
		if t, is := r.tables[i]; is {
			last = i + t.Lines - 1
		}
		if i <= last {
			continue
		}
		switch level, text := headed(line, kinds); {
		case level > 0:
			r.plain[i] = strings.Repeat("#", level) + " " + text
		case isUnderline(r.lines, i) && r.tables[i].Lines == 0:
			r.plain[i-1] = strings.Repeat("#", underlines(line)) + " " + strings.TrimSpace(r.lines[i-1])
			if r.plain[i] = ""; i > 1 && isRuleOf(r.lines[i-2], strings.TrimSpace(line)[0]) {
				r.plain[i-2] = ""
			}
		}
	}
}

// headed is the level and the text of a heading that its own signs show; 0 where a line is none.
func headed(line string, kinds map[string]bool) (level int, text string) {
	wiki, ascii := kinds["{|"], kinds["|==="] || kinds[",==="]
	signs := line[:len(line)-len(strings.TrimLeft(line, "="))]
	rest := strings.TrimSpace(line[len(signs):])
	switch n := len(signs); {
	case n > 6 || rest == "":
	case n > 0 && strings.HasSuffix(rest, signs) && (wiki || kinds["||"] || kinds["^ "]):
		return n, strings.TrimSpace(strings.Trim(rest, "="))
	case n > 0 && ascii && strings.HasPrefix(line[n:], " "):
		return n, rest
	}
	if (kinds["||"] || kinds["|_."]) && len(line) > 4 && line[0] == 'h' && line[1] >= '1' && line[1] <= '6' && line[2:4] == ". " {
		return int(line[1] - '0'), strings.TrimSpace(line[4:])
	}
	return 0, ""
}

// isUnderline reports whether a line is the rule below a heading of reStructuredText, as long as the text above it; those of = and - alone
// are Markdown's, too, and stay.
func isUnderline(lines []string, i int) bool {
	if i == 0 || len(lines[i]) < 3 || strings.IndexByte("=-~^\"'*+#:.", lines[i][0]) < 0 || !isRuleOf(lines[i], lines[i][0]) {
		return false
	}
	above := strings.TrimSpace(lines[i-1])
	over := i > 1 && isRuleOf(lines[i-2], lines[i][0])
	if (lines[i][0] == '=' || lines[i][0] == '-') && !over || lines[i][0] == '#' || lines[i][0] == '.' {
		return false
	}
	return above != "" && len([]rune(above)) <= len(lines[i]) && (over || i == 1 || strings.TrimSpace(lines[i-2]) == "") &&
		strings.Trim(above, "=-~^\"'*+#:.|") != ""
}

// isRuleOf reports whether a line is one sign again and again.
func isRuleOf(line string, sign byte) bool {
	line = strings.TrimRight(line, " \t")
	return len(line) > 2 && strings.Trim(line, string(sign)) == ""
}

// underlines is the level of a heading by its rule. Which sign is above which is the text's own; = and - are used for the first two.
func underlines(rule string) int {
	switch rule[0] {
	case '=':
		return 1
	case '-':
		return 2
	}
	return 3
}
