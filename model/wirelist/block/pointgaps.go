package block

import (
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/point"
	"contralay/model/wirelist/table"
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
		pin, text, _ := point.Cut(r.Cells[0])
		at := name.Ordinal(pin)
		if at <= last {
			return false
		}
		said = said && point.SaysPin(r.Cells[0])
		last = at
		if text == "" || name.StateOf(text) != name.Used {
			continue
		}
		used++
		p := f.parts.Of(text)
		if p.Colour != "" || p.Size != "" || p.To != "" {
			valued++
		}
		if p.Colour != "" && p.To != "" {
			whole++
		}
	}
	return used > 1 && (said && 4*valued >= 3*used || whole == used)
}
