package catalogue_test

import (
	"fmt"
	"strings"

	"contralay/model/catalogue"
)

// A shop measures its reel and lays its own entry over the one that comes with
// the program.
func ExampleMerge() {
	base, err := catalogue.Default()
	if err != nil {
		fmt.Println(err)
		return
	}
	shop, err := catalogue.Read(strings.NewReader(`
[[wire]]
spec       = "AS22759/32"
size       = "22"
over_mm    = 1.11
area_mm2   = 0.3821
ohm_per_km = 53.15
rated_c    = 150.0
source     = "ten side by side, divided by ten, reel of May"
standing   = "house"
`), "shop.toml")
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, c := range []*catalogue.Catalogue{base, catalogue.Merge(base, shop)} {
		w, _ := c.Wire("AS22759/32", "22")
		fmt.Println(w.OverMM, w.OverStanding)
	}
	// Output:
	// 1.09 memory
	// 1.11 house
}
