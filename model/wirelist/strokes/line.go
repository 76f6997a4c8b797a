package strokes

import (
	"strings"

	"contralay/model/wirelist/columned"
)

// wire is one stroke with its two ends.
type wire struct {
	near, far end
	label     string // what stands in the stroke, "3 --- red --- 2"
	from, to  int    // of the stroke
}

// line is a line as it is read.
type line struct {
	wires []wire
	alone []end  // pins that no stroke leads to
	rest  string // what else stands there
}

// read reads a line; ok is false where it has no stroke between two ends.
func read(text string) (l line, ok bool) {
	chars := []rune(text)
	var long []stroke
	for _, s := range strokesIn(chars) {
		if s.long {
			long = append(long, s)
		}
	}
	if len(long) == 0 {
		return pairs(text)
	}
	for _, part := range apart(chars, long) {
		w, alone, rest, ok := part.read(chars)
		if !ok {
			l.rest = strings.TrimSpace(string(chars[part.from:]))
			break // what is drawn behind it may lead to it
		}
		l.wires = append(l.wires, w)
		if alone.pin != "" {
			l.alone = append(l.alone, alone)
		}
		l.rest = strings.TrimSpace(l.rest + " " + rest)
	}
	return l, len(l.wires) > 0
}

// segment is a piece of a line with the strokes that follow each other without a gap.
type segment struct {
	from, to int
	strokes  []stroke
}

// apart parts a line between strokes with a gap between them, at the widest.
func apart(chars []rune, strokes []stroke) (all []segment) {
	now := segment{to: len(chars), strokes: strokes[:1]}
	for i, s := range strokes[1:] {
		from, to, apart := widest(chars, strokes[i].to, s.from)
		if !apart {
			now.strokes = strokes[i+1-len(now.strokes) : i+2]
			continue
		}
		now.to = from
		all = append(all, now)
		now = segment{from: to, to: len(chars), strokes: strokes[i+1 : i+2]}
	}
	return append(all, now)
}

// widest is the widest row of blanks between two places of a line, and whether it parts two texts: it is two blanks wide, or one
// between two brackets.
func widest(chars []rune, from, to int) (a, b int, apart bool) {
	for i := from + 1; i+1 < to; i++ {
		if chars[i] == ' ' && strings.ContainsRune(")]", chars[i-1]) && strings.ContainsRune("([", chars[i+1]) {
			return i, i + 1, true
		}
	}
	for i := from; i < to; {
		end := i
		for end < to && chars[end] == ' ' {
			end++
		}
		if end-i > b-a {
			a, b = i, end
		}
		i = max(end, i+1)
	}
	return a, b, b-a > 1
}

// read reads a segment. alone is a pin before it that no stroke leads to, rest what else stands there.
func (s segment) read(chars []rune) (w wire, alone end, rest string, ok bool) {
	first, last := s.strokes[0], s.strokes[len(s.strokes)-1]
	w.from, w.to = first.from, last.to
	if len(s.strokes) > 2 {
		return w, alone, "", false
	}
	if len(s.strokes) == 2 {
		w.label = strings.TrimSpace(string(chars[first.to:last.from]))
		if of := resistor(w.label); of != "" {
			w.label = of
		} else if strings.ContainsAny(w.label, "()[]|+\\") || !hasLetter(w.label) {
			return w, alone, "", false
		}
	}
	before, behind := string(chars[s.from:first.from]), string(chars[last.to:s.to])
	before, alone, at := withoutAlone(before, s.from)
	behind, rest = withoutRest(behind)
	var is bool
	if w.near, is = endBefore(before, at); !is {
		return w, alone, "", false
	}
	if w.far, is = endBehind(behind, last.to); !is {
		return w, alone, "", false
	}
	return w, alone, rest, isPinned(w) || !w.near.supply && !w.far.supply // which heads settle
}

