package huelines

import (
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/point"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

// A device stands at the begin of a line, and all its wires behind it.
//
//	Horn - Brown/White (+), Black (ground)
//	Brake switch - Red (feed), Green/Yellow (to brake light)

// Inline makes rows of a table of such lines, which follow each other.
func Inline(h shape.Headings, t *table.Table) []table.Row {
	if h.HeadLine() > 0 || h.Numbered() {
		return t.Rows
	}
	for i := 0; i < len(t.Rows); i++ {
		var all []group
		several := false
		for k := i; k < len(t.Rows); k++ {
			g, ok := inlineOf(t.Rows[k])
			if !ok {
				break
			}
			g.first, several = k, several || len(g.wires) > 1
			all = append(all, g)
		}
		if len(all) > 1 && several && areWires(all) {
			rows := make([]table.Row, 0, len(t.Rows)+2*len(all))
			rows = append(rows, t.Rows[:i]...)
			rows = append(rows, table.Row{Line: t.Rows[i].Line, Cells: append([]string(nil), heads...), First: true, Ruled: t.Marked})
			for _, g := range all {
				for _, w := range g.wires {
					rows = w.addTo(rows, t.Rows[g.first], g)
				}
			}
			return append(rows, t.Rows[i+len(all):]...)
		}
		i += max(0, len(all)-1)
	}
	return t.Rows
}

// inlineOf parts a line with a device and its wires.
func inlineOf(r table.Row) (g group, ok bool) {
	const most = 300 // bytes (no source)
	if len(r.Cells) > 1 && r.Raw == "" {
		return g, false
	}
	text := strings.TrimLeft(strings.TrimSpace(textOf(r)), "-*• ")
	if r.Level > 0 || len(text) > most {
		return g, false
	}
	at, long := len(text), 0
	for _, sign := range []string{": ", " - ", " – ", " — ", "\t"} {
		if k := strings.Index(text, sign); k > 0 && k < at {
			at, long = k, len(sign)
		}
	}
	if long == 0 {
		return g, false
	}
	g.device, g.wires = strings.Trim(text[:at], "*_ "), wiresIn(text[at+long:])
	if g.n = 1; len(g.wires) == 0 || !point.IsShortName(g.device) || name.IsGeneric(g.device) || point.IsColour(g.device) {
		return g, false
	}
	for _, w := range g.wires {
		if !w.signed {
			return g, false
		}
	}
	return g, !name.IsCavity(g.device)
}
