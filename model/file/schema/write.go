package schema

import (
	"strings"

	"contralay/model"
)

// Text is a harness as a file has it: the keys of the file itself, then table after
// table in the order of the schema.
func Text(h *model.Harness) string {
	t := whole
	w := &writer{}
	w.Grow(mostOfAWire * len(h.Wires))
	w.keys("", t.lines(h, nil))
	for _, p := range t.parts {
		p.write(w, h, "")
	}
	return w.String()
}

// mostOfAWire is how many bytes the text of a wire and its two cavities has, or some more (no source): the text of a large harness
// then grows seldom.
const mostOfAWire = 200

// line is one key and the text of its value.
type line struct{ name, value string }

// lines adds the keys of v that are given, in the order of the schema.
func (t table[T]) lines(v *T, all []line) []line {
	for i := range t.keys {
		k := &t.keys[i]
		if value := k.get(v); value != "" {
			all = append(all, line{k.name, value})
		}
	}
	return all
}

// writer gathers the text of a file.
type writer struct {
	strings.Builder
	depth int    // how deep a table stands in others; two spaces each
	room  []line // for those of the table in hand
}

// table writes a blank line, the header and the keys, "=" aligned to the longest.
func (w *writer) table(header string, lines []line) {
	indent := strings.Repeat("  ", w.depth)
	w.WriteByte('\n')
	w.WriteString(indent)
	w.WriteString(header)
	w.WriteByte('\n')
	w.keys(indent, lines)
}

func (w *writer) keys(indent string, lines []line) {
	longest := 0
	for _, l := range lines {
		longest = max(longest, len(l.name))
	}
	for _, l := range lines {
		w.WriteString(indent)
		w.WriteString(l.name)
		for range longest - len(l.name) { // names are plain letters, a byte each
			w.WriteByte(' ')
		}
		w.WriteString(" = ")
		w.WriteString(l.value)
		w.WriteByte('\n')
	}
}
