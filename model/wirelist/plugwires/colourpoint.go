package plugwires

import (
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/point"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// ColourPoint is what one point says that tells a wire of a plug by its colour; Colour is "" where it says none.
type ColourPoint struct {
	Colour, Size, Signal, To, Note string
	Unmarked                       bool // no sign parts its values
	Behind                         bool // its values stand in brackets, or commas part them, behind the name
}

// PartColour parts "red (20 AWG): horn feed", "red - horn feed", "horn feed: red", "horn feed (red, 20 AWG)", each with an arrow
// and a far end or without.
func PartColour(text string) (p ColourPoint) {
	text = strings.TrimSpace(strings.TrimLeft(strings.TrimSpace(text), "-*•·"))
	text, p.To = point.CutArrow(text)
	if front, back, ok := cutDots(text); ok {
		text = front + ": " + back
	}
	for _, mark := range []string{": ", " : ", " - ", " – ", " — ", " = ", "\t"} {
		front, back, ok := strings.Cut(text, mark)
		if !ok {
			continue
		}
		front, back = strings.TrimSpace(front), strings.TrimSpace(back)
		if p.Colour, p.Size = point.WireValues(front); p.Colour != "" && point.IsShortName(back) {
			p.Signal = back
			return p
		}
		if p.Colour, p.Size = point.WireValues(back); p.Colour != "" && point.IsShortName(front) {
			p.Signal = front
			return p
		}
	}
	if p.Colour, p.Size, p.Signal = point.Unmarked(text); p.Colour != "" {
		p.Unmarked = true
		return p
	}
	front, values := point.ValuesBehind(text)
	p.Colour, p.Size = point.WireValues(strings.Join(values, ", "))
	p.Behind = true
	if p.Signal = front; p.Colour == "" || front == "" || !point.IsShortName(front) {
		return ColourPoint{}
	}
	return p
}

// PartKin parts such a point.
func PartKin(text string) (p ColourPoint) {
	text = strings.TrimSpace(strings.TrimLeft(strings.TrimSpace(text), "-*•·"))
	if a, b, ok := cutDots(text); ok {
		text = a + ": " + b
	}
	front, back := text, ""
	for _, mark := range []string{": ", " : ", " - ", " – ", " — ", " = ", " ("} {
		if a, b, ok := strings.Cut(text, mark); ok {
			front, back = strings.TrimSpace(a), strings.TrimSpace(b)
			if mark == " (" {
				back = strings.TrimSuffix(back, ")")
			}
			break
		}
	}
	if !point.IsShortName(back) {
		return p
	}
	_, ok := value.ParseColour(front, "de")
	switch {
	case name.IsDrainWord(table.Fold(front)):
		return ColourPoint{Signal: front, Note: back}
	case ok && len(front) == 2 && back != "":
		return ColourPoint{Colour: front, Signal: back}
	}
	return p
}

// PartAny parts a point of either kind.
func PartAny(text string) ColourPoint {
	if p := PartColour(text); p.Colour != "" {
		return p
	}
	return PartKin(text)
}

// cutDots parts a line at the dots that lead from one text to the next, "yellow ..... constant 12 V".
func cutDots(text string) (front, back string, ok bool) {
	front, back, ok = strings.Cut(text, " ..")
	if !ok {
		front, back, ok = strings.Cut(text, "...")
	}
	front, back = strings.TrimRight(front, ". "), strings.TrimLeft(back, ". ")
	return front, back, ok && front != "" && back != ""
}
