package jotted

import (
	"slices"
	"strings"

	"contralay/model/wirelist/arrow"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/point"
	"contralay/model/wirelist/runline"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
	"contralay/model/wirelist/words"
)

// line is what one line says; "" where it does not say it.
type line struct {
	end, colour, size, signal, to, note string
	word                                string // the word or sign before the far end
	beside                              bool   // something stands between the terminal and this
	pin                                 bool   // the terminal is a number alone: its device stands above
	lang                                string // whose short forms of colours count
	bare                                string // a number alone behind the name: a size, where most lines have one
	plain                               bool   // the line has one cell, and an arrow with a shaft: package alike parts it too
}

// mayBegin reports whether a text begins as such a line can: a digit stands in its first words.
func mayBegin(text string) bool {
	const most = 16 // bytes of a terminal and what stands before it (no source)
	return strings.ContainsAny(text[:min(most, len(text))], "0123456789")
}

// free reports whether a line says that its terminal has no wire, or a spare one that is taken nowhere.
func (l line) free() bool { return l.to == "" && name.StateOf(l.signal) != name.Used }

// told reports whether a line says where its wire goes, and what wire it is, and does not tell both ends right behind one another.
func (l line) told() bool { return l.to != "" && l.beside && (l.colour != "" || l.size != "") }

// lineOf reads the line that a row is; ok is false where it does not begin with a terminal. lang says whose short forms of colours count.
func lineOf(r table.Row, lang string) (l line, ok bool) {
	if l.lang = lang; len(r.Cells) == 0 || !mayBegin(r.Cells[0]) {
		return l, false
	}
	return readLine(r, lang)
}

// readLine is lineOf, of a row that begins as one can.
func readLine(r table.Row, lang string) (l line, ok bool) {
	l.lang = lang
	var pieces []string
	for _, c := range r.Cells {
		pieces = append(pieces, cut(c)...)
	}
	if l.end, pieces[0] = endOf(pieces[0]); l.end == "" {
		if l.end, pieces[0] = pinOf(pieces[0]); l.end == "" {
			return l, false
		}
		l.pin = true
	}
	near, far, word := halves(pieces)
	l.word, l.beside = word, strings.Join(near, "") != ""
	_, shaft := arrow.In(strings.Join(r.Cells, " "))
	l.plain = len(r.Cells) == 1 && (shaft > 0 || word != "→")
	texts := l.withoutBare(l.take(near))
	l.beside = l.beside && (!l.pin || l.colour != "" || l.size != "") // "3 BATTERY -> FUSE, red 4 AWG" tells both ends
	if len(far) > 0 {
		behind := far[1:]
		l.to = far[0]
		if front, values := point.ValuesBehind(l.to); len(values) > 0 {
			l.to, behind = front, append(values, behind...)
		}
		texts = append(texts, l.take(behind)...)
	}
	texts, asides := withoutAsides(texts)
	if l.to = point.WithPole(l.to); len(texts) > 0 {
		l.signal, texts = texts[0], texts[1:]
	}
	l.note = strings.Join(append(texts, asides...), "; ")
	return l, l.to != "" || l.free() || l.colour != "" || l.size != "" || l.note == "" && isShort(l.signal)
}

// endOf parts the terminal off the front of a text, "TB1-3", "TB1 3", "TB1 pin 3"; end is "" where none stands there, or a sign behind it.
func endOf(text string) (end, rest string) {
	w := strings.Fields(strings.TrimLeft(text, "-*• "))
	for n := 1; n <= min(3, len(w)); n++ {
		end = strings.TrimRight(strings.Join(w[:n], " "), ",;")
		connector, pin, ok := name.SplitEnd(end)
		switch {
		case n == 1 && runline.IsPlainEnd(end):
		case n == 2 && name.IsDesignator(w[0]) && strings.ContainsAny(w[0], "0123456789") && strings.Trim(w[1], "0123456789") == "":
			end = w[0] + ":" + w[1]
		case n == 3 && ok && name.IsPinWord(table.Fold(w[1])) && name.IsDesignator(connector) && name.IsCavity(pin):
			end = connector + ":" + pin
		default:
			continue
		}
		return end, strings.Join(w[n:], " ")
	}
	return "", text
}

// pinOf parts a number off the front of a text, and a word for a terminal before it: "3", "pin 3"; pin is "" where none stands there.
func pinOf(text string) (pin, rest string) {
	w := strings.Fields(strings.TrimLeft(text, "-*• "))
	if len(w) > 1 && name.IsPinWord(table.Fold(w[0])) {
		w = w[1:]
	}
	if len(w) == 0 {
		return "", text
	}
	if pin = strings.TrimRight(w[0], ".),"); pin == "" || len(pin) > 3 || strings.Trim(pin, "0123456789") != "" {
		return "", text
	}
	return pin, strings.Join(w[1:], " ")
}

