package runline

import (
	"slices"
	"strings"
	"unicode"

	"contralay/model/wirelist/arrow"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/point"
	"contralay/model/wirelist/table"
)

// plain parts a line of a run list whose ends need no sign behind them: each is a connector and its cavity. What the wire is called may
// stand before them; behind them stand its colour, its size and its name in any order.
//
//	C1-1 TO C7-1 RED 14GA MAIN FEED
//	Wire 7: hub pin 3 -- gauge pin 1, violet 22 AWG
func plain(text string) (from, to string, rest []string) {
	w := strings.Fields(text)
	if len(w) > 2 && numbersLine(w[0]) {
		w = w[1:]
	}
	at, label := labelOf(w)
	if at < len(w) && isFrom(w[at]) {
		at++
	}
	first := endAt(w, at)
	if first.words == 0 && label == "" && at+2 < len(w) && !point.IsColour(w[at]) {
		if lead := strings.TrimRight(w[at], ".)"); lead == w[at] {
			label = lead // "W7 C1-1 C7-1"; "7." numbers the line
		}
		if at++; strings.Trim(w[at], "-–—") == "" {
			at++ // "Pump - Board pin 3 to Box pin 1"
		}
		if first = endAt(w, at); !first.plain {
			return "", "", nil
		}
	}
	if first.words == 0 || first.marked {
		return "", "", nil
	}
	at += first.words
	parted := 0
	if at < len(w) {
		if parted = parts(w[at]); parted > 0 {
			at++
		}
	}
	last := endAt(w, at)
	both := first.plain && last.plain
	if last.words == 0 || parted < certain && !both {
		return "", "", nil
	}
	at += last.words
	if !last.plain && !last.marked && at < len(w) && !beginsValues(w[at:]) {
		return "", "", nil // "X-2 to Y-3 converter"
	}
	t := tailOf(strings.Join(w[at:], " "))
	id, called := nameOrNumber(label)
	if colour, size := point.WireValues(called); colour != "" && t.colour == "" {
		t.colour, called = colour, ""
		if t.size == "" {
			t.size = size
		}
	}
	if called != "" && pointsBack(t.signal) {
		t.addNote(t.signal)
		t.signal = ""
	}
	if t.signal == "" {
		t.signal = called
	} else if called != "" {
		t.addNote(called)
	}
	return first.text, last.text, []string{t.colour, t.size, t.note, t.signal, id}
}

// numbersLine reports whether a word is a number with the sign behind it that numbers a line, "4.", "4)", "(4)": no end begins with it.
func numbersLine(w string) bool {
	bare := strings.TrimRight(strings.TrimLeft(w, "("), ".)")
	return bare != "" && bare != w && strings.Trim(bare, "0123456789") == "" && strings.ContainsAny(w[len(w)-1:], ".)")
}

// pointsBack reports whether a text only points at the wire of its line, "this one", "der hier", "celui-ci": it is no name of one.
func pointsBack(text string) bool {
	w := strings.Fields(table.Fold(text))
	return len(w) > 0 && !slices.ContainsFunc(w, func(w string) bool {
		return !slices.Contains([]string{"this", "that", "one", "here", "too", "also", "again", "only", "der", "die", "das", "hier", "auch",
			"dieser", "diese", "celui-ci", "celui-la", "ici", "aussi", "este", "esta", "aqui", "tambien",
			"questo", "questa", "qui", "anche",
			"deze", "ook", "den", "denne", "har", "her"}, w)
	})
}

// IsPlain reports whether a line tells two ends of which each is a connector and its cavity beyond doubt.
func IsPlain(text string) bool {
	from, to, _ := plain(text)
	is := func(e string) bool { return IsPlainEnd(e) || name.SaysPin(e) }
	return is(from) && is(to)
}

// end is an end of a wire in a line.
type end struct {
	text   string
	words  int  // how many it has; 0 where none is there
	plain  bool // a designator and a cavity, or a word for a cavity in it; "HUB-3" may be the name of a device
	marked bool // a sign behind it ends it
}

