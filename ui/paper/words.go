package paper

import (
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
	"contralay/ui/paper/list"
)

// What the bench shares with paper.

// Colour is a colour code with its words: "96  white/blue"; any other code as it is.
func Colour(code string) string { return list.Colour(code) }

// Size is a wire's size with its unit: "22 AWG", "0.35 mm2".
func Size(w *model.Wire) string { return list.Size(w) }

// Turn is a turn length as it is laid: to 5 mm.
func Turn(v unit.Millimetre) unit.Millimetre { return list.Turn(v) }

// Becomes is a splice as whoever lays its wires needs it: where it lies and which wires go
// on as which.
func Becomes(s *sheet.Sheet, sys unit.System, i int) string { return list.Becomes(s, sys, i) }
