package words

import "slices"

// tapWords are what a heading calls the places of a battery where the wires of its monitor are taken off; cellWords those for the cells,
// and what may stand beside either. Common words, from memory, no source.
var (
	tapWords  = setOf(`tap taps tapping abgriff abgriffe zellabgriff zellabgriffe zellenabgriff prise toma presa aftakking`)
	cellWords = setOf(`cell cells zelle zellen batteriezelle cellule celda celdas cella celle cel`)
	tapAside  = setOf(`point position location name no nr sense voltage punkt de di punto punkte`)
)

// HeadsTap reports whether the words of a heading are of the places where wires are taken off a battery, "Cell tap", "Tap point",
// "Zellabgriff", and whether they speak of its cells.
func HeadsTap(head []string) (tap, cell bool) {
	if slices.ContainsFunc(head, func(w string) bool { return !tapWords()[w] && !cellWords()[w] && !tapAside()[w] }) {
		return false, false
	}
	cell = slices.ContainsFunc(head, func(w string) bool { return cellWords()[w] })
	return slices.ContainsFunc(head, func(w string) bool { return tapWords()[w] }), cell
}
