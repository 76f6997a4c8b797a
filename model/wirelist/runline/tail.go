package runline

import (
	"strings"

	"contralay/model/wirelist/point"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/value"
)

// tail is what stands behind the two ends of a wire.
type tail struct{ colour, size, note, signal string }

// addNote adds a text to the note.
func (t *tail) addNote(text string) { t.note = value.JoinNonEmpty("; ", t.note, text) }

// tailOf reads colour, size and name of a wire in any order, with signs between or none: "RED 14GA MAIN FEED", "main feed, 14 AWG red",
// "(main feed, red)". What stands in brackets with no value of a wire is a remark, and so is what stands behind the values and a sign.
func tailOf(text string) (t tail) {
	front, behind, in := brackets(strings.TrimLeft(text, " ,;:-–—="))
	t.take(front, false)
	values := t.colour != "" || t.size != ""
	t.take(in, true)
	if in != "" && behind != "" {
		t.take(behind, values)
	}
	return t
}

// Values are the colour and the size that stand behind the ends of a wire, "" where none stand there.
func Values(text string) (colour, size string) {
	t := tailOf(text)
	return t.colour, t.size
}

// brackets parts the first pair of brackets out of a text.
func brackets(text string) (front, behind, in string) {
	open := strings.IndexByte(text, '(')
	if open < 0 {
		return text, "", ""
	}
	end := strings.IndexByte(text[open:], ')')
	if end < 0 {
		return text, "", ""
	}
	return strings.TrimSpace(text[:open]), strings.TrimSpace(text[open+end+1:]), text[open+1 : open+end]
}

// take reads the pieces of a text; aside: it stands in brackets, where a name stands beside a value alone.
func (t *tail) take(text string, aside bool) {
	var names []string
	valued := false
	for _, mark := range []string{"; ", ": ", " - ", " – ", " — ", " / "} {
		text = strings.ReplaceAll(text, mark, ", ")
	}
	pieces := strings.Split(text, ", ")
	for i, p := range pieces {
		w := words{all: strings.Fields(strings.Trim(p, " ,;:")), coloured: t.colour != "" || haveColour(pieces[i+1:])}
		for w.takeFront() || w.takeBack() {
		}
		valued = valued || w.colour != "" || w.size != ""
		for _, one := range []struct{ to, is *string }{{&t.colour, &w.colour}, {&t.size, &w.size}} {
			if *one.to != "" && *one.is != "" {
				t.addNote(*one.is) // of something else
			} else if *one.is != "" {
				*one.to = *one.is
			}
		}
		if called := strings.Join(w.all, " "); called == "" || strings.Trim(called, "0123456789") == "" {
			t.addNoteOf(called)
		} else if names = append(names, called); valued && len(w.all) > 0 && w.colour == "" && w.size == "" && !aside {
			t.addNote(called) // behind the values
			names = names[:len(names)-1]
		}
	}
	for _, n := range names {
		if t.signal == "" && (valued || !aside) && point.IsShortName(n) {
			t.signal = n
		} else {
			t.addNote(n)
		}
	}
}

// haveColour reports whether one of some pieces ends or begins with a colour that has a name, or is one.
func haveColour(pieces []string) bool {
	for _, p := range pieces {
		w := words{all: strings.Fields(p), coloured: true}
		for w.takeFront() || w.takeBack() {
		}
		if w.colour != "" {
			return true
		}
	}
	return false
}

// addNoteOf adds a number alone to the note; it names nothing.
func (t *tail) addNoteOf(number string) {
	if number != "" {
		t.addNote(number)
	}
}

// words are some words of which the values of a wire are taken off at either end.
type words struct {
	all          []string
	colour, size string
	coloured     bool // the text has a colour elsewhere
}

// isSide reports whether a text is the last letter of a name, as left and right have one: "low beam R, 16 AWG yellow/black". It stands
// behind the name, and the wire has a colour elsewhere or no size beside it.
func (w *words) isSide(text string) bool {
	return len(text) == 1 && len(w.all) > 1 && (w.coloured || w.size == "")
}

// takeFront takes a colour or a size off the front; false where none is there.
func (w *words) takeFront() bool {
	for n := min(2, len(w.all)); n > 0; n-- {
		text := strings.Join(w.all[:n], " ")
		if w.colour == "" && point.IsColour(text) || w.size == "" && (isSize(text) || n == 1 && shape.IsMadeSize(text) &&
			(w.colour != "" || len(w.all) > 1 && point.IsColour(w.all[1]))) || n == 1 && w.size == "" && w.colour != "" && isDecimal(text) {
			w.set(text)
			w.all = w.all[n:]
			return true
		}
	}
	return false
}

// takeBack takes a colour or a size off the back, where a name stands before it.
func (w *words) takeBack() bool {
	for n := min(2, len(w.all)); n > 0; n-- {
		text := strings.Join(w.all[len(w.all)-n:], " ")
		before := ""
		if len(w.all) > n {
			before = w.all[len(w.all)-n-1]
		}
		if w.colour == "" && point.IsColour(text) && !w.isSide(text) || w.size == "" && (isSize(text) ||
			n == 1 && (shape.IsMadeSize(text) || isDecimal(text)) && point.IsColour(before)) {
			w.set(text)
			w.all = w.all[:len(w.all)-n]
			return true
		}
	}
	return false
}

// set takes a value in.
func (w *words) set(text string) {
	if point.IsColour(text) {
		w.colour = text
	} else {
		w.size = text
	}
}

// isSize reports whether a text is a size with its unit.
func isSize(text string) bool {
	g, ok := value.ParseGauge(text, value.BareAWG, value.MarkUnknown)
	return ok && g.Size != "" && strings.Trim(text, "0123456789.,") != ""
}

// isDecimal reports whether a text is a number with decimals, which behind a colour is a size.
func isDecimal(text string) bool {
	return strings.Trim(text, "0123456789.,") == "" && strings.ContainsAny(text[1:], ".,") && value.IsDigit(text[0]) &&
		value.IsDigit(text[len(text)-1])
}
