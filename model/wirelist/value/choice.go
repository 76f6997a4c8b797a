package value

import (
	"slices"
	"strings"

	"contralay/model/wirelist/table"
)

// IsChoice reports whether a text leaves open which of two things it says: "white or grey", "rot oder braun".
func IsChoice(text string) bool {
	if strings.Count(text, " ") < 2 {
		return false // most cells
	}
	all := strings.Fields(table.Fold(text))
	for i := 1; i+1 < len(all); i++ {
		if slices.Contains([]string{"or", "oder", "ou", "eller", "lub", "of"}, all[i]) && len(all[i-1]) > 2 && len(all[i+1]) > 2 {
			return true
		}
	}
	return false
}
