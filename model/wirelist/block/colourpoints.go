package block

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/plugwires"
	"contralay/model/wirelist/table"
)

// A plug that has no numbers on it is told by the colours of its wires, a point each, below a heading that names it.
//
//	### Horn button
//	- red (20 AWG): horn feed
//	- black: ground
//
// The charge of a lamp, "red: empty", is told so too: something must say that these are wires.

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
	n, plain, of, unmarked := 0, 0, plugwires.Colours{}, false
	seen := map[string]bool{}
	for i+n < len(rows) && f.isAnyPoint(i+n) &&
		(n == 0 || rows[i+n].Line <= rows[i+n-1].Line+2 && rows[i+n].Deep == rows[i].Deep) {
		p := plugwires.PartAny(rows[i+n].Cells[0])
		if sure && (p.To == "" || !p.Behind) {
			return 0
		}
		seen[table.Fold(p.Colour)], unmarked = true, unmarked || p.Unmarked
		if f.isColourPoint(i + n) {
			plain++
		}
		of.Names, of.Sized = append(of.Names, p.Signal), of.Sized || p.Size != ""
		if p.To != "" {
			of.Far++
		}
		n++
	}
	if n < 2 || 2*plain < n || 2*len(seen) <= n {
		return 0
	}
	at, plug := f.plugAbove(i)
	if plug == "" || (sure || unmarked) && !plugwires.SaysWires(plug) {
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
	if !f.isLine(i, true) {
		return false
	}
	p := plugwires.PartColour(f.t.Rows[i].Cells[0])
	return p.Colour != "" && f.isLine(i, p.Unmarked)
}

// isLine reports whether a row is a point, or a short line of a text; in a document, where bare, a line is enough.
func (f *finder) isLine(i int, bare bool) bool {
	r := f.t.Rows[i]
	return len(r.Cells) == 1 && r.Level == 0 && (r.Point || !f.t.Marked || bare) && len(r.Cells[0]) < 2*mostHead
}

// isAnyPoint reports whether a row is such a point, or one of their kin.
func (f *finder) isAnyPoint(i int) bool { return f.isColourPoint(i) || f.isKinPoint(i) }

// isKinPoint reports whether a row among such points is one more of them, with a short form of a colour that is of one language
// alone or of several colours, or with the shield in place of a colour.
func (f *finder) isKinPoint(i int) bool {
	return f.isLine(i, false) && plugwires.PartKin(f.t.Rows[i].Cells[0]) != plugwires.ColourPoint{}
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
		if isAside(text) {
			continue
		}
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
		p := plugwires.PartAny(r.Cells[0])
		r.Cells, r.Prose, r.Point = []string{called, "", p.To, "", p.Colour, p.Size, p.Note, p.Signal}, false, false
		b.Rows = append(b.Rows, r)
	}
	f.close()
	f.all = append(f.all, b)
}
