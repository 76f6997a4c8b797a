package block

import (
	"slices"
	"strconv"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// A plug that has no numbers on it is told by the colours of its wires, a point each, below a heading that names it.
//
//	### Horn button
//	- red (20 AWG): horn feed
//	- black: ground
//
// The charge of a lamp, "red: empty", is told so too: something must say that these are wires.

// colourPoint is what one such point says; colour is "" where it says none.
type colourPoint struct {
	colour, size, signal, to string
	behind                   bool // its values stand in brackets, or commas part them, behind the name
}

// colourPoints is how many rows from one on are the wires of one plug, told by their colours; 0 where they are none. Of those with
// an arrow, which could tell both ends, sure takes what has the values behind the name below a heading that says it is a plug.
//
//	### Pump plug
//	- feed (red, 14 AWG) → relay 87
func (f *finder) colourPoints(i int, sure bool) int {
	rows := f.t.Rows
	if i > 0 && f.isColourPoint(i-1) && rows[i-1].Line+1 == rows[i].Line {
		return 0
	}
	n, nets, grounds, sized := 0, 0, 0, false
	seen := map[string]bool{}
	for i+n < len(rows) && f.isColourPoint(i+n) && (n == 0 || rows[i+n].Line <= rows[i+n-1].Line+2 && rows[i+n].Deep == rows[i].Deep) {
		p := partColourPoint(rows[i+n].Cells[0])
		if sure && (p.to == "" || !p.behind) {
			return 0
		}
		seen[table.Fold(p.colour)] = true
		if p.to != "" || isNetLike(p.signal) {
			nets++
		}
		if isGroundLike(p.signal) {
			grounds++
		}
		sized = sized || p.size != ""
		n++
	}
	if n < 2 || 2*len(seen) <= n {
		return 0
	}
	at, plug := f.plugAbove(i)
	if plug == "" || sure && !saysWires(plug) {
		return 0
	}
	said, here := f.saysPlug(at, i, n)
	switch of := lookedUp(plug); {
	case of == legend && !here:
	case of == colours && !sized && (grounds == 0 || !saysWires(plug)): // "Plug colours": of one plug, or of every one
	case here || sized || said && (grounds > 0 || 2*nets >= n) || grounds > 0 && 2*nets >= n:
		return n
	}
	return 0
}

// isColourPoint reports whether a row is a point that tells a wire by its colour.
func (f *finder) isColourPoint(i int) bool {
	r := f.t.Rows[i]
	return len(r.Cells) == 1 && r.Level == 0 && (r.Point || !f.t.Marked) && len(r.Cells[0]) < 2*mostHead && partColourPoint(r.Cells[0]).colour != ""
}

// partColourPoint parts "red (20 AWG): horn feed", "red - horn feed", "horn feed: red", "horn feed (red, 20 AWG)", each with an arrow
// and a far end or without.
func partColourPoint(text string) (p colourPoint) {
	text = strings.TrimSpace(strings.TrimLeft(strings.TrimSpace(text), "-*•·"))
	text, p.to = cutArrow(text)
	for _, mark := range []string{": ", " : ", " - ", " – ", " — ", " = ", "\t"} {
		front, back, ok := strings.Cut(text, mark)
		if !ok {
			continue
		}
		front, back = strings.TrimSpace(front), strings.TrimSpace(back)
		if p.colour, p.size = wireValues(front); p.colour != "" && isShortName(back) {
			p.signal = back
			return p
		}
		if p.colour, p.size = wireValues(back); p.colour != "" && isShortName(front) {
			p.signal = front
			return p
		}
	}
	front, values := valuesBehind(text)
	p.colour, p.size = wireValues(strings.Join(values, ", "))
	p.behind = true
	if p.signal = front; p.colour == "" || front == "" || !isShortName(front) {
		return colourPoint{}
	}
	return p
}

// wireValues reads a text that is the colour of a wire, with its size or without, and nothing else: "red", "red wire",
// "red (20 AWG)", "20 AWG red".
func wireValues(text string) (colour, size string) {
	if front, values := valuesBehind(text); len(values) == 1 && !isColour(values[0]) {
		text, size = front, values[0]
	}
	for _, word := range []string{" wire", " lead", " core", " cable"} {
		text = strings.TrimSuffix(text, word)
	}
	if isColour(text) {
		return text, size
	}
	all := strings.Fields(text)
	for k := 1; k < len(all) && size == ""; k++ {
		for _, try := range [][2]string{{strings.Join(all[:k], " "), strings.Join(all[k:], " ")},
			{strings.Join(all[k:], " "), strings.Join(all[:k], " ")}} {
			if g, ok := value.ParseGauge(try[0], value.BareAWG, value.MarkUnknown); ok && g.Size != "" && !g.IsCable() &&
				strings.Trim(try[0], "0123456789.,") != "" && isColour(try[1]) {
				return try[1], try[0]
			}
		}
	}
	return "", ""
}

// mostPlug is how many words the line that names a plug has; more are a sentence (no source).
const mostPlug = 4

// plugAbove is the text that names the plug of some points, and its row: a short line right above that ends with a colon, in a
// sheet without headings any short line, else the heading they stand below.
func (f *finder) plugAbove(i int) (at int, plug string) {
	for k := i - 1; k >= 0 && k >= i-3; k-- { // a line or two about the plug may stand between
		r := f.t.Rows[k]
		_, text := r.Filled()
		if r.Level > 0 || len(r.Cells) != 1 || f.isColourPoint(k) {
			break
		}
		if bare := strings.TrimRight(text, ": "); len(strings.Fields(text)) <= mostPlug && len(text) <= mostHead && (bare != text || !f.t.Marked) && !name.IsGeneric(bare) {
			return k, bare
		}
	}
	if n := len(f.path); n > 0 {
		last := f.path[n-1]
		_, text := last.Filled()
		if text = strings.TrimRight(text, ": "); !name.IsGeneric(text) && (n > 1 || saysWires(text)) {
			return slices.IndexFunc(f.t.Rows, func(r table.Row) bool { return r.Line == last.Line }), text
		}
	}
	return -1, ""
}

// saysPlug reports whether a heading or a line above some points says that wires of plugs follow, and whether it is their own:
// the text that names the plug, or a line below it that counts as many of its pins.
func (f *finder) saysPlug(at, i, n int) (said, here bool) {
	for k := max(at, 0); k < i; k++ {
		_, text := f.t.Rows[k].Filled()
		here = here || k == at && (name.SaysConnector(text) || saysWires(text)) || k > at && countsPins(text, n)
	}
	for _, r := range f.path {
		_, text := r.Filled()
		said = said || saysWires(text)
	}
	return said || here, here
}

// saysWires reports whether a heading has a word for wires or for what they are plugged into.
func saysWires(text string) bool {
	return slices.ContainsFunc(name.Words(table.Fold(text)), func(w string) bool {
		switch one := strings.TrimSuffix(w, "s"); one {
		case "wire", "cablage", "verdrahtung", "verkabelung", "cableado", "cablaggio", "bedrading", "ader", "adern", "fil", "hilo", "filo",
			"fili", "kabel", "kablage", "przewody", "okablowanie", "kabling", "zapojeni", "stecker", "prise", "conectore":
			return true
		default:
			return name.IsPinTitle(one) || name.IsPinTitle(w)
		}
	})
}

// countsPins reports whether a text says that something has as many pins or wires: "3 pin plug, female".
func countsPins(text string, n int) bool {
	w := name.Words(table.Fold(text))
	for k := 0; k+1 < len(w); k++ {
		if m, err := strconv.Atoi(w[k]); err == nil && m == n {
			switch strings.TrimSuffix(w[k+1], "s") {
			case "pin", "way", "wire", "core", "lead", "pol", "polig", "poliger", "polige", "adrig", "broche", "fil", "pole", "conductor",
				"hilo", "filo", "fili", "aderig", "polet", "zyl", "zylowy":
				return true
			}
		}
	}
	return false
}

// isGroundLike reports whether the name of a net is one of a ground, which no state of a lamp is.
func isGroundLike(signal string) bool {
	return slices.ContainsFunc(name.Words(table.Fold(signal)), func(w string) bool {
		switch w {
		case "gnd", "ground", "earth", "masse", "massa", "masa", "tierra", "0v", "jord", "minus", "return", "common":
			return true
		}
		return false
	})
}

// What the text above some points can be, other than the name of a plug: colours of lamps with what each means, or a rule for the
// colours of wires.
const (
	legend  = "legend"
	colours = "colours"
)

// lookedUp is what the words of such a text say it is of; "" where they say nothing.
func lookedUp(text string) (of string) {
	for _, w := range name.Words(table.Fold(text)) {
		switch strings.TrimSuffix(w, "s") {
		case "colour", "color", "code", "farbe", "farben", "farbcode", "couleur", "colore", "kleur", "kleuren", "farve", "farver":
			return colours
		case "led", "statu", "state", "indicator", "blink", "light", "legend", "key", "meaning", "signal", "anzeige", "legende",
			"leuchte", "voyant", "luce", "luz":
			of = legend
		}
	}
	if of == legend && saysWires(text) {
		return ""
	}
	return of
}

// plug makes the block of such points; what follows belongs to another.
func (f *finder) plug(i, n int) {
	at, called := f.plugAbove(i)
	b := Block{Table: f.t, Path: slices.Clone(f.path), Titles: f.titles(), Runs: true}
	if at >= 0 {
		line := f.t.Rows[at].Line
		b.Titles = slices.DeleteFunc(b.Titles, func(r table.Row) bool { return r.Line == line })
	}
	for _, r := range f.t.Rows[i : i+n] {
		p := partColourPoint(r.Cells[0])
		r.Cells, r.Prose, r.Point = []string{called, "", p.to, "", p.colour, p.size, "", p.signal}, false, false
		b.Rows = append(b.Rows, r)
	}
	f.close()
	f.all = append(f.all, b)
}
