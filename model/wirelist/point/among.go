package point

import (
	"strings"

	"contralay/model/wirelist/value"
)

// valuesAmong parts a point whose pieces have commas between, and one of which is a colour: the name stands before it, and what is
// behind it is a size or a remark, "spare, yellow/brown, loose behind the panel".
func valuesAmong(text string) (p Parts, ok bool) {
	pieces := strings.Split(text, ", ")
	at, remark := -1, ""
	for i, s := range pieces {
		if bare, in := withoutRemark(strings.TrimSpace(s)); in != "" && i > 0 {
			pieces[i], remark = bare, in
			s = bare
		}
		if i == 0 || !IsColour(strings.TrimSpace(s)) {
			continue
		}
		if at >= 0 {
			return p, false // a second colour is of something else
		}
		at = i
	}
	if at < 0 || at == len(pieces)-1 {
		return p, false
	}
	p.Signal, p.Colour = strings.Join(pieces[:at], ", "), strings.TrimSpace(pieces[at])
	for _, s := range pieces[at+1:] {
		s = strings.TrimSpace(s)
		g, sized := value.ParseGauge(s, value.BareAWG, value.MarkUnknown)
		if sized && g.Size != "" && p.Size == "" && strings.Trim(s, "0123456789.,") != "" {
			p.Size = s
		} else {
			p.Note = value.JoinNonEmpty(", ", p.Note, s)
		}
	}
	p.Note = value.JoinNonEmpty(", ", p.Note, remark)
	return p, true
}

// withoutRemark parts a remark in brackets off a colour, "red (still to buy!)"; in is "" where none stands there, or a value of the wire.
func withoutRemark(text string) (bare, in string) {
	front, rest, ok := strings.Cut(text, " (")
	if in, closed := strings.CutSuffix(rest, ")"); ok && closed && IsColour(front) && !strings.ContainsAny(in, "()") &&
		!IsColourOrLetters(in) {
		if _, values := ValuesBehind(text); values == nil {
			return front, in
		}
	}
	return text, ""
}
