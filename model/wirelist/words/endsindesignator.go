package words

import (
	"strings"

	"contralay/model/wirelist/name"
)

// EndsInDesignator reports whether a text is a few words of which the last is a designator, "Power module PM1".
func EndsInDesignator(text string) bool {
	all := strings.Fields(text)
	return len(all) > 1 && len(all) < 5 && name.IsDesignator(all[len(all)-1]) && all[len(all)-1] == strings.ToUpper(all[len(all)-1])
}
