package alike

import (
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/words"
)

// placesBehind takes what stands last in each of some lines, behind the values of its wire, for where the wire goes: most of these texts
// are things by their words, or ends, and one is so beyond doubt.
//
//	1: horn — yellow 0.75 mm² — horn relay
//	2: rev counter — white 0.5 mm² — ECU pin 18
//	3: feed — red 1.5 mm² — comes from fuse F4
func (l *lot) placesBehind(lines []Line) {
	isOpen := func(line *Line) bool {
		return line.To == "" && line.From == "" && line.Signal != "" && (line.Colour != "" || line.Size != "") && hasLetter(line.Remark) &&
			name.StateOf(line.Signal) == name.Used
	}
	valued, open, places, sure := 0, 0, 0, 0
	for i := range lines {
		if lines[i].Colour != "" || lines[i].Size != "" {
			valued++
		}
		if !isOpen(&lines[i]) {
			continue
		}
		open++
		place, certain := placeOf(lines[i].Remark)
		if place != "" {
			places++
		}
		if certain {
			sure++
		}
	}
	if open < 2 || 2*open < valued || 3*places < 2*open || sure == 0 && (places < open || open < 3) {
		return
	}
	for i := range lines {
		line := &lines[i]
		if !isOpen(line) {
			continue
		}
		if place, _ := placeOf(line.Remark); place != "" {
			line.To, line.Remark = place, ""
		}
	}
}

// placeOf is the place that a text names, without the words that lead to it; "" where it names none. certain: by more than what kind
// of thing it is.
func placeOf(text string) (place string, certain bool) {
	if !isShort(text) || strings.ContainsAny(text, ";,") {
		return "", false
	}
	place, certain = otherEnd(text)
	switch {
	case certain:
		return place, true
	case saysEnd(text), name.IsDesignator(text) && strings.ContainsAny(text, "0123456789"):
		return text, true
	case words.IsThing(text):
		return text, false
	}
	return "", false
}
