package words

import "slices"

// workWords are what a heading calls the marks of how far the work on a wire is and the papers that it was changed by, and what is written
// on its ends, and which harness it is of: none is an end, a name or a size of the wire. Common words, from memory, no source.
var workWords = setOf(`rev revision issue done checked check built made tested cut crimped approved ok qc initials sign marker markers
	label labels plug plugs sleeving stand geprueft gepruft erledigt fertig beschriftung indice fait controle etiquette hecho revisado
	etiqueta fatto verificato etichetta harness loom subharness kabelbaum faisceau mazo cablaggio`)

// SaysWork reports whether the words of a heading are of the work on the wires, "Done", "Rev", "Label A".
func SaysWork(head []string) bool {
	return slices.ContainsFunc(head, func(w string) bool { return workWords()[w] })
}
