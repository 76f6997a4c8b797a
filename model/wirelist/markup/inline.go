package markup

import (
	"html"
	"strings"
	"unicode"
	"unicode/utf8"
)

// marks are the signs of a language for words that are bold, slanted or code.
type marks struct {
	words []string // round a word or several, anywhere in a text
	whole []string // round a whole cell alone
	out   string   // round a whole cell that is struck out
}

// plain takes the signs of a language off a text.
func (m marks) plain(s string) string {
	if s = strings.Join(strings.Fields(s), " "); s == "" || len(s) > mostCell {
		return s
	}
	if strings.IndexByte(s, '<') >= 0 || strings.IndexByte(s, '&') >= 0 {
		s = Shown(s)
	}
	s = withoutLinks(s)
	if in, ok := within(s, m.out); ok && m.out != "" {
		return "~~" + in + "~~"
	}
	for _, mark := range m.whole {
		if in, ok := within(s, mark); ok {
			s = in
		}
	}
	for _, mark := range m.words {
		s = unmarked(s, mark)
	}
	return strings.Join(strings.Fields(s), " ")
}

// within is what stands between a mark and the same at the end, where that is all of a text.
func within(s, mark string) (in string, ok bool) {
	if len(s) < 2*len(mark)+1 || mark == "" || !strings.HasPrefix(s, mark) || !strings.HasSuffix(s, mark) {
		return s, false
	}
	in = s[len(mark) : len(s)-len(mark)]
	return in, !strings.Contains(in, mark) && in == strings.TrimSpace(in) && strings.IndexFunc(in, isWordRune) >= 0
}

func isWordRune(r rune) bool { return unicode.IsLetter(r) || unicode.IsDigit(r) }

// unmarked takes a mark off that opens before a word and closes behind one: the star of a name, "ENC_A*", is none.
func unmarked(s, mark string) string {
	for from := 0; ; {
		i := strings.Index(s[from:], mark)
		if i < 0 {
			return s
		}
		open := from + i
		back := strings.Index(s[open+len(mark):], mark)
		if back < 0 {
			return s
		}
		shut := open + len(mark) + back
		in := s[open+len(mark) : shut]
		before, _ := utf8.DecodeLastRuneInString(s[:open])
		after, _ := utf8.DecodeRuneInString(s[shut+len(mark):])
		if in == "" || in != strings.TrimSpace(in) || open > 0 && isWordRune(before) || shut+len(mark) < len(s) && isWordRune(after) ||
			strings.IndexFunc(in, isWordRune) < 0 {
			from = open + len(mark)
			continue
		}
		s, from = s[:open]+in+s[shut+len(mark):], open+len(in)
	}
}

// withoutLinks leaves of each link what is shown: "[[Box|the box]]" and "[[Box][the box]]" are "the box", a picture is nothing.
func withoutLinks(s string) string {
	for from := 0; ; {
		open := strings.Index(s[from:], "[[")
		if open < 0 {
			return s
		}
		open += from
		shut := strings.Index(s[open:], "]]")
		if shut < 0 {
			return s
		}
		in := s[open+2 : open+shut]
		if kind, _, ok := strings.Cut(in, ":"); ok && isPicture(kind) {
			in = ""
		} else if _, text, ok := strings.Cut(in, "]["); ok {
			in = text
		} else if i := strings.LastIndexByte(in, '|'); i >= 0 && strings.TrimSpace(in[i+1:]) != "" {
			in = in[i+1:]
		}
		s, from = s[:open]+in+s[open+shut+2:], open+len(in)
	}
}

// isPicture reports whether the word before a link says that it is a picture, in some languages.
func isPicture(kind string) bool {
	switch strings.ToLower(strings.TrimSpace(kind)) {
	case "file", "image", "datei", "bild", "fichier", "archivo", "immagine", "bestand", "plik":
		return true
	}
	return false
}

// Shown takes the tags of HTML off a text and reads its letters that are written by name or number. A text set small behind a break is a
// remark and stands in brackets; a letter set high or low stays with its word, "mm<sup>2</sup>". A "<" that opens no tag stays.
func Shown(s string) string {
	var b strings.Builder
	var small []int // where the text of each open small part begins; −1 of one that stays with its word
	struck := 0
	for s != "" {
		i := strings.IndexByte(s, '<')
		if i < 0 {
			b.WriteString(s)
			break
		}
		b.WriteString(s[:i])
		t := tagAt(s[i:])
		if t.len == 0 {
			b.WriteByte('<')
			s = s[i+1:]
			continue
		}
		s = s[i+t.len:]
		switch {
		case (t.name == "sub" || t.name == "sup" || t.name == "small") && b.Len() < mostCell:
			if !t.close {
				at := b.Len()
				if text := strings.TrimRight(b.String(), "\n"); at == 0 || len(text) == at && text[at-1] != ' ' {
					at = -1
				}
				small = append(small, at)
			} else if n := len(small); n > 0 {
				if at := small[n-1]; at >= 0 {
					inBrackets(&b, at)
				}
				small = small[:n-1]
			}
		case t.name == "s" || t.name == "del" || t.name == "strike":
			if struck++; !t.close || struck > 1 {
				b.WriteString("~~")
			}
		case t.name == "br":
			b.WriteByte('\n')
		case breaksText[t.name]:
			b.WriteByte(' ')
		}
	}
	return strings.Join(strings.Fields(html.UnescapeString(b.String())), " ")
}

// inBrackets puts what a text has from a place on between brackets, where it says something.
func inBrackets(b *strings.Builder, at int) {
	text := b.String()
	in := strings.TrimSpace(text[at:])
	b.Reset()
	if b.WriteString(text[:at]); in != "" {
		if strings.TrimSpace(text[:at]) != "" && !strings.HasPrefix(in, "(") {
			in = "(" + in + ")"
		}
		b.WriteString(in)
	}
}
