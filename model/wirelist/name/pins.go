package name

import (
	"slices"
	"strconv"
	"strings"

	"contralay/model/catalogue"
	"contralay/model/wirelist/value"
)

// SplitPins parts a cell that names several cavities of one net: "L,M", "L & M", "L/M",
// "1+2", "L and M", "A14 A15", and two lines of a cell. One cavity gives itself, "+" and
// "B+" too. A range is one name here: spread parts it.
func SplitPins(cell string) []string {
	if IsCavity(cell) {
		return []string{cell}
	}
	for _, word := range joiningWords() {
		cell = strings.ReplaceAll(cell, word, ",")
	}
	var pins []string
	for _, p := range strings.FieldsFunc(cell, func(r rune) bool { return r == ',' || r == ';' || r == '&' }) {
		from := 0
		for i := 1; i+1 < len(p); i++ {
			// + and / are names of cavities too: they part only what stands on both sides.
			if (p[i] == '+' || p[i] == '/') && strings.Trim(p[from:i], " +-/") != "" && strings.Trim(p[i+1:], " +-/") != "" {
				pins = append(pins, strings.TrimSpace(p[from:i]))
				from = i + 1
			}
		}
		p = WithoutPinWord(strings.TrimSpace(p[from:]))
		switch fields := strings.Fields(p); {
		case p == "":
		case alikeCavities(fields):
			pins = append(pins, fields...)
		default:
			pins = append(pins, p)
		}
	}
	return pins
}

func joiningWords() []string { return []string{" and ", " und ", " et ", " e ", " y "} }

// WithoutPinWord takes the word for a cavity off its name: "pin 3", "cav. A", "#7".
func WithoutPinWord(p string) string {
	f := value.Fold(p)
	for _, lead := range []string{"pin", "cavity", "cav", "way", "terminal", "kammer", "broche", "#"} {
		rest, ok := strings.CutPrefix(f, lead)
		if name := strings.TrimLeft(rest, " .:#"); ok && len(f) == len(p) && name != "" && (name != rest || lead == "#") {
			return p[len(p)-len(name):]
		}
	}
	return p
}

// IsCavity: a name as connectors have them: up to two letters, up to three digits, one
// letter more: "7", "A12", "b", "12a".
func IsCavity(s string) bool {
	lead, digits, tail := cavityParts(s)
	return len(s) > 0 && len(lead) <= 2 && len(digits) <= 3 &&
		(len(tail) == 0 || len(tail) == 1 && value.IsLetter(tail[0]) && digits != "") && (digits != "" || len(lead) == 1)
}

// cavityParts is the letters, the digits behind them, and what is left.
func cavityParts(s string) (lead, digits, tail string) {
	i := 0
	for i < len(s) && value.IsLetter(s[i]) && s[i] < 0x80 {
		i++
	}
	j := i
	for j < len(s) && value.IsDigit(s[j]) {
		j++
	}
	return s[:i], s[i:j], s[j:]
}

// alikeCavities: two names or more that are built alike, as those of one connector are.
// "A 1" is one cavity, written apart.
func alikeCavities(all []string) bool {
	if len(all) < 2 || !IsCavity(all[0]) {
		return false
	}
	lead, digits, tail := cavityParts(all[0])
	for _, s := range all[1:] {
		l, d, t := cavityParts(s)
		if !IsCavity(s) || len(l) != len(lead) || (d == "") != (digits == "") || len(t) != len(tail) {
			return false
		}
	}
	return true
}

// mostSpread is how many cavities a range may have; more is no range that a person wrote
// (no source).
const mostSpread = 64

