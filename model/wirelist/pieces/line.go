package pieces

import (
	"slices"
	"strings"

	"contralay/model/wirelist/huekey"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/point"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/words"
)

// line is what one line says; "" where it does not say it.
type line struct {
	id                   string   // its own, before its ends
	pin                  string   // the cavity that it begins with; its connector stands above
	ends                 []string // one or two; where it begins with a cavity, none or the far one
	colour, size, signal string
	bare                 string // a number without a unit that may be the size
	code                 string // letters that stand alone and may be a short form of the colour
	notes                []string
	asides               []string // what stands in brackets and is no value
	pins                 int      // how many ends name a cavity with a word for it, or with a colon
	order                bool     // words of it that name nothing were left out: the whole of it is to be kept
	onlyTo               bool     // it says where the wire goes, and a heading above from where
	more                 []*line  // further wires that the same line tells
}

// each yields a line and the further wires that it tells.
func (l *line) each(yield func(*line) bool) {
	if !yield(l) {
		return
	}
	for _, m := range l.more {
		if !yield(m) {
			return
		}
	}
}

// sure reports whether a line says what wire it is, or names a cavity beyond doubt. Behind a bare cavity a colour alone may be the name
// of a signal or what a lamp shows.
func (l *line) sure() bool {
	if l.pin != "" {
		return l.free() || l.values()
	}
	return l.free() || l.colour != "" || l.size != "" || l.pins > 0
}

// placed reports whether both ends are short, and one of them has a cavity behind it: a sentence is none.
func (l *line) placed() bool {
	const most = 3 // words (no source)
	n := 0
	for _, e := range l.ends {
		w := strings.Fields(e)
		if len(w) > most || strings.Contains(e, ". ") {
			return false
		}
		if len(w) > 1 && isCavity(w[len(w)-1]) {
			n++
		}
	}
	return n > 0
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
	key     huekey.ColourKey
	lang    string
	romance bool // "a" stands before the place where a wire goes
	counted bool // a bare number before a line is its cavity
}

// mostText is how many words the name of a wire has, beyond which a text is a sentence (no source).
const mostText = 5

// mostSentence is how many words stand behind an end, those that name nothing among them (no source).
const mostSentence = 6

// mostFree is how many words say that a cavity has no wire, "nothing in it" (no source).
const mostFree = 3

// mostRemark is how many words a remark behind both ends has (no source).
const mostRemark = 12

// line reads a line; ok is false where some piece of it is not understood.
func (r reader) line(text string) (*line, bool) {
	pin, rest := pinFront(text)
	if first, behind := firstWord(text); pin == "" && r.counted && name.IsCavity(first) && first[0] <= '9' && !countsWays(text) {
		pin, rest = first, behind
	}
	if pin == "" {
		id, rest := idFront(text)
		l, ok := r.behind(&line{id: id}, rest)
		return l, ok && len(l.ends) > 0
	}
	if rest != "" && strings.Trim(rest, "-–—. \t") == "" {
		return &line{pin: pin, signal: "-"}, true
	}
	if l, ok := r.behind(&line{pin: pin}, rest); ok {
		return l, ok
	}
	l, ok := r.behind(&line{id: pin}, rest) // "1. ECU pin 4 to TPS pin 2"
	return l, ok && len(l.ends) == 2 && l.pins > 0
}

// behind reads what stands behind the cavity or the id that a line begins with.
func (r reader) behind(l *line, text string) (*line, bool) {
	all, ok := r.cut(text)
	if !ok || len(all) == 0 {
		return l, false
	}
	for i, p := range all {
		if p.aside {
			l.aside(r, p.text)
			continue
		}
		if !l.piece(r, p, i, all) {
			return l, false
		}
	}
	values := l.colour != "" || l.size != "" || l.bare != ""
	if l.pin != "" {
		if !values && l.free() && len(strings.Fields(l.signal)) > mostFree {
			return l, false // "pins 3 and 4 are free"
		}
		return l, values || len(l.ends) == 1 || l.signal != ""
	}
	if l.onlyTo && len(l.ends) == 1 {
		return l, values
	}
	return l, len(l.ends) == 2 && !l.onlyTo && (l.sure() || l.placed()) || len(l.ends) == 1 && (l.pins == 1 && values || l.free())
}

