package strokes

import (
	"strings"
	"unicode"
)

// stroke is where one stands in a line, in characters, and whether it is long enough to be nothing else.
type stroke struct {
	from, to int
	long     bool
}

// dashes are the signs of a stroke, arrows those of its ends.
const (
	dashes = "-=─━—–_~"
	arrows = "<>→←↔"
)

// longStroke is how many signs make a stroke that is no dash and no short arrow (no source).
const longStroke = 3

// strokesIn finds the strokes of a line. Blanks between its dashes belong to it, "- - - -", as arrows do, "--->---".
func strokesIn(line []rune) (all []stroke) {
	is := func(i int, set string) bool { return i >= 0 && i < len(line) && strings.ContainsRune(set, line[i]) }
	for i := 0; i < len(line); i++ {
		if !is(i, dashes+arrows) {
			continue
		}
		from, signs, lines := i, 0, 0
		for i < len(line) && (is(i, dashes+arrows) || line[i] == ' ' && is(i-1, dashes) && is(i+1, dashes+">") && signs > 0) {
			if line[i] != ' ' {
				signs++
			}
			if is(i, dashes) {
				lines++
			}
			i++
		}
		s := knotted(line, stroke{from, i, lines > 1 && (signs >= longStroke || is(from-1, ")]") && is(i, "(["))})
		if s = withoutSigns(line, s); s.long || isShort(line, s) {
			all = append(all, s)
		}
	}
	return all
}

// withoutSigns leaves a minus to the name beside a stroke, "LAMP- --- 3" and "DATA-(3)".
func withoutSigns(line []rune, s stroke) stroke {
	if at := strings.IndexRune(string(line[s.from:s.to]), ' '); at == 1 && s.from > 0 && line[s.from-1] != ' ' {
		s.from += 2
	}
	return s
}

// knotted takes the round ends of a stroke in, "o------o".
func knotted(line []rune, s stroke) stroke {
	const knots = "oO•●○*"
	if !s.long {
		return s
	}
	if s.from > 1 && strings.ContainsRune(knots, line[s.from-1]) && line[s.from-2] == ' ' {
		s.from--
	}
	if s.to+1 < len(line) && strings.ContainsRune(knots, line[s.to]) && line[s.to+1] == ' ' {
		s.to++
	}
	return s
}

// isShort reports whether a short stroke is one: "2 - 3" and "4 -> 1", and no dash within a word.
func isShort(line []rune, s stroke) bool {
	open := func(i int) bool {
		return i >= 0 && i < len(line) && (line[i] == ' ' || strings.ContainsRune("()[]", line[i]))
	}
	return open(s.from-1) && open(s.to)
}

// isDrawing reports whether a line draws something and says nothing: no word of two different letters is in it.
func isDrawing(line string) bool {
	if strings.TrimSpace(line) == "" {
		return false
	}
	for _, w := range strings.FieldsFunc(line, func(r rune) bool { return !unicode.IsLetter(r) }) {
		if r := []rune(w); strings.Trim(w, string(r[0])) != "" {
			return false
		}
	}
	return true
}

// partlyDrawn reports whether a line has a sign that drawings alone have.
func partlyDrawn(line string) bool {
	for _, sign := range []string{"--", "__", "==", "──", "|", "+-", "-+", "│"} {
		if strings.Contains(line, sign) {
			return true
		}
	}
	return false
}

// plain is a line without a dot of a list at its front, with a blank or more for each tab.
func plain(line string) string {
	const stop = 8 // characters from one stop of a tab to the next
	if strings.IndexByte(line, '\t') >= 0 {
		var b strings.Builder
		at := 0
		for _, r := range line {
			if r != '\t' {
				b.WriteRune(r)
				at++
				continue
			}
			n := stop - at%stop
			b.WriteString(strings.Repeat(" ", n))
			at += n
		}
		line = b.String()
	}
	line = strings.TrimRight(line, " \r")
	text := strings.TrimLeft(line, " ")
	for _, dot := range []string{"- ", "* ", "• ", "+ "} {
		if rest, ok := strings.CutPrefix(text, dot); ok && !strings.HasPrefix(rest, "-") {
			return line[:len(line)-len(text)] + "  " + rest
		}
	}
	return line
}
