package comment

import "strings"

// A wire list often stands in the comments of a program, with the sign of a comment before each of its lines. The sign is no
// content of the list.
//
//	// - RELAY IN1 -> HUB D4        #  Pin | Use             /*
//	// - RELAY IN2 -> HUB D5        # -----|------            *  1 | Lamp
//	                                #   4  | Bell            */

// withoutComments takes the signs of comments off some lines and leaves every other line as it is. program reports for each
// line whether no comment holds it; all of it is nil where the text has no comment of two lines or more.
func withoutComments(lines []string) (plain []string, program []bool) {
	var marks []commentRun
	last := len(lines) - 1 // that ends a comment
	for last >= 0 && !strings.Contains(lines[last], "*/") {
		last--
	}
	for i := 0; i < len(lines); {
		run := commentAt(lines, i, i < last)
		if run.n == 0 {
			i++
			continue
		}
		marks = append(marks, run)
		i += run.n
	}
	if marks == nil {
		return lines, nil
	}
	marks = append(marks, alone(lines, marks)...)
	plain, program = make([]string, len(lines)), make([]bool, len(lines))
	for i, l := range lines {
		plain[i], program[i] = l, strings.TrimSpace(l) != ""
	}
	for _, run := range marks {
		for i := run.at; i < run.at+run.n; i++ {
			plain[i], program[i] = run.strip(lines[i]), false
		}
	}
	return plain, program
}

// alone are the lines between some runs, where all of them have the sign of a run before them: a remark of one line stands among longer
// ones, and no program does.
func alone(lines []string, marks []commentRun) (all []commentRun) {
	sign, taken := "", make([]bool, len(lines))
	for _, run := range marks {
		sign = run.sign
		for i := range run.n {
			taken[run.at+i] = true
		}
	}
	for i, l := range lines {
		if l = strings.TrimSpace(l); l == "" || taken[i] {
			continue
		}
		if rest, ok := strings.CutPrefix(l, sign); sign == "" || !ok || rest != "" && rest[0] != ' ' && rest[0] != '\t' {
			return nil
		}
		all = append(all, commentRun{at: i, n: 1, sign: sign})
	}
	return all
}

// commentRun is some lines that are a comment: each behind one sign, or all of them between two.
type commentRun struct {
	at, n  int
	sign   string // "" of lines between /* and */
	starry bool   // each of these lines has a star before it
}

// strip takes the signs off one line of the run.
func (run commentRun) strip(line string) string {
	trimmed := strings.TrimLeft(line, " \t")
	if run.sign != "" {
		return strings.TrimPrefix(trimmed, run.sign)
	}
	line, _, _ = strings.Cut(line, "*/")
	line = strings.Replace(line, docMark, "", 1)
	if trimmed = strings.TrimLeft(line, " \t"); strings.HasPrefix(trimmed, "/*") {
		return strings.TrimLeft(trimmed[1:], "*!")
	}
	if run.starry {
		return strings.TrimPrefix(trimmed, "*")
	}
	return line
}

// commentAt is the comment that begins at a line; its n is 0 where none does. A sign that other lists use, too, must stand
// before three lines. closes reports whether some line below ends a comment.
func commentAt(lines []string, i int, closes bool) commentRun {
	trimmed := strings.TrimSpace(lines[i])
	if strings.HasPrefix(trimmed, "/*") && closes {
		return blockComment(lines, i)
	}
	if rest, ok := strings.CutPrefix(trimmed, docMark); ok && !strings.ContainsAny(rest, "\",;\t") {
		return docComment(lines, i)
	}
	for _, s := range []struct {
		sign  string
		least int
	}{{"///", 2}, {"//!", 2}, {"//", 2}, {";;;", 3}, {";;", 3}, {"--", 3}, {"#", 3}, {";", 3}, {"%", 3}} {
		n, filled := 0, 0
		for i+n < len(lines) {
			rest, ok := strings.CutPrefix(strings.TrimSpace(lines[i+n]), s.sign)
			if !ok || rest != "" && rest[0] != ' ' && rest[0] != '\t' || s.sign == ";" && strings.Contains(rest, ";") {
				break
			}
			if n++; rest != "" {
				filled++
			}
		}
		if filled >= s.least {
			return commentRun{at: i, n: n, sign: s.sign}
		}
	}
	return commentRun{}
}

// docMark opens and closes a text of many lines that documents a program.
const docMark = "\"\"\""

// docComment is the text between two such marks that begins at a line.
func docComment(lines []string, i int) commentRun {
	const most = 400 // lines that are looked at (no source)
	for k, l := range lines[i+1 : min(len(lines), i+most)] {
		if l = strings.TrimSpace(l); strings.HasSuffix(l, docMark) && !strings.Contains(strings.TrimSuffix(l, docMark), "\"") {
			return commentRun{at: i, n: k + 2}
		}
	}
	return commentRun{}
}

