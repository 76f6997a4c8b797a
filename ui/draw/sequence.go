package draw

import (
	"strings"
	"unicode/utf8"

	"github.com/charmbracelet/x/ansi"

	"contralay/model/visible"
)

// The sequences of a line: how many cells a text takes with them, how a line ends
// its colours, and how a text of somebody else is kept from bringing its own.

// reset ends every colour and weight (ECMA-48 8.3.117).
const reset = "\x1b[0m"

// escape begins every sequence.
const escape = '\x1b'

// Width is how many cells a line of text takes. Escape sequences take none; what is
// read as one character counts once; ambiguous characters count one.
//
// It is the one measure of the screen: lipgloss measures with the same library. A
// line that holds nothing but characters of one cell and colours is counted here
// (a line of a picture in a fifth of the time); every other goes to the library.
func Width(s string) int {
	cells := 0
	for i := 0; i < len(s); {
		c := s[i]
		switch {
		case c >= ' ' && c <= '~':
			cells++
			i++
		case c == escape:
			n := colourSequence(s[i:])
			if n == 0 {
				return ansi.StringWidth(s)
			}
			i += n
		case c < utf8.RuneSelf:
			return ansi.StringWidth(s)
		default:
			r, n := utf8.DecodeRuneInString(s[i:])
			if !oneCell(r) {
				return ansi.StringWidth(s)
			}
			cells++
			i += n
		}
	}
	return cells
}

// OneCell reports whether a character is known to take one cell on every terminal, whatever of
// its kind stands beside it.
func OneCell(r rune) bool { return r >= ' ' && r <= '~' || oneCell(r) }

// oneCell reports whether a character takes one cell whatever stands beside it, as
// long as that is such a character too: none of these joins with a neighbour.
func oneCell(r rune) bool {
	switch {
	case r >= 0x2500 && r <= 0x259F: // lines and blocks
	case r >= 0xA1 && r <= 0xFF && r != 0xAD: // Latin letters and signs, no soft hyphen
	case r >= 0x2010 && r <= 0x2027: // dashes, quotes, …
	case r >= 0x2190 && r <= 0x2193: // arrows
	case r == 0x2212, r == 0x232B, r == 0x25B8, r == 0x25CF, r == 0x25CB: // − ⌫ ▸ ● ○
	default:
		return false
	}
	return true
}

// colourSequence is the length of the colour sequence a text begins with; 0 where it
// begins with anything else.
func colourSequence(s string) int {
	if len(s) < 3 || s[0] != escape || s[1] != '[' {
		return 0
	}
	for i := 2; i < len(s); i++ {
		switch c := s[i]; {
		case c == 'm':
			return i + 1
		case (c < '0' || c > '9') && c != ';':
			return 0
		}
	}
	return 0
}

// Closed is a line that ends its colours, so that what stands to its right, and the
// rest of the terminal's line, does not take them on.
func Closed(s string) string {
	if strings.IndexByte(s, escape) < 0 || strings.HasSuffix(s, reset) {
		return s
	}
	return s + reset
}

// Spell writes a line in plain characters and keeps its colours: Plain between the
// colour sequences. Like Plain it may change the width, so it comes before Cut.
func Spell(s string) string {
	if strings.IndexByte(s, escape) < 0 {
		return Plain(s)
	}
	var b strings.Builder
	b.Grow(len(s))
	from := 0
	for i := 0; i < len(s); {
		n := colourSequence(s[i:])
		if n == 0 {
			i++
			continue
		}
		b.WriteString(Plain(s[from:i]))
		b.WriteString(s[i : i+n])
		i += n
		from = i
	}
	b.WriteString(Plain(s[from:]))
	return b.String()
}

// Clean makes the text of somebody else (the name of a file, a cell of a list, a note) safe to
// show on one line: line breaks and tabs become blanks, whatever else a terminal would obey or
// would turn the text round it is shown as a sign. A soft hyphen, which shows only where a line
// ends on it, is left out.
func Clean(s string) string {
	for i := range len(s) {
		if s[i] < ' ' || s[i] > '~' {
			return visible.Note(strings.ReplaceAll(s, softHyphen, ""))
		}
	}
	return s
}

const softHyphen = "\u00AD"

// Line makes a line exactly w cells wide and fit to stand beside others: cut or
// filled, its colours ended, nothing in it that moves the cursor.
func Line(s string, w int, ascii bool) string {
	if w <= 0 {
		return ""
	}
	s = Safe(s)
	if ascii {
		s = Spell(s)
	}
	s = Closed(s)
	n := Width(s)
	if n > w {
		s = Closed(Cut(s, w, ascii))
		n = Width(s)
	}
	return s + blanks(w-n)
}

// onlyColours reports whether no byte of a line moves the cursor.
func onlyColours(s string) bool {
	for i := 0; i < len(s); {
		switch c := s[i]; {
		case c == escape:
			n := colourSequence(s[i:])
			if n == 0 {
				return false
			}
			i += n
		case c < ' ' || c == 0x7F:
			return false
		case c < utf8.RuneSelf:
			i++
		default:
			r, n := utf8.DecodeRuneInString(s[i:])
			if r == utf8.RuneError && n == 1 || r == 0xAD || visible.Command(r) {
				return false
			}
			i += n
		}
	}
	return true
}

// Safe is a line with nothing in it that moves the cursor or commands the terminal: text and
// colours as they are, all else shown as signs. It may change the width.
func Safe(s string) string {
	if onlyColours(s) {
		return s
	}
	return cleanBetween(s)
}

// cleanBetween is Clean between the colour sequences.
func cleanBetween(s string) string {
	var b strings.Builder
	from := 0
	for i := 0; i < len(s); {
		n := colourSequence(s[i:])
		if n == 0 {
			i++
			continue
		}
		b.WriteString(Clean(s[from:i]))
		b.WriteString(s[i : i+n])
		i += n
		from = i
	}
	b.WriteString(Clean(s[from:]))
	return b.String()
}
