package runline

import (
	"strings"

	"contralay/model/wirelist/arrow"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/point"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// A lead with a plug at either end is told by a title that names the two and by lines that name a cavity of each.
//
//	Lead 2   control box (7 way)  -->  rotator (7 pin plug)
//	   1   common    -->  1   black
//	   4   pot top   n/c

// Lead is what one such line says: the cavity on this side, what it is for, the cavity on the other side, and the values of its wire.
type Lead struct {
	Pin, Signal, Far, Colour, Size, Note string
	Else                                 string // the thing that it goes to in place of the one in the title
	Free                                 bool   // nothing is connected there
}

// LeadOf parts such a line; ok is false where it is none.
func LeadOf(text string) (l Lead, ok bool) {
	front, back, drawn := arrow.Cut(text)
	if !drawn {
		front = text
	}
	first, rest, _ := strings.Cut(strings.TrimSpace(front), " ")
	if w := table.Fold(first); name.IsPinWord(w) {
		first, rest, _ = strings.Cut(strings.TrimSpace(rest), " ")
	}
	l.Pin = strings.TrimRight(first, ".:)")
	l.Signal = strings.Trim(strings.ReplaceAll(rest, " - ", " "), " -–—:")
	switch {
	case name.IsDrainWord(table.Fold(l.Pin)) && l.Signal == "" && drawn:
		l.Pin, l.Signal = "", l.Pin
	case !name.IsCavity(l.Pin):
		return l, false
	}
	if !drawn {
		return l.free()
	}
	if name.StateOf(back) != name.Used {
		l.Free = true
		return l, true
	}
	l.Far, rest, _ = strings.Cut(back, " ")
	if name.IsPinWord(table.Fold(l.Far)) && rest != "" {
		l.Far, rest, _ = strings.Cut(strings.TrimSpace(rest), " ")
	}
	l.Far = strings.TrimRight(l.Far, ",;:")
	short := l.Pin == "" && len(l.Far) < 7 || len(l.Far) < 5 && l.Far == strings.ToUpper(l.Far)
	if !name.IsCavity(l.Far) && l.Far != "+" && l.Far != "-" && !short {
		return l.elsewhere(back)
	}
	l.values(strings.Trim(rest, " -–—:,"))
	return l, true
}

// free reads a line without an arrow, which says last that nothing is connected, or nothing behind its cavity.
func (l Lead) free() (Lead, bool) {
	l.Free = true
	if l.Signal == "" || name.StateOf(l.Signal) != name.Used {
		l.Signal = ""
		return l, true
	}
	w := strings.Fields(l.Signal)
	for n := 1; n < min(len(w), 4); n++ {
		if name.StateOf(strings.Join(w[len(w)-n:], " ")) == name.Blank {
			l.Signal = strings.TrimRight(strings.Join(w[:len(w)-n], " "), " ,-–:")
			return l, true
		}
	}
	return l, false
}

// elsewhere takes in a far end that is no cavity, "frame stud black": a few words, and the colour of the wire behind them.
func (l Lead) elsewhere(back string) (Lead, bool) {
	const most = 4 // words (no source)
	thing, rest, _ := strings.Cut(back, ", ")
	l.values(rest)
	w := strings.Fields(thing)
	for n := min(2, len(w)-1); n > 0 && l.Colour == ""; n-- {
		if c := strings.Join(w[len(w)-n:], " "); point.IsColour(c) {
			l.Colour, w = c, w[:len(w)-n]
		}
	}
	l.Far, l.Else = "", strings.Join(w, " ")
	return l, len(w) > 0 && len(w) <= most && !strings.HasSuffix(back, ".")
}

// values takes in what stands behind the cavity of the other side.
func (l *Lead) values(text string) {
	if text == "" {
		return
	}
	if l.Colour, l.Size = point.WireValues(text); l.Colour != "" {
		return
	}
	if bare, pieces := point.ValuesBehind(text + ")"); strings.HasPrefix(text, "(") && bare == "" {
		text = strings.Join(pieces, ", ")
	}
	for p := range strings.SplitSeq(strings.Trim(text, "()"), ", ") {
		g, sized := value.ParseGauge(p, value.BareAWG, value.MarkUnknown)
		switch {
		case l.Colour == "" && point.IsColour(p):
			l.Colour = p
		case l.Size == "" && sized && g.Size != "" && strings.Trim(p, "0123456789.,") != "":
			l.Size = p
		default:
			l.Note = value.JoinNonEmpty(", ", l.Note, p)
		}
	}
	if front, behind, ok := strings.Cut(l.Note, " "); ok && l.Colour == "" && point.IsColour(front) {
		l.Colour, l.Note = front, behind // "white, twisted" and "white twisted"
	}
}

// LeadTitle reads the title of such a lead: the things at its two ends, with an arrow between or the word "to", without what counts the
// lead before them and without what stands in brackets behind each. "" where it is none.
func LeadTitle(text string) (near, far string) {
	text = withoutLabel(strings.TrimRight(strings.TrimSpace(text), ":"))
	if open := strings.LastIndexByte(text, '('); open > 0 && strings.HasSuffix(text, ")") {
		if _, to := arrow.In(text[open:]); to > 0 {
			text = text[open+1 : len(text)-1] // "Wiring (gauge -> hub)"
		}
	}
	near, far, ok := arrow.Cut(text)
	if !ok {
		if _, to := arrow.In(text); to > 0 {
			return "", ""
		}
		if near, far, ok = strings.Cut(text, " to "); !ok || strings.Contains(far, " to ") {
			return "", ""
		}
	}
	near, far = thing(near), thing(far)
	if near == "" || far == "" {
		return "", ""
	}
	return near, far
}

// withoutLabel takes a word for a lead and its number or letter off the front of a title, "Lead 1", "Cable B:".
func withoutLabel(text string) string {
	w := strings.Fields(text)
	if len(w) < 4 {
		return text
	}
	switch table.Fold(w[0]) {
	case "lead", "cable", "loom", "harness", "cord", "kabel", "leitung", "cordon", "cavo", "ledning", "kablage", "snoer", "przewod":
	default:
		return text
	}
	if id := strings.Trim(w[1], ".:)-–"); !name.IsCavity(id) && !name.IsDesignator(id) {
		return text
	}
	return strings.TrimLeft(strings.Join(w[2:], " "), "-–—: ")
}

// thing is what one side of a title names; "" where that is no name.
func thing(text string) string {
	const most = 6 // words (no source)
	text = strings.Trim(strings.TrimSpace(name.WithoutBrackets(text)), " -–—:,")
	w := strings.Fields(text)
	if len(w) == 0 || len(w) > most || strings.ContainsAny(text, ";.!?") || name.IsCavity(w[0]) || len(text) < 3 || name.IsGeneric(text) ||
		point.IsColour(text) {
		return ""
	}
	return strings.Join(w, " ")
}
