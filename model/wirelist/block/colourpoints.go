package block

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/plugwires"
	"contralay/model/wirelist/point"
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
	colour, size, signal, to, note string
	behind                         bool // its values stand in brackets, or commas part them, behind the name
}

// colourPoints is how many rows from one on are the wires of one plug, told by their colours; 0 where they are none. Of those with
// an arrow, which could tell both ends, sure takes what has the values behind the name below a heading that says it is a plug.
//
//	### Pump plug
//	- feed (red, 14 AWG) → relay 87
func (f *finder) colourPoints(i int, sure bool) int {
	rows := f.t.Rows
	if i > 0 && f.isAnyPoint(i-1) && rows[i].Line <= rows[i-1].Line+2 && rows[i].Deep == rows[i-1].Deep {
		return 0
	}
	n, plain, of := 0, 0, plugwires.Colours{}
	seen := map[string]bool{}
	for i+n < len(rows) && f.isAnyPoint(i+n) &&
		(n == 0 || rows[i+n].Line <= rows[i+n-1].Line+2 && rows[i+n].Deep == rows[i].Deep) {
		p := partAnyPoint(rows[i+n].Cells[0])
		if sure && (p.to == "" || !p.behind) {
			return 0
		}
		seen[table.Fold(p.colour)] = true
		if f.isColourPoint(i + n) {
			plain++
		}
		of.Names, of.Sized = append(of.Names, p.signal), of.Sized || p.size != ""
		if p.to != "" {
			of.Far++
		}
		n++
	}
	if n < 2 || 2*plain < n || 2*len(seen) <= n {
		return 0
	}
	at, plug := f.plugAbove(i)
	if plug == "" || sure && !plugwires.SaysWires(plug) {
		return 0
	}
	of.Plug = plug
	for k := max(at+1, 1); k < i; k++ {
		_, text := f.t.Rows[k].Filled()
		of.Counted = of.Counted || plugwires.CountsPins(text, n)
	}
	for _, r := range f.path {
		_, text := r.Filled()
		of.Said = of.Said || plugwires.SaysWires(text)
	}
	if !of.Wires() {
		return 0
	}
	return n
}

// isColourPoint reports whether a row is a point that tells a wire by its colour.
func (f *finder) isColourPoint(i int) bool {
	r := f.t.Rows[i]
	return len(r.Cells) == 1 && r.Level == 0 && (r.Point || !f.t.Marked) && len(r.Cells[0]) < 2*mostHead &&
		partColourPoint(r.Cells[0]).colour != ""
}

// isAnyPoint reports whether a row is such a point, or one of their kin.
func (f *finder) isAnyPoint(i int) bool { return f.isColourPoint(i) || f.isKinPoint(i) }

// partColourPoint parts "red (20 AWG): horn feed", "red - horn feed", "horn feed: red", "horn feed (red, 20 AWG)", each with an arrow
// and a far end or without.
func partColourPoint(text string) (p colourPoint) {
	text = strings.TrimSpace(strings.TrimLeft(strings.TrimSpace(text), "-*•·"))
	text, p.to = point.CutArrow(text)
	if front, back, ok := cutDots(text); ok {
		text = front + ": " + back
	}
	for _, mark := range []string{": ", " : ", " - ", " – ", " — ", " = ", "\t"} {
		front, back, ok := strings.Cut(text, mark)
		if !ok {
			continue
		}
		front, back = strings.TrimSpace(front), strings.TrimSpace(back)
		if p.colour, p.size = point.WireValues(front); p.colour != "" && point.IsShortName(back) {
			p.signal = back
			return p
		}
		if p.colour, p.size = point.WireValues(back); p.colour != "" && point.IsShortName(front) {
			p.signal = front
			return p
		}
	}
	front, values := point.ValuesBehind(text)
	p.colour, p.size = point.WireValues(strings.Join(values, ", "))
	p.behind = true
	if p.signal = front; p.colour == "" || front == "" || !point.IsShortName(front) {
		return colourPoint{}
	}
	return p
}

// isKinPoint reports whether a row among such points is one more of them, with a short form of a colour that is of one language
// alone or of several colours, or with the shield in place of a colour.
func (f *finder) isKinPoint(i int) bool {
	r := f.t.Rows[i]
	return len(r.Cells) == 1 && r.Level == 0 && (r.Point || !f.t.Marked) && len(r.Cells[0]) < 2*mostHead &&
		partKinPoint(r.Cells[0]) != colourPoint{}
}

// partKinPoint parts such a point.
func partKinPoint(text string) (p colourPoint) {
	text = strings.TrimSpace(strings.TrimLeft(strings.TrimSpace(text), "-*•·"))
	if a, b, ok := cutDots(text); ok {
		text = a + ": " + b
	}
	front, back := text, ""
	for _, mark := range []string{": ", " : ", " - ", " – ", " — ", " = ", " ("} {
		if a, b, ok := strings.Cut(text, mark); ok {
			front, back = strings.TrimSpace(a), strings.TrimSpace(b)
			if mark == " (" {
				back = strings.TrimSuffix(back, ")")
			}
			break
		}
	}
	if !point.IsShortName(back) {
		return p
	}
	_, ok := value.ParseColour(front, "de")
	switch {
	case name.IsDrainWord(table.Fold(front)):
		return colourPoint{signal: front, note: back}
	case ok && len(front) == 2 && back != "":
		return colourPoint{colour: front, signal: back}
	}
	return p
}

// partAnyPoint parts a point of either kind.
func partAnyPoint(text string) colourPoint {
	if p := partColourPoint(text); p.colour != "" {
		return p
	}
	return partKinPoint(text)
}

// cutDots parts a line at the dots that lead from one text to the next, "yellow ..... constant 12 V".
func cutDots(text string) (front, back string, ok bool) {
	front, back, ok = strings.Cut(text, " ..")
	if !ok {
		front, back, ok = strings.Cut(text, "...")
	}
	front, back = strings.TrimRight(front, ". "), strings.TrimLeft(back, ". ")
	return front, back, ok && front != "" && back != ""
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
		bare := strings.TrimRight(text, ": ")
		if len(strings.Fields(text)) <= mostPlug && len(text) <= mostHead && (bare != text || !f.t.Marked) && !name.IsGeneric(bare) {
			return k, bare
		}
	}
	if n := len(f.path); n > 0 {
		last := f.path[n-1]
		_, text := last.Filled()
		if text = strings.TrimRight(text, ": "); !name.IsGeneric(text) && (n > 1 || plugwires.SaysWires(text)) {
			return slices.IndexFunc(f.t.Rows, func(r table.Row) bool { return r.Line == last.Line }), text
		}
	}
	return -1, ""
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
		p := partAnyPoint(r.Cells[0])
		r.Cells, r.Prose, r.Point = []string{called, "", p.to, "", p.colour, p.size, p.note, p.signal}, false, false
		b.Rows = append(b.Rows, r)
	}
	f.close()
	f.all = append(f.all, b)
}
