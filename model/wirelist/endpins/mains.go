package endpins

import (
	"strings"

	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/name"
)

// mainsOf are the devices that have an end "L" and an end "N" behind their name, the line and the neutral of a supply: their "L" is no
// left one.
func mainsOf(im *draft.Importer) map[string]bool {
	neutral, line := map[string]bool{}, map[string]bool{}
	for _, it := range im.Items {
		for _, e := range []draft.End{it.From, it.To} {
			if of, is := strings.CutSuffix(e.Text, " N"); is {
				neutral[name.Key(of)] = true
			} else if of, is := strings.CutSuffix(e.Text, " L"); is {
				line[name.Key(of)] = true
			}
		}
	}
	for of := range line {
		line[of] = neutral[of]
	}
	return line
}
