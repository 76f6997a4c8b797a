package huelines

import (
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/point"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

// The wires of one plug or cable stand below its name in columns without headings: the colour, what is printed beside the pin,
// what it does.
//
//	Trailer socket
//	yellow  L    left turn
//	white   31   ground

// Gapped makes rows of a table of such lines. Each begins with a colour, and either all have a pin or none.
func Gapped(h shape.Headings, t *table.Table) (rows []table.Row, told map[int][]int) {
	if h.HeadLine() > 0 || h.Numbered() {
		return t.Rows, nil
	}
	for i := 1; i < len(t.Rows); i++ {
		g := group{first: i}
		seen, pinned := map[string]bool{}, 0
		for k := i; k < len(t.Rows); k++ {
			r := t.Rows[k]
			w, ok := gappedOf(r)
			if !ok || k > i && r.Line > t.Rows[k-1].Line+1 {
				break
			}
			if w.pin != "" {
				pinned++
			}
			seen[w.colour+w.pin] = true
			g.wires, g.n = append(g.wires, w), g.n+1
		}
		if g.n == 0 {
			continue
		}
		if g.n < 3 || len(seen) < g.n || pinned > 0 && pinned < g.n || !g.named(t.Rows) || !areWires([]group{g}) {
			i += g.n - 1
			continue
		}
		return spread(t, []group{g})
	}
	return t.Rows, nil
}

// gappedOf parts a line at its gaps, or a row at its cells.
func gappedOf(r table.Row) (w wire, ok bool) {
	if r.Level > 0 || r.Ruled || r.Point || r.Raw == "" || len(r.Cells) > 3 {
		return w, false
	}
	parts := r.Cells
	if len(parts) == 1 {
		parts = strings.FieldsFunc(strings.ReplaceAll(r.Raw, "  ", "\t"), func(c rune) bool { return c == '\t' })
	}
	var some []string
	for _, p := range parts {
		if p = strings.TrimSpace(p); p != "" {
			some = append(some, p)
		}
	}
	if len(some) == 2 {
		if at := strings.LastIndexByte(some[0], ' '); at > 0 && point.IsColour(some[0][:at]) &&
			(!point.IsColour(some[0]) || len(some[0]) == at+2 && some[0][:at] != strings.ToUpper(some[0][:at])) {
			some = []string{some[0][:at], some[0][at+1:], some[1]}
		}
	}
	if len(some) < 2 || len(some) > 3 || !point.IsColour(some[0]) || len(some[0]) < 3 {
		return w, false
	}
	w.colour, w.signal = some[0], some[len(some)-1]
	if len(some) == 3 {
		w.pin = some[1]
	} else if pin, rest, found := strings.Cut(w.signal, " "); found && isPrintedPin(pin) {
		w.pin, w.signal = pin, strings.TrimSpace(rest)
	}
	return w, (w.pin == "" || isPrintedPin(w.pin)) && point.IsShortName(w.signal)
}

// isPrintedPin reports whether a text is what is printed beside a pin: "L", "54G", "58-R".
func isPrintedPin(text string) bool { return len(text) < 5 && name.IsCavity(text) }