// Spread gives the cavities of a range: "10-12", "A16-A18", "A16-18", "10 to 12", and
// "N-R" of an insert, whose letters are not all there; without one "A..C", where no letter
// is in it that connectors leave out. sure says that it can be nothing
// else; "10-12" can be the name of one. ok is false where it is no range.
func Spread(pin string, ins *catalogue.Insert) (all []string, sure, ok bool) {
	if IsCavity(pin) {
		return nil, false, false // most are; they are not looked at further
	}
	f := strings.ReplaceAll(strings.ReplaceAll(strings.ReplaceAll(pin, "–", "-"), "—", "-"), "…", "..")
	a, b := "", ""
	for _, mark := range []string{" to ", " thru ", " through ", " bis ", "..", "-"} {
		if x, y, found := strings.Cut(f, mark); found {
			a, b, sure = strings.TrimSpace(x), strings.TrimLeft(strings.TrimSpace(y), "."), mark != "-"
			break
		}
	}
	if !IsCavity(a) || !IsCavity(b) {
		return nil, false, false
	}
	if ins != nil {
		i, j := slices.Index(ins.Cavities, a), slices.Index(ins.Cavities, b)
		if i >= 0 && j > i && j-i < mostSpread {
			return slices.Clone(ins.Cavities[i : j+1]), true, true
		}
		return nil, false, false
	}
	if sure && len(a) == 1 && len(b) == 1 && value.IsLetter(a[0]) && value.IsLetter(b[0]) && a < b &&
		strings.ToUpper(a) == a == (strings.ToUpper(b) == b) {
		for c := a[0]; c <= b[0]; c++ {
			if strings.IndexByte("ioqIOQ", c) >= 0 {
				return nil, false, false // some connectors have no such cavity
			}
			all = append(all, string(c))
		}
		return all, true, true
	}
	l1, d1, t1 := cavityParts(a)
	l2, d2, t2 := cavityParts(b)
	m, err1 := strconv.Atoi(d1)
	n, err2 := strconv.Atoi(d2)
	if err1 != nil || err2 != nil || t1 != "" || t2 != "" || l2 != "" && l2 != l1 || m >= n || n-m >= mostSpread {
		return nil, false, false
	}
	for k := m; k <= n; k++ {
		all = append(all, l1+padded(k, d1))
	}
	return all, sure || l1 != "" && l1 == l2, true
}

// padded writes a number with as many digits as the first of its range, "08".
func padded(n int, like string) string {
	s := strconv.Itoa(n)
	if strings.HasPrefix(like, "0") && len(s) < len(like) {
		s = strings.Repeat("0", len(like)-len(s)) + s
	}
	return s
}

// LooksLikeRange: two numbers or two single letters with a dash between, rising.
func LooksLikeRange(pin string) bool {
	if IsCavity(pin) {
		return false
	}
	if _, _, ok := Spread(pin, nil); ok {
		return true
	}
	a, b, ok := strings.Cut(strings.NewReplacer("–", "-", "...", "-", "…", "-", "..", "-", " to ", "-", " bis ", "-").Replace(pin), "-")
	a, b = strings.TrimSpace(a), strings.TrimSpace(b)
	return ok && len(a) == 1 && len(b) == 1 && value.IsLetter(a[0]) && value.IsLetter(b[0]) && a < b
}

// SplitEnd parts one cell that names a connector and a cavity: "X1:3", "P1-A",
// "P1/A", "P1.A", "P1 pin A", "P1(3)", "P1[3]", "P1 #3", "P1_3", "P1, 3". ok is false where it names no
// cavity, as "n/c" and the name of a splice, "SP-2", do not.
func SplitEnd(cell string) (connector, pin string, ok bool) {
	if !strings.Contains(cell, ":") && (stateWord(cell) != Used || IsUnknown(cell) || IsSpliceName(cell)) {
		return strings.TrimSpace(cell), "", false
	}
	if name, pin := inBrackets(cell); pin != "" {
		return name, pin, true
	}
	if i := strings.LastIndexByte(cell, ':'); i > 0 {
		connector, pin = cell[:i], cell[i+1:]
	} else if front, minus := strings.CutSuffix(cell, "--"); minus && front != "" { // the pole "-" of P1
		connector, pin = front, "-"
	} else if i := strings.LastIndex(value.Fold(cell), " pin "); i > 0 && len(value.Fold(cell)) == len(cell) {
		connector, pin = cell[:i], cell[i+5:]
	} else if i := strings.LastIndex(cell, " #"); i > 0 && IsCavity(strings.TrimSpace(cell[i+2:])) {
		connector, pin = cell[:i], cell[i+2:]
	} else if i := strings.LastIndexByte(cell, '_'); i > 0 && IsDesignator(cell[:i]) && IsCavity(cell[i+1:]) {
		connector, pin = cell[:i], cell[i+1:]
	} else if i := strings.IndexAny(cell, ",;"); i > 0 && IsDesignator(strings.TrimSpace(cell[:i])) &&
		IsCavity(strings.TrimSpace(cell[i+1:])) {
		connector, pin = cell[:i], cell[i+1:]
	} else if i := strings.LastIndexAny(cell, "-/."); i > 0 && len(cell)-i-1 <= 3 {
		connector, pin = cell[:i], cell[i+1:]
	}
	connector, pin = strings.TrimSpace(connector), strings.TrimSpace(pin)
	if connector == "" || pin == "" || strings.ContainsAny(pin, " ") {
		return strings.TrimSpace(cell), "", false
	}
	return connector, pin, true
}

