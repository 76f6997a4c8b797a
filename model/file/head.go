package file

import (
	"strings"
	"unicode/utf8"
)

// headOf is the comment block at the head of a text: the lines before the first
// that is neither blank nor a comment, blank lines after it included, so that they
// stay too. "" where no comment stands there.
func headOf(text string) string {
	end, _ := headEnd(text)
	return tidyHead(text[:end])
}

// headEnd is the byte at which the head ends, and how many lines it has.
func headEnd(text string) (end, lines int) {
	for line := range strings.Lines(text) {
		if t := strings.Trim(line, " \t\r\n"); t != "" && t[0] != '#' {
			break
		}
		end += len(line)
		lines++
	}
	return end, lines
}

// tidyHead makes comment lines of any text: no control characters, "#" before a
// line that lacks it, no blanks at the end of a line, no blank line at the start.
func tidyHead(text string) string {
	text = strings.ToValidUTF8(text, string(utf8.RuneError))
	var b strings.Builder
	for line := range strings.Lines(text) {
		line = strings.TrimRight(strings.Map(printing, line), " \t")
		switch t := strings.TrimLeft(line, " \t"); {
		case t == "" && b.Len() == 0:
			continue
		case t != "" && t[0] != '#':
			b.WriteString("# ")
		}
		b.WriteString(line + "\n")
	}
	return b.String()
}

// printing drops what TOML forbids in a comment.
func printing(r rune) rune {
	if r < 0x20 && r != '\t' || r == 0x7f {
		return -1
	}
	return r
}
