package jotted

import (
	"regexp"
	"slices"
	"strings"

	"contralay/model/wirelist/alike"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/runline"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// Inline makes a heading and a table of each line that tells all wires of a connector behind its name, with what wire each is.
//
//	Plug A (left lamp): 1 red 18, 2 black 18
//
// A line that only names its cavities package runline parts.
func Inline(h shape.Headings, t *table.Table) []table.Row {
	if h.HeadLine() > 0 || h.Numbered() {
		return t.Rows
	}
	var out []table.Row
	for i, r := range t.Rows {
		connector, pins := "", []alike.Line(nil)
		if r.Level == 0 && !r.Ruled && len(r.Cells) > 0 && (!t.Marked || r.Prose) {
			connector, pins = pinsIn(r.Cells)
		}
		if pins == nil {
			if out != nil {
				if n := len(out) - 1; len(r.Cells) > 1 && r.Line == out[n].Line+1 && !h.IsHead(r) {
					r.Cells, r.Prose = []string{joined(r.Cells)}, true // it is of no table
				}
				out = append(out, r)
			}
			continue
		}
		if out == nil {
			out = slices.Clone(t.Rows[:i])
		}
		out = append(out, table.Row{Line: r.Line, Cells: []string{connector}, Level: runline.LowestHeading, Prose: true},
			table.Row{Line: r.Line, Cells: []string{"Pin", "Colour", "Size", "Signal", "To", "Note"}, Ruled: true, First: true})
		for _, p := range pins {
			out = append(out, table.Row{Line: r.Line, Cells: []string{p.Pin, p.Colour, p.Size, p.Signal, p.To, p.Remark}})
		}
	}
	if out == nil {
		return t.Rows
	}
	return out
}

// inlinePin is one cavity and its wire in such a line.
var inlinePin = regexp.MustCompile(`^(?:(?i:pin|way|cav|cavity|broche|kammer|pen) )?#?(\d{1,3}|[A-Z])(?: ?[:=] ?| [-–—] |\) ?|\. | )(\S.*)$`)

// mostConnector is how far from its front the sign behind the name of a connector stands, in bytes (no source).
const mostConnector = 60

// pinsIn parts such a line; pins is nil where it is none: its cavities count up from the first, and each has a colour or is free.
func pinsIn(cells []string) (connector string, pins []alike.Line) {
	if at := strings.IndexAny(cells[0], ":-–—="); at < 1 || at > mostConnector {
		return "", nil
	}
	rest, text := "", joined(cells)
	for _, sign := range []string{": ", " - ", " – ", " — ", " = "} {
		if a, b, ok := strings.Cut(text, sign); ok && (rest == "" || len(b) > len(rest)) {
			connector, rest = strings.TrimSpace(a), b
		}
	}
	const most = 6 // words of the name of a connector and what it is of (no source)
	if rest == "" || len(strings.Fields(connector)) > most || !name.SaysConnector(connector) {
		return "", nil
	}
	mark := ", "
	if strings.Contains(rest, "; ") {
		mark = "; "
	}
	var texts []string
	for item := range strings.SplitSeq(strings.TrimSuffix(rest, "."), mark) {
		item = strings.TrimSpace(item)
		m := inlinePin.FindStringSubmatch(item)
		switch next := len(texts) + 1; {
		case m != nil && name.Ordinal(m[1]) == next:
			texts = append(texts, m[1]+": "+m[2])
		case len(texts) == 0:
			return "", nil
		default:
			texts[len(texts)-1] += ", " + item
		}
	}
	lines, ok := alike.Cavities(texts)
	if !ok || len(lines) < 2 {
		return "", nil
	}
	for i, l := range lines {
		if _, says, _ := strings.Cut(texts[i], ": "); l.Colour == "" && name.StateOf(says) == name.Used {
			return "", nil
		}
	}
	return connector, lines
}

// joined is the text of some cells that commas parted, those within a section "0,75" too.
func joined(cells []string) (text string) {
	for _, c := range cells {
		last := text[strings.LastIndexByte(text, ' ')+1:]
		first, _, _ := strings.Cut(c, " ")
		switch {
		case text == "" || c == "":
			text += c
		case last != "" && strings.Trim(last, "0123456789") == "" && value.IsSection(last+","+first):
			text += "," + c
		default:
			text += ", " + c
		}
	}
	return text
}
