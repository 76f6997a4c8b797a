package visible

import (
	"bytes"
	"fmt"
	"strings"
	"unicode"
	"unicode/utf8"
)

// The joiners of Unicode: zero width non-joiner and zero width joiner.
const (
	zwnj = '\u200C'
	zwj  = '\u200D'
)

// joinersBegin is the byte that both begin with; most texts have none.
const joinersBegin = 0xE2

// Command reports whether a character is a command. The marks of direction are those with the
// property Bidi_Control (Unicode 15, PropList.txt).
func Command(r rune) bool {
	switch {
	case r < 0x20, r >= 0x7F && r < 0xA0:
		return true
	case r < 0x061C:
		return false
	case r == 0x061C, r == 0x200E, r == 0x200F, r >= 0x202A && r <= 0x202E, r >= 0x2066 && r <= 0x2069:
		return true
	case r == 0x2028, r == 0x2029, r == 0x200B, r == 0x2060, r == 0xFEFF:
		return true
	}
	return false
}

// Find is the first command in a text.
func Find(s string) (r rune, found bool) {
	if k := strings.IndexFunc(s, Command); k >= 0 {
		r, _ = utf8.DecodeRuneInString(s[k:])
		return r, true
	}
	return 0, false
}

// joiner is the first joiner in a text; of one that is no id, the first that does not stand
// between letters or signs.
func joiner(s string, id bool) (r rune, found bool) {
	if strings.IndexByte(s, joinersBegin) < 0 || !strings.ContainsAny(s, string([]rune{zwnj, zwj})) {
		return 0, false
	}
	all := []rune(s)
	for k, r := range all {
		if (r == zwnj || r == zwj) && (id || !joins(all, k)) {
			return r, true
		}
	}
	return 0, false
}

// joins reports whether a joiner stands between two characters that it can join.
func joins(all []rune, k int) bool {
	return k > 0 && k < len(all)-1 && joined(all[k-1]) && joined(all[k+1])
}

func joined(r rune) bool {
	return unicode.IsLetter(r) || unicode.IsMark(r) || unicode.IsDigit(r) || unicode.Is(unicode.So, r) || unicode.Is(unicode.Sk, r)
}

// Kind names what a command or a joiner is, with its article.
func Kind(r rune) string {
	switch {
	case r == '\n' || r == '\r' || r == 0x85 || r == 0x2028 || r == 0x2029:
		return "a line break"
	case r == '\t':
		return "a tab"
	case r < 0x20 || r >= 0x7F && r < 0xA0:
		return "a control character"
	case r == zwj || r == zwnj:
		return "a joiner"
	case r == 0x200B || r == 0x2060 || r == 0xFEFF:
		return "a sign that takes no room"
	}
	return "a mark of writing direction"
}

// Fault says what a text of one line holds that it must not, and what is allowed; "" where
// nothing is wrong. An id must not hold joiners either.
func Fault(s string, id bool) (says, allowed string) {
	held := func(r rune) string { return fmt.Sprintf("holds %s (%U): %s", Kind(r), r, Quoted(short(s))) }
	if r, found := Find(s); found {
		return held(r), "one line of text, without control characters, marks of writing direction and signs that take no room"
	}
	r, found := joiner(s, id)
	switch {
	case found && id:
		return held(r), "an id without joiners, because two ids could look the same"
	case found:
		return held(r), "joiners between letters only"
	}
	return "", ""
}

// short cuts a text that would fill the screen.
func short(s string) string {
	const most = 40
	if r := []rune(s); len(r) > most {
		return string(r[:most]) + "…"
	}
	return s
}

// Sign is a command as it is shown; so is every other character that is to be.
func Sign(r rune) string {
	switch {
	case r < 0x20:
		return string(0x2400 + r) // the control pictures of Unicode
	case r == 0x7F:
		return "\u2421"
	case r >= 0x80 && r < 0xA0:
		return "\u241B" + string(r-0x40) // ISO 6429: escape and this letter mean the same
	}
	return fmt.Sprintf("<%U>", r)
}

// printing reports whether a text is all printing ASCII, which is shown as it is.
func printing(s string) bool {
	for i := range len(s) {
		if s[i] < ' ' || s[i] > '~' {
			return false
		}
	}
	return true
}

// shown writes every command as its sign, but those that keep keeps.
func shown(s string, keep func(rune) bool) string {
	if printing(s) {
		return s
	}
	var b strings.Builder
	b.Grow(len(s))
	for i := 0; i < len(s); {
		r, n := utf8.DecodeRuneInString(s[i:])
		switch {
		case r == utf8.RuneError && n == 1:
			fmt.Fprintf(&b, "<%02X>", s[i])
		case Command(r) && !keep(r):
			b.WriteString(Sign(r))
		default:
			b.WriteString(s[i : i+n])
		}
		i += n
	}
	return b.String()
}

// Line is a text on one line: every command in it is shown, line breaks too.
func Line(s string) string { return shown(s, func(rune) bool { return false }) }

// Lines is a text of some lines: every command in it is shown but the line feeds.
func Lines(s string) string { return shown(s, func(r rune) bool { return r == '\n' }) }

// breaks are what a note may hold: each is one blank on one line.
var breaks = strings.NewReplacer("\r\n", " ", "\n", " ", "\t", " ")

// Note is a note, which may hold line feeds and tabs, on one line: each is a blank.
func Note(s string) string { return Line(breaks.Replace(s)) }

// InNote is the first command in a note that is neither a line feed nor a tab.
func InNote(s string) (r rune, found bool) { return Find(breaks.Replace(s)) }

// Quoted is a text in quotation marks, for a message.
func Quoted(s string) string { return `"` + Line(s) + `"` }

// Plain is a text without commands: a line break or a tab within it is a blank, at its ends
// nothing.
func Plain(s string) string {
	s = strings.ReplaceAll(breaks.Replace(strings.Trim(s, "\r\n\t")), "\r", " ")
	return strings.Map(func(r rune) rune {
		if Command(r) {
			return -1
		}
		return r
	}, strings.ToValidUTF8(s, ""))
}

// Typed is what a person typed: Plain, with joiners where they join, in an id without.
func Typed(s string, id bool) string {
	s = Plain(s)
	for {
		r, found := joiner(s, id)
		if !found {
			return s
		}
		all := []rune(s)
		for k := range all {
			if all[k] == r && (id || !joins(all, k)) {
				s = string(append(all[:k:k], all[k+1:]...))
				break
			}
		}
	}
}

// JSON is an encoded JSON text in which every command stands as an escape of JSON; the text
// reads back as the same. Line feeds between its values stay.
func JSON(text []byte) []byte {
	if bytes.IndexFunc(text, func(r rune) bool { return r != '\n' && Command(r) }) < 0 {
		return text
	}
	var b bytes.Buffer
	for _, r := range string(text) {
		if r != '\n' && Command(r) { // none is above U+FFFF
			fmt.Fprintf(&b, `\u%04x`, r)
			continue
		}
		b.WriteRune(r)
	}
	return b.Bytes()
}
