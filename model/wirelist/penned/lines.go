package penned

import (
	"strings"

	"contralay/model/wirelist/arrow"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/runline"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// line is what one line says; "" where it does not say it.
type line struct {
	pin, end           string // its cavity alone, or the whole end
	colour, size, unit string
	rest               string
	signal, to, note   string
	free               bool // it says that the cavity is free
	see                bool // it says only where the wire is told
	byWord, arrow      bool // the far end stands behind a word of the language, or an arrow
}

const (
	longestLine = 200 // bytes (no source)
	mostWords   = 3   // of a colour (no source)
)

// signs stand behind a cavity.
const signs = "-:.)=–—"

// lineOf reads the front of a line: its cavity, its colour and its size; ok is false where it does not begin with a cavity.
func lineOf(text string) (l line, ok bool) {
	if len(text) < 3 || len(text) > longestLine {
		return l, false
	}
	first, rest, _ := strings.Cut(text, " ")
	bare := strings.TrimRight(first, signs)
	rest = strings.TrimSpace(rest)
	switch {
	case isPin(bare):
		l.pin = bare
		marked := bare != first
		if word, behind, _ := strings.Cut(rest, " "); !marked && len([]rune(word)) == 1 && strings.Contains(signs, word) {
			rest, marked = strings.TrimSpace(behind), true
		}
		if !marked {
			return l, false
		}
	case runline.IsPlainEnd(bare):
		l.end = bare
		if word, behind, _ := strings.Cut(rest, " "); len([]rune(word)) == 1 && strings.Contains(signs, word) {
			rest = strings.TrimSpace(behind)
		}
	default:
		return l, false
	}
	if rest == "" || strings.Trim(rest, signs) == "" || name.OnlyState(rest) {
		l.free, l.rest = true, rest
		return l, true
	}
	l.values(rest)
	return l, true
}

// isPin reports whether a word is a cavity without its connector: a number, a capital, or a number behind one, "A1".
func isPin(w string) bool {
	if len(w) == 0 || len(w) > 3 {
		return false
	}
	return strings.Trim(w, "0123456789") == "" || w[0] >= 'A' && w[0] <= 'Z' && strings.Trim(w[1:], "0123456789") == ""
}

// values parts what stands before the first number of a line, and that number, off what it says.
func (l *line) values(text string) {
	w := strings.Fields(text)
	l.rest = text
	for i := 1; i <= mostWords && i < len(w); i++ {
		at := i
		if isSign(w[i]) && i+1 < len(w) {
			if number, _ := cutUnit(strings.TrimRight(w[i+1], ",;:")); number != "" {
				at++ // "red - 2,5 - horn"
			} else if w[i] != "--" {
				return // "red - to the pump": a sign between
			}
		}
		size := strings.TrimRight(w[at], ",;:")
		number, unit := cutUnit(size)
		if number == "" && (size == "" || strings.Trim(size, "-–?") != "") {
			continue
		}
		behind := w[at+1:]
		if unit == "" && len(behind) > 0 && isUnit(strings.TrimRight(behind[0], ",;:")) {
			unit, behind = strings.TrimRight(behind[0], ",;:"), behind[1:]
		}
		l.colour, l.size, l.unit = strings.TrimRight(strings.Join(w[:i], " "), ",;:"), number, unit
		l.rest = strings.TrimSpace(strings.TrimLeft(strings.Join(behind, " "), signs+" ,;"))
		return
	}
}

// isSign reports whether a word is nothing but a sign.
func isSign(w string) bool { return w != "" && strings.Trim(w, signs+",;|") == "" }

// cutUnit parts the unit off a number, "2,5mmq"; number is "" where the word is none.
func cutUnit(w string) (number, unit string) {
	const longest = 10 // bytes
	if len(w) == 0 || len(w) > longest || !value.IsDigit(w[0]) {
		return "", ""
	}
	number = strings.TrimRight(w, "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ²^")
	if unit = w[len(number):]; strings.HasPrefix(w[len(number):], "mm") || isUnit(unit) {
		number = strings.TrimRight(number, " ")
	} else if rest, cut := strings.CutSuffix(w, "mm2"); cut {
		number, unit = rest, "mm2"
	} else if unit != "" {
		return "", ""
	}
	g, ok := value.ParseGauge(number, value.BareMM2, value.MarkUnknown)
	if !ok || g.Size == "" || strings.Trim(number, "0123456789.,") != "" {
		return "", ""
	}
	return number, unit
}

// isUnit reports whether a word is a unit of sizes of wire.
func isUnit(w string) bool {
	switch table.Fold(w) {
	case "mm2", "mmq", "qmm", "mm", "sqmm", "awg", "ga", "kvadrat", "kv":
		return true
	}
	return false
}

// said reads what stands behind the values in the words of a language.
func (l *line) said(lang string) {
	text := l.rest
	if l.free {
		return
	}
	if open := strings.LastIndexByte(text, '('); open > 0 && strings.HasSuffix(text, ")") && strings.Count(text[open:], ")") == 1 {
		l.note, text = strings.Trim(text[open:], "()"), strings.TrimSpace(text[:open])
	}
	if from, to := arrow.In(text); to > 0 {
		l.signal, l.to, l.arrow = strings.TrimSpace(text[:from]), strings.TrimSpace(text[to:]), true
	} else if far, ok := behindWord(text, lang); ok {
		l.to, l.byWord = far, true
		l.to, l.signal, _ = strings.Cut(far, ", ")
	} else if far, ok := behindSee(text); ok && l.colour == "" {
		l.to, l.note, l.see = far, text, true
	} else if front, behind, parted := strings.Cut(text, ", "); parted {
		if far, ok := behindWord(behind, lang); ok {
			l.signal, l.to, l.byWord = front, far, true
		} else {
			l.signal, l.note = front, joined(behind, l.note)
		}
	} else {
		l.signal = text
	}
	l.to = strings.TrimSpace(l.to)
	if front, behind, parted := strings.Cut(l.to, ", "); parted {
		l.to, l.note = front, joined(behind, l.note)
	}
	if isOnTheWay(l.signal) {
		l.signal, l.note = "", joined(l.signal, l.note)
	}
	for _, pole := range []string{" +", " -"} {
		if of, ok := strings.CutSuffix(l.to, pole); ok && of != "" {
			l.to = of + ":" + pole[1:]
		}
	}
}

// joined are two remarks in one.
func joined(a, b string) string {
	if a == "" || b == "" {
		return a + b
	}
	return a + "; " + b
}
