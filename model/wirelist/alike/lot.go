package alike

import (
	"slices"
	"strconv"
	"strings"
	"unicode"

	"contralay/model/wirelist/cable"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
	"contralay/model/wirelist/words"
)

// lot is the pieces of some lines, those before the arrow and those behind it.
type lot struct {
	near, far [][]piece
	ends      bool // each line names its near end, too
}

func newLot(near, far []string) *lot {
	l := &lot{near: allPieces(near), far: allPieces(far)}
	for _, side := range [][][]piece{l.near, l.far} {
		if !l.sized() && !colouredSizes(side) {
			bareSizes(side)
		}
		wholeSections(side)
		currentsAside(side)
	}
	return l
}

// sized reports whether some piece is a size.
func (l *lot) sized() bool {
	for _, side := range [][][]piece{l.near, l.far} {
		for _, all := range side {
			if slices.ContainsFunc(all, func(p piece) bool { return p.size != "" }) {
				return true
			}
		}
	}
	return false
}

// bareSizes takes numbers without unit for sizes, where a colour stands in most lines and the piece at one place of all those is a
// number that wires have as their gauge or their section.
func bareSizes(side [][]piece) {
	for at := range 4 { // places that are looked at (no source)
		lines, bare, volts := 0, 0, 0
		for _, all := range side {
			if slices.ContainsFunc(all, piece.isValue) {
				if lines++; at < len(all) && isGauge(all[at].text) {
					bare++
					if t := all[at].text; t == "12" || t == "24" {
						volts++
					}
				}
			}
		}
		if lines < 2 && !soleSection(side, at) || bare < lines || 2*lines < len(side) ||
			volts == lines { // 12 or 24 in each line is as likely a voltage
			continue
		}
		for _, all := range side {
			if at < len(all) && isGauge(all[at].text) {
				all[at].size = all[at].text
			}
		}
		return
	}
}

// soleSection reports whether the one line with a colour has a section of wire with its decimals at a place right beside it.
func soleSection(side [][]piece, at int) bool {
	for _, all := range side {
		if k := slices.IndexFunc(all, piece.isValue); k >= 0 {
			return at < len(all) && (k == at+1 || k == at-1) && value.IsSection(all[at].text)
		}
	}
	return false
}

// isGauge reports whether a text is a number that wires of a harness have as their gauge, AWG 4 to 28, or with decimals as their
// section in mm².
func isGauge(text string) bool {
	if value.IsSection(text) {
		return true
	}
	n, err := strconv.Atoi(text)
	return err == nil && n >= 4 && n <= 28 && n%2 == 0
}

// allPieces are the pieces of each of some texts. Where no mark brings out a value, the words at one of their ends may be one.
func allPieces(texts []string) [][]piece {
	mark := commonMark(texts)
	all := make([][]piece, len(texts))
	values, filled, used := 0, 0, 0
	for i, t := range texts {
		if t == "" {
			continue
		}
		if name.StateOfSignal(t) == name.Used {
			used++
		}
		if all[i] = pieces(t, mark); slices.ContainsFunc(all[i], piece.isValue) {
			values++
		} else if name.StateOf(t) != name.Used {
			continue
		}
		filled++
	}
	if 2*values >= filled {
		return withNamed(texts, all, mark)
	}
	for k, from := range []func(string) (string, piece){bareBehind, bareBefore, valueBehind, valueBefore} {
		found := 0
		made := slices.Clone(all)
		for i, t := range texts {
			if rest, v := from(t); v.isValue() {
				made[i] = append(pieces(rest, mark), v)
				found++
			}
		}
		if found > 1 && 5*found >= 4*used && !(k < 2 && areVolts(made)) {
			return colourBefore(made)
		}
	}
	return all
}

// mostWords is how many words a colour and a size have (no source).
const mostWords = 5

// valueBehind parts the value off the end of a text, as many words as are one; what is left is not empty.
func valueBehind(text string) (rest string, v piece) {
	w := strings.Fields(text)
	for n := min(mostWords, len(w)-1); n > 0; n-- {
		if v := asPiece(strings.Join(w[len(w)-n:], " ")); v.isValue() {
			return withLamp(withoutEndSigns(strings.Join(w[:len(w)-n], " ")), v)
		}
	}
	return text, piece{}
}

