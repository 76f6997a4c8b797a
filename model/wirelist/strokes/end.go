package strokes

import (
	"strconv"
	"strings"
	"unicode"

	"contralay/model/wirelist/columned"
	"contralay/model/wirelist/pinword"
)

// end is what stands on one side of a stroke.
type end struct {
	pin    string   // "" for none
	name   string   // what stands beside the pin, or in its place
	more   []string // what stands behind a gap further out
	supply bool     // the name stands in square brackets
	in     bool     // the pin stands in brackets
	at     int      // where the pin begins in the line

	outer, outerName string // the pin and the name, where its pin can stand outside of its name
}

// endBefore reads the text before a stroke, which ends with its pin; ok is false where it is no end. at is where the text begins.
//
//	Strobe ( 1)      TXD  pin 3      [+5 V]
func endBefore(text string, at int) (e end, ok bool) {
	trimmed := strings.TrimRight(text, " ")
	width := runes(trimmed)
	if in, before, ok := closing(trimmed); ok {
		if pin, is := pinOf(in, true); is { // "(pin  3)"
			trimmed = before + " (" + pin + ")"
		}
	}
	pieces := columned.Gapped(trimmed)
	if len(pieces) == 0 {
		return e, false
	}
	inner := pieces[len(pieces)-1].Text
	outer := pieces[:len(pieces)-1]
	if in, before, ok := closing(inner); ok {
		e.in, e.at = true, at+width-runes(in)-2
		if e.pin, ok = pinOf(in, true); !ok || !strings.ContainsAny(in, "0123456789") {
			if pin, is := barePin(before, outer, true); is { // "pin 1 (feed)"
				e.pin, e.name, e.in = pin, in, false
				return e, e.isOne()
			}
			if !ok {
				e.outer, e.outerName = outerPin(strings.TrimSpace(text), true)
				return bracketed(e, in, inner, before, len(outer) == 0)
			}
		}
		inner = before
	} else {
		words := strings.Fields(inner)
		last := len(words) - 1
		if e.pin, ok = pinOf(words[last], false); ok {
			e.at = at + runes(trimmed) - runes(words[last])
			if words = words[:last]; len(words) > 0 && pinword.Is(strings.ToLower(words[len(words)-1])) {
				words = words[:len(words)-1]
			}
			inner = strings.Join(words, " ")
		} else {
			e.outer, e.outerName = outerPin(text, true)
		}
	}
	if inner == "" && len(outer) > 0 {
		inner, outer = outer[len(outer)-1].Text, outer[:len(outer)-1]
	}
	e.name = inner
	for i := len(outer) - 1; i >= 0; i-- {
		e.more = append(e.more, outer[i].Text)
	}
	return e, e.isOne()
}

// endBehind reads the text behind a stroke, which begins with its pin; ok is false where it is no end. at is where the text begins.
func endBehind(text string, at int) (e end, ok bool) {
	trimmed := strings.TrimLeft(text, " ")
	at += runes(text) - runes(trimmed)
	if in, behind, ok := opening(trimmed); ok {
		if pin, is := pinOf(in, true); is {
			trimmed = "(" + pin + ") " + behind
		}
	}
	pieces := columned.Gapped(trimmed)
	if len(pieces) == 0 {
		return e, false
	}
	e.at = at
	inner, outer := pieces[0].Text, pieces[1:]
	if in, behind, ok := opening(inner); ok {
		e.in = true
		if e.pin, ok = pinOf(in, true); !ok || !strings.ContainsAny(in, "0123456789") {
			if pin, is := barePin(behind, outer, false); is {
				e.pin, e.name, e.in = pin, in, false
				return e, e.isOne()
			}
			if !ok {
				return bracketed(e, in, inner, behind, len(outer) == 0)
			}
		}
		inner = behind
	} else {
		words := strings.Fields(inner)
		if len(words) > 1 && pinword.Is(strings.ToLower(words[0])) {
			words = words[1:]
		}
		if e.pin, ok = pinOf(words[0], false); ok {
			inner = withoutBrackets(strings.Join(words[1:], " "))
		} else {
			e.outer, e.outerName = outerPin(text, false)
		}
	}
	if inner == "" && len(outer) > 0 {
		inner, outer = outer[0].Text, outer[1:]
	}
	if _, number := pinOf(inner, false); number && e.pin != "" && len(outer) > 0 { // a second numbering of the same plug
		e.more, inner, outer = append(e.more, inner), outer[0].Text, outer[1:]
	}
	e.name = inner
	for _, o := range outer {
		e.more = append(e.more, o.Text)
	}
	return e, e.isOne()
}

// barePin is the pin that stands alone beside a name in brackets, in front of it or behind it.
func barePin(beside string, outer []columned.Field, before bool) (pin string, ok bool) {
	if beside == "" && len(outer) == 1 {
		beside = outer[0].Text
	} else if len(outer) > 0 {
		return "", false
	}
	words := strings.Fields(beside)
	if len(words) == 2 && before && pinword.Is(strings.ToLower(words[0])) {
		words = words[1:]
	}
	if len(words) != 1 {
		return "", false
	}
	return pinOf(words[0], false)
}

