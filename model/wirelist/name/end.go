package name

import (
	"regexp"
	"strings"

	"contralay/model/wirelist/doingword"
	"contralay/model/wirelist/value"
)

// SplitEnd parts one cell that names a connector and a cavity: "X1:3", "P1-A", "P1/A", "P1.A", "P1 pin A", "P1(3)", "P1 #3", "P1_3",
// "P1, 3", "3@P1", "P1 1-4". ok is false where it names no cavity, as "n/c" and the name of a splice, "SP-2", do not.
func SplitEnd(cell string) (connector, pin string, ok bool) {
	if !strings.Contains(cell, ":") && (stateWord(cell) != Used || IsUnknown(cell) || IsSpliceName(cell)) {
		return strings.TrimSpace(cell), "", false
	}
	if name, pin := inBrackets(cell); pin != "" {
		return name, pin, true
	}
	if connector, pin, ok := splitAtPinWord(cell); ok && !strings.Contains(pin, ":") {
		return connector, pin, true
	}
	if connector, pin, ok := splitAround(cell); ok {
		return connector, pin, true
	}
	if i := strings.LastIndexByte(cell, ':'); i > 0 {
		connector, pin = cell[:i], cell[i+1:]
	} else if m := address.FindStringSubmatch(cell); m != nil {
		connector, pin = m[1], m[2] // "PLC Q0.1"
	} else if front, minus := strings.CutSuffix(cell, "--"); minus && front != "" { // the pole "-" of P1
		connector, pin = front, "-"
	} else if front, minus := strings.CutSuffix(cell, "/-"); minus && front != "" { // the pole behind a slash
		connector, pin = front, "-"
	} else if i := strings.LastIndex(cell, " #"); i > 0 && IsCavity(strings.TrimSpace(cell[i+2:])) {
		connector, pin = cell[:i], cell[i+2:]
	} else if i := strings.LastIndexByte(cell, '_'); i > 0 && IsDesignator(cell[:i]) && IsCavity(cell[i+1:]) {
		connector, pin = cell[:i], cell[i+1:]
	} else if i := strings.IndexAny(cell, ",;"); i > 0 && IsDesignator(strings.TrimSpace(cell[:i])) &&
		IsCavity(strings.TrimSpace(cell[i+1:])) {
		connector, pin = cell[:i], cell[i+1:]
	} else if i := strings.LastIndex(cell, " - "); i > 0 && len(cell)-i-3 <= 4 &&
		(strings.ToUpper(cell[i+3:]) == cell[i+3:] || IsCavity(cell[i+3:])) {
		connector, pin = cell[:i], cell[i+3:] // "Box - MAIN"
	} else if i := strings.LastIndexAny(cell, "-/."); i > 0 && len(cell)-i-1 <= 3 && !strings.HasPrefix(cell[i:], ". ") { // "Inj. 2"
		connector, pin = cell[:i], cell[i+1:]
	}
	connector, pin = strings.TrimSpace(connector), strings.TrimSpace(pin)
	if connector == "" || pin == "" || strings.ContainsAny(pin, " ") {
		return strings.TrimSpace(cell), "", false
	}
	return connector, pin, true
}

// address is a device that has inputs and outputs, and the address of one.
var address = regexp.MustCompile(`^(\pL.*) (%?(?:[IQE]|[DA][IOQ]|[IQ]X)\d{1,2}\.\d{1,2})$`)

// inBrackets parts "P1(21)" and "P1[A2]"; pin is "" where no cavity stands in brackets at the
// end of one word.
func inBrackets(cell string) (connector, pin string) {
	cell = strings.TrimSpace(cell)
	open := strings.IndexAny(cell, "([")
	if open < 1 || len(cell) < open+3 || strings.IndexByte("([", cell[open]) != strings.IndexByte(")]", cell[len(cell)-1]) {
		return "", ""
	}
	name, in := cell[:open], strings.TrimSpace(cell[open+1:len(cell)-1])
	if in == "+" || in == "-" {
		return strings.TrimSpace(name), in // the pole of a device
	}
	if !IsCavity(in) || strings.ContainsAny(name, " :") {
		return "", ""
	}
	return name, in
}

// RemarkBehind parts the remark in brackets off an end that is whole without it: "P1.15 (was
// 16)". more is "" where there is none.
func RemarkBehind(cell string) (end, more string) {
	cell = strings.TrimSpace(cell)
	for _, word := range []string{" via ", " through ", " uber ", " über "} {
		if front, back, ok := strings.Cut(cell, word); ok {
			if _, pin, named := SplitEnd(front); named && IsCavity(pin) {
				return strings.TrimSpace(front), strings.TrimSpace(word + back)
			}
		}
	}
	open := strings.LastIndexAny(cell, "([")
	if open < 1 || strings.IndexByte("([", cell[open]) != strings.IndexByte(")]", cell[len(cell)-1]) {
		return cell, ""
	}
	front := strings.TrimSpace(cell[:open])
	in := strings.TrimSpace(cell[open+1 : len(cell)-1])
	if _, pin, ok := SplitEnd(front); (!ok || !IsCavity(pin)) && !saysCurrent(in) && !isSaidOf(front, in) && !doingword.Says(in) {
		return cell, ""
	}
	return front, in
}

// isSaidOf reports whether a text in brackets is a remark on the end before them: that ends in its cavity, and the text has the words
// of a remark, "Lamp 4 (the other one is looped off it)".
func isSaidOf(front, in string) bool {
	const least = 4 // words (no source)
	w := strings.Fields(front)
	return len(w) > 1 && IsCavity(w[len(w)-1]) && strings.ContainsAny(w[len(w)-1], "0123456789") && len(strings.Fields(in)) >= least
}