// valueBefore parts the value off the front of a text.
func valueBefore(text string) (rest string, v piece) {
	w := strings.Fields(text)
	for n := min(mostWords, len(w)-1); n > 0; n-- {
		if v := asPiece(strings.TrimRight(strings.Join(w[:n], " "), ",;:")); v.isValue() {
			if n+1 < len(w) && (w[n] == "-" || w[n] == "–") {
				n++ // "red - 12 V supply"
			}
			return strings.Join(w[n:], " "), v
		}
	}
	return text, piece{}
}

// fill gives each line what its pieces say.
func (l *lot) fill(lines []Line) {
	named, asides := l.namesInBrackets(), l.remarksAside()
	for i := range lines {
		line := &lines[i]
		names, behind := line.take(l.near[i]), line.take(l.far[i])
		var lengths []string
		if l.ends {
			names, behind, lengths = withoutLengths(names, behind)
			line.From, names = lastEnd(names)
			if called, end := nameBeforeEnd(line.From); end != "" {
				line.From, names = end, append(names, called)
			}
			line.From = withoutFrom(line.From)
		}
		line.To, behind = firstEnd(behind)
		if front, inner := nameInBrackets(line.To); named && len(names) == 0 && len(behind) == 0 && inner != "" {
			line.To, names = front, []string{inner}
		}
		if len(names) == 0 && len(behind) > 0 && isShort(behind[0]) && !cable.Words(behind[0]).IsCable() &&
			!isBidding(behind[0]) {
			names, behind = behind[:1], behind[1:]
		}
		if at := slices.IndexFunc(names, hasLetter); at > 0 { // a number alone names no wire where a word can
			names[0], names[at] = names[at], names[0]
		}
		if len(names) > 0 {
			line.Signal = withoutOuter(names[0])
			if to, ok := withoutTo(names[len(names)-1]); ok && line.To == "" {
				if line.To = to; len(names) == 1 {
					line.Signal = ""
				}
				names = names[:len(names)-1]
			}
			if len(names) > 1 {
				behind = append(slices.Clone(names[1:]), behind...)
			}
		}
		line.To = words.WithoutArticle(line.To)
		if asides != nil {
			behind = append(behind, asides[i]...)
		}
		line.Remark = strings.Join(append(behind, lengths...), "; ")
	}
}

// isBidding reports whether a text says what to do with a wire, "keep it short", "tenere corto": it is no name of one.
func isBidding(text string) bool {
	first, rest, _ := strings.Cut(text, " ")
	switch table.Fold(first) {
	case "keep", "route", "leave", "tie", "mind", "tenere", "garder", "houden", "dejar":
		return rest != ""
	}
	return false
}

// namesInBrackets reports whether most far sides end with a name in brackets; where one does, it is another name of the end.
func (l *lot) namesInBrackets() bool {
	far, named := 0, 0
	for _, all := range l.far {
		if len(all) > 0 {
			far++
			if _, inner := nameInBrackets(all[len(all)-1].text); inner != "" {
				named++
			}
		}
	}
	return named > 1 && 3*named >= 2*far
}

// nameInBrackets parts the name of a wire in brackets off its far end, "fuse box F2 (switched 12 V)": one word that can be a cavity is
// that, capitals alone are what a board calls its pad, "Pi pin 3 (GPIO2)", and a free end has none.
func nameInBrackets(end string) (front, inner string) {
	open := strings.LastIndex(end, " (")
	if open < 1 || !strings.HasSuffix(end, ")") {
		return end, ""
	}
	inner = end[open+2 : len(end)-1]
	if saysPin(inner) || !isShort(inner) || !strings.ContainsFunc(inner, unicode.IsLower) || name.StateOf(inner) != name.Used {
		return end, ""
	}
	return end[:open], inner
}

// withoutOuter takes the brackets off a text that stands in them as a whole.
func withoutOuter(text string) string {
	if in, ok := strings.CutPrefix(text, "("); ok {
		if in, ok := strings.CutSuffix(in, ")"); ok && in != "" && !strings.ContainsAny(in, "()") {
			return in
		}
	}
	return text
}

func hasLetter(text string) bool { return strings.ContainsFunc(text, unicode.IsLetter) }

// take keeps the colour and the size of some pieces, the first of each, and gives back the other texts.
func (line *Line) take(all []piece) (names []string) {
	for _, p := range all {
		switch {
		case p.colour != "" && line.Colour == "" && (p.size == "" || line.Size == ""):
			line.Colour = p.colour
			if p.size != "" {
				line.Size = p.size
			}
		case p.colour == "" && p.size != "" && line.Size == "":
			line.Size = p.size
		default:
			names = append(names, p.text)
		}
	}
	return names
}

