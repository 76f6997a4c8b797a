package desk

import (
	"fmt"
	"strings"

	"contralay/calc/phase/ends"
	"contralay/calc/phase/wires"
	"contralay/calc/sheet"
	"contralay/model"
)

// FreeText is how many cavities are free, connector by connector.
func FreeText(m *Model) string {
	var parts []string
	for i, t := range m.Sheet.Terms {
		if len(t.Free) > 0 {
			parts = append(parts, fmt.Sprintf("%s %d", m.H.Terminations[i].ID, len(t.Free)))
		}
	}
	if len(parts) == 0 {
		return "none"
	}
	if len(parts) > 5 {
		parts = append(parts[:5], "…")
	}
	return strings.Join(parts, ", ")
}

// FreeFor are the free cavities of a termination whose contacts take a wire.
func FreeFor(s *sheet.Sheet, t int, w model.Wire) []string {
	var out []string
	for _, c := range s.Terms[t].Free {
		if ends.Takes(s, t, c, w.Spec, w.Size) {
			out = append(out, c)
		}
	}
	return out
}

// FreeBeyond is a free cavity of the connector that text names, not yet taken, whose contact
// takes the wire; a splice stays the same.
func FreeBeyond(s *sheet.Sheet, text string, w model.Wire, taken map[string]bool) (string, bool) {
	e, ok := s.Index.End(text)
	t, known := s.Index.Termination[e.Termination]
	switch {
	case text == "" && wires.Capped(&w):
		return "", true
	case ok && e.Splice != "":
		return text, true
	case !ok || !known:
		return "", false
	}
	for _, c := range FreeFor(s, t, w) {
		if end := e.Termination + ":" + c; !taken[end] {
			return end, true
		}
	}
	return "", false
}