// inBrackets parts "P1(21)" and "P1[A2]"; pin is "" where no cavity stands in brackets at the
// end of one word.
func inBrackets(cell string) (connector, pin string) {
	cell = strings.TrimSpace(cell)
	open := strings.IndexAny(cell, "([")
	if open < 1 || len(cell) < open+3 || strings.IndexByte("([", cell[open]) != strings.IndexByte(")]", cell[len(cell)-1]) {
		return "", ""
	}
	name, in := cell[:open], strings.TrimSpace(cell[open+1:len(cell)-1])
	if !IsCavity(in) || strings.ContainsAny(name, " :") {
		return "", ""
	}
	return name, in
}

// RemarkBehind parts the remark in brackets off an end that is whole without it: "P1.15 (was
// 16)". more is "" where there is none.
func RemarkBehind(cell string) (end, more string) {
	cell = strings.TrimSpace(cell)
	open := strings.LastIndexAny(cell, "([")
	if open < 1 || strings.IndexByte("([", cell[open]) != strings.IndexByte(")]", cell[len(cell)-1]) {
		return cell, ""
	}
	front := strings.TrimSpace(cell[:open])
	if _, pin, ok := SplitEnd(front); !ok || !IsCavity(pin) {
		return cell, ""
	}
	return front, strings.TrimSpace(cell[open+1 : len(cell)-1])
}

// place is a connector and a cavity as a cell names them.
type place struct{ Connector, Pin string }

// SplitEnds parts a cell that names several ends: "ECU:A6, ECU:A7", "ECU:A10 & A11",
// "ECU:A14 A15", "ECU:3 / TCU:7", "ECU:7 ECU:8". more is what stands behind the last cavity, "shield" of
// "ECU:3 (shield)". A cell without a colon gives none where it names one end.
func SplitEnds(cell string) (ends []place, more string) {
	if lines := strings.Fields(cell); strings.Contains(cell, " ") && len(lines) > 1 { // one under the other in the cell
		for _, l := range lines {
			if connector, pin, ok := SplitEnd(l); ok && IsCavity(pin) && strings.Trim(connector, ",;&/+") == connector {
				ends = append(ends, place{connector, pin})
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
		return []place{{strings.TrimSpace(name), pin}}, ""
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
func endsWithoutColon(cell string) (ends []place) {
	if !strings.ContainsAny(cell, ",;&/+ ") {
		return nil
	}
	for _, word := range joiningWords() {
		cell = strings.ReplaceAll(cell, word, ",")
	}
	for _, part := range strings.FieldsFunc(cell, func(r rune) bool { return strings.ContainsRune(",;&", r) }) {
		part = strings.TrimSpace(part)
		if part != "" && IsCavity(part) && len(ends) > 0 {
			ends = append(ends, place{ends[len(ends)-1].Connector, part})
			continue
		}
		pieces := strings.FieldsFunc(part, func(r rune) bool { return r == '/' || r == '+' })
		for k, p := range pieces {
			connector, pin, ok := SplitEnd(p)
			if !ok || !IsCavity(pin) || strings.ContainsAny(connector, "/+") {
				if connector, pin, ok = SplitEnd(part); k > 0 || !ok || !IsCavity(pin) {
					return nil
				}
				ends = append(ends, place{connector, pin}) // "P1/A": the stroke parts cavity and connector
				break
			}
			ends = append(ends, place{connector, pin})
		}
	}
	if len(ends) < 2 {
		return nil
	}
	return ends
}

// endsBetween parts a cell at the marks; it gives none where any piece is no end.
func endsBetween(parted, marks string) (ends []place, more string) {
	connector := ""
	for _, piece := range strings.FieldsFunc(parted, func(r rune) bool { return strings.ContainsRune(marks, r) }) {
		name, pins, found := strings.Cut(strings.TrimSpace(piece), ":")
		switch {
		case found:
			connector = strings.TrimSpace(name)
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
				ends = append(ends, place{connector, p})
			}
		}
	}
	return ends, strings.Trim(more, "() ")
}
