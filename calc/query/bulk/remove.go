package bulk

import (
	"slices"
	"strings"

	"contralay/calc/sheet"
)

// Remove takes several wires out of the harness. One that belongs to a unit, and one that a wire
// which stays names as its return, is left and named.
func Remove(s *sheet.Sheet, ids []string) (Made, error) {
	at, err := picked(s, ids)
	if err != nil {
		return Made{}, err
	}
	out := Made{H: s.H}
	todo := idsOf(s.H, at)
	for { // a return can go once the wire that names it is gone
		out.Left = nil
		var rest []string
		for _, id := range todo {
			k := indexOf(out.H.Wires, id)
			h, err := out.H.RemoveWire(k)
			if err != nil {
				rest, out.Left = append(rest, id), append(out.Left, Left{id, strings.TrimPrefix(err.Error(), "wire "+id+" ")})
				continue
			}
			out.H, out.Wires = h, append(out.Wires, id)
		}
		if len(rest) == len(todo) || len(rest) == 0 {
			break
		}
		todo = rest
	}
	slices.SortStableFunc(out.Wires, func(a, b string) int { return s.Index.Wire[a] - s.Index.Wire[b] })
	out.Says = count(len(out.Wires), "wire") + " removed: " + Named(out.Wires)
	return out, nil
}