// outerPin is the number at the far side of an end whose name stands at the stroke, "2 RXD ---", and the name.
func outerPin(text string, before bool) (pin, name string) {
	words := strings.Fields(text)
	if len(words) < 2 {
		return "", ""
	}
	if before {
		pin, name = words[0], strings.TrimPrefix(strings.Join(words[1:], " "), "- ") // "2 - RXD ---"
	} else {
		pin, name = words[len(words)-1], strings.Join(words[:len(words)-1], " ")
	}
	if pin = strings.Trim(pin, "().:"); !isNumber(pin) || len(words) > 4 {
		return "", ""
	}
	return pin, name
}

// bracketed is an end whose brackets hold no pin: a supply in square ones, alone on its side, or a part of the name.
func bracketed(e end, in, whole, beside string, alone bool) (end, bool) {
	if strings.ContainsAny(whole, "[]") {
		e.name, e.supply = in, true
		return e, beside == "" && alone && hasLetter(in)
	}
	e.name, e.in = whole, false
	return e, e.isOne()
}

// isOne reports whether it is an end: its name is words, and no part of a drawing.
func (e end) isOne() bool {
	if e.name == "" {
		return e.pin != ""
	}
	first := []rune(e.name)[0]
	return hasLetter(e.name) && (unicode.IsLetter(first) || unicode.IsDigit(first) || strings.ContainsRune("+-/#~!*(", first)) &&
		!strings.ContainsAny(e.name, `|\─│`) && !strings.Contains(e.name, "--")
}

// withoutBrackets is a name without brackets round all of it, but for those of a bracketed word within it.
func withoutBrackets(name string) string {
	if in, before, ok := closing(name); ok && before == "" && strings.HasPrefix(name, "(") {
		return in
	}
	return name
}

// closing is what stands in the brackets at the end of a text, and what stands before them; opening is its mirror.
func closing(text string) (in, before string, ok bool) {
	for _, pair := range []string{"()", "[]"} {
		if at := strings.LastIndex(text, pair[:1]); at >= 0 && strings.HasSuffix(text, pair[1:]) {
			return strings.TrimSpace(text[at+1 : len(text)-1]), strings.TrimSpace(text[:at]), true
		}
	}
	return "", "", false
}

func opening(text string) (in, behind string, ok bool) {
	for _, pair := range []string{"()", "[]"} {
		if at := strings.Index(text, pair[1:]); at > 0 && strings.HasPrefix(text, pair[:1]) {
			return strings.TrimSpace(text[1:at]), strings.TrimSpace(text[at+1:]), true
		}
	}
	return "", "", false
}

// shields are words for what is joined as a pin is and has no number. From memory, no source.
var shields = map[string]bool{"shield": true, "shell": true, "screen": true, "case": true, "drain": true, "braid": true, "schirm": true,
	"gehäuse": true, "blindage": true, "malla": true, "pantalla": true, "schermo": true, "scherm": true, "skärm": true, "skjerm": true,
	"skærm": true, "ekran": true, "stínění": true, "blindagem": true, "vaippa": true, "tip": true, "ring": true, "sleeve": true}

// pinOf is the pin that a text names, or several, "4,6" and "8+20"; free is that in brackets a letter alone is one, and a word for a
// pin may stand before it.
func pinOf(text string, free bool) (pin string, ok bool) {
	if free {
		if words := strings.Fields(text); len(words) == 2 && pinword.Is(strings.ToLower(words[0])) {
			text = words[1]
		}
	}
	text = strings.TrimPrefix(text, "#")
	if shields[strings.ToLower(text)] {
		return text, true
	}
	parts := strings.FieldsFunc(text, func(r rune) bool { return strings.ContainsRune(",+&/ ", r) })
	for _, p := range parts {
		if !isPin(p, free) && len(rangeOf(p)) == 0 {
			return "", false
		}
	}
	if len(parts) == 0 || !free && strings.Contains(text, " ") || strings.HasPrefix(text, "+") || strings.HasSuffix(text, "+") {
		return "", false
	}
	return strings.Join(parts, " & "), true
}

// mostOfRange is how many pins a range has at the most (no source).
const mostOfRange = 64

// rangeOf are the pins of a range of numbers, "18-25"; none where a text is none.
func rangeOf(text string) (all []string) {
	first, last, ok := strings.Cut(text, "-")
	if !ok || !isNumber(first) || !isNumber(last) {
		return nil
	}
	from, to := numberOf(first), numberOf(last)
	if to <= from || to-from >= mostOfRange {
		return nil
	}
	for n := from; n <= to; n++ {
		all = append(all, strconv.Itoa(n))
	}
	return all
}

// isPin reports whether a word is a number of three figures at the most, with a letter on one side or none; a letter alone where it is
// free.
func isPin(word string, free bool) bool {
	digits := strings.Trim(word, "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ")
	if digits == "" {
		return free && len(word) == 1
	}
	return len(digits) <= 3 && strings.Trim(digits, "0123456789") == "" && (len(word) == len(digits) || len(word) == len(digits)+1 &&
		!strings.HasSuffix(word, "V") && !strings.HasSuffix(word, "v"))
}

func hasLetter(text string) bool {
	return strings.IndexFunc(text, func(r rune) bool { return unicode.IsLetter(r) || unicode.IsDigit(r) }) >= 0
}

// runes is how many characters a text has.
func runes(text string) int { return len([]rune(text)) }
