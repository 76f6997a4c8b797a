package alike

import (
	"slices"
	"strings"

	"contralay/model/wirelist/endtext"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/words"
)

// Cavities parts lines that tell a cavity of one connector each, with what its wire is, where it goes, or both.
// ok is false where most of them say neither, where a cavity comes twice, or where a line begins with none.
//
//	1: red, 20 AWG, ignition feed        3 | red/white | CAN H | Radio.1        A) horn - brown -> horn relay 85
func Cavities(texts []string) (lines []Line, ok bool) {
	lines = make([]Line, len(texts))
	rest := make([]string, len(texts))
	seen := map[string]bool{}
	for i, t := range texts {
		pin, _, more, ok := lead(t)
		if !ok || seen[pin] || strings.HasPrefix(more, "x ") || strings.HasPrefix(more, "× ") { // "2 x M4 screws"
			return nil, false
		}
		seen[pin] = true
		lines[i].Pin, rest[i] = pin, more
	}
	rest, twists := withoutTwists(poled(rest))
	near, far, arrows, parted := halves(rest)
	for _, part := range []func([]string) ([]string, []string, bool){lastTo, toOrFrom} {
		if n, f, cut := part(rest); cut && !arrows && (!parted || filledOf(f) > filledOf(far)) {
			near, far, parted = n, f, cut
		}
	}
	if parted && numbered(texts) && mostEnds(near) {
		return nil, false // they tell both ends, and are counted
	}
	if n, f, cut := farPieces(rest); cut && !arrows {
		near, far = n, f
	}
	l := newLot(near, far)
	l.fill(lines)
	l.farAmongNames(lines)
	l.placesBehind(lines)
	unpoled(lines)
	addTails(lines, twists)
	for i, t := range rest {
		if end := endtext.SeenEnd(t); end != "" {
			lines[i] = Line{Pin: lines[i].Pin, To: end} // the wire is told there
		}
	}
	var fars []*string
	for i := range lines {
		fars = append(fars, &lines[i].To)
	}
	sameEnds(fars)
	if arrows && strings.Join(near, "") == "" && !ToThings(texts) &&
		!slices.ContainsFunc(lines, func(l Line) bool { return l.Colour != "" || l.Size != "" }) {
		return nil, false // pads of two boards
	}
	said, used, refer, steps, more := 0, 0, 0, 0, false
	for i := range lines {
		line := &lines[i]
		if name.StateOf(rest[i]) != name.Used || rest[i] == "" {
			continue // "spare, taped back at the bulkhead for the heater of next year (grey)"
		}
		if line.Signal != "" && (!isShort(line.Signal) || isAmount(line.Signal)) {
			return nil, false
		}
		if end := endtext.SeenEnd(rest[i]); end != "" || endtext.SeenConnector(rest[i]) != "" {
			refer++
			more = more || end != ""
			continue
		}
		more = more || line.Signal != "" || line.To != "" || line.Size != ""
		if words.Instructs(rest[i]) {
			steps++
		}
		if used++; line.Colour != "" || line.Size != "" || line.To != "" {
			said++
		}
	}
	return lines, said+refer > 1 && 3*said >= 2*used && more && 2*steps <= used
}

// isAmount reports whether a text is how much there is of something: "5 m", "20 pcs", "3 off".
func isAmount(text string) bool {
	w := strings.Fields(strings.ToLower(text))
	if len(w) != 2 || strings.Trim(w[0], "0123456789.,") != "" {
		return false
	}
	switch w[1] {
	case "m", "mm", "cm", "ft", "in", "pcs", "pc", "off", "pieces", "metres", "meters", "metre", "stk", "st", "pz", "szt":
		return true
	}
	return false
}

// LeadOf is the sign between the cavity that a line begins with and the rest, "" for a blank; ok is false where it begins with none.
// free says that the rest is that the cavity is free.
func LeadOf(text string) (sign string, free, ok bool) {
	_, sign, rest, ok := lead(text)
	if ok && rest == "" && (sign == "-" || sign == "–" || sign == "—") {
		return sign, true, true // "6 -" fills a place that has no wire
	}
	return sign, name.StateOf(rest) != name.Used, ok && rest != ""
}

// numbered reports whether a full stop or a bracket stands behind what each line begins with.
func numbered(texts []string) bool {
	return !slices.ContainsFunc(texts, func(t string) bool {
		_, sign, _, _ := lead(t)
		return sign != "." && sign != ")"
	})
}

// mostEnds reports whether most of some texts are a device and its cavity.
func mostEnds(texts []string) bool {
	n := 0
	for _, t := range texts {
		if saysEnd(t) && isShort(t) && !slices.ContainsFunc(pieces(t, " - "), piece.isValue) {
			n++
		}
	}
	return 2*n > len(texts)
}

// filledOf counts the texts that say something.
func filledOf(texts []string) (n int) {
	for _, t := range texts {
		if t != "" {
			n++
		}
	}
	return n
}
