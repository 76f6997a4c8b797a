package point

import (
	"strings"

	"contralay/model/wirelist/value"
)

// valuesAmong parts a point whose pieces have commas between, and one of which is a colour: the name stands before it, and what is
// behind it is a size or a remark, "spare, yellow/brown, loose behind the panel".
func valuesAmong(text string) (p Parts, ok bool) {
	pieces := strings.Split(text, ", ")
	at := -1
	for i, s := range pieces {
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
	return p, true
}
