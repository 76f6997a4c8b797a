package runline

import (
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/point"
)

// behindEnd parts a line that begins with the cavity of a connector and a colon, and says behind them what the wire is and where it goes:
// "J1 pin 1: red 20 AWG to F3". A cavity that is free goes nowhere.
func behindEnd(text string) (from, to string, rest []string) {
	front, back, ok := strings.Cut(text, ": ")
	front, back = strings.TrimSpace(front), strings.TrimSpace(back)
	if !ok || !IsPlainEnd(front) && !name.SaysPin(front) {
		return "", "", nil
	}
	if name.StateOf(back) != name.Used {
		return front, back, []string{"", "", "", ""}
	}
	p := point.PartsOf(back)
	if p.To == "" || p.Colour == "" && p.Size == "" {
		return "", "", nil
	}
	far, values := point.ValuesBehind(p.To)
	for _, v := range values {
		if point.IsColour(v) && p.Colour == "" {
			p.Colour, p.To = v, far
		} else if !point.IsColour(v) && p.Size == "" {
			p.Size, p.To = v, far
		}
	}
	return front, p.To, []string{p.Colour, p.Size, p.Note, p.Signal}
}