// piece reads one piece; ok is false where it is not understood.
func (l *line) piece(r reader, p piece, i int, all []piece) bool {
	w := strings.Fields(p.text)
	if p.to || p.from {
		w = withoutArticle(w)
	}
	w = l.withoutRemarks(w)
	if l.pinOfEnd(w) {
		return true
	}
	end, rest := pinned(w)
	if end != "" {
		if len(rest) > mostSentence {
			return false
		}
		bare := withoutFiller(rest)
		l.order = l.order || len(bare) < len(rest)
		rest = l.takeValues(r, l.withoutRemarks(bare))
	} else {
		if isOrder(w) {
			w, l.order = withoutFiller(w), true
		}
		if p.to && isLamp(w) {
			// "piloto verde", a green lamp
		} else if w = l.takeValues(r, w); len(w) == 0 {
			return !p.to
		}
	}
	switch {
	case end != "":
		l.pins++
	case p.to || p.from:
		if end, rest = strings.Join(w, " "), nil; len(w) > mostText || strings.Trim(w[0], "0123456789") == "" && len(w) > 1 && p.to {
			return false
		}
	case beforeTo(all, i) && l.pin == "" && len(l.ends) == 0 && len(w) <= mostText:
		end, rest = strings.Join(w, " "), nil
	default:
		if end, rest = freeEnd(w); end == "" || len(l.ends) > 0 || l.pin != "" {
			end, rest = "", w
		} else {
			l.pins++
		}
	}
	return l.keep(end, rest, p.to)
}

// keep keeps an end and the words behind it; ok is false where there are too many of either.
func (l *line) keep(end string, rest []string, to bool) (ok bool) {
	if end != "" {
		if slices.ContainsFunc(strings.Fields(end), isVerb) || len(l.ends) == 2 || l.pin != "" && len(l.ends) == 1 {
			return false
		}
		l.ends = append(l.ends, point.WithPole(end))
		l.onlyTo = to && len(l.ends) == 1 && l.pin == ""
	}
	if end == "" && len(l.ends) == 2 && len(rest) > mostText && len(rest) <= mostRemark {
		l.notes = append(l.notes, strings.Join(rest, " "))
		return true
	}
	if len(rest) > mostText || slices.ContainsFunc(rest, isVerb) {
		return false
	}
	if end == "" && len(rest) == 1 && l.code == "" && isCode(rest[0]) {
		l.code = rest[0]
		return true
	}
	if more, is := another(rest); is && len(l.ends) > 0 {
		l.ends[len(l.ends)-1] += " and " + more
		return true
	}
	if len(rest) > 0 {
		l.called(strings.Join(rest, " "))
	}
	return true
}

// isVerb reports whether a word makes a sentence of those beside it.
func isVerb(w string) bool {
	switch strings.ToLower(w) {
	case "are", "is", "were", "was", "has", "have", "sind", "ist", "sont", "est", "son", "sono":
		return true
	}
	return false
}

// pinOfEnd adds a cavity that stands alone behind an end to it, "to the key switch, pin 1".
func (l *line) pinOfEnd(w []string) bool {
	if len(w) != 2 || len(l.ends) == 0 || !name.IsPinWord(table.Fold(w[0])) || !isCavity(w[1]) {
		return false
	}
	last := &l.ends[len(l.ends)-1]
	if e, _ := pinned(strings.Fields(*last)); e != "" || strings.Contains(*last, ":") {
		return false
	}
	*last += " " + strings.Join(w, " ")
	l.pins++
	return true
}

// beforeTo reports whether the next piece that is not in brackets says where the wire goes.
func beforeTo(all []piece, i int) bool {
	for _, p := range all[i+1:] {
		if !p.aside {
			return p.to
		}
	}
	return false
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

// withoutArticle takes an article off the front of some words.
func withoutArticle(w []string) []string {
	if len(w) > 1 && words.IsArticle(strings.ToLower(w[0])) && len(w[0]) > 1 {
		return w[1:]
	}
	return w
}
