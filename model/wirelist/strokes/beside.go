package strokes

import "slices"

// Between lines that join pins by long strokes or arrows may stand some whose stroke is a dash alone, where the signal goes neither way.
// It stands where the strokes of the others do.
//
//	HOIST  3   -->   UP   5
//	GND   25    -    GND  7
//	ACK   13   <--   OK   1

// besides reads a line whose stroke is a dash within the place of that of another line.
func besides(text string, of wire) (l line, ok bool) {
	chars := []rune(text)
	at := -1
	for k := max(of.from, 1); k < min(of.to, len(chars)-1); k++ {
		if slices.Contains([]rune(dashes), chars[k]) {
			if at >= 0 || chars[k-1] != ' ' || chars[k+1] != ' ' {
				return l, false
			}
			at = k
		}
	}
	if at < 0 {
		return l, false
	}
	s := segment{to: len(chars), strokes: []stroke{{from: at, to: at + 1}}}
	w, alone, rest, ok := s.read(chars)
	if !ok || w.near.pin+w.near.outer == "" || w.far.pin+w.far.outer == "" || alone.pin != "" {
		return l, false
	}
	w.from, w.to = of.from, of.to
	return line{wires: []wire{w}, rest: rest}, true
}

// above are the lines right above a run whose strokes are dashes alone.
func above(lines []string, done int, run []told) (all []told) {
	for n := run[0].at - 1; n >= done && len(run[0].line.wires) > 0; n-- {
		text := plain(lines[n])
		l, ok := besides(text, run[0].line.wires[0])
		if !ok {
			break
		}
		all = append(all, told{at: n, text: text, line: l, is: true})
	}
	slices.Reverse(all)
	return all
}
