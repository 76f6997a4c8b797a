package alike

import (
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/point"
	"contralay/model/wirelist/value"
)

// Line is what one line says of a wire; "" where it does not say it.
type Line struct {
	Pin                              string // of the connector that stands above the lines
	From                             string // the near end, where the line names it
	To, Signal, Colour, Size, Remark string
	ID                               string // the number of the wire
	Whole                            bool   // its ends name their devices: a heading above names a place
}

// piece is a part of a line between two marks.
type piece struct {
	text         string
	colour, size string // what it is, or holds beside the other
	aside        bool   // it stood in brackets behind a value
}

// isValue reports whether the piece is a colour, a size or both.
func (p piece) isValue() bool { return p.colour != "" || p.size != "" }

// asPiece says what a text is.
func asPiece(text string) piece {
	p := piece{text: strings.TrimSpace(text)}
	g, sized := value.ParseGauge(p.text, value.BareAWG, value.MarkUnknown)
	switch {
	case p.text == "" || name.StateOf(p.text) != name.Used:
	case len(p.text) == 3 && p.text[0] == '(': // "(G)" is a cavity
	case point.IsColour(p.text):
		p.colour = p.text
	case sized && g.Size != "" && strings.Trim(p.text, "0123456789()[] ") != "" && !name.IsCavity(p.text) &&
		(strings.Trim(p.text, "0123456789.,") != "" || value.IsSection(p.text)): // "3.3" is a voltage
		p.size = p.text
	case len(strings.Fields(p.text)) > mostWords || !hasSize(p.text):
	default:
		p.colour, p.size = point.WireValues(p.text)
		p.colour, p.size = strings.Trim(p.colour, ",; "), strings.Trim(p.size, ",; ")
	}
	return p
}

// hasSize reports whether a text can hold a size or the name of a colour beside other words.
func hasSize(text string) bool {
	return strings.ContainsAny(text, "0123456789") || strings.ContainsAny(text, " (")
}

// marks are the signs that part the pieces of a line, the strongest first.
var marks = []string{" | ", "\t", " : ", ": ", " – ", " — ", " - ", "; ", ", ", " / "}

// cut parts a text at each mark.
func cut(text, mark string) (all []piece) {
	for p := range strings.SplitSeq(text, mark) {
		if p = strings.TrimSpace(p); p != "" {
			all = append(all, withAside(asPiece(p))...)
		}
	}
	return all
}

// commonMark is the strongest mark that stands equally often, once or more, in four of five texts; "" where none does.
func commonMark(texts []string) string {
	for _, mark := range marks {
		times := map[int]int{}
		filled := 0
		for _, t := range texts {
			if t != "" {
				filled++
				times[strings.Count(t, mark)]++
			}
		}
		for n, k := range times {
			if n > 0 && 5*k >= 4*filled {
				return mark
			}
		}
	}
	return ""
}

// pieces parts a text at the mark of its list; a piece that is no value is parted on where that brings out one.
func pieces(text, mark string) (all []piece) {
	text, inner := bracketed(text)
	remark := ""
	if inner == "" {
		text, remark = remarkBehind(text, mark)
	}
	if mark == "" {
		all = refine(asPiece(text))
	} else {
		for _, p := range cut(text, mark) {
			all = append(all, refine(p)...)
		}
	}
	if inner != "" {
		m := commonMark([]string{inner})
		if m == "" {
			m = ", "
		}
		all = append(all, cut(inner, m)...)
	}
	if remark != "" {
		all = append(all, piece{text: remark, aside: true})
	}
	return all
}

// remarkBehind parts a remark in brackets off the values that a text ends with: "red, 14 AWG (new, see photo)".
func remarkBehind(text, mark string) (front, remark string) {
	open := strings.LastIndex(text, " (")
	if open < 1 || !strings.HasSuffix(text, ")") {
		return text, ""
	}
	front = text[:open]
	last := front
	if at := strings.LastIndex(front, mark); mark != "" && at >= 0 {
		last = front[at+len(mark):]
	}
	if all := refine(asPiece(last)); !all[len(all)-1].isValue() {
		return text, ""
	}
	return front, text[open+2 : len(text)-1]
}

// bracketed parts brackets off the end of a text, where they hold a value of the wire.
func bracketed(text string) (front, inner string) {
	open := strings.LastIndexByte(text, '(')
	if open < 1 || !strings.HasSuffix(text, ")") {
		return text, ""
	}
	in := text[open+1 : len(text)-1]
	if len(in) == 1 { // "Box (G)": a cavity
		return text, ""
	}
	for _, mark := range []string{", ", "; ", " / ", " - "} {
		for _, p := range cut(in, mark) {
			if p.isValue() {
				return strings.TrimSpace(text[:open]), in
			}
		}
	}
	return text, ""
}

// refine parts a piece that is no value at the first mark that brings out a value.
func refine(p piece) []piece {
	if p.isValue() {
		return []piece{p}
	}
	for _, mark := range marks {
		if !strings.Contains(p.text, mark) {
			continue
		}
		sub := cut(p.text, mark)
		for _, s := range sub {
			if len(sub) > 1 && s.isValue() {
				var all []piece
				for _, s := range sub {
					all = append(all, refine(s)...)
				}
				return all
			}
		}
	}
	return []piece{p}
}