// saysCurrent reports whether a text names a current, "through 20 A": a remark about the wire, and no name of a device.
func saysCurrent(text string) bool {
	all := strings.Fields(text)
	for i, w := range all {
		if _, ok := value.ParseCurrent(w, false, value.MarkUnknown); ok && strings.Trim(w, "0123456789.,") != "" {
			return true
		}
		if i > 0 && (w == "A" || w == "Amp" || w == "amp") {
			if _, ok := value.ParseCurrent(all[i-1]+" "+w, false, value.MarkUnknown); ok {
				return true
			}
		}
	}
	return false
}

// End is a connector and a cavity as a cell names them.
type End struct{ Connector, Pin string }

// SplitEnds parts a cell that names several ends: "ECU:A6, ECU:A7", "ECU:A10 & A11", "ECU:A14
// A15", "ECU:3 / TCU:7", "ECU:7 ECU:8". more is what stands behind the last cavity, "shield" of
// "ECU:3 (shield)". A cell without a colon gives none where it names one end.
func SplitEnds(cell string) (ends []End, more string) {
	if lines := strings.Fields(cell); strings.Contains(cell, " ") && len(lines) > 1 { // one under the other in the cell
		for _, l := range lines {
			if connector, pin, ok := SplitEnd(l); ok && IsCavity(pin) && strings.Trim(connector, ",;&/+") == connector {
				ends = append(ends, End{connector, pin})
			}
		}
		if len(ends) == len(lines) {
			return ends, ""
		}
		ends = nil
	}
	if !strings.Contains(cell, ":") {
		return endsWithoutColon(cell), ""
	}
	if name, pin, _ := strings.Cut(cell, ":"); IsCavity(pin) && name != "" && !strings.ContainsAny(name, ",;&") {
		return []End{{strings.TrimSpace(name), pin}}, ""
	}
	marks := ",;&"
	if strings.Count(cell, ":") > 1 {
		marks += "/+"
	}
	parted := cell
	for _, word := range joiningWords() {
		parted = strings.ReplaceAll(parted, word, ",")
	}
	if ends, more = endsBetween(parted, marks); ends == nil && parted != cell {
		ends, more = endsBetween(cell, marks) // "Dash and console:A": the word is of the name
	}
	return ends, more
}

// endsWithoutColon parts "ECU.6 / ECU.7", "TPS-2 & MAP-2", "TPS pin 1, MAP pin 1" and
// "ECU-A6, A7": every piece is an end, or behind a mark that no cavity has a cavity. It gives
// none where there is one, and where any piece is none.
func endsWithoutColon(cell string) (ends []End) {
	if !strings.ContainsAny(cell, ",;&/+ ") {
		return nil
	}
	for _, word := range joiningWords() {
		cell = strings.ReplaceAll(cell, word, ",")
	}
	for _, part := range strings.FieldsFunc(cell, func(r rune) bool { return strings.ContainsRune(",;&", r) }) {
		part = strings.TrimSpace(part)
		if part != "" && IsCavity(part) && len(ends) > 0 {
			ends = append(ends, End{ends[len(ends)-1].Connector, part})
			continue
		}
		pieces := strings.FieldsFunc(part, func(r rune) bool { return r == '/' || r == '+' })
		for k, p := range pieces {
			connector, pin, ok := SplitEnd(p)
			if !ok || !IsCavity(pin) || strings.ContainsAny(connector, "/+") {
				if connector, pin, ok = SplitEnd(part); k > 0 || !ok || !IsCavity(pin) {
					return nil
				}
				ends = append(ends, End{connector, pin}) // "P1/A": the stroke parts cavity and connector
				break
			}
			ends = append(ends, End{connector, pin})
		}
	}
	if len(ends) < 2 {
		return nil
	}
	return ends
}

// isGroundCode reports whether a piece is a short form for the ground, a place of its own.
func isGroundCode(piece string) bool {
	switch strings.TrimRight(piece, "0123456789") {
	case "GND", "PE", "EARTH", "ERDE", "MASSE":
		return true
	}
	return false
}

// endsBetween parts a cell at the marks; it gives none where any piece is no end.
func endsBetween(parted, marks string) (ends []End, more string) {
	connector := ""
	for _, piece := range strings.FieldsFunc(parted, func(r rune) bool { return strings.ContainsRune(marks, r) }) {
		name, pins, found := strings.Cut(strings.TrimSpace(piece), ":")
		switch {
		case found:
			connector = strings.TrimSpace(name)
		case connector == "" && len(ends) == 0 && isGroundCode(strings.TrimSpace(piece)):
			ends = append(ends, End{Connector: strings.TrimSpace(piece)}) // "GND, M1:4"
			continue
		case connector == "":
			return nil, "" // "Relay, fuel pump:30": the comma is of the name
		default:
			pins = piece
		}
		if connector == "" || more != "" || strings.Contains(pins, ":") {
			return nil, ""
		}
		pins = WithoutPinWord(strings.TrimSpace(pins))
		fields := strings.Fields(pins)
		if _, _, ok := Spread(pins, nil); ok {
			fields = []string{pins}
		}
		switch {
		case len(fields) == 0, len(fields) > 1 && !IsCavity(fields[0]), !found && !IsCavity(fields[0]) && !LooksLikeRange(fields[0]):
			return nil, ""
		case len(fields) > 1 && !alikeCavities(fields):
			fields, more = fields[:1], strings.Join(fields[1:], " ")
		}
		for _, f := range fields {
			for _, p := range SplitPins(f) {
				ends = append(ends, End{connector, p})
			}
		}
	}
	return ends, strings.Trim(more, "() ")
}
