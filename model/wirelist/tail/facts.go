package tail

import (
	"slices"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

// Below the cavities in a data sheet often stands what else is known of the thing, in the same columns.
//
//	Pin | Signal | Colour
//	1   | +Ub    | brown
//
//	Technical data
//	Protection   | IP67

// SaysFacts reports whether a title is of such a table. Common words, from memory, no source.
func SaysFacts(title string) bool {
	return slices.ContainsFunc(name.Words(table.Fold(title)), func(w string) bool {
		switch w {
		case "data", "specification", "specifications", "specs", "ratings", "characteristics", "parameters", "limits", "environment",
			"daten", "kenndaten", "kennwerte", "grenzwerte", "donnees", "caracteristiques", "datos", "caracteristicas", "dati",
			"caratteristiche", "gegevens", "kenmerken", "dane", "udaje", "dados", "tekniset":
			return true
		}
		return false
	})
}

// IsFact reports whether a row below such a title is a fact: what stands in the place of a cavity is none.
func IsFact(cols []shape.Column, r table.Row, title string) bool {
	at := slices.IndexFunc(cols, func(c shape.Column) bool { return c.Field == name.FieldPin })
	return at >= 0 && SaysFacts(title) && at < len(r.Cells) && r.Cells[at] != "" && !name.IsCavity(r.Cells[at])
}
