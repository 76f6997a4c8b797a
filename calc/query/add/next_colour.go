package add

import (
	"slices"

	"contralay/model"
)

// nextColour is the first colour that no wire has at either end of a new one; none where all are
// taken. The ends of wires meet at a termination or a splice.
func nextColour(h *model.Harness, w model.Wire) model.Opt[string] {
	taken := map[string]bool{}
	at := meets(w)
	for k := range h.Wires {
		if slices.ContainsFunc(meets(h.Wires[k]), func(p string) bool { return slices.Contains(at, p) }) {
			taken[h.Wires[k].Colour.V] = true
		}
	}
	for _, c := range h.Rules.Resolve().ColourStock { // what the shop stocks, the first one first
		if !taken[c] {
			return model.Some(c)
		}
	}
	return model.Opt[string]{}
}

// meets is the terminations and splices that a wire ends in.
func meets(w model.Wire) []string {
	var out []string
	for _, text := range []string{w.From.V, w.To.V} {
		if e, ok := model.ParseEnd(text); ok {
			out = append(out, e.Termination+" "+e.Splice)
		}
	}
	return out
}