// blockComment is the comment between /* and */ that begins at a line.
func blockComment(lines []string, i int) commentRun {
	run := commentRun{at: i, starry: true}
	for k, l := range lines[i:] {
		trimmed := strings.TrimSpace(l)
		if k > 0 && trimmed != "" && !strings.HasPrefix(trimmed, "*") {
			run.starry = false
		}
		if strings.Contains(l, "*/") {
			if run.n = k + 1; run.n < 2 {
				run.n = 0
			}
			return run
		}
	}
	return commentRun{}
}

// Source makes the comments of a program a text without their signs, its lines where they stood; ok is false where the text
// is no program. lines is how many lines of program are left out.
func Source(text string) (comments string, lines int, ok bool) {
	if !hasCommentSign(text) {
		return text, 0, false
	}
	all := strings.Split(text, "\n")
	plain, program := withoutComments(all)
	if program == nil {
		return text, 0, false
	}
	code, plainly, remarks, cells := 0, false, 0, 0
	for i, is := range program {
		if !is {
			if strings.TrimSpace(plain[i]) != "" {
				remarks++
			}
			continue
		}
		lines++
		switch {
		case isCode(plain[i]):
			code, plainly = code+1, true
		case setsSomething(plain[i]):
			code++ // and a list may say "1 = red"
		case strings.Count(plain[i], ",")+strings.Count(plain[i], ";")+strings.Count(plain[i], "\t")+strings.Count(plain[i], "|") > 1:
			cells++
		}
		plain[i] = ""
	}
	script := cells == 0 && (strings.HasPrefix(text, "#!") || areSettings(all, program))
	if lines > 0 && !script && (!plainly || 3*code < lines && (cells > 0 || remarks < lines)) {
		return text, 0, false // a list of another kind, with remarks
	}
	setIn(all, plain, program)
	return strings.Join(plain, "\n"), lines, true
}

// hasCommentSign reports whether a line of a text begins as a comment does.
func hasCommentSign(text string) bool {
	for line := range strings.SplitSeq(text, "\n") {
		trimmed := strings.TrimLeft(line, " \t")
		for _, sign := range []string{"//", "/*", "--", "#", ";", "%", docMark} {
			if strings.HasPrefix(trimmed, sign) {
				return true
			}
		}
	}
	return false
}

// isCode reports whether a line is written as programs alone are: it ends with a sign of theirs, or takes something in.
func isCode(line string) bool {
	line = strings.TrimSpace(line)
	if i := strings.Index(line, "//"); i > 0 {
		line = strings.TrimSpace(line[:i])
	}
	if line == "" {
		return false
	}
	if strings.IndexByte("{})", line[len(line)-1]) >= 0 || strings.HasSuffix(line, ";") && strings.Count(line, ";") == 1 {
		return true
	}
	for _, lead := range []string{"#include", "#define", "import ", "from ", "package ", "use ", "using ", "end ", "def ", "fn ", "func ",
		"class ", "const ", "var ", "let ", "return "} {
		if strings.HasPrefix(line, lead) {
			return true
		}
	}
	return strings.Contains(line, " := ") || setsMember(line)
}

// setsMember reports whether a line sets a name to a part of something, "spi = board.SPI0", or to what a call gives.
func setsMember(line string) bool {
	name, of, ok := strings.Cut(line, " = ")
	end := strings.IndexAny(of, ".(")
	return ok && len(name) > 1 && isIdentifier(name) && end > 0 && isIdentifier(of[:end])
}

// isIdentifier reports whether a text is written as the names of programs are: letters, figures and low lines, no figure first.
func isIdentifier(text string) bool {
	const letters = "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ_"
	return strings.Trim(text, letters+"0123456789") == "" && text != "" && strings.IndexByte(letters, text[0]) >= 0
}

// setsSomething reports whether a line sets something to a value.
func setsSomething(line string) bool { return strings.Contains(line, " = ") }

// InFences takes the signs of comments off the lines between two fences of Markdown.
func InFences(text string) string {
	if !strings.Contains(text, "```") && !strings.Contains(text, "~~~") {
		return text
	}
	lines := strings.Split(text, "\n")
	open := -1
	for i, l := range lines {
		if t := strings.TrimSpace(l); !strings.HasPrefix(t, "```") && !strings.HasPrefix(t, "~~~") {
			continue
		}
		if open < 0 {
			open = i
			continue
		}
		plain, program := withoutComments(lines[open+1 : i])
		for k := range program {
			lines[open+1+k] = plain[k]
		}
		open = -1
	}
	return strings.Join(lines, "\n")
}
