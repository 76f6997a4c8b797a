package add

import (
	"slices"

	"contralay/model"
)

// codes are the digit codes in the order in which they are given out: one colour, then two.
var codes = func() []string {
	var out []string
	for base := '0'; base <= '9'; base++ {
		out = append(out, string(base))
	}
	for _, base := range "9876543210" {
		for stripe := '0'; stripe <= '9'; stripe++ {
			if stripe != base {
				out = append(out, string(base)+string(stripe))
			}
		}
	}
	return out
}()

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
	for _, c := range codes {
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
