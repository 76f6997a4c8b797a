package column

import (
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// LengthsIn is the unit that a text says lengths are in, "Lengths in mm", "Alle Längen in mm", "longueurs en cm"; "" where it says none.
func LengthsIn(text string) value.LengthUnit {
	const most = 4 // words between the two (no source)
	all := name.Words(table.Fold(text))
	for i, w := range all {
		switch w {
		case "lengths", "length", "langen", "lange", "masse", "longueurs", "longueur", "longitudes", "lunghezze", "lengten", "langder",
			"dimensions", "dlugosci", "delky":
		default:
			continue
		}
		between := true
		for k := i + 1; k < len(all) && k <= i+most && between; k++ {
			switch w := all[k]; w {
			case "in": // an inch as well, as the last word
				if k+1 == len(all) && k > i+1 {
					return "in"
				}
			case "are", "is", "en", "sind", "all", "given", "sont", "angegeben", "di", "i", "w", "v", "the":
			default:
				if u := value.LengthWord(w); u != "" {
					return u
				}
				between = false
			}
		}
	}
	return ""
}
