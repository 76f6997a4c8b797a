package runline

import (
	"slices"
	"strings"

	"contralay/model/wirelist/arrow"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// A splice is told by a heading with its net, its size and its colour, and by a line for each of its legs with the far end and a length.
//
//	SPLICE S1   +5V sensors   24 AWG   red
//	   trunk   CTRL-8     420
//	   leg     THR-1      1150

// mostAbove is how many rows are looked through for headings: a title or two may stand over them.
const mostAbove = 3

// Leg is one leg of a splice: a wire from it to a far end. That of a heading is empty.
type Leg struct {
	Splice, End, Signal, Colour, Size, Note, Length string
}

// Legs finds the splices of a sheet and their legs, two or more of each, by the numbers of their lines. These rows are one text each.
// A row of values below headings, "S1 | INJ1:1 | red", is a wire from the splice.
func Legs(rows []table.Row, isHead func(table.Row) bool) (out []table.Row, legs map[int]Leg) {
	top := 0 // of the rows that stand without a gap
	for i := 0; i < len(rows); i++ {
		if i > 0 && rows[i].Line > rows[i-1].Line+1 {
			top = i
		}
		head, ok := spliceHead(rows[i])
		if !ok {
			continue
		}
		if n, _ := rows[i].Filled(); n > 2 && slices.ContainsFunc(rows[top:min(top+mostAbove, i)], isHead) {
			continue
		}
		var found []Leg
		for k := i + 1; k < len(rows) && (rows[k].Line == rows[k-1].Line+1 || k == i+1 && rows[k].Line == rows[i].Line+2); k++ {
			l, ok := legOf(joined(rows[k]), head)
			if !ok || rows[k].Level > 0 {
				break
			}
			found = append(found, l)
		}
		if len(found) < 2 {
			continue
		}
		if legs == nil {
			out, legs = slices.Clone(rows), map[int]Leg{}
		}
		out[i].Cells, legs[rows[i].Line] = []string{joined(rows[i])}, Leg{}
		for k, l := range found {
			at := i + 1 + k
			out[at].Cells, legs[rows[at].Line] = []string{joined(rows[at])}, l
		}
		i += len(found)
	}
	if legs == nil {
		return rows, nil
	}
	return out, legs
}

// joined is the text of a row, its cells one behind the other.
func joined(r table.Row) string { return strings.Join(strings.Fields(strings.Join(r.Cells, " ")), " ") }

// spliceHead reads a row that names a splice: with a word for one, or with the values of its wires behind the name.
func spliceHead(r table.Row) (l Leg, ok bool) {
	if !beginsWithSplice(r) {
		return l, false // as nearly every row: what follows costs memory
	}
	w := strings.Fields(joined(r))
	for n := min(2, len(w)); n > 0; n-- {
		called := strings.TrimRight(strings.Join(w[:n], " "), ",:;")
		if !name.IsSpliceName(called) {
			continue
		}
		if slices.ContainsFunc(w[n:], func(s string) bool { return parts(s) == certain || name.IsPinWord(table.Fold(s)) }) {
			return l, false // "S101 pin 1 to S102 pin 3, red" is a wire
		}
		t := tailOf(strings.TrimRight(strings.Join(w[n:], " "), ":"))
		if !strings.Contains(called, " ") && t.colour == "" && t.size == "" {
			return l, false // "S1 - Speed sensor"
		}
		return Leg{Splice: name.SpliceID(called), Signal: t.signal, Colour: t.colour, Size: t.size, Note: t.note}, true
	}
	return l, false
}

// beginsWithSplice reports whether the first word of a row, or the first two, name a splice.
func beginsWithSplice(r table.Row) bool {
	n, text := r.Filled()
	if n == 0 {
		return false
	}
	text = strings.TrimSpace(text)
	at := strings.IndexByte(text, ' ')
	if at < 0 {
		if name.IsSpliceName(strings.TrimRight(text, ",:;")) {
			return true
		}
		for _, c := range r.Cells { // the second word stands in the next cell
			if c = strings.TrimSpace(c); c != "" && c != text {
				c, _, _ = strings.Cut(c, " ")
				return name.IsSpliceName(text + " " + strings.TrimRight(c, ",:;"))
			}
		}
		return false
	}
	if next := strings.IndexByte(text[at+1:], ' '); next > 0 && name.IsSpliceName(strings.TrimRight(text[:at+1+next], ",:;")) {
		return true
	}
	return name.IsSpliceName(strings.TrimRight(text[:at], ",:;")) || name.IsSpliceName(strings.TrimRight(text, ",:;"))
}

// legOf reads a line of a splice: a word for a leg or an arrow or none, the far end, and behind it a length and values of its own.
func legOf(text string, l Leg) (Leg, bool) {
	w := strings.Fields(text)
	at := 0
	for at < len(w) && at < 2 && (isLegWord(w[at]) || leadsTo(w[at])) {
		if !leadsTo(w[at]) {
			l.Note = value.JoinNonEmpty("; ", l.Note, strings.TrimRight(w[at], ":.,")) // which of them is the trunk
		}
		at++
	}
	e := endAt(w, at)
	bare := func(k int) string { return strings.TrimRight(w[k], ",;:") }
	switch {
	case e.words > 0:
	case at+1 < len(w) && bare(at) == w[at] && name.IsCavity(bare(at+1)) && strings.ToUpper(w[at]) == w[at] && !name.IsCavity(w[at]) &&
		len(name.Words(table.Fold(w[at]))) == 1:
		e = end{text: w[at] + ":" + bare(at+1), words: 2} // "ECU 8"
	default:
		return l, false
	}
	l.End = e.text
	rest := strings.TrimLeft(strings.Join(w[at+e.words:], " "), " ,;:-–—")
	first, behind, _ := strings.Cut(rest, " ")
	unit, more, _ := strings.Cut(behind, " ")
	switch number := strings.TrimRight(first, ",;"); {
	case number != "" && strings.Trim(number, "0123456789.") == "" && value.LengthWord(strings.TrimRight(unit, ",;")) != "":
		l.Length, rest = number+" "+strings.TrimRight(unit, ",;"), more
	case len(number) > 1 && strings.Trim(number, "0123456789") == "":
		l.Length, rest = number, behind
	case isLength(number):
		l.Length, rest = number, behind
	}
	t := tailOf(rest)
	if t.colour != "" {
		l.Colour = t.colour
	}
	if t.size != "" {
		l.Size = t.size
	}
	l.Note = value.JoinNonEmpty("; ", l.Note, t.signal, t.note)
	return l, true
}

// isLength reports whether a word is a number with a unit of length, "420mm".
func isLength(word string) bool {
	_, ok := value.ParseLength(word, "", value.MarkUnknown)
	return ok && strings.Trim(word, "0123456789.,") != ""
}

// isLegWord reports whether a word says that a leg is one.
func isLegWord(w string) bool {
	switch table.Fold(strings.TrimRight(w, ":.,")) {
	case "trunk", "leg", "branch", "main", "feed", "tail", "stem", "stamm", "abzweig", "zweig", "tronc",
		"branche", "tronco", "rama", "ramo":
		return true
	}
	return false
}

// leadsTo reports whether a sign or a word leads to the far end of a leg.
func leadsTo(w string) bool {
	from, to := arrow.In(w)
	return to == len(w) && from == 0 || strings.Trim(w, "-–—*•") == "" || parts(w) == certain || isFrom(w)
}
