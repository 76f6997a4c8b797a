package block

import (
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// pinsWithGaps reports whether some points are the cavities of a connector though their numbers leave some out: a word for a cavity
// begins each, the numbers rise, and most of those in use say a colour, a size or where they go. Notes about a few cavities do not.
//
//   - pin 1: Lamp, white, to Desk 4
//   - pin 9: not connected
//   - pin 12: Bell, red, to Desk 5
func (f *finder) pinsWithGaps(points []table.Row) bool {
	last, used, said := 0, 0, 0
	for _, r := range points {
		pin, text, _ := partPoint(r.Cells[0])
		at := ordinal(pin)
		if !saysPin(r.Cells[0]) || at <= last {
			return false
		}
		last = at
		if text == "" || name.StateOf(text) != name.Used {
			continue
		}
		used++
		if p := partsOf(text); p.colour != "" || p.size != "" || p.to != "" {
			said++
		}
	}
	return used > 1 && 4*said >= 3*used
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