// isShort reports whether a text that stands alone behind a terminal can be the name of its wire: "and TB1-5 linked" is a sentence.
func isShort(text string) bool {
	const most = 3 // words (no source)
	w := strings.Fields(text)
	return len(w) > 0 && len(w) <= most && w[0] != "and" && w[0] != "&"
}

// marks may part what a line says.
var marks = []string{"\t", ", ", "; ", " | ", " - ", " – ", " — ", " : "}

// cut parts a text at these marks.
func cut(text string) []string {
	for _, m := range marks {
		text = strings.ReplaceAll(text, m, "\n")
	}
	var all []string
	for p := range strings.SplitSeq(text, "\n") {
		if p = strings.TrimSpace(p); p != "" {
			all = append(all, p)
		}
	}
	return all
}

// halves parts some pieces at their one arrow, else at the last word that says where a wire goes.
func halves(pieces []string) (near, far []string, word string) {
	at, from, to, n := 0, 0, 0, 0
	for i, p := range pieces {
		if f, t := arrowIn(p); t > 0 {
			at, from, to, n = i, f, t, n+1
			if _, again := arrowIn(p[t:]); again > 0 {
				n++
			}
		}
	}
	word = "→"
	if n == 0 {
		at, from, to, word = lastTo(pieces)
	}
	if n > 1 || to == 0 {
		return pieces, nil, ""
	}
	near = append(near, pieces[:at]...)
	if s := strings.TrimSpace(pieces[at][:from]); s != "" {
		near = append(near, s)
	}
	if s := strings.TrimSpace(pieces[at][to:]); s != "" {
		far = append(far, s)
	}
	return near, append(far, pieces[at+1:]...), word
}

// arrowIn is arrow.In, or the head of one alone between blanks; to is 0 where there is none.
func arrowIn(text string) (from, to int) {
	if from, to = arrow.In(text); to > 0 {
		return from, to
	}
	if i := strings.Index(" "+text+" ", " > "); i >= 0 {
		return i, min(i+1, len(text))
	}
	return 0, 0
}

// lastTo is where the last word for where a wire goes, or comes from, stands in some pieces; to is 0 where none does.
func lastTo(pieces []string) (at, from, to int, word string) {
	for i, p := range pieces {
		low := " " + strings.ToLower(p) + " "
		for _, w := range slices.Concat(words.ToWords(), words.FromWords()) {
			k := strings.LastIndex(low, " "+w+" ")
			if k < 0 || len(low) != len(p)+2 || i == at && k+len(w) <= to || k+len(w) >= len(p) {
				continue
			}
			at, from, to, word = i, k, k+len(w), w
		}
	}
	return at, from, to, word
}

// take keeps the first colour and the first size of some pieces, and gives back the other texts. A value stands alone in its piece, or
// at the front or the end of one.
func (l *line) take(pieces []string) (texts []string) {
	for _, p := range pieces {
		w := l.takeFront(strings.Fields(p))
		for n := min(mostWords, len(w)); n > 0; n-- {
			if l.value(strings.Join(w[len(w)-n:], " ")) {
				w, n = w[:len(w)-n], min(mostWords, len(w)-n)+1
			}
		}
		if len(w) > 0 {
			texts = append(texts, strings.Join(w, " "))
		}
	}
	return texts
}

// mostWords is how many words a colour or a size has (no source).
const mostWords = 4

// takeFront takes values off the front of some words, as many as stand there.
func (l *line) takeFront(w []string) []string {
	for n := min(mostWords, len(w)); n > 0; n-- {
		if l.value(strings.Join(w[:n], " ")) {
			w, n = w[n:], min(mostWords, len(w)-n)+1
		}
	}
	return w
}

// value keeps a text that is a colour, a size, or both, where the line has none yet.
func (l *line) value(text string) bool {
	text = strings.Trim(text, ",;()[]")
	if strings.ContainsAny(text, "/") && l.colour == "" && l.size == "" { // "red/16awg"
		at := strings.LastIndexByte(text, '/')
		if point.IsSize(text[at+1:]) && l.isColour(text[:at]) {
			l.colour, l.size = text[:at], text[at+1:]
			return true
		}
	}
	switch {
	case l.colour == "" && l.isColour(text) && len(text) > 1:
		l.colour = text
	case l.size == "" && point.IsSize(text):
		l.size = text
	default:
		return false
	}
	return true
}

// isColour reports whether a text is the name of a colour, in the language of the list.
func (l *line) isColour(text string) bool {
	_, ok := value.ParseColour(text, l.lang)
	return ok && strings.Trim(text, "0123456789") != ""
}
