package add

import (
	"slices"

	"contralay/model"
)

// nextColour is the colour of a new wire: on a splice that of the wires there, for they are one feed
// (common practice, no source); else the first that no wire has at a termination where it ends; none
// where all are taken.
func nextColour(h *model.Harness, w model.Wire) model.Opt[string] {
	taken := map[string]bool{}
	at := meets(w)
	same := ""
	for k := range h.Wires {
		if joins(w, h.Wires[k]) && same == "" {
			same = h.Wires[k].Colour.V
		}
		if slices.ContainsFunc(meets(h.Wires[k]), func(p string) bool { return slices.Contains(at, p) }) {
			taken[h.Wires[k].Colour.V] = true
		}
	}
	if same != "" && !taken[same] {
		return model.Some(same)
	}
	for _, c := range h.Rules.Resolve().ColourStock { // what the shop stocks, the first one first
		if !taken[c] {
			return model.Some(c)
		}
	}
	return model.Opt[string]{}
}

// joins reports whether two wires end in one splice.
func joins(a, b model.Wire) bool {
	for _, x := range []string{a.From.V, a.To.V} {
		if e, ok := model.ParseEnd(x); ok && e.Splice != "" && (x == b.From.V || x == b.To.V) {
			return true
		}
	}
	return false
}

// meets is the terminations that a wire ends in.
func meets(w model.Wire) []string {
	var out []string
	for _, text := range []string{w.From.V, w.To.V} {
		if e, ok := model.ParseEnd(text); ok && e.Termination != "" {
			out = append(out, e.Termination)
		}
	}
	return out
}
