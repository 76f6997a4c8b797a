package pieces

import (
	"strings"

	"contralay/model/wirelist/name"
)

// lineOrMore reads a line that tells one wire, or several of one device.
//
//	left headlamp plug: A white high, B yellow low, C black earth
//	Fuse box - red 2.5 mm² to ECU pin 1, orange 1.5 mm² to pump relay 30
func (r reader) lineOrMore(text string) (*line, bool) {
	for _, parts := range [][]string{ofPlug(text), r.ofDevice(text)} {
		var all []*line
		for _, part := range parts {
			l, ok := r.line(part)
			if !ok || !l.sure() {
				all = nil
				break
			}
			all = append(all, l)
		}
		if len(all) > 1 {
			all[0].more = all[1:]
			return all[0], true
		}
	}
	return r.line(text)
}

// ofPlug parts what a line says of the cavities of one plug; nil where it does not: each of its parts begins with a cavity.
func ofPlug(text string) (all []string) {
	plug, behind, ok := strings.Cut(text, ": ")
	if !ok || len(strings.Fields(plug)) > mostText {
		return nil
	}
	for part := range strings.FieldsFuncSeq(behind, func(r rune) bool { return r == ',' || r == ';' || r == '\t' }) {
		pin, rest := firstWord(part)
		if pin = strings.TrimRight(pin, ":=."); !name.IsCavity(pin) || rest == "" {
			return nil
		}
		all = append(all, plug+" pin "+pin+", "+strings.TrimLeft(rest, "=-:– "))
	}
	return all
}

// ofDevice parts what a line says of the wires that start at one device; nil where it does not: each of its parts says where it goes.
func (r reader) ofDevice(text string) (all []string) {
	for _, mark := range []string{" - ", " – ", ": "} {
		device, behind, ok := strings.Cut(text, mark)
		if !ok || len(strings.Fields(device)) > mostText || device == "" {
			continue
		}
		for part := range strings.FieldsFuncSeq(behind, func(r rune) bool { return r == ',' || r == ';' || r == '\t' }) {
			cut := r.atTo(strings.TrimSpace(part))
			if len(cut) != 2 || cut[0].text == "" || !cut[1].to {
				return nil
			}
			all = append(all, device+" to "+cut[1].text+", "+cut[0].text)
		}
		return all
	}
	return nil
}
