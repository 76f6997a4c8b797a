package pieces

import (
	"strings"

	"contralay/model/wirelist/huekey"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/words"
)

// line is what one line says; "" where it does not say it.
type line struct {
	pin                  string   // the cavity that it begins with; its connector stands above
	ends                 []string // one or two; where it begins with a cavity, none or the far one
	colour, size, signal string
	bare                 string // a number without a unit that may be the size
	code                 string // letters that stand alone and may be a short form of the colour
	notes                []string
	asides               []string // what stands in brackets and is no value
	pins                 int      // how many ends name a cavity with a word for it, or with a colon
}

// sure reports whether a line says what wire it is, or names a cavity beyond doubt. Behind a bare cavity a colour alone may be the name
// of a signal or what a lamp shows.
func (l *line) sure() bool {
	if l.pin != "" {
		return l.free() || l.values()
	}
	return l.free() || l.colour != "" || l.size != "" || l.pins > 0
}

// values reports whether a line says a colour or a size, and something more of the wire.
func (l *line) values() bool {
	n := len(nonEmpty([]string{l.colour, l.size, l.bare, l.signal})) + len(l.ends)
	return n > 1 && (l.colour != "" || l.size != "")
}

// free reports whether a line says that its cavity has no wire.
func (l *line) free() bool {
	return (l.pin != "" || l.pins == 1) && len(l.ends) < 2 && l.colour == "" && name.StateOf(l.signal) != name.Used
}

// reader reads lines; key is what short forms of colours mean, lang whose short forms count besides.
type reader struct {
	key  huekey.ColourKey
	lang string
}

// mostText is how many words the name of a wire has, beyond which a text is a sentence (no source).
const mostText = 5

// line reads a line; ok is false where some piece of it is not understood.
func (r reader) line(text string) (*line, bool) {
	l := &line{}
	l.pin, text = pinFront(text)
	all, ok := cut(text)
	if !ok || len(all) == 0 {
		return nil, false
	}
	for i, p := range all {
		if p.aside {
			l.aside(r, p.text)
			continue
		}
		w := l.withoutRemarks(strings.Fields(p.text))
		end, rest := pinned(w)
		if end != "" {
			rest = l.takeValues(r, rest)
		} else if w = l.takeValues(r, w); len(w) == 0 {
			if p.to {
				return nil, false
			}
			continue
		}
		switch {
		case end != "":
			l.pins++
		case p.to:
			end, rest = strings.Join(withoutArticle(w), " "), nil
			if len(w) > mostText {
				return nil, false
			}
		case i+1 < len(all) && all[i+1].to && len(l.ends) == 0 && l.signal == "" && len(w) <= mostText:
			end, rest = strings.Join(w, " "), nil
		}
		if end != "" {
			if len(l.ends) == 2 || l.pin != "" && len(l.ends) == 1 {
				return nil, false
			}
			l.ends = append(l.ends, end)
			if p.to && len(l.ends) == 1 && l.pin == "" {
				return nil, false // it goes there, and nothing says from where
			}
		}
		if len(rest) > mostText || end == "" && len(w) > mostText {
			return nil, false
		}
		if end == "" {
			rest = w
		}
		if end == "" && len(w) == 1 && l.code == "" && isCode(w[0]) {
			l.code = w[0]
			continue
		}
		if more, is := another(rest); is {
			l.ends[len(l.ends)-1] += " and " + more
			continue
		}
		if len(rest) > 0 {
			l.called(strings.Join(rest, " "))
		}
	}
	values := l.colour != "" || l.size != "" || l.bare != ""
	if l.pin != "" {
		return l, values || l.free() || len(l.ends) == 1 || l.signal != ""
	}
	return l, len(l.ends) == 2 || l.pins == 1 && (values || l.free())
}

// another is the second end of a place that is told as two, "inj 1 pin 2 and inj 2 pin 2".
func another(rest []string) (end string, ok bool) {
	if len(rest) < 2 || rest[0] != "and" && rest[0] != "&" && rest[0] != "+" {
		return "", false
	}
	end, behind := pinned(rest[1:])
	return end, end != "" && len(behind) == 0
}

// called takes a text as the name of the wire, where it has none, else as a remark.
func (l *line) called(text string) {
	if l.signal == "" && !isRemark(text) {
		l.signal = text
		return
	}
	l.notes = append(l.notes, text)
}

// withoutRemarks keeps what is said last of a wire and names nothing, "white 22 shielded", as a remark.
func (l *line) withoutRemarks(w []string) []string {
	for len(w) > 1 && isRemark(w[len(w)-1]) {
		l.notes = append(l.notes, w[len(w)-1])
		w = w[:len(w)-1]
	}
	return w
}

// isRemark reports whether a text says what is done with a wire, and does not name it.
func isRemark(text string) bool {
	first, _, _ := strings.Cut(strings.ToLower(text), " ")
	switch first {
	case "shielded", "screened", "unshielded", "twisted", "with", "see", "same", "check", "geschirmt", "verdrillt", "blindé", "torsadé":
		return true
	}
	return false
}

// aside takes what stands in brackets: values of the wire, else a remark.
func (l *line) aside(r reader, text string) {
	var rest []string
	for part := range strings.SplitSeq(text, ", ") {
		if w := l.takeValues(r, strings.Fields(part)); len(w) > 0 {
			rest = append(rest, part)
		}
	}
	if len(rest) > 0 {
		l.asides = append(l.asides, strings.Join(rest, ", "))
	}
}

// withoutArticle takes the word "the" off the front of some words.
func withoutArticle(w []string) []string {
	if len(w) > 1 && words.IsArticle(strings.ToLower(w[0])) && len(w[0]) > 1 {
		return w[1:]
	}
	return w
}
