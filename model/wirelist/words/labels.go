package words

import (
	"slices"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// HeadsLabel reports whether a heading is of what the wires are tagged with: "Tag", "Tag no.", "Wire label", "Märkning". From memory,
// no source.
func HeadsLabel(heading string) bool {
	w := name.Words(table.Fold(name.WithoutBrackets(heading)))
	const most = 3 // words, "wire tag no"
	return len(w) > 0 && len(w) <= most && slices.ContainsFunc(w, func(w string) bool {
		switch w {
		case "tag", "tags", "label", "labels", "line", "print", "printed", "printing", "imprint", "aufdruck", "opdruk",
			"marker", "markers", "marking", "sleeve", "ferrule", "etiquette", "etichetta",
			"siglatura", "etiqueta", "etiquetado", "marcacion", "marcado", "kennzeichnung", "beschriftung", "markierung",
			"aderkennzeichnung",
			"codering", "markering", "markning", "etikett", "maerke", "mærke", "maerkning", "mærkning", "merking", "merke", "merkinta",
			"tunnus", "oznacznik", "etykieta", "stitek", "znaceni", "etiket", "cimke", "jeloles", "eticheta", "anilha":
			return true
		}
		return false
	})
}
