package strokes

import (
	"strings"

	"contralay/model/wirelist/hueword"
)

// LeftEnd and RightEnd are what the parts of a run are called whose text names none: where they stand on the page.
const (
	LeftEnd  = "left end"
	RightEnd = "right end"
)

// columnsOfBoth are the headings of wires with two ends, columnsOfOne those of a table of pins. Nothing writes them.
var (
	columnsOfBoth = [7]string{"From", "From pin", "To", "To pin", "Signal", "Colour", "Note"}
	columnsOfOne  = [5]string{"Connector", "Pin", "Signal", "Colour", "Note"}
)

// maker makes cells of the wires of a run.
type maker struct {
	near, far string
	listed    bool // one end of each wire is a pin, the other a name alone: it is a table of pins
	nearSame  bool // every wire has the same name beside the near pin: it is the part
	farSame   bool
	signalAt  int // 1 or 2 where only the near or the far side has a heading for the signals, else 0
}

// tableOf is the table that a run makes.
func tableOf(h heads, wires []wire) maker {
	m := maker{near: h.near, far: h.far, listed: h.far == "" || h.near == "", signalAt: h.signalAt}
	names := [2]map[string]int{{}, {}}
	for _, w := range wires {
		if w.near.pin != "" && w.far.pin != "" || w.near.supply || w.far.supply || (w.near.pin == "") != (wires[0].near.pin == "") {
			m.listed = false
		}
		names[0][w.near.name]++
		names[1][w.far.name]++
	}
	same := func(of map[string]int) string {
		for name := range of {
			if len(of) == 1 && len(wires) > 1 {
				return name
			}
		}
		return ""
	}
	if near, far := same(names[0]), same(names[1]); !m.listed && m.near == "" && m.far == "" && near != "" && far != "" && near != far {
		m.near, m.far, m.nearSame, m.farSame = near, far, true, true
	}
	if !m.listed {
		if m.near == "" {
			m.near = LeftEnd
		}
		if m.far == "" {
			m.far = RightEnd
		}
	}
	return m
}

// heads are the headings of the table.
func (m maker) heads() []string {
	if m.listed {
		return m.withoutPart(columnsOfOne[:])
	}
	return columnsOfBoth[:]
}

// cells are the cells of one wire.
func (m maker) cells(w wire) []string {
	if m.listed {
		pin, name, part := w.near, w.far, m.near
		if pin.pin == "" {
			pin, name, part = w.far, w.near, m.far
		}
		signal, colour, note := Said([]string{name.name}, append(append([]string{pin.name, w.label}, pin.more...), name.more...))
		return m.withoutPart([]string{part, pin.pin, signal, colour, note})
	}
	near, far := w.near, w.far
	fromPart, toPart := m.part(&near, m.near, m.nearSame), m.part(&far, m.far, m.farSame)
	more := append(append([]string{w.label}, near.more...), far.more...)
	if m.signalAt == 1 && near.name != "" && !isColour(near.name) {
		more, far.name = append([]string{far.name}, more...), ""
	} else if m.signalAt == 2 && far.name != "" && !isColour(far.name) {
		more, near.name = append([]string{near.name}, more...), ""
	}
	signal, colour, note := Said([]string{near.name, far.name}, more)
	return []string{fromPart, near.pin, toPart, far.pin, signal, colour, note}
}

// withoutPart are the cells of a table of pins, without that of the part where nothing names it.
func (m maker) withoutPart(cells []string) []string {
	if m.near == "" && m.far == "" {
		return cells[1:]
	}
	return cells
}

// part is the part that an end is of, and takes its name off where that is said by it.
func (m maker) part(e *end, head string, same bool) string {
	switch {
	case e.supply:
		part := e.name
		e.name = ""
		return part
	case same:
		e.name = ""
	case e.pin == "":
		e.pin, e.name = e.name, ""
	}
	return head
}

// alone are the cells of a pin that no stroke leads to.
func (m maker) alone(e end) []string {
	if m.listed {
		return m.withoutPart([]string{m.near + m.far, e.pin, "", "", ""})
	}
	if e.name != "" {
		return []string{m.near, e.pin, "", "", "not connected", "", e.name}
	}
	return []string{m.near, e.pin, "", "", "", "", ""}
}

// Said is what the names of a wire say: its signal where they agree, its colour, and all else as a note.
func Said(names, more []string) (signal, colour, note string) {
	var left []string
	for _, n := range names {
		if n == "" {
			continue
		}
		if isColour(n) && colour == "" {
			colour = n
		} else if len(left) == 0 || !strings.EqualFold(left[0], n) {
			left = append(left, n)
		}
	}
	if len(left) == 2 {
		if k := within(left[0], left[1]); k >= 0 {
			more = append([]string{left[1-k]}, more...)
			left = []string{left[k]}
		}
	}
	var notes []string
	if len(left) == 1 {
		signal = left[0]
	} else if len(left) > 1 {
		notes = append(notes, strings.Join(left, " – "))
	}
	for _, n := range more {
		if isColour(n) && colour == "" {
			colour = n
		} else if n != "" {
			notes = append(notes, n)
		}
	}
	return signal, colour, strings.Join(notes, ", ")
}

// within says which of two names the other one holds, "GND" and "Signal GND", or the first of two that mean the same; −1 where neither.
func within(a, b string) int {
	holds := func(whole, part string) bool {
		return strings.Contains(" "+strings.ToLower(whole)+" ", " "+strings.ToLower(part)+" ")
	}
	switch {
	case holds(b, a), grounds[strings.ToLower(a)] && grounds[strings.ToLower(b)]:
		return 0
	case holds(a, b):
		return 1
	}
	return -1
}

// grounds are names of the signal that returns all others. Common words, from memory, no source.
var grounds = wordSet(`gnd ground 0v masse mass massa masa tierra terra jord maa zem föld earth signalground sg vss com common`)

// isColour reports whether every word of a text names a colour.
func isColour(text string) bool {
	words := strings.FieldsFunc(strings.ToLower(text), func(r rune) bool { return strings.ContainsRune(" /-", r) })
	for _, w := range words {
		if _, ok := hueword.Of(w); !ok && !plainColours[w] {
			return false
		}
	}
	return len(words) > 0
}

// plainColours are the names of colours in languages whose words package hueword leaves to others.
var plainColours = wordSet(`black brown red orange yellow green blue violet purple grey gray white pink turquoise light dark
	schwarz braun rot gelb grün gruen blau violett lila grau weiß weiss rosa türkis hell dunkel
	noir marron brun rouge jaune vert bleu gris blanc rose clair foncé
	negro rojo amarillo verde azul gris blanco naranja morado nero rosso giallo blu bianco grigio arancione marrone viola
	blk brn org yel grn blu vio gry wht`)