// firstEnd takes the far end off some texts: the first of them, and its cavity where the next one is that.
func firstEnd(texts []string) (end string, rest []string) {
	switch {
	case len(texts) == 0:
		return "", nil
	case len(texts) > 1 && saysPin(texts[1]) && isDevice(texts[0]):
		return withCavity(texts[0], texts[1]), texts[2:]
	}
	return texts[0], texts[1:]
}

// lastEnd takes the near end off some texts: the last of them, with the device before it where it is a cavity.
func lastEnd(texts []string) (end string, rest []string) {
	n := len(texts)
	switch {
	case n == 0:
		return "", nil
	case n > 1 && saysPin(texts[n-1]) && isDevice(texts[n-2]):
		return withCavity(texts[n-2], texts[n-1]), texts[:n-2]
	}
	return texts[n-1], texts[:n-1]
}

// isDevice reports whether a text can be what a cavity behind it belongs to: "J1", and neither "pin 3" nor "31", nor "pot pin A", which
// has its cavity.
func isDevice(text string) bool {
	w := strings.Fields(text)
	return strings.ContainsFunc(text, unicode.IsLetter) && !(len(w) > 1 && saysPin(strings.Join(w[len(w)-2:], " ")))
}

// withCavity puts a device and its cavity together.
func withCavity(device, cavity string) string { return device + ":" + name.WithoutPinWord(cavity) }

// withoutTo takes a word off that says that where the wire goes follows.
func withoutTo(text string) (to string, ok bool) {
	for _, w := range toWords {
		if w = strings.TrimLeft(w, " "); len(text) > len(w) && strings.EqualFold(text[:len(w)], w) {
			return strings.TrimSpace(text[len(w):]), true
		}
	}
	return text, false
}

// farAmongNames finds the far ends among the names of lines that have no arrow: the second names, where most of them say a cavity
// of a device, or come again where the first ones do not.
func (l *lot) farAmongNames(lines []Line) {
	first, second := map[string]bool{}, map[string]bool{}
	n, pinned, firstPinned := 0, 0, 0
	for i := range lines {
		if lines[i].To != "" || !hasLetter(lines[i].Remark) || lines[i].Signal == "" {
			continue
		}
		n++
		first[table.Fold(lines[i].Signal)], second[table.Fold(lines[i].Remark)] = true, true
		if saysEnd(lines[i].Remark) {
			pinned++
		}
		if saysEnd(lines[i].Signal) {
			firstPinned++
		}
	}
	if n < 2 || 2*n < len(lines) || !(2*pinned > n && firstPinned < pinned || len(first) == n && 5*len(second) < 4*n) {
		return
	}
	for i := range lines {
		if line := &lines[i]; line.To == "" && line.Signal != "" && hasLetter(line.Remark) && isShort(line.Remark) &&
			!strings.Contains(line.Remark, ";") {
			line.To, line.Remark = line.Remark, ""
		}
	}
}

// saysEnd reports whether a text is a device and its cavity, in either order: "Radio.1", "pin 1 of the radio".
func saysEnd(text string) bool {
	if device, _, ok := name.SplitEnd(text); ok && strings.ContainsFunc(device, unicode.IsLetter) { // "3.3" is a voltage
		return true
	}
	w := strings.Fields(text)
	if n := len(w); n > 1 && strings.HasPrefix(w[n-1], "(") && strings.HasSuffix(w[n-1], ")") { // "Fan relay (30)"
		w[n-1] = strings.Trim(w[n-1], "()")
	}
	return len(w) > 2 && saysPin(w[0]+" "+w[1]) || len(w) > 1 && saysPin(w[len(w)-1]) && strings.ContainsAny(w[len(w)-1], "0123456789")
}

// withoutEndSigns takes the signs at the end of a text off, but for the pole of a short name, "A-", "DATA-", and one with a sign behind it
// that parts: of "speed -, " the dash is a pole.
func withoutEndSigns(text string) string {
	out := strings.TrimRight(text, " ,;:-–")
	last := out[strings.LastIndexByte(out, ' ')+1:]
	pole := strings.TrimLeft(text[len(out):], " ")
	if last != "" && (strings.HasPrefix(pole, "-,") || strings.HasPrefix(pole, "-;")) {
		return text[:len(text)-len(pole)+1]
	}
	if rest := text[len(out):]; strings.HasPrefix(rest, "-") && !strings.HasPrefix(rest, "--") && last != "" &&
		(len(last) < 5 || last == strings.ToUpper(last)) {
		return out + "-"
	}
	return out
}
