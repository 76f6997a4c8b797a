package wires

import (
	"contralay/model"
	"contralay/model/unit"
)

// FoldMM is how much of a capped spare is folded back where the file does not say:
// enough to end in a splice or in a contact near by. Common practice, no source.
const FoldMM unit.Millimetre = 100

// Capped reports whether a wire is capped at one end.
func Capped(w *model.Wire) bool {
	return w.CappedAt.V != "" && (w.From.V == "") != (w.To.V == "")
}