// endAt reads the end that begins at a word.
func endAt(w []string, i int) (e end) {
	const most = 4 // words before that for the cavity, and it (no source)
	if i >= len(w) || strings.Trim(w[i], "-–—") == "" {
		return e // a dash begins none
	}
	bare := func(s string) string { return strings.TrimRight(s, ",;:") }
	one := bare(w[i])
	if IsPlainEnd(one) {
		return end{one, 1, true, one != w[i]}
	}
	for k := i + 1; k < min(len(w)-1, i+most); k++ {
		if parts(w[k]) > 0 || bare(w[k-1]) != w[k-1] {
			break
		}
		if pin := bare(w[k+1]); name.IsPinWord(table.Fold(w[k])) && name.IsCavity(pin) {
			return end{strings.Join(w[i:k+1], " ") + " " + pin, k + 2 - i, true, pin != w[k+1]}
		}
	}
	if IsLooseEnd(one) {
		return end{one, 1, false, one != w[i]}
	}
	return e
}

// IsPlainEnd reports whether a word is a designator and a cavity of it, "C1-1".
func IsPlainEnd(w string) bool {
	connector, pin, ok := name.SplitEnd(w)
	return ok && name.IsDesignator(connector) && name.IsCavity(pin)
}

// IsLooseEnd reports whether a word is letters and a number with a sign between, "HUB-12", "A.1": a device and its cavity, or the name of
// a device.
func IsLooseEnd(w string) bool {
	connector, pin, ok := name.SplitEnd(w)
	return ok && name.IsCavity(pin) && strings.ContainsAny(pin, "0123456789") && strings.ContainsFunc(connector, unicode.IsLetter) &&
		!strings.ContainsFunc(connector, func(r rune) bool { return !unicode.IsLetter(r) && !unicode.IsDigit(r) && r != '_' })
}

// certain is what parts gives for a sign that nothing but a wire has between its ends; a dash has other uses.
const certain = 2

// parts says how surely a word parts the two ends of a wire: 0 for not at all.
func parts(w string) int {
	from, to := arrow.In(w)
	switch {
	case to == len(w) && from == 0:
		return certain
	case strings.Trim(w, "-–—=") == "":
		return 1
	}
	if slices.Contains([]string{"to", "nach", "vers", "verso", "hasta", "naar", "till", "til", "zu"}, table.Fold(w)) {
		return certain
	}
	return 0
}

// isFrom reports whether a word says that the near end follows.
func isFrom(w string) bool {
	return slices.Contains([]string{"from", "von", "de", "da", "van", "fran", "fra"}, table.Fold(w))
}

// labelOf is the text before a colon that an end follows, and the word behind it: "Wire 7: C1-1 to C7-1".
func labelOf(w []string) (at int, label string) {
	const most = 4 // words of a name (no source)
	for i := range w[:min(len(w), most)] {
		if bare, is := strings.CutSuffix(w[i], ":"); is && bare != "" {
			if endAt(w, i+1).words == 0 {
				return 0, ""
			}
			return i + 1, strings.TrimSuffix(strings.Join(w[:i+1], " "), ":")
		}
	}
	return 0, ""
}

// nameOrNumber parts what a wire is called in its number, "Wire 7", "W7", "12", and a name.
func nameOrNumber(label string) (id, called string) {
	bare := label
	for _, word := range []string{"wire ", "lead ", "ader ", "leitung ", "fil ", "cable ", "kabel ", "hilo ", "filo "} {
		if len(label) > len(word) && strings.EqualFold(label[:len(word)], word) {
			bare = strings.TrimSpace(label[len(word):])
		}
	}
	if bare != "" && !strings.Contains(bare, " ") && strings.ContainsAny(bare[len(bare)-1:], "0123456789") &&
		(bare != label || strings.Trim(bare, "0123456789") == "" || name.IsDesignator(strings.ReplaceAll(bare, "-", ""))) {
		return bare, ""
	}
	return "", label
}

// beginsValues reports whether some words begin with a sign, a colour or a size.
func beginsValues(w []string) bool {
	t := words{all: w}
	return strings.ContainsAny(w[0][:1], "(-,:;") || t.takeFront()
}
