package strokes

import (
	"strings"

	"contralay/model/wirelist/columned"
)

// Lines that begin with a pin and its colour in brackets may have an arrow that says which way a signal goes, both ways in one list: it
// leads to no part. Behind the pin may stand those of the other plug, several in a cell.
//
//	  BUOY        Logger
//	  pins        pins     Signal            Signal meaning
//	1 (brown)     4,6      RDY ACK     <-    Ready when the logger asks
//	2 (black)     5        GND
//	3 (none)      none

// directed finds the runs of such lines.
func directed(lines []string) (all []Run) {
	const least = 3 // lines (no source)
	done := 0
	for i := 0; i < len(lines); i++ {
		var pins []pinned
		both := false
		for n := i; n < len(lines); n++ {
			p, ok := pinnedOf(lines[n], n)
			if !ok {
				break
			}
			pins, both = append(pins, p), both || p.back
		}
		if len(pins) >= least && both {
			all = append(all, madeOfPins(lines, done, pins))
			done = i + len(pins)
		}
		i += max(len(pins)-1, 0)
	}
	return all
}

// pinned is one such line.
type pinned struct {
	at          int
	pin, colour string
	cells       []columned.Field // but for the arrow
	back        bool             // its arrow leads to the pin
}

// pinnedOf reads such a line; ok is false where it is none.
func pinnedOf(text string, at int) (p pinned, ok bool) {
	if strings.IndexByte(text, '(') < 0 || len(text) > 200 {
		return p, false
	}
	cells := columned.Gapped(plain(text))
	if len(cells) == 0 {
		return p, false
	}
	in, before, ok := closing(cells[0].Text)
	if !ok || !isNumber(before) || !isColour(in) && !nothings[strings.ToLower(in)] {
		return p, false
	}
	p = pinned{at: at, pin: before, colour: in}
	if nothings[strings.ToLower(in)] {
		p.colour = ""
	}
	for _, c := range cells[1:] {
		switch strings.Trim(c.Text, "-=") {
		case "<", "←", "<>", "↔":
			p.back = true
		case ">", "→", "":
		default:
			p.cells = append(p.cells, c)
		}
	}
	return p, true
}

// nothings are words for a pin without a wire. Common words, from memory, no source.
var nothings = wordSet("none nc n/c unused open free empty - frei leer libre vide vuoto libero keine ninguno aucun nessuno geen")

// madeOfPins makes a table of such lines.
func madeOfPins(lines []string, done int, pins []pinned) (r Run) {
	far := 0 // lines with pins of the other plug
	guide := wire{near: end{at: pins[0].startIn(lines)}}
	for _, p := range pins {
		if p.hasFar() {
			far++
			guide.far.at, guide.from = p.cells[0].From, guide.near.at+runes(p.pin)
			guide.to = p.cells[0].From
		} else if len(p.cells) > 0 && far == 0 {
			guide.far.at, guide.from, guide.to = p.cells[0].From, guide.near.at, p.cells[0].From
		}
	}
	h := headsOf(lines, done, pins[0].at, []wire{guide})
	meaning := meaningAt(lines, pins[0].at)
	both := 2*far >= len(pins)
	m := maker{near: h.near, far: h.far, listed: !both}
	if m.listed {
		m.far = ""
	} else {
		m = tableOf(h, []wire{{near: end{pin: "1"}, far: end{pin: "1"}}})
	}
	r.At, r.Lines = h.at, pins[len(pins)-1].at+1-h.at
	r.Rows = append(append(r.Rows, h.texts...), Row{At: h.line, Cells: m.heads(), Head: true})
	for _, p := range pins {
		near, to := end{pin: p.pin}, end{}
		texts := p.cells
		if both && p.hasFar() {
			to.pin, _ = pinOf(texts[0].Text, false)
			texts = texts[1:]
		}
		if to.pin == "" && (p.colour == "" || len(texts) == 1 && nothings[strings.ToLower(texts[0].Text)]) {
			r.Rows = append(r.Rows, Row{At: p.at, Cells: m.alone(near)})
			continue
		}
		signal, note := saidOf(texts, meaning)
		cells := []string{m.near, p.pin, m.far, to.pin, signal, p.colour, note}
		if m.listed {
			cells = m.withoutPart([]string{m.near, p.pin, signal, p.colour, note})
		}
		r.Rows = append(r.Rows, Row{At: p.at, Cells: cells})
	}
	withoutEmpty(r.Rows)
	return r
}

// hasFar reports whether pins of another plug stand behind the pin.
func (p pinned) hasFar() bool {
	if len(p.cells) == 0 {
		return false
	}
	_, ok := pinOf(p.cells[0].Text, false)
	return ok
}

// startIn is where the pin begins in its line.
func (p pinned) startIn(lines []string) int { return strings.Index(plain(lines[p.at]), p.pin) }

// meaningAt is where the column begins that says what the signals mean, behind one that names them, by the line right above the pins; 0
// where that has no two such headings.
func meaningAt(lines []string, first int) int {
	if first == 0 {
		return 0
	}
	signal := false
	for _, p := range columned.Gapped(plain(lines[first-1])) {
		switch text := strings.ToLower(p.Text); {
		case !signal:
			signal = signalWords[text]
		case IsColumnWords(text):
			return p.From
		}
	}
	return 0
}

// saidOf is what the texts of such a line say: those before the column of meanings are the signal; else one is, up to what says when it
// is given, and several are a note.
func saidOf(texts []columned.Field, meaning int) (signal, note string) {
	var all, before []string
	for _, t := range texts {
		if t.To <= meaning {
			before = append(before, t.Text)
			continue
		}
		all = append(all, t.Text)
	}
	if len(before) > 0 {
		return strings.Join(before, " "), strings.Join(all, ", ")
	}
	if len(all) != 1 {
		return "", strings.Join(all, ", ")
	}
	for _, when := range []string{" when ", " if ", " while "} {
		if before, rest, ok := strings.Cut(all[0], when); ok {
			return before, strings.TrimSpace(when) + " " + rest
		}
	}
	return all[0], ""
}