// withoutAlone takes a pin in brackets off the text before a supply, "(10)      [+5 V]".
func withoutAlone(text string, at int) (plain string, alone end, from int) {
	pieces := columned.Gapped(text)
	if len(pieces) < 2 || !strings.HasPrefix(pieces[len(pieces)-1].Text, "[") {
		return text, end{}, at
	}
	in, before, ok := closing(pieces[0].Text)
	pin, is := pinOf(in, true)
	if !ok || !is || before != "" || len(pieces) > 2 {
		return text, end{}, at
	}
	cut := pieces[1].From
	return string([]rune(text)[cut:]), end{pin: pin, in: true, at: at + pieces[0].To - runes(in) - 2}, at + cut
}

// withoutRest takes off what stands behind a gap behind a supply: it is of something else.
func withoutRest(text string) (plain, rest string) {
	pieces := columned.Gapped(text)
	if len(pieces) > 1 && strings.HasPrefix(pieces[0].Text, "[") && strings.HasSuffix(pieces[0].Text, "]") {
		chars := []rune(text)
		return string(chars[:pieces[0].To]), strings.TrimSpace(string(chars[pieces[0].To:]))
	}
	return text, ""
}

// pairs reads a line that has its strokes in cells of two numbers, "2 - 15", of which each tells a wire.
//
//	DATA 0   2 - 15      15 - 2
//	GROUND  25 - 25
func pairs(text string) (l line, ok bool) {
	var name []string
	for _, p := range namedPairs(columned.Gapped(text)) {
		if w, is := pair(p); is {
			if len(l.wires) == 0 {
				w.near.name = strings.Join(name, " ")
			}
			l.wires = append(l.wires, w)
		} else if len(l.wires) == 0 {
			name = append(name, p.Text)
		} else {
			l.wires[len(l.wires)-1].far.more = append(l.wires[len(l.wires)-1].far.more, p.Text)
		}
	}
	for k := range l.wires { // the same two pins the other way round carry the same
		if first := l.wires[0]; k > 0 && l.wires[k].near.pin == first.far.pin && l.wires[k].far.pin == first.near.pin {
			l.wires[k].near.name = first.near.name
		}
	}
	if len(l.wires) == 0 || len(name) > 1 || len(name) == 1 && !hasLetter(name[0]) {
		return line{}, false
	}
	return l, true
}

// namedPairs parts the cells in which one blank alone stands between the name of a wire, which has an arrow, and its two pins:
// "STROBE->BUSY 1 - 11".
func namedPairs(cells []columned.Field) (all []columned.Field) {
	for _, c := range cells {
		w := strings.Fields(c.Text)
		n := len(w)
		if n < 4 || !isNumber(w[n-1]) || w[n-2] != "-" || !isNumber(w[n-3]) || !strings.Contains(c.Text, "->") {
			all = append(all, c)
			continue
		}
		pins := strings.Join(w[n-3:], " ")
		cut := c.To - runes(c.Text) + runes(strings.TrimSuffix(c.Text, pins))
		all = append(all, columned.Field{Text: strings.Join(w[:n-3], " "), From: c.From, To: cut - 1},
			columned.Field{Text: pins, From: cut, To: c.To})
	}
	return all
}

// pair reads a cell of two numbers with a short stroke between them.
func pair(p columned.Field) (w wire, ok bool) {
	chars := []rune(p.Text)
	all := strokesIn(chars)
	if len(all) != 1 || all[0].from == 0 || all[0].to == len(chars) {
		return w, false
	}
	near, far := strings.TrimSpace(string(chars[:all[0].from])), strings.TrimSpace(string(chars[all[0].to:]))
	if !isNumber(near) || !isNumber(far) {
		return w, false
	}
	w.near.pin, w.far.pin = near, far
	w.near.at, w.far.at = p.From, p.To-runes(far)
	w.from, w.to = p.From+all[0].from, p.From+all[0].to
	return w, true
}

// isNumber reports whether a text is a number of three figures at the most.
func isNumber(text string) bool {
	return text != "" && len(text) <= 3 && strings.Trim(text, "0123456789") == ""
}
