package block

import (
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// pinsWithGaps reports whether some points are the cavities of a connector though their numbers leave some out, or nothing else
// says what they are: the numbers rise, and with a word for a cavity before each most of those in use say a colour, a size or where
// they go; without it all of them say a colour and where they go. Notes about a few cavities do not.
//
//   - pin 1: Lamp, white, to Desk 4
//   - pin 9: not connected
//   - pin 12: Bell, red, to Desk 5
func (f *finder) pinsWithGaps(points []table.Row) bool {
	last, used, valued, whole, said := 0, 0, 0, 0, true
	for _, r := range points {
		pin, text, _ := partPoint(r.Cells[0])
		at := name.Ordinal(pin)
		if at <= last {
			return false
		}
		said = said && saysPin(r.Cells[0])
		last = at
		if text == "" || name.StateOf(text) != name.Used {
			continue
		}
		used++
		p := partsOf(text)
		if p.colour != "" || p.size != "" || p.to != "" {
			valued++
		}
		if p.colour != "" && p.to != "" {
			whole++
		}
	}
	return used > 1 && (said && 4*valued >= 3*used || whole == used)
}

// valuesAmong parts a point whose pieces have commas between, and one of which is a colour: the name stands before it, and what is
// behind it is a size or a remark, "spare, yellow/brown, loose behind the panel".
func valuesAmong(text string) (p pointParts, ok bool) {
	pieces := strings.Split(text, ", ")
	at := -1
	for i, s := range pieces {
		if i == 0 || !isColour(strings.TrimSpace(s)) {
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
	p.signal, p.colour = strings.Join(pieces[:at], ", "), strings.TrimSpace(pieces[at])
	for _, s := range pieces[at+1:] {
		s = strings.TrimSpace(s)
		g, sized := value.ParseGauge(s, value.BareAWG, value.MarkUnknown)
		if sized && g.Size != "" && p.size == "" && strings.Trim(s, "0123456789.,") != "" {
			p.size = s
		} else {
			p.note = value.JoinNonEmpty(", ", p.note, s)
		}
	}
	return p, true
}
